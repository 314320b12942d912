package wisp.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import wisp.chart.Ink;
import wisp.chart.Mark;
import wisp.event.Birth;
import wisp.event.Castrated;
import wisp.event.EventType;
import wisp.history.Life;
import wisp.history.LifeEvent;
import wisp.indicator.DayLimit;

/** A calf's limits of law as bars over its days, each with what was done about it. */
final class LimitLanes {
    private final Life life;
    private final Map<String, DayLimit> limits;
    private final List<LifeLane> lanes = new ArrayList<>();

    private LimitLanes(Life life, Map<String, DayLimit> limits) {
        this.life = life;
        this.limits = limits;
    }

    /**
     * The rows; one without a limit and without an event is left out.
     *
     * @param limits of the farm's jurisdiction, by name
     */
    static List<LifeLane> of(Life life, Map<String, DayLimit> limits) {
        LimitLanes of = new LimitLanes(life, limits);
        of.add("tags", "Ear tags", EventType.TAG_FITTED);
        of.add("tissue-sample", "Tissue sample", EventType.TISSUE_SAMPLED);
        of.add("registration", "Registration", EventType.REGISTERED);
        boolean ring = life.birth().sex() == Birth.Sex.MALE
                && !Boolean.TRUE.equals(life.birth().keepEntire());
        if (ring || life.events().stream().anyMatch(event -> event.type() == EventType.CASTRATED)) {
            of.add("ring", "Ring", EventType.CASTRATED);
        }
        return of.lanes;
    }

    private void add(String limit, String name, EventType type) {
        LifeDays days = new LifeDays(life);
        Integer by = limits.containsKey(limit) ? limits.get(limit).byDay() : null;
        List<LifeEvent> done =
                life.events().stream().filter(event -> event.type() == type).toList();
        boolean late = by != null && done.stream().anyMatch(event -> late(event, by));
        List<Mark> marks = done.stream()
                .map(event -> days.mark(event).captioned(event == done.get(done.size() - 1) ? caption(event, by) : ""))
                .toList();
        List<LifeLane.Span> spans = by == null ? List.of() : List.of(new LifeLane.Span(0, end(days, by)));
        String words = by == null ? name : name + ", by day " + by;
        if (!done.isEmpty() && done.stream().allMatch(LimitLanes::otherMethod)) {
            words = "Castration, no ring (a ring by day " + by + ")";
        }
        LifeLane lane = new LifeLane(words, Ink.MUTED, spans, late ? Ink.ALARM : Ink.FIRST, marks);
        if (!lane.isEmpty()) {
            lanes.add(lane);
        }
    }

    /** A limit asks nothing of a calf that is dead. */
    private double end(LifeDays days, int by) {
        boolean dead = life.exit() != null && life.exit().death();
        return dead ? Math.min(by + 1.0, Math.max(0, days.at(life.exit().time()))) : by + 1.0;
    }

    private boolean late(LifeEvent event, int by) {
        return !otherMethod(event) && life.dayOfLife(event.time()) > by;
    }

    private static boolean otherMethod(LifeEvent event) {
        return event.data() instanceof Castrated castrated && castrated.method() != Castrated.Method.RING;
    }

    private String caption(LifeEvent event, Integer by) {
        String day = "day " + life.dayOfLife(event.time());
        return by != null && late(event, by) ? day + ", late" : day;
    }
}
