package wisp.indicator;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wisp.cohort.Cohort;
import wisp.event.EventType;
import wisp.history.Life;
import wisp.history.LifeEvent;
import wisp.history.Supposed;

/**
 * What one calf is to every figure, and which of its events made it so.
 *
 * @param figures every figure, in the order of its definition
 * @param uses by an event's sequence, the figures that hang on it; an event that changes none has no entry
 */
public record CalfFigures(List<InFigure> figures, Map<Long, List<Use>> uses) {

    /**
     * What the calf is to one figure.
     *
     * @param verdicts one, or for a figure of episodes one an episode
     */
    public record InFigure(Indicator indicator, List<Verdict> verdicts) {}

    /**
     * One figure that hangs on an event.
     *
     * @param decisive true where the event is what the verdict rests on; false where, had it not been recorded, the
     *     calf would count otherwise
     */
    public record Use(Indicator indicator, boolean decisive) {}

    /**
     * Judges a calf for every figure.
     *
     * @param row its row in the cohort; its birth must be recorded
     */
    public static CalfFigures of(Definitions definitions, Cohort cohort, int row) {
        Verdicts verdicts = new Verdicts(definitions);
        Life life = cohort.lives().get(row);
        List<InFigure> figures = judge(definitions, verdicts, row, life, cohort.cut());
        Map<Long, List<Use>> uses = new LinkedHashMap<>();
        for (LifeEvent event : life.events()) {
            List<Use> of = uses(figures, others(definitions, verdicts, cohort, row, event), event);
            if (!of.isEmpty()) {
                uses.put(event.sequence(), of);
            }
        }
        return new CalfFigures(figures, uses);
    }

    /** What the calf is to every figure, without asking which event made it so. */
    public static List<InFigure> verdicts(Definitions definitions, Cohort cohort, int row) {
        return judge(definitions, new Verdicts(definitions), row, cohort.lives().get(row), cohort.cut());
    }

    private static List<InFigure> judge(Definitions definitions, Verdicts verdicts, int row, Life life, Instant cut) {
        FollowedLife followed = new FollowedLife(row, life, cut);
        return definitions.indicators().stream()
                .map(indicator -> new InFigure(indicator, verdicts.of(indicator, followed)))
                .toList();
    }

    /** The figures without the event; null for the birth, without which there is no calf to count. */
    private static List<InFigure> others(
            Definitions definitions, Verdicts verdicts, Cohort cohort, int row, LifeEvent event) {
        if (event.type() == EventType.BIRTH || event.type() == EventType.NOTED) {
            return null;
        }
        Life supposed = Supposed.without(cohort.lives().get(row), event, cohort.farm());
        return judge(definitions, verdicts, row, supposed, cohort.cut());
    }

    private static List<Use> uses(List<InFigure> figures, List<InFigure> without, LifeEvent event) {
        List<Use> uses = new ArrayList<>();
        for (int i = 0; i < figures.size(); i++) {
            InFigure figure = figures.get(i);
            boolean decisive = figure.verdicts().stream()
                    .anyMatch(verdict ->
                            verdict.because() != null && verdict.because().sequence() == event.sequence());
            if (decisive
                    || (without != null
                            && !same(figure.verdicts(), without.get(i).verdicts()))) {
                uses.add(new Use(figure.indicator(), decisive));
            }
        }
        return uses;
    }

    private static boolean same(List<Verdict> some, List<Verdict> others) {
        boolean same = some.size() == others.size();
        for (int i = 0; same && i < some.size(); i++) {
            same = same(some.get(i), others.get(i));
        }
        return same;
    }

    private static boolean same(Verdict one, Verdict other) {
        return one.part() == other.part()
                && one.reason().equals(other.reason())
                && one.pending() == other.pending()
                && one.ending() == other.ending()
                && one.count() == other.count()
                && one.days() == other.days();
    }
}
