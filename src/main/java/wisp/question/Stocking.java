package wisp.question;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import wisp.history.Life;

/** How busy each pen was: its calvings, twins counting as one. */
final class Stocking {
    /** How far back calvings count. */
    static final Duration SPAN = Duration.ofDays(7);

    private static final Duration ONE_CALVING = Duration.ofHours(48);

    private final Map<String, List<Calving>> byPen = new HashMap<>();

    /**
     * A calving.
     *
     * @param dam null where not recorded
     */
    private record Calving(Instant time, String dam) {
        boolean of(Life calf) {
            return dam != null
                    && dam.equals(calf.birth().dam())
                    && Duration.between(time, calf.born().time()).abs().compareTo(ONE_CALVING) <= 0;
        }
    }

    private Stocking() {}

    /** The calvings of everything on record, whatever is asked for. */
    static Stocking of(List<Life> lives) {
        Stocking stocking = new Stocking();
        lives.stream()
                .filter(life -> life.born() != null && life.birth().pen() != null)
                .sorted(Comparator.comparing(life -> life.born().time()))
                .forEach(stocking::add);
        return stocking;
    }

    private void add(Life calf) {
        List<Calving> calvings = byPen.computeIfAbsent(calf.birth().pen(), pen -> new ArrayList<>());
        for (int i = calvings.size() - 1; i >= 0 && !before(calvings.get(i), calf, ONE_CALVING); i--) {
            if (calvings.get(i).of(calf)) {
                return;
            }
        }
        calvings.add(new Calving(calf.born().time(), calf.birth().dam()));
    }

    /** Calvings in the pen in the seven days before a calf's birth, its own left out. */
    int before(String pen, Life calf) {
        List<Calving> calvings = byPen.getOrDefault(pen, List.of());
        int count = 0;
        for (int i = firstNotBefore(calvings, calf.born().time()) - 1;
                i >= 0 && !before(calvings.get(i), calf, SPAN);
                i--) {
            count += calvings.get(i).of(calf) ? 0 : 1;
        }
        return count;
    }

    private static boolean before(Calving calving, Life calf, Duration span) {
        return calving.time().isBefore(calf.born().time().minus(span));
    }

    private static int firstNotBefore(List<Calving> calvings, Instant time) {
        int low = 0;
        int high = calvings.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (calvings.get(middle).time().isBefore(time)) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
