package wisp.site;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Supplier;
import wisp.cohort.Cohort;

/**
 * What was worked out lately from a cohort, the least lately used dropped first. It holds as long as its cohort does: a
 * new event makes a new cohort, and nothing that was worked out from an older one is found again.
 *
 * @param <K> what was asked
 * @param <V> what came of it
 */
final class Remembered<K, V> {
    private static final int KEPT = 6;

    private record Kept<V>(Cohort cohort, V value) {}

    private final Map<K, Kept<V>> kept = new LinkedHashMap<>(KEPT, 0.75f, true);

    V of(K asked, Cohort cohort, Supplier<V> worked) {
        synchronized (kept) {
            Kept<V> last = kept.get(asked);
            // the very same cohort: comparing two of them by content would cost more than the work
            if (last != null && last.cohort() == cohort) {
                return last.value();
            }
        }
        V value = worked.get();
        synchronized (kept) {
            kept.put(asked, new Kept<>(cohort, value));
            if (kept.size() > KEPT) {
                Iterator<K> oldest = kept.keySet().iterator();
                oldest.next();
                oldest.remove();
            }
        }
        return value;
    }
}
