package wisp.site;

import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import wisp.history.Life;
import wisp.history.LifeEvent;
import wisp.history.Mark;
import wisp.history.Withdrawn;

/**
 * A tick as it was sent.
 *
 * @param calf the calf's key
 * @param step the step's id
 * @param turn which of this step's recordings it is, so that the same form sent twice records once
 * @param time when it was done as typed, empty for now
 * @param later true for the second of two equal hours
 * @param dayOnly true where only the day is known
 * @param sure true where somebody stands by a number that looks wrong
 * @param data the event's fields as typed
 */
record DueForm(
        String calf,
        String step,
        int turn,
        String time,
        boolean later,
        boolean dayOnly,
        boolean sure,
        Map<String, String> data) {
    /** The source of every event that this page records. */
    static final String SOURCE = "wisp:due";

    static DueForm sent(Context ctx) {
        Map<String, String> data = new LinkedHashMap<>();
        ctx.formParamMap().forEach((name, values) -> {
            if (name.startsWith(MendForm.PREFIX)) {
                data.put(name.substring(MendForm.PREFIX.length()), values.get(0));
            }
        });
        String turn = text(ctx, "turn");
        return new DueForm(
                text(ctx, "calf"),
                text(ctx, "step"),
                turn.matches("\\d{1,6}") ? Integer.parseInt(turn) : 0,
                text(ctx, "time"),
                ctx.formParam("later") != null,
                ctx.formParam("day_only") != null,
                ctx.formParam("sure") != null,
                data);
    }

    private static String text(Context ctx, String name) {
        String text = ctx.formParam(name);
        return text == null ? "" : text.strip();
    }

    /** The same words as another turn. */
    DueForm again(int other) {
        return new DueForm(calf, step, other, time, later, dayOnly, sure, data);
    }

    /** The id of the event that this form records, the same whenever it is sent; more for its further events. */
    String id(int further) {
        return id(calf, step, turn + further);
    }

    static String id(String calf, String step, int turn) {
        String name = calf + "\n" + step + "\n" + turn;
        return UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8)).toString();
    }

    /** The first turn of a step that was never recorded from this page, not even by an event withdrawn since. */
    static int nextTurn(Life life, String step) {
        Set<String> ids = new HashSet<>();
        Stream<LifeEvent> marked = life.marks().stream().map(Mark::event);
        Stream<LifeEvent> withdrawn = life.withdrawn().stream().map(Withdrawn::event);
        Stream.concat(life.events().stream(), Stream.concat(marked, withdrawn))
                .filter(event -> event.source().equals(SOURCE))
                .forEach(event -> ids.add(event.id()));
        int turn = 0;
        while (ids.contains(id(life.key(), step, turn))) {
            turn++;
        }
        return turn;
    }
}
