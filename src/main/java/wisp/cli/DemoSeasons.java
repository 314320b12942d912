package wisp.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import wisp.event.EventReader.Reading;
import wisp.records.Intake;
import wisp.records.Records;

/** The invented seasons that come with the program. */
final class DemoSeasons {
    private DemoSeasons() {}

    /** Records them and says so in a few words. */
    static String load(Records records) {
        try (InputStream file = DemoSeasons.class.getResourceAsStream("/demo-data/demo.jsonl");
                BufferedReader lines = new BufferedReader(new InputStreamReader(file, StandardCharsets.UTF_8))) {
            List<Reading> readings = lines.lines().map(records.reader()::read).toList();
            Intake intake = records.take(readings, false);
            if (!intake.refused().isEmpty()) {
                Intake.Refused first = intake.refused().get(0);
                throw new IllegalStateException(
                        "the demo's event " + (first.index() + 1) + " was refused: " + first.fault());
            }
            return "the demo seasons (" + intake.accepted() + " events of an invented farm)";
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
