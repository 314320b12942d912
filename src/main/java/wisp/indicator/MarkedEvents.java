package wisp.indicator;

import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import wisp.cohort.Cohort;
import wisp.event.EventType;
import wisp.history.Life;
import wisp.history.Mark;

/** Counts the marked events of the kinds that a figure would otherwise have used. */
final class MarkedEvents {
    private MarkedEvents() {}

    /** @param everybody true to count also the events of animals without a birth, which belong to no season */
    static Map<String, Integer> of(Indicator indicator, Cohort cohort, int[] rows, boolean everybody) {
        Set<EventType> used = used(indicator.rule());
        Map<String, Integer> counts = new TreeMap<>();
        for (int row : rows) {
            count(cohort.lives().get(row), used, counts);
        }
        if (everybody) {
            cohort.lives().stream().filter(life -> life.born() == null).forEach(life -> count(life, used, counts));
        }
        return counts;
    }

    private static void count(Life life, Set<EventType> used, Map<String, Integer> counts) {
        for (Mark mark : life.marks()) {
            if (used.contains(mark.event().type())) {
                counts.merge(mark.kind().word(), 1, Integer::sum);
            }
        }
    }

    private static Set<EventType> used(Rule rule) {
        Set<EventType> used = EnumSet.of(EventType.BIRTH, EventType.DIED, EventType.LEFT);
        if (rule instanceof Rule.Risk risk) {
            outcome(risk.outcome(), used);
        } else if (rule instanceof Rule.Rate rate) {
            outcome(rate.outcome(), used);
        } else if (rule instanceof Rule.CaseFatality) {
            used.add(EventType.ILLNESS_FOUND);
        } else if (rule instanceof Rule.DoneByLimit done) {
            used.add(
                    done.done() instanceof Rule.FirstEvent first ? first.event().type() : EventType.TAG_FITTED);
        } else if (rule instanceof Rule.DoneAtEnd atEnd) {
            used.add(atEnd.event().type());
        } else if (rule instanceof Rule.CastratedLawfully) {
            used.add(EventType.CASTRATED);
        } else if (rule instanceof Rule.Feature feature) {
            used.add(feature.record().type());
        } else if (rule instanceof Rule.AmountByAge amount) {
            used.add(amount.record().type());
        }
        return used;
    }

    private static void outcome(Outcome outcome, Set<EventType> used) {
        if (outcome instanceof Outcome.Illness) {
            used.add(EventType.ILLNESS_FOUND);
            used.add(EventType.RECOVERED);
            used.add(EventType.TREATED);
        } else if (outcome instanceof Outcome.Happening happening) {
            happening.anyOf().forEach(match -> used.add(match.type()));
        }
    }
}
