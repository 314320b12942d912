package wisp.log;

import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Duration;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** Says in one sentence what SQLite's result code means for the log in one file, and the mend. */
final class SqliteFailure {
    private final Path file;
    private final Duration busyTimeout;

    SqliteFailure(Path file, Duration busyTimeout) {
        this.file = file;
        this.busyTimeout = busyTimeout;
    }

    /**
     * The failure that a user reads.
     *
     * @param outcome what it means for the log, a whole sentence
     */
    LogFailure of(Exception failed, String outcome) {
        for (Throwable cause = failed; cause != null; cause = cause.getCause()) {
            if (cause instanceof SQLiteException sqlite) {
                return of(sqlite, outcome);
            }
        }
        return new LogFailure(file + " cannot be used (" + failed.getMessage() + "). " + outcome, failed);
    }

    /** Whether another connection holds the file. */
    static boolean locked(SQLException failed) {
        return failed instanceof SQLiteException sqlite && (sqlite.getResultCode().code & 0xff) == 5;
    }

    private LogFailure of(SQLiteException failed, String outcome) {
        SQLiteErrorCode code = failed.getResultCode();
        // An extended code holds its primary code in the low byte (sqlite.org/rescode.html).
        return switch (code.code & 0xff) {
            case 5, 6 ->
                new LogFailure(
                        "Another process has kept " + file + " locked for " + seconds() + ". " + outcome
                                + " Stop that process, or try again.",
                        failed);
            case 13 ->
                new LogFailure(
                        "The disk that holds " + file + " is full. " + outcome + " Free some space and try again.",
                        failed);
            case 3, 8, 14 ->
                new LogFailure(
                        file + " cannot be written: the folder or the file is read-only, or belongs to somebody else. "
                                + outcome + " Give this user the right to write there, or choose another data folder.",
                        failed);
            case 11 ->
                new DamagedLog(file + " is damaged (" + code + "). " + outcome + " Restore the last backup.", failed);
            case 26 ->
                new DamagedLog(
                        file + " is not a database, or its beginning is damaged. " + outcome
                                + " Restore the last backup, or choose another data folder.",
                        failed);
            case 10 ->
                new LogFailure(
                        "The disk that holds " + file + " refuses reading or writing (" + code + "). " + outcome
                                + " Check the disk.",
                        failed);
            default -> new LogFailure(file + " cannot be used: " + failed.getMessage() + ". " + outcome, failed);
        };
    }

    private String seconds() {
        long tenths = busyTimeout.toMillis() / 100;
        return tenths % 10 == 0 ? tenths / 10 + " s" : tenths / 10 + "." + tenths % 10 + " s";
    }
}
