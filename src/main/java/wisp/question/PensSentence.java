package wisp.question;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import wisp.indicator.SelectionWords;
import wisp.indicator.Stratum;

/** The answer in plain words, the most important first; it never claims more than intervals and tests allow. */
final class PensSentence {
    /** The words that are said only where an interval and a test that allows for all comparisons agree. */
    static final String MORE = "more than chance";

    private static final int NAMED = 3;
    private static final int FEW = 20;
    /** Beddings that lay hardly longer are not worth a word. */
    private static final double HALF_A_DAY = 0.5;

    private final PensAnswer answer;

    private PensSentence(PensAnswer answer) {
        this.answer = answer;
    }

    /** One sentence or a few that belong together in each line; the first line is the answer. */
    static List<Counted> of(PensAnswer answer) {
        List<String> lines = new ArrayList<>(new PensSentence(answer).lines());
        lines.set(0, SelectionWords.among(answer.only(), lines.get(0)));
        return lines.stream().map(Counted::new).toList();
    }

    private List<String> lines() {
        DirtyShare all = answer.overall();
        String when = answer.season().equals("all") ? "of all seasons" : "of " + answer.season();
        if (answer.asked() == 0) {
            return List.of("No calf " + when + " is on record, so there is nothing to say of pens.");
        }
        if (all.n() == 0) {
            return List.of(
                    answer.noPen() == 0
                            ? "No calf " + when + " was scored for cleanliness in time, so pens cannot be compared."
                            : scored(answer.noPen()) + " scored " + when
                                    + ", but nobody wrote down where, so pens cannot be compared.");
        }
        if (answer.pens().size() == 1) {
            return List.of(onePen(), "With one pen there is nothing to compare it with.");
        }
        List<String> lines = new ArrayList<>();
        lines.add(first(when));
        second().ifPresent(lines::add);
        olderBedding().ifPresent(lines::add);
        bedding(lines);
        illness(lines);
        return lines;
    }

    private String onePen() {
        DirtyShare all = answer.overall();
        return "Only " + answer.pens().get(0).pen() + " has calves scored: " + dirtyOf(all) + " dirty ("
                + Percent.of(all.share()) + "; allowing for chance "
                + Percent.span(all.interval().low(), all.interval().high()) + ").";
    }

    private String first(String when) {
        DirtyShare all = answer.overall();
        if (all.dirty() == 0) {
            return all.n() == 1
                    ? "The " + Counted.list(1, "one calf", all.calves().id()) + " scored " + when + " was clean."
                    : "None of the " + everyone(all) + " scored " + when + " was dirty, in any pen.";
        }
        if (all.dirty() == all.n()) {
            return "All " + everyone(all) + " scored " + when + " were dirty, in every pen, so no pen stands out.";
        }
        List<PenShare> dirtier = answer.standing(PenShare.Standing.DIRTIER);
        if (dirtier.size() == 1) {
            PenShare pen = dirtier.get(0);
            return named(pen) + " gave more dirty calves than the other pens, by " + MORE + ": "
                    + beside(pen.share(), null, answer.others(pen)) + fewer() + ".";
        }
        if (dirtier.size() > 1) {
            return "More dirty calves than elsewhere, by " + MORE + ", came from " + named(dirtier)
                    + "; over all pens it was " + counts(all, places(dirtier)) + fewer() + ".";
        }
        return nobodyDirtier(when);
    }

    /** The pens that stand out the other way; of two pens, the one's more is the other's fewer. */
    private String fewer() {
        List<PenShare> cleaner = answer.pens().size() == 2 ? List.of() : answer.standing(PenShare.Standing.CLEANER);
        if (cleaner.size() == 1) {
            PenShare pen = cleaner.get(0);
            return "; " + pen.pen() + " gave fewer (" + pen(pen.share(), null) + ")";
        }
        return cleaner.isEmpty() ? "" : "; fewer than elsewhere came from " + named(cleaner);
    }

