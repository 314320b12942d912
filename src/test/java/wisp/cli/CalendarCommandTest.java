package wisp.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wisp.calendar.CalendarAddresses;
import wisp.log.Logs;

class CalendarCommandTest {
    @TempDir
    private Path folder;

    @Test
    void anAddressIsMadeListedAndTakenBack() {
        Logs.open(folder.toString(), Clock.systemUTC()).close();
        Spoken added = said("add", "Ann", "--pen", "barn").exits(0);
        String address = added.out().lines().findFirst().orElse("");
        assertTrue(address.matches("/calendar/[0-9a-f]{40}\\.ics"), address);
        String secret = address.substring("/calendar/".length(), address.length() - ".ics".length());
        CalendarAddresses addresses = new CalendarAddresses(folder.resolve("calendars.json"));
        assertEquals("barn", addresses.of(secret).orElseThrow().pen());
        assertTrue(said("list").exits(0).out().startsWith("Ann, pen barn, made "));
        said("add", "Ann").exits(1).saysOnlyOneLineWith("Ann has a calendar already");
        said("remove", "Ann").exits(0);
        assertTrue(addresses.of(secret).isEmpty());
        said("remove", "Ann").exits(1).saysOnlyOneLineWith("Nobody called Ann");
    }

    @Test
    void aFileThatIsNoListIsNamedWithItsMend() throws IOException {
        Logs.open(folder.toString(), Clock.systemUTC()).close();
        for (String text : List.of("{", "[{\"person\":\"Ann\",\"made\":\"today\",\"digest\":\"0\"}]")) {
            Files.writeString(folder.resolve("calendars.json"), text);
            Spoken spoken = said("list").exits(1);
            assertTrue(spoken.err().startsWith(folder.resolve("calendars.json") + " cannot be read"), spoken.err());
            assertTrue(spoken.err().contains("make the addresses anew"), spoken.err());
        }
    }

    @Test
    void whatIsNotMeantIsWrongUsage() {
        said("add").exits(2);
        said("paint", "Ann").exits(2);
        said("list", "--data", folder.resolve("missing").toString()).exits(2);
        Spoken.by("calendar", "list", "--data", folder.resolve("missing").toString())
                .exits(1)
                .saysOnlyOneLineWith("There is no data folder");
    }

    private Spoken said(String action, String... others) {
        Object[] arguments = new Object[4 + others.length];
        arguments[0] = "calendar";
        arguments[1] = action;
        System.arraycopy(others, 0, arguments, 2, others.length);
        arguments[2 + others.length] = "--data";
        arguments[3 + others.length] = folder.toString();
        return Spoken.by(arguments);
    }
}
