package wisp.site;

import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import wisp.chart.Axis;
import wisp.chart.Format;
import wisp.chart.Ink;
import wisp.chart.Mark;
import wisp.chart.Picture;
import wisp.event.EventType;
import wisp.event.Treated;
import wisp.history.Episode;
import wisp.history.Exit;
import wisp.history.Life;
import wisp.history.MeatWithdrawal;
import wisp.indicator.DayLimit;
import wisp.indicator.Law;

/** Draws one calf's life on one line of time: its stay, the limits of law, its illnesses, medicines and care. */
final class LifePicture {
    private static final Set<EventType> STAY =
            EnumSet.of(EventType.BIRTH, EventType.MOVED, EventType.WEANED, EventType.LEFT);
    private static final Set<EventType> CARE = EnumSet.of(
            EventType.CLEANLINESS_SCORED,
            EventType.NAVEL_TREATED,
            EventType.COLOSTRUM_FED,
            EventType.DISBUDDED,
            EventType.VACCINATED);
    private static final Set<EventType> CHECKS = EnumSet.of(
            EventType.NAVEL_CHECKED,
            EventType.BLOOD_TESTED,
            EventType.SAMPLE_SENT,
            EventType.SAMPLE_RESULT,
            EventType.WEIGHED,
            EventType.NOTED);

    private final Life life;
    private final Instant cut;
    private final LifeDays days;
    private final List<MeatWithdrawal> withdrawals;

    private LifePicture(Life life, Instant cut) {
        this.life = life;
        this.cut = cut;
        this.days = new LifeDays(life);
        this.withdrawals = MeatWithdrawal.of(life);
    }

    /**
     * The picture.
     *
     * @param law whose limits hold, empty where they are not known
     * @param cut where follow-up ends
     */
    static Picture of(Life life, Optional<Law> law, Instant cut) {
        LifePicture picture = new LifePicture(life, cut);
        List<LifeLane> lanes = picture.lanes(law.map(Law::days).orElse(Map.of()));
        return new Picture(
                "life",
                "The life of calf " + life.key(),
                LifeWords.of(life, lanes, picture.withdrawals),
                Axis.linear("Day of life (0 is the day of birth)", Format.COUNT).within(0, picture.horizon(lanes)),
                Axis.categories(
                        "What happened", lanes.stream().map(LifeLane::name).toList()),
                LifeLane.layers(lanes));
    }

    private List<LifeLane> lanes(Map<String, DayLimit> limits) {
        List<LifeLane> lanes = new ArrayList<>();
        lanes.add(new LifeLane(
                life.exit() == null ? "On the farm" : "On the farm, then " + LifeWords.exit(life.exit()),
                Ink.FOURTH,
                List.of(new LifeLane.Span(days.at(life.born().time()), days.at(end()))),
                Ink.FIRST,
                days.marks(STAY)));
        if (life.exit() != null && life.exit().kind() == Exit.Kind.DIED) {
            Mark died = days.mark(life.exit().event());
            lanes.add(new LifeLane("Death", Ink.MUTED, List.of(), Ink.ALARM, List.of(died)));
        }
        lanes.add(LifeLane.of("Care", days.marks(CARE)));
        if (life.birth().alive()) {
            lanes.addAll(LimitLanes.of(life, limits));
        }
        conditions().forEach(condition -> lanes.add(illness(condition)));
        lanes.add(medicines());
        lanes.add(LifeLane.of("Checks and notes", days.marks(CHECKS)));
        lanes.removeIf(LifeLane::isEmpty);
        return lanes;
    }

    private Instant end() {
        Instant end = life.exit() == null ? cut : life.exit().time();
        return end.isBefore(life.born().time()) ? life.born().time() : end;
    }

    private Set<String> conditions() {
        Set<String> conditions = new LinkedHashSet<>();
        life.episodes().forEach(episode -> conditions.add(episode.condition()));
        return conditions;
    }

    /** One condition's episodes, and the findings, treatments and recoveries that name it. */
    private LifeLane illness(String condition) {
        List<LifeLane.Span> spans = life.episodes().stream()
                .filter(episode -> episode.condition().equals(condition))
                .map(this::span)
                .toList();
        Set<EventType> types = EnumSet.of(EventType.ILLNESS_FOUND, EventType.RECOVERED);
        List<Mark> marks = life.events().stream()
                .filter(event -> types.contains(event.type()))
                .filter(event -> LifeWords.names(event, condition))
                .map(days::mark)
                .toList();
        String name = Character.toUpperCase(condition.charAt(0))
                + condition.substring(1).replace('-', ' ');
        return new LifeLane(name, Ink.THIRD, spans, Ink.FIRST, marks);
    }

    private LifeLane.Span span(Episode episode) {
        Instant closed = episode.closed().isAfter(cut) && cut.isAfter(episode.opened()) ? cut : episode.closed();
        return new LifeLane.Span(days.at(episode.opened()), days.at(closed));
    }

    private LifeLane medicines() {
        List<LifeLane.Span> spans = withdrawals.stream()
                .filter(one -> one.counts() && one.end() != null)
                .map(one -> new LifeLane.Span(days.at(one.treatment().time()), days.at(one.end())))
                .toList();
        List<Mark> marks = life.events().stream()
                .filter(event -> event.data() instanceof Treated)
                .map(days::mark)
                .toList();
        String name = spans.isEmpty() ? "Medicines" : "Medicines, meat withdrawal as bar";
        return new LifeLane(name, Ink.ALARM, spans, Ink.FIRST, marks);
    }

    /** As far as anything happened or any bar but the stay reaches; a calf that lives on runs out of the picture. */
    private double horizon(List<LifeLane> lanes) {
        double last = 2;
        for (LifeLane lane : lanes) {
            last = Math.max(
                    last, lane.events().stream().mapToDouble(Mark::x).max().orElse(0));
            if (lane != lanes.get(0)) {
                last = Math.max(
                        last,
                        lane.spans().stream()
                                .mapToDouble(LifeLane.Span::to)
                                .max()
                                .orElse(0));
            }
        }
        return Math.ceil(last + 0.02 * last);
    }
}
