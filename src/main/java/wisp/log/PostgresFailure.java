package wisp.log;

import java.sql.SQLException;
import org.postgresql.util.PSQLException;

/** Says in one sentence what PostgreSQL's SQLSTATE means for the log in one database, and the mend. */
final class PostgresFailure {
    private final PostgresAddress place;

    PostgresFailure(PostgresAddress place) {
        this.place = place;
    }

    /**
     * The failure that a user reads. Codes are those of PostgreSQL's documentation, appendix A.
     *
     * @param outcome what it means for the log, a whole sentence
     */
    LogFailure of(Exception failed, String outcome) {
        String state = state(failed);
        return switch (state) {
            case "28000", "28P01" ->
                failure(
                        "The user or the password for " + place + " is refused.",
                        outcome,
                        "Check both; a password may also stand in the file .pgpass.",
                        failed);
            case "3D000" ->
                failure("There is no such database: " + place + ".", outcome, "Make it with createdb.", failed);
            case "3F000" ->
                failure("The schema that is asked for is not in " + place + ".", outcome, "Make it.", failed);
            case "25006" ->
                failure(place + " is read-only now.", outcome, "Give the address of the primary server.", failed);
            case "42501" ->
                failure(
                        "The user may not do this in " + place + " (" + message(failed) + ").",
                        outcome,
                        "Let its owner start Wisp once, and grant this user SELECT and INSERT on event and SELECT on"
                                + " wisp_schema.",
                        failed);
            case "53100" ->
                failure("The disk of " + place + " is full.", outcome, "Free some space and try again.", failed);
            case "53300" ->
                failure(place + " has too many connections.", outcome, "Raise max_connections, or try again.", failed);
            case "55P03" ->
                failure(
                        "Another process has kept " + place + " locked for too long.",
                        outcome,
                        "Stop that process, or try again.",
                        failed);
            case "XX001", "XX002" ->
                new DamagedLog(
                        capital(place + " is damaged (" + message(failed) + "). " + outcome
                                + " Restore the last backup."),
                        failed);
            default ->
                lost(failed)
                        ? failure(
                                place + " does not answer.",
                                outcome,
                                "See that PostgreSQL runs there, and try again.",
                                failed)
                        : new LogFailure(
                                capital(place + " cannot be used (" + message(failed) + "). " + outcome), failed);
        };
    }

    /** Whether there is no connection any more, or not yet: the server is away, stops, starts or answers too late. */
    static boolean lost(Exception failed) {
        String state = state(failed);
        return state.startsWith("08") || state.startsWith("57P") || state.isEmpty() && sql(failed) != null;
    }

    private static LogFailure failure(String what, String outcome, String mend, Exception failed) {
        return new LogFailure(capital(what) + " " + outcome + " " + mend, failed);
    }

    private static String state(Exception failed) {
        SQLException sql = sql(failed);
        return sql == null || sql.getSQLState() == null ? "" : sql.getSQLState();
    }

    /** The first SQL failure among the causes that says what it is, otherwise the first one. */
    private static SQLException sql(Exception failed) {
        SQLException first = null;
        for (Throwable cause = failed; cause != null; cause = cause.getCause()) {
            if (cause instanceof SQLException sql) {
                if (sql.getSQLState() != null) {
                    return sql;
                }
                first = first == null ? sql : first;
            }
        }
        return first;
    }

    /** What the server said, without the statement and its values: events are told to nobody's log. */
    private static String message(Exception failed) {
        SQLException sql = sql(failed);
        String message = sql == null ? failed.getMessage() : sql.getMessage();
        for (SQLException each = sql; each != null; each = each.getNextException()) {
            if (each instanceof PSQLException said && said.getServerErrorMessage() != null) {
                message = said.getServerErrorMessage().getMessage();
            }
        }
        return message == null
                ? "no reason given"
                : message.strip().replaceAll("\\s+", " ").replaceAll("\\.$", "");
    }

    private static String capital(String sentence) {
        return Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
    }
}
