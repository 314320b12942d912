package wisp.log;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A place in the chain and the hash that stood there, written {@code SEQUENCE:HASH}. Noted outside the log it shows
 * what the chain by itself cannot: that a tail was cut off, or that everything was written anew.
 *
 * @param sequence an event's number, or 0 before the first
 * @param hash that event's hash; before the first, 64 zeros
 */
public record ChainHead(long sequence, String hash) {
    /** The head of a log without events. */
    public static final ChainHead OF_NOTHING = new ChainHead(0, HashChain.BEGINNING);

    private static final Pattern WRITTEN = Pattern.compile("(\\d{1,18}):([0-9a-f]{64})");

    /** The head of a chain that was found whole. */
    public static ChainHead of(Verification whole) {
        return new ChainHead(whole.events(), whole.head());
    }

    /** Reads {@code SEQUENCE:HASH}; empty where the text is something else. */
    public static Optional<ChainHead> read(String text) {
        Matcher written = WRITTEN.matcher(text.strip());
        return written.matches()
                ? Optional.of(new ChainHead(Long.parseLong(written.group(1)), written.group(2)))
                : Optional.empty();
    }

    /** What tells that a log's chain does not pass through here, a whole sentence; empty where it does. */
    public Optional<String> missedBy(EventLog log) {
        long last = log.last();
        if (sequence > last) {
            return Optional.of("The log ends at event " + last + ", and event " + sequence
                    + " was noted: what followed was cut off, or this is another log.");
        }
        List<StoredEvent> there = sequence == 0 ? List.of() : log.read(sequence - 1, 1);
        String found = there.isEmpty() ? HashChain.BEGINNING : there.get(0).hash();
        return found.equals(hash)
                ? Optional.empty()
                : Optional.of("Event " + sequence + " has the hash " + found + ", and " + hash
                        + " was noted: everything up to it was written anew, or this is another log.");
    }

    @Override
    public String toString() {
        return sequence + ":" + hash;
    }
}
