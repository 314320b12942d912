package wisp.cli;

import java.nio.file.Path;
import picocli.CommandLine.Option;
import wisp.calendar.CalendarAddresses;

/** Where the secret addresses of people's calendars are kept. */
final class CalendarsOption {
    @Option(
            names = "--calendars",
            paramLabel = "FILE",
            description = "The file of calendar addresses. Default: calendars.json in the data folder; a database has"
                    + " none.")
    private Path file;

    /** The addresses that go with the records, or with the file named. */
    CalendarAddresses addresses(DataOption data) {
        return new CalendarAddresses(place(data));
    }

    /** The file, or null where a database's records have none. */
    Path place(DataOption data) {
        return file != null
                ? file
                : data.folder() == null ? null : data.folder().resolve("calendars.json");
    }
}
