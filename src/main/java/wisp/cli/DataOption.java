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

    @Option(
            names = "--analytics",
            paramLabel = "DIR",
            description = "A folder with your own figures, limits and targets. Default: analytics in the data folder;"
                    + " a database has none.")
    private Path analytics;

    /** Opens the records; a data folder that is not there yet is made. */
    Records open() {
        if (analytics == null) {
            return Records.open(data, Clock.systemUTC());
        }
        if (!Files.isDirectory(analytics)) {
            throw new Refusals("There is no folder " + analytics + ". Check --analytics.");
        }
        return Records.open(data, analytics, Clock.systemUTC());
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

    /** The folder of the farm's own definitions, which need not be there; null where a database has none. */
    Path analytics() {
        return analytics != null
                ? analytics
                : Logs.folder(data).map(folder -> folder.resolve("analytics")).orElse(null);
    }

    /** The data folder, null where a database holds the records. */
    Path folder() {
        return Logs.folder(data).orElse(null);
    }

    /** Where the records are, without any password. */
    String where() {
        return Logs.place(data);
    }

    private void requireExisting() {
        if (!Logs.exists(data)) {
            boolean folder = Logs.folder(data).isPresent();
            throw new Refusals("There is no " + (folder ? "data folder " : "log in ") + where()
                    + ". Check --data; serve or import make a new " + (folder ? "folder" : "log")
                    + ", other commands only read one.");
        }
    }
}
