package wisp.question.season;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import wisp.indicator.Comparison;
import wisp.indicator.Estimate;
import wisp.indicator.Measure;
import wisp.indicator.Rule;
import wisp.indicator.Selection;
import wisp.indicator.SelectionWords;
import wisp.indicator.Target;
import wisp.indicator.Window;
import wisp.question.Counted;

/** The season in a few sentences, worked out from its figures; they claim no more than the intervals allow. */
final class SeasonSentences {
    /** With fewer deaths than this, what they have in common says nothing. */
    private static final int DEATHS_TO_DESCRIBE = 5;

    private SeasonSentences() {}

    /**
     * The sentences: how many calves and how many died; how that compares; where the deaths are.
     *
     * @param selection which calves are asked for, of this season
     * @param stillbirth the figure of that id, null where it is not defined
     * @param mortality pre-weaning mortality, null where it is not defined
     */
    static List<Counted> of(
            Selection selection, int calves, SeasonFigure stillbirth, SeasonFigure mortality, Deaths deaths) {
        boolean all = selection.season().equals(Selection.ALL);
        if (calves == 0) {
            String none = all ? "No calf is recorded." : "No calf born in " + selection.season() + " is recorded.";
            return List.of(new Counted(SelectionWords.among(SelectionWords.of(selection), none)));
        }
        List<String> sentences = new ArrayList<>();
        sentences.add(born(calves, selection, all ? "over all seasons" : "in " + selection.season())
                + deathsOf(stillbirth, mortality));
        if (shown(stillbirth)) {
            new FirstDay(stillbirth.estimate()).said(deaths).ifPresent(sentences::add);
        }
        if (mortality != null) {
            compared(mortality).ifPresent(sentences::add);
            target(mortality, mortality.estimate().indicator().target(), "published")
                    .ifPresent(sentences::add);
            target(mortality, mortality.own(), "farm's own").ifPresent(sentences::add);
        }
        described(deaths).ifPresent(sentences::add);
        return sentences.stream().map(Counted::new).toList();
    }

    private static String born(int calves, Selection selection, String when) {
        if (selection.filtered()) {
            String some =
                    (calves == 1 ? "One " : Said.count(calves) + " ") + SelectionWords.kind(selection, calves == 1);
            String place = SelectionWords.bornWhere(selection);
            boolean dated = selection.from() != null || selection.to() != null;
            return Counted.asked(calves, some) + (calves == 1 ? " was" : " were") + " born" + place
                    + (dated ? ", " : " ") + when;
        }
        String begun = Character.toUpperCase(when.charAt(0)) + when.substring(1) + " ";
        return calves == 1
                ? begun + Counted.asked(1, "one calf") + " was born"
                : begun + Counted.asked(calves, Said.count(calves) + " calves") + " were born";
    }

    private static String deathsOf(SeasonFigure stillbirth, SeasonFigure mortality) {
        List<String> parts = new ArrayList<>();
        if (shown(stillbirth)) {
            String end = window(stillbirth).end().text();
            parts.add(part(stillbirth.estimate(), "born dead or died within " + end, true));
        }
        if (shown(mortality)) {
            Window window = window(mortality);
            parts.add(part(
                    mortality.estimate(),
                    "died between " + window.start().text() + " and "
                            + window.end().text(),
                    false));
        }
        return parts.isEmpty()
                ? "; no figure of deaths can be given yet."
                : ": " + String.join(", and ", parts) + "." + pending(mortality);
    }

    private static String part(Estimate estimate, String what, boolean passive) {
        int cases = estimate.numerator();
        long n = Math.round(estimate.denominator());
        String id = estimate.indicator().id();
        String all = Counted.figure(n, n < Said.FEW ? String.valueOf(n) : Said.count(n), id, "denominator");
        String those = Counted.figure(cases, n < Said.FEW ? String.valueOf(cases) : Said.count(cases), id, "numerator");
        String were = passive ? cases <= 1 ? "was " : "were " : "";
        if (n < Said.FEW) {
            String of = cases == 0 ? "none of " + all : those + " of " + all;
            return of + " " + were + what + " (so few that anything from " + Said.span(estimate) + " fits)";
        }
        return Said.value(estimate) + " " + (passive ? "were " : "") + what + " (" + those + " of " + all
                + "; allowing for chance " + Said.span(estimate) + ")";
    }

    private static String pending(SeasonFigure mortality) {
        int pending = shown(mortality) ? mortality.estimate().pending() : 0;
        if (pending == 0) {
            return "";
        }
        String id = mortality.estimate().indicator().id();
        String calves = pending == 1 ? "One calf" : Said.count(pending) + " calves";
        return " " + Counted.figure(pending, calves, id, "pending") + (pending == 1 ? " is" : " are") + " not "
                + window(mortality).end().text() + " old yet.";
    }

