package wisp.question;

import java.time.LocalDate;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;

/**
 * Dirty calves by what was so at their birth.
 *
 * @param medianDays median days since bedding over the calves of bedded pens, not a number where there is none
 * @param bedding by days since the pen was bedded; the last class has no bedding on record
 * @param stocking by other calvings in the pen in the seven days before
 * @param months by month of birth, in the order of the season
 * @param terms what one more day, and one more calving, go along with
 * @param timeOfYear whether dirtiness follows the year
 */
public record Circumstances(
        double medianDays,
        List<DirtyShare> bedding,
        List<DirtyShare> stocking,
        List<DirtyShare> months,
        List<DirtinessTerm> terms,
        TimeOfYear timeOfYear) {

    static Circumstances of(List<ScoredCalf> calves) {
        DirtinessModel model = DirtinessModel.of(calves);
        return new Circumstances(
                medianDays(calves), bedding(calves), stocking(calves), months(calves), model.terms(), model.year());
    }

    /** How many things the model is asked at once, in a word. */
    public String asked() {
        return timeOfYear.allowedFor() ? "three" : "two";
    }

    static double medianDays(List<ScoredCalf> calves) {
        double[] days = calves.stream()
                .filter(ScoredCalf::beddingKnown)
                .mapToDouble(ScoredCalf::daysSinceBedding)
                .sorted()
                .toArray();
        return days.length == 0 ? Double.NaN : (days[(days.length - 1) / 2] + days[days.length / 2]) / 2;
    }

    private static List<DirtyShare> bedding(List<ScoredCalf> calves) {
        return List.of(
                bedded("less than 2 days", calves, days(0, 2)),
                bedded("2 to 4 days", calves, days(2, 4)),
                bedded("4 to 7 days", calves, days(4, 7)),
                bedded("7 days or more", calves, days(7, Double.POSITIVE_INFINITY)),
                share(
                        "bedding",
                        "no bedding on record",
                        "of pens with no bedding on record before their birth",
                        calves,
                        calf -> !calf.beddingKnown()));
    }

    private static List<DirtyShare> stocking(List<ScoredCalf> calves) {
        return List.of(
                stocked("none", calves, calvings(0, 0)),
                stocked("1 or 2", calves, calvings(1, 2)),
                stocked("3 to 5", calves, calvings(3, 5)),
                stocked("6 or more", calves, calvings(6, Integer.MAX_VALUE)));
    }

    private static List<DirtyShare> months(List<ScoredCalf> calves) {
        int first = calves.stream()
                .map(calf -> calf.life().birthDate())
                .min(LocalDate::compareTo)
                .map(LocalDate::getMonthValue)
                .orElse(1);
        List<DirtyShare> months = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            Month month = Month.of(first).plus(i);
            String name = month.getDisplayName(TextStyle.FULL, Locale.ENGLISH);
            DirtyShare share = share(
                    "month",
                    name,
                    "born in " + name,
                    calves,
                    calf -> calf.life().birthDate().getMonth() == month);
            if (share.n() > 0) {
                months.add(share);
            }
        }
        return months;
    }

    private static Predicate<ScoredCalf> days(double from, double to) {
        return calf -> calf.daysSinceBedding() >= from && calf.daysSinceBedding() < to;
    }

    private static Predicate<ScoredCalf> calvings(int from, int to) {
        return calf -> calf.calvingsBefore() >= from && calf.calvingsBefore() <= to;
    }

    private static DirtyShare bedded(String name, List<ScoredCalf> calves, Predicate<ScoredCalf> in) {
        return share("bedding", name, "born " + name + " after the pen was bedded", calves, in);
    }

    private static DirtyShare stocked(String name, List<ScoredCalf> calves, Predicate<ScoredCalf> in) {
        return share(
                "stocking", name, "by other calvings in the pen in the 7 days before their birth: " + name, calves, in);
    }

    private static DirtyShare share(
            String of, String name, String those, List<ScoredCalf> calves, Predicate<ScoredCalf> in) {
        String id = of + "." + ScoredCalves.word(name);
        return DirtyShare.of(id, name, those, calves.stream().filter(in).toList());
    }
}
