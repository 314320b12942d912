package wisp.chart;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;

/**
 * Round numbers to label an axis with.
 *
 * <p>Steps of 1, 2 or 5 times a power of ten: Heckbert, P. (1990) "Nice numbers for graph labels", in Graphics Gems,
 * Academic Press, pp. 61-63; here the smallest such step is taken that keeps within the number of labels that fit.
 */
final class Ticks {

    private static final double[][] LOG_FIGURES = {{1, 1.5, 2, 3, 5, 7}, {1, 2, 5}, {1, 3}, {1}};
    private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMM yyyy", Locale.ENGLISH);

    private Ticks() {}

    /** The labels of a whole axis, at most {@code most} of them unless its places are named. */
    static List<Tick> of(Axis axis, Domain domain, int most) {
        if (axis.scale() instanceof Scale.Categories categories) {
            List<Tick> ticks = new ArrayList<>();
            categories.names().forEach(name -> ticks.add(new Tick(ticks.size(), name)));
            return ticks;
        }
        if (domain.log()) {
            return log(domain, axis.format(), most);
        }
        return axis.scale() instanceof Scale.Dates ? dates(domain, most) : linear(domain, axis.format(), most);
    }

    /** The smallest step of 1, 2 or 5 times a power of ten that cuts the span into at most {@code most} - 1 pieces. */
    static double step(double span, int most, boolean whole) {
        double least = span / Math.max(1, most - 1);
        double power = Math.pow(10, Math.floor(Math.log10(least)));
        double step = 10 * power;
        for (double figure : new double[] {5, 2, 1}) {
            if (figure * power >= least * (1 - 1e-9)) {
                step = figure * power;
            }
        }
        return whole ? Math.max(1, step) : step;
    }

    private static List<Tick> linear(Domain domain, Format format, int most) {
        boolean whole = format == Format.COUNT;
        double span = domain.high() - domain.low();
        double step = step(span, most, whole);
        for (double finer = finer(step, whole); finer < step && places(domain, finer) <= most; ) {
            step = finer;
            finer = finer(step, whole);
        }
        List<Tick> ticks = new ArrayList<>();
        for (long i = first(domain, step); i <= last(domain, step); i++) {
            ticks.add(new Tick(i * step, format.text(i * step, step)));
        }
        return ticks;
    }

    private static double finer(double step, boolean whole) {
        return step(step * 0.8, 3, whole);
    }

    private static long places(Domain domain, double step) {
        return last(domain, step) - first(domain, step) + 1;
    }

    private static long first(Domain domain, double step) {
        return (long) Math.ceil(domain.low() / step - 1e-9);
    }

    private static long last(Domain domain, double step) {
        return (long) Math.floor(domain.high() / step + 1e-9);
    }

    private static List<Tick> log(Domain domain, Format format, int most) {
        List<Tick> ticks = List.of();
        for (double[] figures : LOG_FIGURES) {
            ticks = logTicks(domain, format, figures);
            if (ticks.size() <= most) {
                return ticks;
            }
        }
        List<Tick> decades = ticks;
        int stride = (decades.size() + most - 1) / most;
        return decades.stream()
                .filter(tick -> decades.indexOf(tick) % stride == 0)
                .toList();
    }

    private static List<Tick> logTicks(Domain domain, Format format, double[] figures) {
        List<Tick> ticks = new ArrayList<>();
        int first = (int) Math.floor(Math.log10(domain.low()));
        int last = (int) Math.ceil(Math.log10(domain.high()));
        for (int decade = first; decade <= last; decade++) {
            for (double figure : figures) {
                double value = figure * Math.pow(10, decade);
                if (value >= domain.low() * (1 - 1e-9) && value <= domain.high() * (1 + 1e-9)) {
                    double unit = Math.pow(10, decade) * (figure == 1.5 ? 0.1 : 1);
                    ticks.add(new Tick(value, format.text(value, Math.min(1, unit))));
                }
            }
        }
        return ticks;
    }

    /** The next value outwards that is 1, 2 or 5 times a power of ten. */
    static double logEnd(double value, boolean upwards) {
        double power = Math.pow(10, Math.floor(Math.log10(value) + 1e-12));
        double[] figures = {1, 2, 5, 10};
        double below = power;
        for (double figure : figures) {
            if (upwards && figure * power >= value * (1 - 1e-9)) {
                return figure * power;
            }
            if (figure * power <= value * (1 + 1e-9)) {
                below = figure * power;
            }
        }
        return below;
    }

    private static List<Tick> dates(Domain domain, int most) {
        LocalDate from = LocalDate.ofEpochDay((long) Math.ceil(domain.low()));
        for (int days : new int[] {1, 2, 7, 14}) {
            LocalDate start = days < 7 ? from : from.with(TemporalAdjusters.nextOrSame(DayOfWeek.MONDAY));
            List<Tick> ticks = dates(start, domain, day -> day.plusDays(days), false);
            if (ticks.size() <= most) {
                return ticks;
            }
        }
        LocalDate month = from.getDayOfMonth() == 1 ? from : from.with(TemporalAdjusters.firstDayOfNextMonth());
        boolean years = domain.high() - domain.low() > 366;
        for (int months : new int[] {1, 2, 3, 6, 12, 24, 60}) {
            List<Tick> ticks = dates(month, domain, day -> day.plusMonths(months), years);
            if (ticks.size() <= most) {
                return ticks;
            }
        }
        return dates(month, domain, day -> day.plusYears(10), true);
    }

    private static List<Tick> dates(LocalDate start, Domain domain, UnaryOperator<LocalDate> next, boolean withYear) {
        List<Tick> ticks = new ArrayList<>();
        for (LocalDate day = start; day.toEpochDay() <= domain.high() && ticks.size() < 1000; day = next.apply(day)) {
            String label = withYear ? MONTH.format(day) : Format.DATE.text(day.toEpochDay(), 1);
            ticks.add(new Tick(day.toEpochDay(), label));
        }
        return ticks;
    }
}
