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
                    + counts(pen.share(), null) + " against " + counts(answer.others(pen)) + ".";
        }
        if (dirtier.size() > 1) {
            return "More dirty calves than elsewhere, by " + MORE + ", came from " + named(dirtier)
                    + "; over all pens it was " + counts(all) + ".";
        }
        return nobodyDirtier(when);
    }

    private String nobodyDirtier(String when) {
        DirtyShare all = answer.overall();
        String herd = counts(all) + " calves " + when + " were dirty";
        List<PenShare> cleaner = answer.standing(PenShare.Standing.CLEANER);
        if (!cleaner.isEmpty()) {
            return "No pen can be called the dirtiest, but fewer dirty calves than elsewhere, by " + MORE
                    + ", came from " + named(cleaner) + "; over all pens " + herd + ".";
        }
        if (answer.homogeneity().moreThanChance()) {
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
                    .map(pen -> pen.pen() + " went from " + counts(pen.before().with(), answer.lastSeason()) + " to "
                            + counts(pen.share(), null))
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

    /** What was so of the pen's bedding; a fact beside the answer, and no claim that it is the cause. */
    private Optional<String> olderBedding() {
        List<PenShare> dirtier = answer.standing(PenShare.Standing.DIRTIER);
        double herd = answer.circumstances().medianDays();
        if (dirtier.size() != 1 || !(dirtier.get(0).daysSinceBedding() > herd)) {
            return Optional.empty();
        }
        return Optional.of(String.format(
                Locale.ROOT,
                "Bedding in %s had lain %.1f days when its calves were born, against %.1f over all bedded pens"
                        + " (medians).",
                dirtier.get(0).pen(),
                dirtier.get(0).daysSinceBedding(),
                herd));
    }

    private void bedding(List<String> lines) {
        TimeOfYear year = answer.circumstances().timeOfYear();
        String within = year.allowedFor() ? "Within pens and at the same time of year, " : "Within pens, ";
        for (DirtinessTerm term : answer.circumstances().terms()) {
            if (term.moreThanChance()) {
                lines.add(within + term.name() + " went with "
                        + String.format(
                                Locale.ROOT,
                                "%.2f times the odds of a dirty calf (95 %% interval %.2f to %.2f)",
                                term.within().value(),
                                term.within().low(),
                                term.within().high())
                        + ", " + MORE + ".");
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
                                + String.format(
                                        Locale.ROOT,
                                        "%.1f (95 %% interval %.1f to %.1f).",
                                        any.byPen().value(),
                                        any.byPen().low(),
                                        any.byPen().high())));
    }

    private static String named(List<PenShare> pens) {
        List<String> first = pens.stream()
                .limit(NAMED)
                .map(pen -> pen.pen() + " (" + pen(pen.share(), null) + ", "
                        + Percent.of(pen.share().share()) + ")")
                .toList();
        if (pens.size() > NAMED) {
            return String.join(", ", first) + " and " + (pens.size() - NAMED) + " more";
        }
        int last = first.size() - 1;
        return last == 0 ? first.get(0) : String.join(", ", first.subList(0, last)) + " and " + first.get(last);
    }

    /** Counts of a share that keeps its calves. */
    private static String counts(DirtyShare share) {
        return dirtyOf(share) + " (" + Percent.of(share.share()) + ")";
    }

    /** Counts of a pen's share, in the season asked for or in another. */
    private static String counts(DirtyShare share, String season) {
        return pen(share, season) + " (" + Percent.of(share.share()) + ")";
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