    private String nobodyDirtier(String when) {
        DirtyShare all = answer.overall();
        List<PenShare> cleaner = answer.standing(PenShare.Standing.CLEANER);
        String herd = counts(all, places(cleaner)) + " calves " + when + " were dirty";
        if (!cleaner.isEmpty()) {
            return "No pen can be called the dirtiest, but fewer dirty calves than elsewhere, by " + MORE
                    + ", came from " + named(cleaner) + "; over all pens " + herd + ".";
        }
        if (answer.differTogether()) {
            return "No single pen can be called dirtier than the others, though taken together the pens differ by "
                    + MORE + "; over all pens " + herd + ".";
        }
        String few = all.n() < FEW ? " So few calves could only show very large differences." : "";
        return "No pen can be called dirtier than the others: " + herd
                + ", and what separates the pens could be chance." + few;
    }

    private Optional<String> second() {
        List<PenShare> changed = answer.changed();
        if (!changed.isEmpty()) {
            String each = changed.stream()
                    .limit(NAMED)
                    .map(pen -> pen.pen() + " went from " + changed(pen))
                    .collect(Collectors.joining("; "));
            return Optional.of("Since " + answer.lastSeason() + ", by " + MORE + ": " + each
                    + (changed.size() > NAMED ? "; and " + (changed.size() - NAMED) + " more" : "") + ".");
        }
        if (answer.spread().boundary()) {
            return Optional.of("The pens lie no further apart than chance alone would put them, so the best"
                    + " guess for each of them is the herd's "
                    + Percent.of(answer.overall().share()) + ".");
        }
        boolean compared = answer.pens().stream().anyMatch(pen -> pen.before() != null);
        return compared
                ? Optional.of("Against " + answer.lastSeason() + " what changed in any pen could be chance.")
                : Optional.empty();
    }

    /** What was so of the pen's bedding beside the other pens', and what the model has to say to that. */
    private Optional<String> olderBedding() {
        List<PenShare> dirtier = answer.standing(PenShare.Standing.DIRTIER);
        if (dirtier.size() != 1
                || !(dirtier.get(0).daysSinceBedding() >= dirtier.get(0).daysElsewhere() + HALF_A_DAY)) {
            return Optional.empty();
        }
        PenShare pen = dirtier.get(0);
        return Optional.of(String.format(
                        Locale.ROOT,
                        "Bedding in %s had lain %.1f days when its calves were born, against %.1f in the other bedded"
                                + " pens (medians). ",
                        pen.pen(),
                        pen.daysSinceBedding(),
                        pen.daysElsewhere())
                + reason(answer.circumstances().terms().get(0)));
    }

    /** Even where older bedding goes with dirtier calves, it is not shown to be this pen's reason. */
    private String reason(DirtinessTerm bedding) {
        String open = "Whether that is the reason stays open";
        if (bedding.within() == null) {
            return open + ".";
        }
        if (bedding.moreThanChance() && bedding.within().value() > 1) {
            return "As longer-lain bedding went with more dirty calves within pens too, that may be part of the"
                    + " reason.";
        }
        return open + ": within pens, " + bedding.name() + " went with " + odds(bedding)
                + (bedding.moreThanChance() ? ", fewer and not more." : chance(bedding));
    }

    private String chance(DirtinessTerm term) {
        boolean leavesOutOne = term.within().low() > 1 || term.within().high() < 1;
        return leavesOutOne
                ? "; with " + answer.circumstances().asked() + " things looked at, it could still be chance."
                : ", which could be chance.";
    }

    private static String odds(DirtinessTerm term) {
        return Digits.ratio(term.within().value(), 2) + " times the odds of a dirty calf "
                + Digits.span(term.within(), 2);
    }

