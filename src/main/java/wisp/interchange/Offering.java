package wisp.interchange;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Queue;
import java.util.function.UnaryOperator;
import wisp.event.Event;
import wisp.event.EventReader;
import wisp.event.Fault;

/**
 * The sound events of some files, one after another; what is not sound goes to the tally. A row is whole or not at all.
 */
final class Offering implements Iterator<Event>, AutoCloseable {
    private static final int ROWS_BETWEEN_PROGRESS = 5000;

    private final Iterator<Path> files;
    private final ImportOptions options;
    private final EventReader reader;
    private final Tally tally;
    private final TagMatching matching;
    private final Queue<Event> ready = new ArrayDeque<>();
    private Path file;
    private long size;
    private Rows rows;

    Offering(List<Path> files, ImportOptions options, TagMatching matching, EventReader reader, Tally tally) {
        this.files = files.iterator();
        this.options = options;
        this.matching = matching;
        this.reader = reader;
        this.tally = tally;
    }

    @Override
    public boolean hasNext() {
        while (ready.isEmpty() && (rows != null || files.hasNext())) {
            try {
                advance();
            } catch (RefusedFile refused) {
                refuseFile(refused.faults());
            } catch (IOException | UncheckedIOException unreadable) {
                String why = "It cannot be read: " + unreadable.getMessage() + ".";
                refuseFile(List.of(new Fault("", why, "Check the file and that you may read it.")));
            }
        }
        return !ready.isEmpty();
    }

    @Override
    public Event next() {
        if (!hasNext()) {
            throw new NoSuchElementException();
        }
        return ready.remove();
    }

    private void advance() throws IOException {
        if (rows == null) {
            file = files.next();
            rows = Rows.open(file, options, matching);
            size = Files.size(file);
        } else if (rows.hasNext()) {
            take(rows.next());
            if (tally.rows() % ROWS_BETWEEN_PROGRESS == 0) {
                tally.progress(file, rows.bytes(), size);
            }
        } else {
            rows.notes().forEach(note -> tally.note(file, note));
            tally.progress(file, size, size);
            closeFile();
        }
    }

    private void take(Row row) {
        tally.row();
        Tally.Place place = new Tally.Place(file, row.line(), row.index());
        List<Fault> faults = new ArrayList<>(row.faults());
        List<Event> events = new ArrayList<>();
        for (JsonNode node : row.events()) {
            EventReader.Reading reading = reader.read(node);
            faults.addAll(reading.faults());
            events.add(reading.event());
        }
        if (!faults.isEmpty()) {
            tally.refuse(place, faults.stream().distinct().toList(), row.naming());
            return;
        }
        for (Event event : events) {
            tally.offered(place);
            ready.add(event);
        }
    }

    private void refuseFile(List<Fault> faults) {
        tally.row();
        tally.refuse(new Tally.Place(file, 0, -1), faults, UnaryOperator.identity());
        close();
    }

    private void closeFile() throws IOException {
        Rows open = rows;
        rows = null;
        if (open != null) {
            open.close();
        }
    }

    @Override
    public void close() {
        try {
            closeFile();
        } catch (IOException onlyRead) {
            rows = null;
        }
    }
}
