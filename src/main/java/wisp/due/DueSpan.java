package wisp.due;

import java.time.Duration;
import java.time.Instant;

/**
 * When a step can be done.
 *
 * @param opens from when
 * @param closes the end, null where none is set
 * @param closesLatest the latest that the end could be where the hour of birth is not known, else null
 * @param until when it cannot be done any more, null where it can always be done late
 * @param endInside whether done at the very end is still inside
 * @param byHours whether it is counted in exact hours, and not in days
 */
public record DueSpan(
        Instant opens, Instant closes, Instant closesLatest, Instant until, boolean endInside, boolean byHours) {
    /** How long before its end an open window is due now. */
    public static final Duration NOW = Duration.ofHours(48);

    /** How long before its end an open window is due soon. */
    public static final Duration SOON = Duration.ofDays(7);

    /** How long before its beginning a window is due soon. */
    public static final Duration OPENS_SOON = Duration.ofHours(24);

    /** A window that ends with a moment which is outside it, such as the end of a day. */
    public static DueSpan before(Instant opens, Instant closes) {
        return new DueSpan(opens, closes, null, null, false, false);
    }

    /** A window without an end. */
    public static DueSpan from(Instant opens) {
        return new DueSpan(opens, null, null, null, false, false);
    }

    /** The same, impossible from a moment on. */
    public DueSpan until(Instant moment) {
        return new DueSpan(opens, closes, closesLatest, moment, endInside, byHours);
    }

    /** The last moment that could be inside, null where no end is set. */
    public Instant lastEnd() {
        return closesLatest == null ? closes : closesLatest;
    }

    /** Whether a moment is certainly after the end. */
    public boolean over(Instant at) {
        Instant end = lastEnd();
        return end != null && (endInside ? at.isAfter(end) : !at.isBefore(end));
    }

    /** Whether the end may have passed, as the hour of birth is not known. */
    public boolean perhapsOver(Instant at) {
        return closesLatest != null && !at.isBefore(closes) && !over(at);
    }

    /** How a step that was not done stands at a moment. */
    public DueState stateAt(Instant at) {
        if (at.isBefore(opens)) {
            return within(at, opens, OPENS_SOON) ? DueState.SOON : DueState.LATER;
        }
        if (closes == null) {
            return DueState.LATER;
        }
        if (over(at)) {
            return until != null && !at.isBefore(until) ? DueState.IMPOSSIBLE_NOW : DueState.OVERDUE;
        }
        if (within(at, closes, NOW)) {
            return DueState.DUE_NOW;
        }
        return within(at, closes, SOON) ? DueState.SOON : DueState.LATER;
    }

    private static boolean within(Instant at, Instant then, Duration lead) {
        return Duration.between(at, then).compareTo(lead) <= 0;
    }
}
