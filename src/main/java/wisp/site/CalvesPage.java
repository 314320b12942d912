package wisp.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import wisp.event.TagFitted;
import wisp.history.Life;

/**
 * The calves asked for, newest first.
 *
 * @param find what a calf's key or tag must hold, empty for all
 * @param calves one a row
 */
public record CalvesPage(Frame frame, String find, List<Row> calves) {

    /** One calf. */
    public record Row(
            String key, String href, String born, String sex, String pen, String tags, String state, int marks) {}

    static CalvesPage of(Asked asked, String find) {
        String part = find == null ? "" : find.strip();
        Map<String, String> kept = part.isEmpty() ? Map.of() : Map.of("find", part);
        Frame frame = Frame.of(asked, "Calves", "/calves", kept);
        List<Life> lives = new ArrayList<>();
        for (int row : asked.selection().calves(asked.cohort())) {
            lives.add(asked.cohort().lives().get(row));
        }
        lives.sort((a, b) -> b.born().time().compareTo(a.born().time()));
        List<Row> rows = lives.stream()
                .map(life -> row(life, frame.links()))
                .filter(row -> holds(row.key(), part) || holds(row.tags(), part))
                .toList();
        return new CalvesPage(frame, part, rows);
    }

    private static boolean holds(String text, String part) {
        return text.toLowerCase(Locale.ROOT).contains(part.toLowerCase(Locale.ROOT));
    }

    private static Row row(Life life, Links links) {
        List<String> tags = life.events().stream()
                .map(event -> event.data() instanceof TagFitted tag ? tag.number() : "")
                .filter(number -> !number.isEmpty())
                .distinct()
                .toList();
        String state = life.exit() == null
                ? "here"
                : switch (life.exit().kind()) {
                    case BORN_DEAD -> "born dead";
                    case DIED ->
                        "died " + Shown.day(life.exit().time(), life.farm().zone());
                    case LEFT ->
                        "left " + Shown.day(life.exit().time(), life.farm().zone());
                };
        return new Row(
                life.key(),
                links.calf(life.key()),
                Shown.moment(
                        life.born().time(), life.birthTimeKnown(), life.farm().zone()),
                life.birth().sex() == null ? "" : life.birth().sex().word(),
                life.birth().pen() == null ? "" : life.birth().pen(),
                String.join(", ", tags),
                state,
                life.marks().size());
    }
}
