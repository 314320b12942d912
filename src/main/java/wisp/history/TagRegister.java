package wisp.history;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import wisp.event.TagFitted;
import wisp.tag.TagNumber;

/**
 * Which animal holds which tag number. The first animal to get a number holds it while it lives here; a later fitting
 * of the number on another animal is then marked. After the holder's death or leaving the next fitting holds it. How a
 * number is written makes no difference.
 */
public final class TagRegister {
    private record Claim(String number, String animal, Instant time, long sequence, Instant exit) {
        static final Comparator<Claim> ORDER = Comparator.comparing(Claim::time).thenComparing(Claim::sequence);

        boolean hereAt(Instant moment) {
            return exit == null || exit.isAfter(moment);
        }
    }

    private final Map<String, List<Claim>> byNumber = new HashMap<>();
    private final Map<String, List<Claim>> byAnimal = new HashMap<>();
    private final Map<String, Map<Long, String>> clashes = new HashMap<>();

    /**
     * Takes an animal's tags as its life, folded without regard to other animals, has them.
     *
     * @return the other animals whose marks change by it
     */
    public Set<String> update(Life alone) {
        List<Claim> before = byAnimal.getOrDefault(alone.key(), List.of());
        List<Claim> now = claims(alone);
        if (before.equals(now)) {
            return Set.of();
        }
        Set<String> numbers = new HashSet<>();
        for (Claim claim : before) {
            numbers.add(claim.number());
            byNumber.get(claim.number()).remove(claim);
        }
        for (Claim claim : now) {
            numbers.add(claim.number());
            byNumber.computeIfAbsent(claim.number(), n -> new ArrayList<>()).add(claim);
        }
        byAnimal.put(alone.key(), now);
        Set<String> others = new TreeSet<>();
        numbers.forEach(number -> others.addAll(settle(number)));
        others.remove(alone.key());
        return others;
    }

    /** The sequences of an animal's fittings whose number another living animal had already. */
    public Set<Long> inUse(String animal) {
        Set<Long> sequences = new TreeSet<>();
        for (Claim claim : byAnimal.getOrDefault(animal, List.of())) {
            if (clashes.get(claim.number()).containsKey(claim.sequence())) {
                sequences.add(claim.sequence());
            }
        }
        return sequences;
    }

    /** Works out anew who holds a number, and tells whose standing has changed. */
    private Set<String> settle(String number) {
        List<Claim> claims = byNumber.get(number);
        claims.sort(Claim.ORDER);
        Map<Long, String> now = new HashMap<>();
        Claim holder = null;
        for (Claim claim : claims) {
            if (holder == null || holder.animal().equals(claim.animal()) || !holder.hereAt(claim.time())) {
                holder = claim;
            } else {
                now.put(claim.sequence(), claim.animal());
            }
        }
        Map<Long, String> before = clashes.put(number, now);
        Set<String> changed = new HashSet<>();
        now.forEach((sequence, animal) -> {
            if (before == null || before.remove(sequence) == null) {
                changed.add(animal);
            }
        });
        if (before != null) {
            changed.addAll(before.values());
        }
        return changed;
    }

    private static List<Claim> claims(Life life) {
        Instant exit = life.exit() == null ? null : life.exit().time();
        return life.events().stream()
                .map(event -> event.data() instanceof TagFitted tag
                        ? new Claim(
                                TagNumber.read(tag.number()).key(), life.key(), event.time(), event.sequence(), exit)
                        : null)
                .filter(Objects::nonNull)
                .toList();
    }
}