    private static Optional<String> compared(SeasonFigure figure) {
        Comparison comparison = figure.estimate().comparison();
        if (comparison == null || comparison.difference() == null) {
            return Optional.empty();
        }
        Measure measure = figure.estimate().indicator().measure();
        String name = figure.estimate().indicator().title();
        String before = comparison.with() + " (" + Said.value(comparison.other()) + ")";
        double difference = comparison.difference().value();
        String span = Said.sides(measure, comparison.difference());
        if (Chance.of(comparison, comparison.p()) == Chance.MORE_THAN_CHANCE) {
            return Optional.of(name + " was " + Said.side(measure, difference) + " than in " + before
                    + ", more than chance (allowing for it, " + span + ").");
        }
        if (apart(comparison)) {
            return Optional.of(name + " was " + Said.side(measure, difference) + " than in " + before
                    + ", and allowing for chance " + span + (difference < 0 ? " lower" : " higher")
                    + String.format(Locale.ROOT, ", but the exact test gives p = %.3f", comparison.p())
                    + ", so it could be chance.");
        }
        String size = Said.alike(figure.estimate(), comparison.other(), difference)
                ? "about the same as in " + before
                : Said.side(measure, difference) + " than in " + before;
        return Optional.of(
                name + " was " + size + "; the difference could be chance (anything from " + span + " fits).");
    }

    /** Whether the interval of a difference leaves out no difference. */
    private static boolean apart(Comparison comparison) {
        return !Double.isNaN(comparison.p())
                && (comparison.difference().low() > 0 || comparison.difference().high() < 0);
    }

    private static Optional<String> target(SeasonFigure figure, Target target, String whose) {
        Estimate estimate = figure.estimate();
        if (target == null || estimate.interval() == null) {
            return Optional.empty();
        }
        String words = "the " + whose + " target of "
                + Said.target(target, estimate.indicator().measure());
        return Optional.of(
                switch (target.standing(
                        estimate.interval().low(), estimate.interval().high())) {
                    case MET -> "It meets " + words + ", chance allowed for.";
                    case MISSED -> "It misses " + words + ", chance allowed for.";
                    case UNSURE ->
                        "Whether it meets " + words + " cannot be told"
                                + (estimate.few() ? " from so few calves." : ": the interval spans the target.");
                });
    }

    private static Optional<String> described(Deaths deaths) {
        int all = deaths.all().beforeWeaning();
        if (all < DEATHS_TO_DESCRIBE) {
            return Optional.empty();
        }
        Map.Entry<DeathAge, CalfList> age = deaths.all().byAge().entrySet().stream()
                .filter(entry -> entry.getKey().beforeWeaning())
                .max(Comparator.comparing(entry -> entry.getValue().count()))
                .orElseThrow();
        String ages = counted(age.getValue(), String.valueOf(age.getValue().count())) + " fell at the age of "
                + age.getKey().words();
        List<Deaths.Cause> recorded = deaths.causes().stream()
                .filter(cause -> !cause.cause().equals(Deaths.NOT_RECORDED) && cause.beforeWeaning() > 0)
                .toList();
        String of = "Of the " + counted(deaths.all().dead(), Said.count(all)) + " deaths from 24 h to 60 d, ";
        if (recorded.isEmpty()) {
            return Optional.of(of + ages + "; no cause is recorded for any of them.");
        }
        int most = recorded.stream().mapToInt(Deaths.Cause::beforeWeaning).max().orElseThrow();
        if (most == 1) {
            return Optional.of(
                    of + ages + "; no single cause is recorded for more than one of them" + unrecorded(deaths) + ".");
        }
        List<Deaths.Cause> top =
                recorded.stream().filter(cause -> cause.beforeWeaning() == most).toList();
        List<String> first =
                top.stream().map(cause -> counted(cause.dead(), cause.cause())).toList();
        String causes = top.size() == 1
                ? "the cause recorded most often is " + top.get(0).cause() + " ("
                        + counted(top.get(0).dead(), String.valueOf(most)) + ")"
                : "the causes recorded most often are " + listed(first) + " (" + most + " each)";
        return Optional.of(of + causes + unrecorded(deaths) + "; " + ages + ".");
    }

    private static String unrecorded(Deaths deaths) {
        return deaths.causes().stream()
                .filter(cause -> cause.cause().equals(Deaths.NOT_RECORDED) && cause.beforeWeaning() > 0)
                .map(Deaths.Cause::dead)
                .map(none -> "; for " + counted(none, none.count() == 1 ? "one" : Said.count(none.count()))
                        + " no cause is recorded")
                .findFirst()
                .orElse("");
    }

    private static String counted(CalfList calves, String words) {
        return Counted.list(calves.count(), words, calves.id());
    }

    private static String listed(List<String> words) {
        int last = words.size() - 1;
        return String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }

    private static boolean shown(SeasonFigure figure) {
        return figure != null && figure.estimate().interval() != null;
    }

    private static Window window(SeasonFigure figure) {
        return ((Rule.Risk) figure.estimate().indicator().rule()).window();
    }
}
