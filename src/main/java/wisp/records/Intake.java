package wisp.records;

import java.util.List;
import wisp.event.Fault;
import wisp.history.Mark;

/**
 * What came of offering events.
 *
 * @param accepted how many are in the log now and were not before
 * @param duplicate how many were in the log already, word for word
 * @param marked accepted events that cannot be true beside others
 * @param refused what is wrong with those kept out; with any fault in an all-or-nothing batch nothing is stored
 * @param sequence the newest sequence in the log
 */
public record Intake(int accepted, int duplicate, List<Marked> marked, List<Refused> refused, long sequence) {

    /** An accepted event, by its place in what was offered, and its mark. */
    public record Marked(int index, String subject, Mark mark) {}

    /** A fault of the event at this place in what was offered. */
    public record Refused(int index, Fault fault) {}
}
