package wisp.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import wisp.question.Circumstances;
import wisp.question.Counted;
import wisp.question.Digits;
import wisp.question.DirtinessTerm;
import wisp.question.DirtyThenIll;
import wisp.question.IllCalves;
import wisp.question.KeptPlaces;
import wisp.question.PenHomogeneity;
import wisp.question.PensAnswer;
import wisp.question.ScoredCalves;
import wisp.question.TimeOfYear;
import wisp.statistics.Interval;

/** The sentences beside the pens' pictures and tables; none claims more than its interval and test allow. */
final class PensWords {
    private PensWords() {}

    static List<String> notes(PensAnswer answer) {
        List<String> notes = new ArrayList<>();
        if (!answer.unscored().isEmpty()) {
            notes.add("Calves were born there but none was scored in time: " + String.join(", ", answer.unscored())
                    + ".");
        }
        if (answer.spread().boundary()) {
            notes.add("No spread between pens beyond chance was found: every drawn-in share is that of all pens"
                    + " together.");
        } else if (answer.spread().why() != null && answer.pens().size() > 1) {
            notes.add(answer.spread().why());
        }
        return notes;
    }

    static String homogeneity(PensAnswer answer) {
        PenHomogeneity test = answer.homogeneity();
        if (test.why() != null) {
            return "Whether the pens differ at all cannot be tested. " + test.why();
        }
        String shown = "chi-square " + Shown.decimals(test.chiSquare(), 1) + " on " + test.df() + " df, p "
                + Digits.p(test.p()) + "; " + test.method();
        if (answer.differTogether()) {
            return "Taken together the pens differ by more than chance (" + shown + ").";
        }
        String fisher = test.moreThanChance()
                ? "; Fisher's exact p " + Digits.p(answer.pens().get(0).others().p())
                : "";
        return "Taken together, what separates the pens could be chance (" + shown + fisher + ").";
    }

    static Counted places(KeptPlaces places) {
        if (places.difference() == null) {
            return new Counted(
                    places.elsewhere().n() == 0
                            ? "Every scored calf was born where a bedding or a cleaning is on record."
                            : "Nobody has written down a bedding or a cleaning of any of these places, so that calving"
                                    + " pens cannot be told from passages or the field.");
        }
        Interval points = places.difference();
        String span = " (95 % interval " + points(points.low()) + " to " + points(points.high()) + ")";
        String counts = count(places.elsewhere().dirtyCalves()) + " of "
                + count(places.elsewhere().calves())
                + " calves born in places never bedded or cleaned out by the records (such as cubicles, a passage or"
                + " the field) were dirty, " + count(places.kept().dirtyCalves()) + " of "
                + count(places.kept().calves()) + " in kept pens: in 100 calves " + points(points.value()) + span;
        return new Counted(counts + (places.moreThanChance() ? ", more than chance." : ", which could be chance."));
    }

    private static String count(ScoredCalves calves) {
        return Counted.list(calves.count(), String.valueOf(calves.count()), calves.id());
    }

    private static String points(double difference) {
        return difference == 0 ? "none" : Digits.size(100 * difference, 0) + (difference < 0 ? " fewer" : " more");
    }

    static String term(DirtinessTerm term, Circumstances so) {
        String name = term.name().substring(0, 1).toUpperCase(Locale.ENGLISH)
                + term.name().substring(1);
        if (term.within() == null) {
            return name + ": it cannot be told what goes with it. " + term.why();
        }
        return name + " goes with " + ratio(term.within(), 2) + " times the odds of a dirty calf within pens"
                + (so.timeOfYear().allowedFor() ? " and at the same time of year" : "")
                + chance(term, so) + " (95 % interval"
                + (term.crude() == null ? "" : "; by itself " + ratio(term.crude(), 2)) + ").";
    }

    private static String chance(DirtinessTerm term, Circumstances so) {
        if (term.moreThanChance()) {
            return ", more than chance";
        }
        boolean leavesOutOne = term.within().low() > 1 || term.within().high() < 1;
        return leavesOutOne
                ? "; with " + so.asked() + " things looked at, it could still be chance"
                : "; it could be chance";
    }

    static String timeOfYear(TimeOfYear year) {
        if (!year.allowedFor()) {
            return "The time of year is not allowed for. " + year.why();
        }
        return (year.moreThanChance()
                        ? "Dirtiness went up and down with the time of year by more than chance"
                        : "What dirtiness had to do with the time of year could be chance")
                + ", pens, bedding and stocking allowed for (p " + Digits.p(year.adjustedP()) + ", Holm's).";
    }

    static Counted illness(DirtyThenIll any) {
        String left = any.leftOut() == 0
                ? ""
                : " "
                        + Counted.list(
                                any.leftOut(),
                                any.leftOut() == 1 ? "One scored calf" : any.leftOut() + " scored calves",
                                any.behind().leftOut().id())
                        + (any.leftOut() == 1 ? " is" : " are")
                        + " left out: not yet 21 days old, gone before, or ill before the scoring.";
        if (any.byPen() == null) {
            return new Counted("Whether dirty calves fell ill more cannot be told."
                    + (any.why() == null ? "" : " " + any.why()) + left);
        }
        String verdict = any.moreThanChance()
                ? "Dirty calves fell ill " + (any.byPen().value() > 1 ? "more" : "less")
                        + " often than clean ones of the same pen, by more than chance"
                : "Whether dirty calves fall ill more than clean ones of the same pen these records do not settle";
        IllCalves behind = any.behind();
        return new Counted(verdict + ": " + count(behind.dirtyIll()) + " of "
                + count(behind.dirty()) + " dirty calves and "
                + count(behind.cleanIll()) + " of " + count(behind.clean())
                + " clean ones had an illness by 21 days, risk ratio within pens " + Digits.ratio(any.byPen(), 1) + "."
                + left);
    }

    static String ratio(Interval ratio, int decimals) {
        return Digits.ratio(ratio.value(), decimals) + " (" + Digits.ratio(ratio.low(), decimals) + " to "
                + Digits.ratio(ratio.high(), decimals) + ")";
    }
}
