package wisp.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import picocli.CommandLine.Option;
import wisp.log.EventLog;
import wisp.log.Logs;
import wisp.records.Records;

/** Where the records are kept. */
final class DataOption {
    @Option(
            names = "--data",
            paramLabel = "DIR|JDBC-URL",
            defaultValue = "wisp-data",
            description = "The data folder, or a database's address. Default: ${DEFAULT-VALUE}")
    private String data;

    /** Opens the records; a data folder that is not there yet is made. */
    Records open() {
        return Records.open(data, Clock.systemUTC());
    }

    /** Opens records that are only to be read: a mistyped folder must not look like an empty one. */
    Records openExisting() {
        requireExisting();
        return open();
    }

    /** Opens the log alone, to be read. */
    EventLog openLog() {
        requireExisting();
        return Logs.open(data, Clock.systemUTC());
    }

    /** Opens the log alone; one that is not there yet is made. */
    EventLog openLogOrNew() {
        return Logs.open(data, Clock.systemUTC());
    }

    /** The data folder; null where the records are in a database. */
    Path folder() {
        return data.startsWith("jdbc:") ? null : Path.of(data);
    }

    String where() {
        return data;
    }

    private void requireExisting() {
        if (!data.startsWith("jdbc:") && Files.notExists(Path.of(data))) {
            throw new Refusals("There is no data folder " + data
                    + ". Check --data; serve or import make a new folder, other commands only read one.");
        }
    }
}
