package wisp.cli;

import java.time.Clock;
import picocli.CommandLine.Option;
import wisp.records.Records;

/** Where the records are kept. */
final class DataOption {
    @Option(
            names = "--data",
            paramLabel = "DIR|JDBC-URL",
            defaultValue = "wisp-data",
            description = "The data folder, or a database's address. Default: ${DEFAULT-VALUE}")
    private String data;

    Records open() {
        return Records.open(data, Clock.systemUTC());
    }

    String where() {
        return data;
    }
}
