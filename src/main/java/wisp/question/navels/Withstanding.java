package wisp.question.navels;

import java.util.ArrayList;
import java.util.List;

/**
 * What a difference beyond chance withstands, as the end of the headline: covariates allowed for, seasons kept apart
 * where there are several, and the delays that nobody wrote down placed worst for it. Only what withstands all of them
 * is said to stay so.
 */
final class Withstanding {
    private static final String UNWRITTEN = "the delays that nobody wrote down";

    private Withstanding() {}

    /** What became of the difference. */
    private enum Outcome {
        STAYS(""),
        CHANCE("it could be chance"),
        TURNED("it is the other way round"),
        UNTOLD("it cannot be told");

        private final String words;

        Outcome(String words) {
            this.words = words;
        }

        static Outcome of(Measured ratio, boolean more) {
            if (!ratio.known()) {
                return UNTOLD;
            }
            if (!ratio.excludes(1)) {
                return CHANCE;
            }
            return ratio.interval().value() > 1 == more ? STAYS : TURNED;
        }
    }

    /** What the ratio was looked at with, and what became of it. */
    private record Check(String with, Outcome outcome) {}

    /**
     * Whether the difference is more than chance by itself, with what is on record allowed for, and with the unwritten
     * delays placed worst for it.
     */
    static boolean whole(NavelsAnswer answer) {
        return answer.late().against().moreThanChance() && but(answer).isEmpty();
    }

    /** What speaks against a bare difference beyond chance, as clauses; empty where nothing does. */
    static String but(NavelsAnswer answer) {
        double ratio = answer.late().against().riskRatio().interval().value();
        List<String> against = new ArrayList<>();
        checks(answer.late(), ratio > 1).stream()
                .filter(check -> check.outcome() != Outcome.STAYS)
                .forEach(check -> against.add(check.with() + " " + check.outcome().words));
        if (!answer.late().adjustedRatio().riskRatio().known()) {
            against.add("nothing that differs between the calves besides could be allowed for");
        }
        Outcome unwritten = unwritten(answer, ratio);
        if (unwritten != Outcome.STAYS) {
            against.add("with " + UNWRITTEN + " placed worst " + unwritten.words);
        }
        return String.join(", and ", against);
    }

    private static Outcome unwritten(NavelsAnswer answer, double ratio) {
        return answer.missing().calves() == 0
                ? Outcome.STAYS
                : Outcome.of(answer.missing().worst(ratio), ratio > 1);
    }

    /** A sentence after a blank, or nothing where no difference beyond chance is claimed. */
    static String of(NavelsAnswer answer) {
        if (!answer.late().against().moreThanChance()) {
            return "";
        }
        double ratio = answer.late().against().riskRatio().interval().value();
        List<Check> checks = checks(answer.late(), ratio > 1);
        Outcome unwritten = unwritten(answer, ratio);
        String failing = checks.stream()
                .filter(check -> check.outcome() != Outcome.STAYS)
                .map(check -> check.with() + " " + check.outcome().words)
                .reduce((one, two) -> one + ", and " + two)
                .orElse("");
        if (!failing.isEmpty()) {
            String placed = unwritten == Outcome.STAYS
                    ? ""
                    : "; were " + UNWRITTEN + " placed worst, " + unwritten.words + " too";
            return " " + Character.toUpperCase(failing.charAt(0)) + failing.substring(1) + placed + ".";
        }
        String with = checks.stream()
                .map(Check::with)
                .reduce((one, two) -> one + " and " + two)
                .orElse("");
        if (unwritten != Outcome.STAYS) {
            return (with.isEmpty()
                            ? " It would not hold"
                            : " " + Character.toUpperCase(with.charAt(0)) + with.substring(1) + " this holds, but not")
                    + " if " + UNWRITTEN + " were placed worst: then " + unwritten.words + ".";
        }
        String placed = answer.missing().calves() == 0 ? "" : "with " + UNWRITTEN + " placed worst";
        if (with.isEmpty() && placed.isEmpty()) {
            return "";
        }
        return " It stays so " + with + (with.isEmpty() || placed.isEmpty() ? "" : ", and ") + placed + ".";
    }

    private static List<Check> checks(LateTreatment late, boolean more) {
        List<Check> checks = new ArrayList<>();
        AdjustedRatio adjusted = late.adjustedRatio();
        boolean modelled =
                adjusted.riskRatio().known() && !adjusted.covariates().isEmpty();
        if (modelled) {
            checks.add(new Check(
                    "with " + NavelsWords.covariates(adjusted.covariates()) + " allowed for",
                    Outcome.of(adjusted.riskRatio(), more)));
        }
        boolean seasonsIn = modelled && adjusted.covariates().contains(Covariates.SEASON);
        if (late.against().mantelHaenszel().seasons() > 1 && !seasonsIn) {
            checks.add(new Check("within seasons", Outcome.of(late.withinSeasons(), more)));
        }
        return checks;
    }
}
