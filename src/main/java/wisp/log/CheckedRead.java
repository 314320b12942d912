package wisp.log;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * Reads events and hands out none that is not as it was written: each row's hash is worked out again from the hash of
 * the row before it (some 2 µs a row), its number must be the next, and its columns must say what its JSON says.
 */
final class CheckedRead {
    private static final int PAGE = 1_000;

    private CheckedRead() {}

    /** Events with a sequence over {@code after}, in order, at most {@code limit} of them. */
    static List<StoredEvent> page(Rows rows, long after, int limit) {
        if (after < 0 || limit < 0) {
            throw new IllegalArgumentException("Read after 0 or later, and at least 0 events.");
        }
        if (limit == 0) {
            return List.of();
        }
        List<StoredRow> page = after == 0 ? rows.from(Long.MIN_VALUE, limit) : rows.from(after, limit + 1L);
        if (after > 0 && !page.isEmpty() && page.get(0).sequence() != after) {
            throw broken(after, "it is missing");
        }
        String previous =
                after == 0 || page.isEmpty() ? HashChain.BEGINNING : page.get(0).hash();
        List<StoredEvent> events = new ArrayList<>(page.size());
        for (StoredRow row : after == 0 || page.isEmpty() ? page : page.subList(1, page.size())) {
            events.add(checked(row, after + events.size() + 1, previous));
            previous = row.hash();
        }
        return List.copyOf(events);
    }

    private static StoredEvent checked(StoredRow row, long expected, String previous) {
        if (row.sequence() != expected) {
            throw broken(expected, "it is missing");
        }
        row.problem(previous).ifPresent(problem -> {
            throw broken(expected, problem);
        });
        return row.event();
    }

    /** Every event with a sequence over {@code after} and up to {@code last}, a page at a time. */
    static void replay(Rows rows, long after, long last, Consumer<StoredEvent> reader) {
        long at = after;
        while (at < last) {
            List<StoredEvent> page = page(rows, at, (int) Math.min(PAGE, last - at));
            if (page.isEmpty()) {
                throw broken(at + 1, "it is missing");
            }
            page.forEach(reader);
            at += page.size();
        }
    }

    /** The newest row, checked, or null where the log is empty. */
    static StoredRow head(Rows rows, long last) {
        if (last == 0) {
            return null;
        }
        List<StoredRow> two = rows.from(last - 1, 2);
        StoredRow head = two.get(two.size() - 1);
        if (last > 1 && two.size() < 2) {
            throw broken(last - 1, "it is missing");
        }
        head.problem(last == 1 ? HashChain.BEGINNING : two.get(0).hash()).ifPresent(problem -> {
            throw broken(last, problem);
        });
        return head;
    }

    private static LogFailure broken(long sequence, String problem) {
        return new LogFailure(
                "Event " + sequence + " of the log is not as it was written: " + problem
                        + ". Run verify, and restore the last backup that it finds whole.",
                null);
    }
}
