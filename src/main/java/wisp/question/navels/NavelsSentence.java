package wisp.question.navels;

import wisp.indicator.Rule;
import wisp.indicator.Selection;
import wisp.question.Counted;

/**
 * The answer in plain words, worked out from the figures. It speaks of more than chance only where the intervals of the
 * risk ratio, of counts and at 21 days, leave out 1 and Fisher's exact test agrees.
 */
final class NavelsSentence {
    private static final int FEW = 10;

    private final NavelsAnswer answer;
    private final String when;
    private final String until;

    private NavelsSentence(NavelsAnswer answer) {
        this.answer = answer;
        this.when = answer.season().equals(Selection.ALL) ? "over all seasons" : "in " + answer.season();
        Rule.Risk risk = (Rule.Risk) answer.figure().indicator().rule();
        this.until = "between " + span(risk.window().start().text()) + " and "
                + span(risk.window().end().text()) + " of age";
    }

    static Counted of(NavelsAnswer answer) {
        String words = new NavelsSentence(answer).words();
        return new Counted(
                answer.only().isEmpty()
                        ? words
                        : "Among " + answer.only() + ", " + Character.toLowerCase(words.charAt(0))
                                + words.substring(1));
    }

    private static String span(String text) {
        return text.replaceFirst(" d$", " days").replaceFirst(" h$", " hours");
    }

    private String words() {
        GroupRisk known = answer.late().known();
        if (answer.figure().verdicts().isEmpty()) {
            return "No calf born " + when + " is recorded.";
        }
        if (known.n() + answer.delayUnknown() == 0) {
            return "Nothing can be said " + when
                    + " yet: no calf of known hour of birth has passed 24 hours of age alive, present and free of navel"
                    + " infection.";
        }
        if (known.n() == 0) {
            return "Nothing can be said " + when + ": how soon the navel was treated is not known for "
                    + (answer.delayUnknown() == 1
                            ? "the " + NavelGroup.UNKNOWN.count(1, "one calf") + " at risk."
                            : "any of the "
                                    + NavelGroup.UNKNOWN.count(
                                            answer.delayUnknown(), Plain.whole(answer.delayUnknown()) + " calves")
                                    + " at risk.");
        }
        if (known.cases() == 0) {
            return noCase(known);
        }
        GroupRisk early = answer.late().early();
        GroupRisk late = answer.late().late();
        if (early.n() == 0 || late.n() == 0) {
            return oneGroup(known, early.n() > 0);
        }
        return group(early, NavelGroup.EARLY, "treated within 60 minutes of birth", true) + "; "
                + group(late, NavelGroup.LATE, "treated later or not by 24 hours", false) + ". " + compared()
                + Withstanding.of(answer) + few();
    }

    private String noCase(GroupRisk known) {
        String upper = known.at21Days().known()
                ? " Allowing for chance, the risk may still be as high as "
                        + Plain.percent(known.interval().high(), known.n()) + "."
                : "";
        String who = known.n() == 1
                ? "The " + NavelGroup.KNOWN.count(1, "one calf")
                        + " with a known delay to navel treatment had no navel infection "
                : "None of the " + NavelGroup.KNOWN.count(known.n(), Plain.whole(known.n()) + " calves")
                        + " with a known delay to navel treatment had a navel infection ";
        String soFar = known.censored() > 0 ? " as far as they were followed" : "";
        return who + until + soFar + ", so that early and late treatment cannot be told apart " + when + "." + upper;
    }

    private String oneGroup(GroupRisk known, boolean early) {
        String how = early ? "treated within 60 minutes of birth" : "treated later than 60 minutes after birth or not";
        NavelGroup those = early ? NavelGroup.EARLY : NavelGroup.LATE;
        return group(known, those, how, true) + ". No calf was treated "
                + (early ? "later or not at all" : "within 60 minutes") + ", so that there is nothing to compare "
                + when
                + ".";
    }

    private String group(GroupRisk group, NavelGroup those, String how, boolean first) {
        String had = first ? " had a navel infection " + until : " did";
        String hadNone = first ? " had no navel infection " + until : " did not";
        String who;
        if (group.n() == 1) {
            who = (first ? "The " + those.count(1, "one calf") : "the " + those.count(1, "one")) + " " + how
                    + (group.cases() == 1 ? had : hadNone);
        } else {
            String number = group.cases() == 0 ? "none" : those.cases(group.cases(), Plain.whole(group.cases()));
            String all = those.count(group.n(), Plain.whole(group.n()) + (first ? " calves" : ""));
            who = (first ? "Of the " : "of the ") + all + " " + how + ", " + number + had;
        }
        return who
                + (group.at21Days().known()
                        ? " (risk " + Plain.percent(group.interval().value(), group.n()) + "; allowing for chance, "
                                + Plain.span(group.interval(), group.n()) + ")"
                        : " so far");
    }

    private String compared() {
        TwoGroups against = answer.late().against();
        Measured ratio = against.shown();
        boolean more = against.moreThanChance();
        if (!ratio.known()) {
            return "They cannot be compared yet.";
        }
        double value = ratio.interval().value();
        if (value == 0 || Double.isInfinite(value)) {
            return difference(against, more);
        }
        if (!more && Plain.number(value, 1).equals("1.0")) {
            return "The two risks are about the same, but the records fit anything from " + Plain.span(ratio.interval())
                    + " times the risk.";
        }
        String size = "That is " + Plain.ratio(value) + " times the risk";
        return more
                ? size + ", more than chance alone makes likely: the records fit " + Plain.span(ratio.interval())
                        + " times."
                : size + ", but it could be chance: the records fit anything from " + Plain.span(ratio.interval())
                        + " times.";
    }

    private String difference(TwoGroups against, boolean more) {
        int calves = Math.min(answer.late().late().n(), answer.late().early().n());
        Measured points =
                against.differenceAt21Days().known() ? against.differenceAt21Days() : against.riskDifference();
        String size = "That is "
                + Plain.points(points.interval().value(), "percentage points more", "percentage points fewer", calves);
        String span = Plain.points(points.interval().low(), "more", "fewer", calves) + " to "
                + Plain.points(points.interval().high(), "more", "fewer", calves);
        return more
                ? size + ", more than chance alone makes likely: the records fit " + span + "."
                : size + ", but it could be chance: the records fit anything from " + span + ".";
    }

    private String few() {
        int least = Math.min(answer.late().late().n(), answer.late().early().n());
        return least < FEW ? " With so few calves in one group only a very large difference could show." : "";
    }
}
