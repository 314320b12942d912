package wisp.log;

import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import wisp.event.CanonicalJson;
import wisp.event.EventReader;

/**
 * A walk along the whole chain, from the first event to the newest, that works everything out again: numbers without
 * gaps, canonical JSON, hashes, columns, and whether each event can still be read.
 */
final class ChainWalk {
    private static final int PAGE = 1_000;

    private final Rows rows;
    private long expected = 1;
    private String head = HashChain.BEGINNING;

    ChainWalk(Rows rows) {
        this.rows = rows;
    }

    Verification walk() {
        long from = Long.MIN_VALUE;
        while (true) {
            List<StoredRow> page = page(from);
            if (page == null) {
                return broken("The database is found damaged there; restore the last backup.");
            }
            if (page.isEmpty()) {
                return new Verification(expected - 1, head, 0, "");
            }
            for (StoredRow row : page) {
                Optional<String> problem = problem(row);
                if (problem.isPresent()) {
                    return broken(problem.get());
                }
                head = row.hash();
                expected++;
            }
            from = expected;
        }
    }

    /** The next rows; where a page cannot be read whole, one row, to come as near to the damage as may be. */
    private List<StoredRow> page(long from) {
        try {
            return rows.from(from, PAGE);
        } catch (DamagedLog inThisPage) {
            try {
                return rows.from(from, 1);
            } catch (DamagedLog here) {
                return null;
            }
        }
    }

    private Optional<String> problem(StoredRow row) {
        if (row.sequence() < expected) {
            return Optional.of("An event numbered " + row.sequence() + " was inserted before it.");
        }
        if (row.sequence() > expected) {
            return Optional.of(missing(row.sequence()));
        }
        if (!HashChain.next(head, row.json()).equals(row.hash())) {
            return Optional.of(new BrokenLink(rows, row, head).sentence());
        }
        return row.problem(head)
                .map(problem -> "It was changed: " + problem + ".")
                .or(() -> unreadable(row.json()));
    }

    private String missing(long next) {
        return expected + 1 == next
                ? "It was removed: event " + next + " comes after event " + (expected - 1) + "."
                : "Events " + expected + " to " + (next - 1) + " were removed.";
    }

    private static Optional<String> unreadable(String json) {
        EventReader.Reading reading = EventReader.recorded().read(json);
        if (!reading.sound()) {
            return Optional.of("It can no longer be read: " + reading.faults().get(0));
        }
        try {
            return CanonicalJson.of(json).equals(json)
                    ? Optional.empty()
                    : Optional.of("It was changed: its JSON is not in the canonical form of RFC 8785.");
        } catch (UncheckedIOException notJson) {
            return Optional.of("It was changed: its JSON cannot be brought into canonical form.");
        }
    }

    private Verification broken(String problem) {
        return new Verification(expected - 1, head, expected, problem);
    }
}
