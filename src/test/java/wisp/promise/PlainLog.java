package wisp.promise;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import wisp.log.Appended.Outcome;

/** The model: a list of what was accepted, and what follows from it by the plainest reading of the rules. */
final class PlainLog {
    private final List<Said> kept = new ArrayList<>();

    List<Said> kept() {
        return kept;
    }

    /** Takes a batch and says what became of each event. */
    List<Outcome> offer(List<Said> batch, boolean whole) {
        List<Said> before = List.copyOf(kept);
        List<Outcome> outcomes = new ArrayList<>();
        for (Said said : batch) {
            Said there = find(kept, said.number());
            if (there == null) {
                kept.add(said);
                outcomes.add(Outcome.ACCEPTED);
            } else {
                outcomes.add(said.repeats(there) ? Outcome.DUPLICATE : Outcome.CONFLICT);
            }
        }
        if (whole && outcomes.contains(Outcome.CONFLICT)) {
            kept.clear();
            kept.addAll(before);
            for (int i = 0; i < batch.size(); i++) {
                boolean known = find(before, batch.get(i).number()) != null;
                if (outcomes.get(i) != Outcome.CONFLICT && !known) {
                    outcomes.set(i, Outcome.HELD_BACK);
                }
            }
        }
        return outcomes;
    }

    private static Said find(List<Said> some, int number) {
        return some.stream().filter(said -> said.number() == number).findFirst().orElse(null);
    }

    /** The weights that stand, by number of their weighing, by what was recorded until a day of April. */
    Map<Integer, Integer> weights(int lastDay) {
        List<Said> known = kept.stream()
                .filter(said -> lastDay > 30 || said.day() > 0 && said.day() <= lastDay)
                .toList();
        Map<Integer, Integer> weights = new TreeMap<>();
        for (Said said : known) {
            if (said.isWeighing() && stands(said, known)) {
                weights.put(said.number(), said.kg());
                known.stream()
                        .filter(other -> corrects(other, said) && other.kind().equals("amended"))
                        .filter(other -> stands(other, known))
                        .forEach(other -> weights.put(said.number(), other.kg()));
            }
        }
        return weights;
    }

    /** Nothing that stands retracts it. */
    private static boolean stands(Said said, List<Said> known) {
        return known.stream()
                .noneMatch(other -> corrects(other, said) && other.kind().equals("retracted") && stands(other, known));
    }

    /** A correction reaches only an event of its own calf. */
    private static boolean corrects(Said other, Said said) {
        return other.target() == said.number() && other.subject().equals(said.subject());
    }
}