    private void bedding(List<String> lines) {
        TimeOfYear year = answer.circumstances().timeOfYear();
        String within = year.allowedFor() ? "Within pens and at the same time of year, " : "Within pens, ";
        for (DirtinessTerm term : answer.circumstances().terms()) {
            if (term.moreThanChance()) {
                lines.add(within + term.name() + " went with " + odds(term) + ", " + MORE + ".");
            }
        }
        if (year.moreThanChance()) {
            lines.add("How many calves were dirty went up and down with the time of year by " + MORE
                    + ", pens, bedding and stocking allowed for.");
        }
    }

    private void illness(List<String> lines) {
        answer.illness().stream()
                .limit(1)
                .filter(DirtyThenIll::moreThanChance)
                .forEach(
                        any -> lines.add("Dirty calves fell ill " + (any.byPen().value() > 1 ? "more" : "less")
                                + " often by 21 days than clean ones of the same pen, by " + MORE + ": risk ratio "
                                + Digits.ratio(any.byPen(), 1) + "."));
    }

    /** With how many decimal places each of these pens reads as different from the herd. */
    private int places(List<PenShare> pens) {
        return pens.stream()
                .limit(NAMED)
                .mapToInt(pen ->
                        Percent.apart(pen.share().share(), answer.overall().share()))
                .max()
                .orElse(0);
    }

    private String named(List<PenShare> pens) {
        int places = places(pens);
        List<String> first = pens.stream()
                .limit(NAMED)
                .map(pen -> pen.pen() + " (" + pen(pen.share(), null) + ", "
                        + Percent.of(pen.share().share(), places) + ")")
                .toList();
        if (pens.size() > NAMED) {
            return String.join(", ", first) + " and " + (pens.size() - NAMED) + " more";
        }
        int last = first.size() - 1;
        return last == 0 ? first.get(0) : String.join(", ", first.subList(0, last)) + " and " + first.get(last);
    }

    /** Counts of a share that keeps its calves. */
    private static String counts(DirtyShare share) {
        return counts(share, 0);
    }

    private static String counts(DirtyShare share, int places) {
        return dirtyOf(share) + " (" + Percent.of(share.share(), places) + ")";
    }

    /** Two shares that are said to differ, and so must read as different. */
    private static String beside(DirtyShare pen, String season, DirtyShare others) {
        int places = Percent.apart(pen.share(), others.share());
        return counts(pen, season, places) + " against " + counts(others, places);
    }

    private String changed(PenShare pen) {
        DirtyShare before = pen.before().with();
        int places = Percent.apart(before.share(), pen.share().share());
        return counts(before, answer.lastSeason(), places) + " to " + counts(pen.share(), null, places);
    }

    /** Counts of a pen's share, in the season asked for or in another. */
    private static String counts(DirtyShare share, String season, int places) {
        return pen(share, season) + " (" + Percent.of(share.share(), places) + ")";
    }

    private static String dirtyOf(DirtyShare share) {
        return Counted.list(
                        share.dirty(), count(share.dirty()), share.dirtyCalves().id())
                + " of "
                + Counted.list(share.n(), count(share.n()), share.calves().id());
    }

    private static String everyone(DirtyShare share) {
        return Counted.list(
                share.n(), count(share.n()) + " calves", share.calves().id());
    }

    private static String pen(DirtyShare share, String season) {
        return part(share, share.dirty(), "numerator", season) + " of " + part(share, share.n(), "denominator", season);
    }

    private static String part(DirtyShare share, int n, String part, String season) {
        return Counted.stratum(n, count(n), PensQuestion.FIGURE, part, Stratum.PEN, share.name(), season);
    }

    private static String scored(int calves) {
        return Counted.noPen(calves, calves == 1 ? "One calf" : count(calves) + " calves")
                + (calves == 1 ? " was" : " were");
    }

    private static String count(int calves) {
        return String.format(Locale.ENGLISH, "%,d", calves);
    }

    /** A pen's name where a sentence begins. */
    private String named(PenShare pen) {
        String name = pen.pen();
        return name.substring(0, 1).toUpperCase(Locale.ENGLISH) + name.substring(1);
    }
}
