package wisp.indicator;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import wisp.cohort.Cohort;
import wisp.event.EventType;
import wisp.event.IllnessFound;
import wisp.event.Recovered;
import wisp.event.Treated;
import wisp.history.Life;
import wisp.history.LifeEvent;
import wisp.history.Mark;

/** The marked events of the kinds that a figure would otherwise have used. */
final class MarkedEvents {
    private static final Set<EventType> ALWAYS = EnumSet.of(EventType.BIRTH, EventType.DIED, EventType.LEFT);

    private MarkedEvents() {}

    /** @param everybody true to count also the events of animals without a birth, which belong to no season */
    static Map<String, Integer> of(Indicator indicator, Cohort cohort, int[] rows, boolean everybody) {
        Map<String, Integer> counts = new TreeMap<>();
        list(indicator, cohort, rows, everybody)
                .forEach(marked -> counts.merge(marked.mark().kind().word(), 1, Integer::sum));
        return counts;
    }

    /** The events themselves, with the animals that they are of. */
    static List<MarkedEvent> list(Indicator indicator, Cohort cohort, int[] rows, boolean everybody) {
        List<MarkedEvent> list = new ArrayList<>();
        for (int row : rows) {
            add(indicator.rule(), cohort.lives().get(row), list);
        }
        if (everybody) {
            cohort.lives().stream()
                    .filter(life -> life.born() == null)
                    .forEach(life -> add(indicator.rule(), life, list));
        }
        return list;
    }

    private static void add(Rule rule, Life life, List<MarkedEvent> list) {
        for (Mark mark : life.marks()) {
            if (ALWAYS.contains(mark.event().type()) || uses(rule, mark.event())) {
                list.add(new MarkedEvent(life, mark));
            }
        }
    }

    private static boolean uses(Rule rule, LifeEvent event) {
        if (rule instanceof Rule.Risk risk) {
            return outcome(risk.outcome(), event);
        } else if (rule instanceof Rule.Rate rate) {
            return outcome(rate.outcome(), event);
        } else if (rule instanceof Rule.CaseFatality fatality) {
            return names(fatality.condition(), event);
        } else if (rule instanceof Rule.DoneByLimit done) {
            return done.done() instanceof Rule.FirstEvent first
                    ? first.event().matches(event)
                    : event.type() == EventType.TAG_FITTED;
        } else if (rule instanceof Rule.DoneAtEnd atEnd) {
            return atEnd.event().matches(event);
        } else if (rule instanceof Rule.CastratedLawfully) {
            return event.type() == EventType.CASTRATED;
        } else if (rule instanceof Rule.Feature feature) {
            return feature.record().matches(event);
        } else if (rule instanceof Rule.AmountByAge amount) {
            return amount.record().matches(event);
        }
        throw new IllegalStateException("a rule of no known kind: " + rule);
    }

    private static boolean outcome(Outcome outcome, LifeEvent event) {
        if (outcome instanceof Outcome.Illness illness) {
            return names(illness.condition(), event);
        }
        return outcome instanceof Outcome.Happening happening
                && happening.anyOf().stream().anyMatch(match -> match.matches(event));
    }

    /** Whether an event opens, keeps open or closes an episode of a condition. */
    private static boolean names(String condition, LifeEvent event) {
        if (event.data() instanceof IllnessFound found) {
            return condition.equals(found.condition());
        } else if (event.data() instanceof Treated treated) {
            return condition.equals(treated.condition());
        }
        return event.data() instanceof Recovered recovered
                && (recovered.condition() == null || condition.equals(recovered.condition()));
    }
}
