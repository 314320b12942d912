package wisp.log;

import static org.jooq.impl.DSL.field;
import static org.jooq.impl.DSL.max;
import static org.jooq.impl.DSL.name;
import static org.jooq.impl.DSL.table;
import static org.jooq.impl.SQLDataType.BIGINT;
import static org.jooq.impl.SQLDataType.CLOB;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jooq.BatchBindStep;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;

/**
 * The event table, in the SQL that every store shares. Rows are only ever inserted and selected.
 *
 * <pre>
 * event
 * ├─ sequence      integer, primary key   1, 2, 3 … without gaps
 * ├─ source        text ┐ unique          who sent it
 * ├─ id            text ┘ together        the sender's name for it
 * ├─ type          text                   such as navel-treated
 * ├─ subject       text                   the animal's or pen's key, or farm
 * ├─ time          text                   when it happened, RFC 3339, as sent
 * ├─ recordedtime  text                   when it was written down, RFC 3339; the log's own are UTC with milliseconds
 * ├─ hash          text                   64 hex digits, see {@link HashChain}
 * └─ json          text                   the whole event but sequence and hash, canonical (RFC 8785)
 * </pre>
 *
 * <p>{@code json} is the event; the columns before {@code hash} repeat attributes of it, text for text.
 */
final class EventTable implements Rows {
    private static final Table<Record> EVENT = table(name("event"));
    private static final Field<Long> SEQUENCE = field(name("sequence"), BIGINT);
    private static final Field<String> SOURCE = field(name("source"), CLOB);
    private static final Field<String> ID = field(name("id"), CLOB);
    private static final Field<String> TYPE = field(name("type"), CLOB);
    private static final Field<String> SUBJECT = field(name("subject"), CLOB);
    private static final Field<String> TIME = field(name("time"), CLOB);
    private static final Field<String> RECORDED_TIME = field(name("recordedtime"), CLOB);
    private static final Field<String> HASH = field(name("hash"), CLOB);
    private static final Field<String> JSON = field(name("json"), CLOB);
    /** Names asked for in one statement, well under every database's limit of parameters. */
    private static final int NAMES_AT_ONCE = 400;

    private final DSLContext sql;

    EventTable(DSLContext sql) {
        this.sql = sql;
    }

    long last() {
        Long last = sql.select(max(SEQUENCE)).from(EVENT).fetchOne(0, Long.class);
        return last == null ? 0 : last;
    }

    @Override
    public List<StoredRow> from(long from, long limit) {
        return sql.select(SEQUENCE, SOURCE, ID, TYPE, SUBJECT, TIME, RECORDED_TIME, HASH, JSON)
                .from(EVENT)
                .where(SEQUENCE.ge(from))
                .orderBy(SEQUENCE)
                .limit(limit)
                .fetch(r -> new StoredRow(
                        r.value1(),
                        r.value2(),
                        r.value3(),
                        r.value4(),
                        r.value5(),
                        r.value6(),
                        r.value7(),
                        r.value8(),
                        r.value9()));
    }

    /** The canonical JSON of those of these events that are in the log. */
    Map<EventName, String> known(List<Offered> batch) {
        Map<String, Set<String>> idsBySource = new LinkedHashMap<>();
        batch.forEach(offered -> idsBySource
                .computeIfAbsent(offered.name().source(), source -> new LinkedHashSet<>())
                .add(offered.name().id()));
        Map<EventName, String> known = new HashMap<>();
        idsBySource.forEach((source, ids) -> {
            List<String> all = new ArrayList<>(ids);
            for (int i = 0; i < all.size(); i += NAMES_AT_ONCE) {
                List<String> some = all.subList(i, Math.min(all.size(), i + NAMES_AT_ONCE));
                sql.select(ID, JSON)
                        .from(EVENT)
                        .where(SOURCE.eq(source).and(ID.in(some)))
                        .forEach(r -> known.put(new EventName(source, r.value1()), r.value2()));
            }
        });
        return known;
    }

    void insert(List<StoredRow> rows) {
        if (rows.isEmpty()) {
            return;
        }
        BatchBindStep batch =
                sql.batch(sql.insertInto(EVENT, SEQUENCE, SOURCE, ID, TYPE, SUBJECT, TIME, RECORDED_TIME, HASH, JSON)
                        .values((Long) null, null, null, null, null, null, null, null, null));
        for (StoredRow row : rows) {
            batch = batch.bind(
                    row.sequence(),
                    row.source(),
                    row.id(),
                    row.type(),
                    row.subject(),
                    row.time(),
                    row.recordedTime(),
                    row.hash(),
                    row.json());
        }
        batch.execute();
    }
}
