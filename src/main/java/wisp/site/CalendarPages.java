package wisp.site;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import wisp.calendar.CalendarAddress;
import wisp.calendar.CalendarAddresses;
import wisp.calendar.DueCalendar;
import wisp.cohort.Cohort;
import wisp.due.Due;
import wisp.due.DueItem;
import wisp.indicator.Selection;
import wisp.records.Records;

/** What is due as a calendar: at an address as open as the pages, and at each person's secret one. */
final class CalendarPages {
    private static final String END = ".ics";

    private final Records records;
    private final CalendarAddresses addresses;
    private final Due due;

    CalendarPages(Records records, CalendarAddresses addresses) {
        this.records = records;
        this.addresses = addresses;
        this.due = new Due(records.definitions());
    }

    void addTo(JavalinConfig config) {
        config.routes.get("/api/v1/due.ics", this::open);
        config.routes.get("/calendar/{secret}", this::secret);
    }

    private void open(Context ctx) {
        Asked asked = Asked.of(ctx, records, Set.of("on"));
        give(ctx, asked.cohort(), asked.selection(), DueApi.at(ctx, records, asked), "Calves: what is due");
    }

    private void secret(Context ctx) {
        String name = ctx.pathParam("secret");
        CalendarAddress address = name.endsWith(END)
                ? addresses.of(name.substring(0, name.length() - END.length())).orElse(null)
                : null;
        if (address == null) {
            throw Problem.notFound("There is no calendar at this address; it may have been taken back.");
        }
        String pen = address.pen().isEmpty() ? null : address.pen();
        Selection whose = new Selection(Selection.ALL, null, null, null, null, pen, null, null, null);
        Instant now = records.clock().instant();
        give(ctx, records.cohort(), whose, now, "Calves" + (pen == null ? "" : " in " + pen) + ": what is due");
    }

    /** As in lists of what is due, a pen is where a calf stands, and no season means all. */
    private void give(Context ctx, Cohort cohort, Selection asked, Instant at, String name) {
        String season = asked.season() == null ? Selection.ALL : asked.season();
        Selection everywhere = new Selection(
                season, asked.from(), asked.to(), asked.asOf(), null, null, asked.sex(), asked.parity(), asked.breed());
        List<DueItem> items = new ArrayList<>();
        for (int row : everywhere.calves(cohort)) {
            due.of(cohort.lives().get(row), row, at).stream()
                    .filter(item -> asked.pen() == null || asked.pen().equals(item.pen()))
                    .forEach(items::add);
        }
        DueCalendar calendar = new DueCalendar(at, cohort.farm().latest().zone(), cohort.sequence(), base(ctx));
        ctx.header("Cache-Control", "private, max-age=60");
        ctx.contentType("text/calendar; charset=utf-8").result(calendar.text(name, items));
    }

    /** The address under which the request came, through a proxy as that proxy says. */
    private static String base(Context ctx) {
        String scheme = "https".equals(ctx.header("X-Forwarded-Proto")) ? "https" : ctx.scheme();
        return scheme + "://" + ctx.host();
    }
}
