package wisp.log;

import java.time.Clock;

/** A process of its own that opens a log, appends one event and prints why it could not. */
final class OpeningProcess {
    private OpeningProcess() {}

    /** The argument is the data folder. */
    public static void main(String[] args) {
        try (EventLog log = Logs.open(args[0], Clock.systemUTC())) {
            System.out.println(
                    "appended " + log.append(Notes.notes("other", 1), true).last());
        } catch (LogFailure refused) {
            System.out.println(refused.getMessage());
        }
    }
}
