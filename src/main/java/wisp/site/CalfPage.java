package wisp.site;

import java.time.Duration;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import wisp.event.Treated;
import wisp.history.Episode;
import wisp.history.Life;
import wisp.history.LifeEvent;
import wisp.history.Mark;
import wisp.history.Withdrawn;

/**
 * One calf's life in order of time.
 *
 * @param summary who it is and how it went, in words
 * @param lines its events that count
 * @param episodes its episodes of illness
 * @param marks events that no figure counts
 * @param withdrawn events that a correction withdrew or replaced
 * @param treated true where a medicine was given
 */
public record CalfPage(
        Frame frame,
        String key,
        String summary,
        List<Line> lines,
        List<Illness> episodes,
        List<Marked> marks,
        List<Replaced> withdrawn,
        boolean treated) {
    private static final Duration LATE = Duration.ofHours(24);

    /** One event of the life. */
    public record Line(
            String when,
            String age,
            String what,
            String details,
            String recorded,
            String by,
            boolean late,
            boolean amended) {}

    /** One episode of illness. */
    public record Illness(String condition, String opened, String closed) {}

    /** One marked event. */
    public record Marked(String when, String what, String problem, String mend, String source, String id) {}

    /** One event that no longer stands as it was recorded. */
    public record Replaced(String what, String when, String details, String by, String recorded) {}

    static CalfPage of(Asked asked, Life life) {
        ZoneId zone = life.farm().zone();
        Frame frame = Frame.of(asked, "Calf " + life.key(), "/calves/" + life.key(), Map.of());
        List<Line> lines =
                life.events().stream().map(event -> line(life, event, zone)).toList();
        List<Illness> episodes =
                life.episodes().stream().map(episode -> illness(episode, zone)).toList();
        List<Marked> marks =
                life.marks().stream().map(mark -> marked(mark, zone)).toList();
        List<Replaced> withdrawn =
                life.withdrawn().stream().map(one -> replaced(one, zone)).toList();
        boolean treated = life.events().stream().anyMatch(event -> event.data() instanceof Treated);
        return new CalfPage(frame, life.key(), summary(life, zone), lines, episodes, marks, withdrawn, treated);
    }

    private static String summary(Life life, ZoneId zone) {
        if (life.born() == null) {
            return "No birth is recorded for this animal, so that no figure counts it.";
        }
        List<String> parts = new ArrayList<>();
        String sex = life.birth().sex() == null ? "Calf" : life.birth().sex().word() + " calf";
        parts.add(Character.toUpperCase(sex.charAt(0)) + sex.substring(1) + ", born "
                + Shown.moment(life.born().time(), life.birthTimeKnown(), zone)
                + (life.birth().pen() == null ? "" : " in " + life.birth().pen()));
        if (life.birth().breed() != null) {
            parts.add(life.birth().breed());
        }
        if (life.exit() != null) {
            String how = switch (life.exit().kind()) {
                case BORN_DEAD -> "born dead";
                case DIED ->
                    "died " + Shown.moment(life.exit().time(), life.exit().timeKnown(), zone);
                case LEFT ->
                    "left " + Shown.moment(life.exit().time(), life.exit().timeKnown(), zone);
            };
            parts.add(how);
        }
        return String.join("; ", parts) + ".";
    }

    private static Line line(Life life, LifeEvent event, ZoneId zone) {
        Duration delay = Duration.between(event.time(), event.recorded());
        return new Line(
                Shown.moment(event.time(), event.timeKnown(), zone),
                "day " + life.dayOfLife(event.time()),
                EventWords.of(event),
                EventWords.details(event),
                Shown.moment(event.recorded(), true, zone),
                event.recordedBy() == null ? "" : event.recordedBy(),
                event.timeKnown() && delay.compareTo(LATE) > 0,
                event.amended());
    }

    private static Illness illness(Episode episode, ZoneId zone) {
        return new Illness(episode.condition(), Shown.day(episode.opened(), zone), Shown.day(episode.closed(), zone));
    }

    static Marked marked(Mark mark, ZoneId zone) {
        return new Marked(
                Shown.moment(mark.event().time(), mark.event().timeKnown(), zone),
                EventWords.of(mark.event()),
                (mark.kind().problem() + " " + mark.detail()).strip(),
                mark.kind().mend(),
                mark.event().source(),
                mark.event().id());
    }

    private static Replaced replaced(Withdrawn one, ZoneId zone) {
        return new Replaced(
                EventWords.of(one.event()),
                Shown.moment(one.event().time(), one.event().timeKnown(), zone),
                EventWords.details(one.event()),
                EventWords.of(one.by()),
                Shown.moment(one.by().recorded(), true, zone));
    }
}
