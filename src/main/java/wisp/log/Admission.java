package wisp.log;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import wisp.log.Appended.Outcome;

/**
 * What may enter the log, out of one batch.
 *
 * @param outcomes one an event offered, in their order
 * @param accepted canonical JSON of the events that go in, in order
 */
record Admission(List<Outcome> outcomes, List<String> accepted) {

    /**
     * Holds each event of a batch against the log and against those before it in the batch.
     *
     * @param known canonical JSON of the events in the log that have a name in this batch
     * @param now the {@code recordedtime} of events that have none
     * @param whole true: a conflict keeps every event out
     */
    static Admission decide(List<Offered> batch, Map<EventName, String> known, String now, boolean whole) {
        Map<EventName, String> taken = new HashMap<>(known);
        List<Outcome> outcomes = new ArrayList<>(batch.size());
        List<String> accepted = new ArrayList<>();
        for (Offered offered : batch) {
            String there = taken.get(offered.name());
            if (there == null) {
                String canonical = offered.canonical(now);
                taken.put(offered.name(), canonical);
                accepted.add(canonical);
                outcomes.add(Outcome.ACCEPTED);
            } else {
                outcomes.add(offered.sameAs(there) ? Outcome.DUPLICATE : Outcome.CONFLICT);
            }
        }
        if (whole && outcomes.contains(Outcome.CONFLICT)) {
            return heldBack(batch, known, outcomes);
        }
        return new Admission(List.copyOf(outcomes), List.copyOf(accepted));
    }

    /** A repeat of an event that stays out is held back with it: only what the log holds can have a duplicate. */
    private static Admission heldBack(List<Offered> batch, Map<EventName, String> known, List<Outcome> outcomes) {
        List<Outcome> held = new ArrayList<>(outcomes.size());
        for (int i = 0; i < outcomes.size(); i++) {
            Outcome outcome = outcomes.get(i);
            boolean stays = outcome == Outcome.CONFLICT
                    || outcome == Outcome.DUPLICATE
                            && known.containsKey(batch.get(i).name());
            held.add(stays ? outcome : Outcome.HELD_BACK);
        }
        return new Admission(List.copyOf(held), List.of());
    }
}
