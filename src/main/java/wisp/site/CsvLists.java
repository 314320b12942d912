package wisp.site;

import io.javalin.http.Context;
import java.io.StringWriter;
import java.util.List;
import java.util.Set;
import tech.tablesaw.api.LongColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;
import tech.tablesaw.selection.Selection;
import wisp.history.Mark;
import wisp.log.DayHead;
import wisp.records.Records;

/** The lists behind the pages as CSV, with a line of names at the head. */
final class CsvLists {
    private final Records records;

    CsvLists(Records records) {
        this.records = records;
    }

    /** {@code GET /calves.csv}: the cohort's table, one line a calf that is asked for. */
    void calves(Context ctx) {
        Asked asked = Asked.of(ctx, records, Set.of());
        int[] rows = asked.selection().calves(asked.cohort());
        give(ctx, "calves", asked.cohort().table().where(Selection.with(rows)));
    }

    /** {@code GET /records.csv}: every marked event of the log. */
    void marks(Context ctx) {
        Asked asked = Asked.of(ctx, records, Set.of());
        List<RecordsPage.Row> rows = RecordsPage.rows(asked.cohort(), new Links(asked.parameters()), false);
        StringColumn subject = StringColumn.create("subject");
        StringColumn event = StringColumn.create("event");
        StringColumn time = StringColumn.create("time");
        StringColumn mark = StringColumn.create("mark");
        StringColumn problem = StringColumn.create("problem");
        StringColumn mend = StringColumn.create("mend");
        StringColumn source = StringColumn.create("event_source");
        StringColumn id = StringColumn.create("event_id");
        for (RecordsPage.Row row : rows) {
            Mark one = row.raw();
            subject.append(row.subject());
            event.append(one.event().type().wireName());
            time.append(CalfJson.time(one.event().time(), row.zone()));
            mark.append(one.kind().word());
            problem.append((one.kind().problem() + " " + one.detail()).strip());
            mend.append(one.kind().mend());
            source.append(one.event().source());
            id.append(one.event().id());
        }
        give(ctx, "records", Table.create("marks", subject, event, time, mark, problem, mend, source, id));
    }

    /** {@code GET /records/heads.csv}: the log's head at the end of each day of recording. */
    void heads(Context ctx) {
        StringColumn day = StringColumn.create("day");
        LongColumn sequence = LongColumn.create("sequence");
        StringColumn hash = StringColumn.create("hash");
        for (DayHead one : records.dayHeads().days()) {
            day.append(one.day().toString());
            sequence.append(one.head().sequence());
            hash.append(one.head().hash());
        }
        give(ctx, "heads", Table.create("heads", day, sequence, hash));
    }

    static void give(Context ctx, String name, Table table) {
        StringWriter text = new StringWriter();
        table.write().csv(text);
        ctx.contentType("text/csv; charset=utf-8")
                .header("Content-Disposition", "attachment; filename=\"" + name + ".csv\"")
                .result(text.toString());
    }
}
