package wisp.indicator;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import wisp.event.EventType;
import wisp.history.Episode;
import wisp.history.Exit;
import wisp.history.Life;
import wisp.history.LifeEvent;

/**
 * A life and where its follow-up ends: the first of death, leaving and the cut. Every figure asks the same of it, so
 * that its events are sorted by type and its episodes by condition once. It never changes.
 */
final class FollowedLife {
    private final int row;
    private final Life life;
    private final Instant cut;
    private final End end;
    private final Instant endTime;
    private final Duration endAge;
    private final Map<EventType, List<LifeEvent>> byType = new EnumMap<>(EventType.class);
    private final Map<String, List<Episode>> byCondition;

    /** Why follow-up ended. */
    enum End {
        DEATH,
        LEFT,
        CUT
    }

    /**
     * A life followed to a cut.
     *
     * @param row its row in the cohort
     * @param life one with a recorded birth
     * @param cut where all follow-up ends
     */
    FollowedLife(int row, Life life, Instant cut) {
        this.row = row;
        this.life = life;
        this.cut = cut;
        Exit exit = life.exit();
        boolean open = exit == null || exit.time().isAfter(cut);
        this.end = open ? End.CUT : exit.death() ? End.DEATH : End.LEFT;
        this.endTime = open ? cut : exit.time();
        this.endAge = life.ageAt(endTime);
        for (LifeEvent event : life.events()) {
            if (!event.time().isAfter(cut)) {
                byType.computeIfAbsent(event.type(), type -> new ArrayList<>(2)).add(event);
            }
        }
        this.byCondition = life.episodes().isEmpty() ? Map.of() : new HashMap<>();
        for (Episode episode : life.episodes()) {
            byCondition
                    .computeIfAbsent(episode.condition(), condition -> new ArrayList<>(2))
                    .add(episode);
        }
    }

    int row() {
        return row;
    }

    Life life() {
        return life;
    }

    Instant cut() {
        return cut;
    }

    End end() {
        return end;
    }

    Instant endTime() {
        return endTime;
    }

    /** Exact age at the end of follow-up. */
    Duration endAge() {
        return endAge;
    }

    /** The events of one type up to the cut, in order. */
    List<LifeEvent> events(EventType type) {
        return byType.getOrDefault(type, List.of());
    }

    /** The events up to the cut that a definition names, in order. */
    List<LifeEvent> events(EventMatch match) {
        List<LifeEvent> ofType = events(match.type());
        if (match.where().isEmpty() || ofType.isEmpty()) {
            return ofType;
        }
        List<LifeEvent> matching = new ArrayList<>(ofType);
        matching.removeIf(event -> !match.matches(event));
        return matching;
    }

    /** All episodes of one condition, also those that open after the cut. */
    List<Episode> episodes(String condition) {
        return byCondition.getOrDefault(condition, List.of());
    }

    /** Whether the calf was alive and present at the cut, and just this old. */
    boolean cutAt(Duration age) {
        return end == End.CUT && endAge.equals(age);
    }

    boolean bornDead() {
        return life.exit() != null && life.exit().kind() == Exit.Kind.BORN_DEAD;
    }

    /** Exact age at an event; one known only by the date of birth happened after the birth, nobody knows how long. */
    Duration ageAt(LifeEvent event) {
        Duration age = life.ageAt(event.time());
        boolean afterBirth = !event.timeKnown() && age.isZero() && event.type() != EventType.BIRTH;
        return afterBirth ? Duration.ofMillis(1) : age;
    }

    /** Whether an event known only by date could lie before an age or after it. */
    boolean straddles(LifeEvent event, Duration age) {
        return !event.timeKnown()
                && ageAt(event).compareTo(age) <= 0
                && ageAtEndOfDay(event).compareTo(age) > 0;
    }

    /**
     * Whether an event known only by date could lie inside the window or outside it: its day, as far as after birth,
     * has moments on both sides.
     */
    boolean ambiguous(LifeEvent event, Window window) {
        if (event.timeKnown()) {
            return false;
        }
        return window.holds(ageAt(event)) != window.holds(ageAtEndOfDay(event));
    }

    private Duration ageAtEndOfDay(LifeEvent event) {
        return life.ageAt(life.endOfDay(life.dayOfLife(event.time())).minusMillis(1));
    }

    static double days(Duration age) {
        return age.toMillis() / 86_400_000.0;
    }
}
