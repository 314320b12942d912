package wisp.log;

import java.util.List;

/**
 * Finds out what happened where the chain breaks. An event that follows from another place of the chain was moved; an
 * event elsewhere that follows from here is the one that stood here. What the hashes cannot tell apart is said as a
 * choice: a changed event, and one that was removed with all later ones renumbered, leave the same trace.
 */
final class BrokenLink {
    private static final int PAGE = 1_000;

    private final StoredRow row;
    private long belongsAfter = -1;
    private long stoodHere = -1;

    BrokenLink(Rows rows, StoredRow row, String previous) {
        this.row = row;
        if (HashChain.next(HashChain.BEGINNING, row.json()).equals(row.hash())) {
            belongsAfter = 0;
        }
        try {
            search(rows, previous);
        } catch (DamagedLog furtherOn) {
            // What was found before the damage still tells.
        }
    }

    private void search(Rows rows, String previous) {
        long from = Long.MIN_VALUE;
        for (List<StoredRow> page = rows.from(from, PAGE); !page.isEmpty(); page = rows.from(from, PAGE)) {
            page.forEach(other -> compare(other, previous));
            from = page.get(page.size() - 1).sequence() + 1;
        }
    }

    private void compare(StoredRow other, String previous) {
        if (other.sequence() != row.sequence()
                && HashChain.next(previous, other.json()).equals(other.hash())) {
            stoodHere = other.sequence();
        }
        if (HashChain.next(other.hash(), row.json()).equals(row.hash())) {
            belongsAfter = other.sequence();
        }
    }

    /** What is wrong at the broken event, as a whole sentence. */
    String sentence() {
        if (stoodHere >= 0 && belongsAfter >= 0) {
            return "The events were reordered: the one that was written here stands at " + stoodHere + ".";
        }
        if (stoodHere >= 0) {
            return "It was inserted: the event that was written here stands at " + stoodHere + ".";
        }
        if (belongsAfter >= 0) {
            return "The events were reordered: this one was not written here.";
        }
        String before = row.sequence() == 1 ? "the beginning of the log" : "event " + (row.sequence() - 1);
        return "It does not follow from " + before + ": " + (row.sequence() == 1 ? "it" : "one of the two")
                + " was changed, or an event was inserted or removed there.";
    }
}
