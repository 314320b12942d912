package wisp.question;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import wisp.statistics.CannotEstimate;
import wisp.statistics.Coefficients;
import wisp.statistics.Design;
import wisp.statistics.Interval;
import wisp.statistics.Logistic;
import wisp.statistics.MultipleTesting;

/**
 * Dirtiness in bedded pens by days since bedding and by stocking, within pens and, where the data allow, at the same
 * time of year: one logistic model.
 *
 * @param terms one more day, and one more calving
 * @param year whether dirtiness follows the year
 */
record DirtinessModel(List<DirtinessTerm> terms, TimeOfYear year) {
    private static final int DAYS = 1;
    private static final int CALVINGS = 2;
    private static final int WAVE = 3;

    static DirtinessModel of(List<ScoredCalf> calves) {
        List<ScoredCalf> bedded =
                calves.stream().filter(ScoredCalf::beddingKnown).toList();
        List<double[]> columns = new ArrayList<>(
                List.of(column(bedded, ScoredCalf::daysSinceBedding), column(bedded, ScoredCalf::calvingsBefore)));
        List<double[]> wave = List.of(
                column(bedded, calf -> Math.sin(TimeOfYear.angle(calf.life().birthDate()))),
                column(bedded, calf -> Math.cos(TimeOfYear.angle(calf.life().birthDate()))));
        List<double[]> pens = pens(bedded);
        String against = TimeOfYear.against(bedded, columns.size() + wave.size() + pens.size());
        Fit plain = Fit.of(bedded, joined(columns, pens));
        if (against == null) {
            Fit waved = Fit.of(bedded, joined(joined(columns, wave), pens));
            if (waved.coefficients != null) {
                return of(bedded, waved, null);
            }
            against = waved.why;
        }
        return of(bedded, plain, against);
    }

    private static DirtinessModel of(List<ScoredCalf> bedded, Fit fit, String against) {
        double[] p = {Double.NaN, Double.NaN, Double.NaN};
        double chiSquare = Double.NaN;
        double tail = Double.NaN;
        if (fit.coefficients != null) {
            double days = fit.coefficients.pValue(DAYS);
            double calvings = fit.coefficients.pValue(CALVINGS);
            chiSquare = against == null ? TimeOfYear.chiSquare(fit.coefficients, WAVE) : Double.NaN;
            tail = TimeOfYear.tail(chiSquare);
            p = against == null ? MultipleTesting.holm(days, calvings, tail) : MultipleTesting.holm(days, calvings);
        }
        return new DirtinessModel(
                List.of(
                        term(DirtinessTerm.BEDDING, ScoredCalf::daysSinceBedding, bedded, fit, DAYS, p[0]),
                        term(DirtinessTerm.CALVING, ScoredCalf::calvingsBefore, bedded, fit, CALVINGS, p[1])),
                against == null ? new TimeOfYear(true, chiSquare, tail, p[2], null) : TimeOfYear.not(against));
    }

    private static DirtinessTerm term(
            String name, ToDoubleFunction<ScoredCalf> of, List<ScoredCalf> bedded, Fit fit, int j, double p) {
        Fit alone = Fit.of(bedded, List.of(column(bedded, of)));
        String method = fit.coefficients == null ? "" : fit.coefficients.method();
        String why = fit.why != null ? fit.why : alone.why;
        ScoredCalves calves = new ScoredCalves("bedded", "Scored calves of bedded pens", bedded);
        return new DirtinessTerm(name, alone.ratio(1), fit.ratio(j), p, calves, method, why);
    }

    private static double[] column(List<ScoredCalf> calves, ToDoubleFunction<ScoredCalf> of) {
        return calves.stream().mapToDouble(of).toArray();
    }

    /** A term for each pen but the first. */
    private static List<double[]> pens(List<ScoredCalf> calves) {
        return calves.stream()
                .map(ScoredCalf::pen)
                .distinct()
                .sorted()
                .skip(1)
                .map(pen -> column(calves, calf -> calf.pen().equals(pen) ? 1 : 0))
                .toList();
    }

    private static List<double[]> joined(List<double[]> first, List<double[]> then) {
        List<double[]> all = new ArrayList<>(first);
        all.addAll(then);
        return all;
    }

    /** A fit, or why there is none. */
    private record Fit(Coefficients coefficients, String why) {
        static Fit of(List<ScoredCalf> calves, List<double[]> columns) {
            boolean[] dirty = new boolean[calves.size()];
            for (int i = 0; i < dirty.length; i++) {
                dirty[i] = calves.get(i).dirty();
            }
            try {
                double[][] design = Design.withIntercept(columns.toArray(double[][]::new));
                return new Fit(Logistic.fit(dirty, design).coefficients(), null);
            } catch (CannotEstimate cannot) {
                return new Fit(null, cannot.getMessage());
            }
        }

        Interval ratio(int j) {
            return coefficients == null ? null : coefficients.ratio(j, DirtyShare.LEVEL);
        }
    }
}
