package wisp.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import wisp.cohort.Cohort;
import wisp.history.Life;
import wisp.indicator.CalfFigures;
import wisp.indicator.Definitions;
import wisp.indicator.Verdict;

/**
 * What a correction changed.
 *
 * @param already true where the same form had been sent before, so that nothing changed now
 * @param before the event as it stood, empty where it had been withdrawn
 * @param after the event as it stands now, empty where it no longer does
 * @param changes figures in which the calf counts otherwise than before
 * @param marks what is still marked of this subject
 * @param undoHref where this correction is withdrawn in turn
 */
public record MendedPage(
        Frame frame,
        String subject,
        String href,
        boolean already,
        String what,
        String before,
        String after,
        List<Change> changes,
        List<CalfPage.Marked> marks,
        int marksBefore,
        int marksNow,
        String undoHref) {

    /** How the calf counted in a figure and how it counts now. */
    public record Change(String title, String href, String before, String after) {}

    static MendedPage of(
            Asked asked,
            Cohort before,
            Definitions definitions,
            MendTarget target,
            String correction,
            boolean already) {
        Cohort after = asked.cohort();
        Frame frame = Frame.of(asked, "Mended", "/records", Map.of());
        String source = target.event().source();
        String id = target.event().id();
        Life life = target.row() < 0 ? null : after.lives().get(target.row());
        List<CalfPage.Marked> marks = life == null
                ? List.of()
                : life.marks().stream()
                        .map(mark -> CalfPage.marked(mark, target.zone(), frame.links()))
                        .toList();
        return new MendedPage(
                frame,
                target.subject(),
                target.row() < 0 ? "" : frame.links().calf(target.subject()),
                already,
                EventWords.of(target.event()),
                standing(MendTarget.of(before, source, id).orElse(null)),
                standing(MendTarget.of(after, source, id).orElse(null)),
                target.row() < 0 ? List.of() : changes(before, after, definitions, target, frame.links()),
                marks,
                RecordsPage.marks(before).size(),
                RecordsPage.marks(after).size(),
                frame.links().to("/records/mend", Map.of("source", Correction.SOURCE, "id", correction)));
    }

    private static String standing(MendTarget target) {
        if (target == null || target.fallenBy() != null) {
            return "";
        }
        String details = EventWords.details(target.event());
        return EventWords.of(target.event()) + (details.isEmpty() ? "" : ": " + details) + ", "
                + Shown.moment(target.event().time(), target.event().timeKnown(), target.zone());
    }

    private static List<Change> changes(
            Cohort before, Cohort after, Definitions definitions, MendTarget target, Links links) {
        List<CalfFigures.InFigure> old = figures(definitions, before, target.row());
        List<CalfFigures.InFigure> now = figures(definitions, after, target.row());
        List<Change> changes = new ArrayList<>();
        List<CalfFigures.InFigure> either = now.isEmpty() ? old : now;
        for (int i = 0; i < either.size(); i++) {
            String was = old.isEmpty() ? "no birth on record" : words(old.get(i).verdicts());
            String is = now.isEmpty() ? "no birth on record" : words(now.get(i).verdicts());
            if (!was.equals(is) && !(outside(old, i) && outside(now, i))) {
                var indicator = either.get(i).indicator();
                changes.add(new Change(indicator.title(), links.to("/figures/" + indicator.id()), was, is));
            }
        }
        return changes;
    }

    private static boolean outside(List<CalfFigures.InFigure> figures, int figure) {
        return !figures.isEmpty()
                && figures.get(figure).verdicts().stream().allMatch(verdict -> verdict.part() == Verdict.Part.OUTSIDE);
    }

    private static List<CalfFigures.InFigure> figures(Definitions definitions, Cohort cohort, int row) {
        return cohort.lives().get(row).born() == null ? List.of() : CalfFigures.verdicts(definitions, cohort, row);
    }

    private static String words(List<Verdict> verdicts) {
        return verdicts.stream()
                .map(verdict -> CalfCounts.part(verdict)
                        + (verdict.reason().isEmpty()
                                ? ""
                                : ": " + verdict.reason().replace('-', ' ')))
                .collect(Collectors.joining("; "));
    }
}
