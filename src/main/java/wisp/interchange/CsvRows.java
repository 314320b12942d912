package wisp.interchange;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import wisp.event.Fault;

/** The rows of one CSV file under its header. */
final class CsvRows implements Rows {
    private final CsvFile csv;
    private final CsvReading reading;
    private final List<String> header;
    private int index;

    CsvRows(CsvFile csv, CsvReading reading) throws IOException {
        this.csv = csv;
        this.reading = reading;
        try {
            header = header(csv);
        } catch (RefusedFile refused) {
            csv.close();
            throw refused;
        }
    }

    private List<String> header(CsvFile file) {
        List<String> cells = file.hasNext() ? file.next().cells() : null;
        if (cells == null) {
            throw new RefusedFile(
                    "", "Its first line names no columns.", "Write the columns' names in the first line.");
        }
        List<String> names = new ArrayList<>(cells.stream().map(Cell::trim).toList());
        while (!names.isEmpty() && names.get(names.size() - 1).isEmpty()) {
            names.remove(names.size() - 1);
        }
        List<Fault> faults = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < names.size(); i++) {
            if (names.get(i).isEmpty()) {
                faults.add(new Fault("column " + (i + 1), "The column has no name.", "Name it in the first line."));
            } else if (!seen.add(names.get(i))) {
                faults.add(new Fault(names.get(i), "Two columns have this name.", "Rename one or take it out."));
            }
        }
        faults.addAll(faults.isEmpty() ? reading.header(names) : List.of());
        if (!faults.isEmpty()) {
            throw new RefusedFile(faults);
        }
        return names;
    }

    @Override
    public boolean hasNext() {
        return csv.hasNext();
    }

    @Override
    public Row next() {
        CsvFile.Line line = csv.next();
        int at = index++;
        if (line.cells() == null) {
            String problem = "A quotation mark in this line has no partner, or letters follow the closing one.";
            String mend = "Close every quotation mark; write one inside a cell twice.";
            return Row.faulty(line.number(), at, List.of(new Fault("", problem, mend)));
        }
        int cells = line.cells().size();
        List<Fault> faults = width(line.cells());
        if (!faults.isEmpty()) {
            return Row.faulty(line.number(), at, faults);
        }
        return reading.row(
                line.number(),
                at,
                cells == header.size() ? line.cells() : line.cells().subList(0, header.size()));
    }

    private List<Fault> width(List<String> cells) {
        if (cells.size() < header.size()) {
            String problem = "The row has " + count(cells.size()) + ", the header " + header.size() + ".";
            return List.of(new Fault("", problem, "Write every cell's delimiter, also where the cell is empty."));
        }
        for (int i = header.size(); i < cells.size(); i++) {
            if (!cells.get(i).isBlank()) {
                String problem = "The row has " + count(cells.size()) + ", the header " + header.size() + ".";
                String mend = "Put a cell that holds a " + shownDelimiter() + " in quotation marks.";
                return List.of(new Fault("", problem, mend));
            }
        }
        return Collections.emptyList();
    }

    private static String count(int cells) {
        return cells == 1 ? "1 cell" : cells + " cells";
    }

    private String shownDelimiter() {
        return switch (csv.delimiter()) {
            case ',' -> "comma";
            case ';' -> "semicolon";
            case '\t' -> "tab";
            default -> "\"" + csv.delimiter() + "\"";
        };
    }

    @Override
    public long bytes() {
        return csv.bytes();
    }

    @Override
    public List<String> notes() {
        String note = csv.encoding().note();
        List<String> notes = new ArrayList<>(note.isEmpty() ? List.of() : List.of(note));
        notes.addAll(reading.notes());
        return notes;
    }

    @Override
    public void close() throws IOException {
        csv.close();
    }
}
