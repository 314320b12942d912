package wisp.question.navels;

import java.util.ArrayList;
import java.util.List;
import wisp.question.Counted;
import wisp.statistics.Interval;

/** What the calves of unknown delay could change, in plain words. */
public final class MissingDelayWords {
    private MissingDelayWords() {}

    /** The sentences. */
    public static Counted of(MissingDelay missing) {
        return new Counted(unknown(missing) + untreated(missing));
    }

    private static String untreated(MissingDelay missing) {
        int n = missing.untreated().n();
        if (n == 0) {
            return "";
        }
        String who = " Late holds " + NavelGroup.UNTREATED.count(n, calves(n))
                + " with no treatment written by 24 hours; some of these may have been treated and nobody wrote it."
                + " With all of them left out, the risk ratio of late to early treatment ";
        Measured ratio = missing.untreatedLeftOut();
        return ratio.known()
                ? who + "is " + ratio(ratio.interval()) + (ratio.excludes(1) ? "." : ", which could be chance.")
                : who + "cannot be said. " + ratio.why();
    }

    private static String unknown(MissingDelay missing) {
        if (missing.calves() == 0) {
            return "The delay is known for every calf at risk.";
        }
        String who = "The delay of " + NavelGroup.UNKNOWN.count(missing.calves(), calves(missing.calves()))
                + " is not known, "
                + NavelGroup.UNKNOWN.cases(missing.cases(), Plain.count(missing.cases(), "case", "cases"))
                + " among them: " + kinds(missing) + "."
                + placed(missing);
        if (!missing.least().known() || !missing.most().known()) {
            return who + " What they could change cannot be said.";
        }
        Interval least = missing.least().interval();
        Interval most = missing.most().interval();
        if (missing.movable().n() == 0) {
            return who + " With them in it, the risk ratio of late to early treatment is " + ratio(least) + ".";
        }
        return who + " Placed so that delay looks least harmful, the risk ratio of late to early treatment would be "
                + ratio(least) + "; placed so that it looks most harmful, " + ratio(most) + ".";
    }

    private static String kinds(MissingDelay missing) {
        List<String> kinds = new ArrayList<>();
        if (missing.treatmentHour().n() > 0) {
            kinds.add(whole(NavelGroup.TREATMENT_HOUR, missing.treatmentHour().n())
                    + " treated on a day written without its hour");
        }
        if (missing.birthHour().n() > 0) {
            kinds.add(whole(NavelGroup.BIRTH_HOUR, missing.birthHour().n())
                    + " born on a day written without its hour (ages counted from the midnight before)");
        }
        return String.join(", ", kinds);
    }

    private static String placed(MissingDelay missing) {
        int late = missing.placedLate().n();
        int early = missing.placedEarly().n();
        if (late + early == 0) {
            return "";
        }
        List<String> placed = new ArrayList<>();
        if (late > 0) {
            placed.add(whole(NavelGroup.PLACED_LATE, late) + " can only have been late or untreated");
        }
        if (early > 0) {
            placed.add(whole(NavelGroup.PLACED_EARLY, early) + " can only have been early");
        }
        return " Whatever the hours were, " + String.join(" and ", placed)
                + (missing.movable().n() > 0 ? "; the others may be either." : ".");
    }

    private static String whole(NavelGroup group, int n) {
        return group.count(n, Plain.whole(n));
    }

    private static String calves(int n) {
        return Plain.count(n, "calf", "calves");
    }

    private static String ratio(Interval ratio) {
        return (Double.isInfinite(ratio.value()) ? "without a limit" : Plain.ratio(ratio.value())) + " ("
                + Plain.span(ratio) + ")";
    }
}
