package wisp.site;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import wisp.indicator.CalfFigures;
import wisp.indicator.Indicator;
import wisp.indicator.Verdict;

/**
 * What a calf is to every figure, as a table.
 *
 * @param summary how often it is what, in words
 * @param rows one a figure, or one an episode where a figure counts episodes; the ones it counts in first
 */
public record CalfCounts(String summary, List<Row> rows) {

    /** What the calf is to one figure. */
    public record Row(String title, String href, String part, String why, String because, String anchor) {}

    /** A figure that an event counted in. */
    public record Counted(String title, String href) {}

    /** The counts of a calf of which no birth is recorded. */
    static final CalfCounts NONE = new CalfCounts("", List.of());

    static CalfCounts of(List<CalfFigures.InFigure> figures, Links links, ZoneId zone) {
        Map<Verdict.Part, List<Row>> byPart = new EnumMap<>(Verdict.Part.class);
        for (CalfFigures.InFigure figure : figures) {
            for (Verdict verdict : figure.verdicts()) {
                byPart.computeIfAbsent(verdict.part(), p -> new ArrayList<>())
                        .add(row(figure.indicator(), verdict, links, zone));
            }
        }
        List<Row> rows = new ArrayList<>();
        byPart.values().forEach(rows::addAll);
        String summary = byPart.entrySet().stream()
                .map(entry -> words(entry.getKey()) + " " + entry.getValue().size())
                .collect(Collectors.joining("; "));
        return new CalfCounts("Figures that " + summary + ".", rows);
    }

    /** The figures that hang on an event, decisive ones or the others. */
    static List<Counted> uses(List<CalfFigures.Use> uses, boolean decisive, Links links) {
        return uses.stream()
                .filter(use -> use.decisive() == decisive)
                .map(use -> new Counted(use.indicator().title(), figure(use.indicator(), links)))
                .toList();
    }

    private static Row row(Indicator indicator, Verdict verdict, Links links, ZoneId zone) {
        CalvesBehind.Part list = switch (verdict.part()) {
            case CASE -> CalvesBehind.Part.NUMERATOR;
            case CLEAR -> CalvesBehind.Part.DENOMINATOR;
            case PENDING -> CalvesBehind.Part.PENDING;
            case EXCLUDED -> CalvesBehind.Part.EXCLUDED;
            case OUTSIDE -> CalvesBehind.Part.OUTSIDE;
        };
        return new Row(
                indicator.title(),
                links.to("/figures/" + indicator.id(), Map.of("part", list.word())) + "#calves",
                part(verdict),
                verdict.reason().replace('-', ' '),
                verdict.because() == null
                        ? ""
                        : EventWords.of(verdict.because()) + ", "
                                + Shown.moment(
                                        verdict.because().time(),
                                        verdict.because().timeKnown(),
                                        zone),
                verdict.because() == null ? "" : "#" + CalfPage.anchor(verdict.because()));
    }

    private static String figure(Indicator indicator, Links links) {
        return links.to("/figures/" + indicator.id());
    }

    /** Where a calf counts, in words. */
    static String part(Verdict verdict) {
        return switch (verdict.part()) {
            case CASE -> verdict.count() > 1 ? "counted " + verdict.count() + " times" : "counted";
            case CLEAR -> verdict.pending() ? "in the denominator, still followed" : "in the denominator";
            case PENDING -> "pending";
            case EXCLUDED -> "left out";
            case OUTSIDE -> "not in the population";
        };
    }

    private static String words(Verdict.Part part) {
        return switch (part) {
            case CASE -> "count it as a case or as done:";
            case CLEAR -> "have it in the denominator alone:";
            case PENDING -> "still wait for it:";
            case EXCLUDED -> "leave it out:";
            case OUTSIDE -> "are about others:";
        };
    }
}
