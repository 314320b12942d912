package wisp.site;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wisp.chart.Axis;
import wisp.chart.Format;
import wisp.chart.Mark;
import wisp.chart.Picture;
import wisp.event.EventType;
import wisp.history.Life;
import wisp.history.LifeEvent;

/** Draws a calf's first day hour by hour, where on the line of its whole life everything would stand in one place. */
final class FirstDayPicture {
    private static final Duration FIRST = Duration.ofHours(24);
    private static final int FEWEST = 2;

    private FirstDayPicture() {}

    /** The picture, or empty where the hour of birth is unknown or hardly anything is recorded of the first day. */
    static Optional<Picture> of(Life life) {
        if (!life.birthTimeKnown()) {
            return Optional.empty();
        }
        List<LifeEvent> events = life.events().stream()
                .filter(event -> event.timeKnown() && event.type() != EventType.BIRTH)
                .filter(event -> life.ageAt(event.time()).compareTo(FIRST) <= 0)
                .toList();
        if (events.size() < FEWEST) {
            return Optional.empty();
        }
        List<String> names = events.stream().map(EventWords::of).distinct().toList();
        List<LifeLane> lanes = names.stream()
                .map(name -> LifeLane.of(name, marks(life, events, name)))
                .toList();
        return Optional.of(new Picture(
                "first-day",
                "The first day of calf " + life.key(),
                words(life, events),
                Axis.linear("Hours after birth", Format.NUMBER).within(0, FIRST.toHours()),
                Axis.categories("What was done", names),
                LifeLane.layers(lanes)));
    }

    /** The events of one row; only the first has room for its age beside it. */
    private static List<Mark> marks(Life life, List<LifeEvent> events, String name) {
        List<Mark> marks = new ArrayList<>();
        for (LifeEvent event : events) {
            if (EventWords.of(event).equals(name)) {
                Mark mark = mark(life, event);
                marks.add(marks.isEmpty() ? mark.captioned(Shown.age(life.ageAt(event.time()))) : mark);
            }
        }
        return marks;
    }

    private static Mark mark(Life life, LifeEvent event) {
        Duration age = life.ageAt(event.time());
        String details = EventWords.details(event);
        return Mark.at(age.toMillis() / 3_600_000.0, 0, EventWords.of(event))
                .saying(details.isEmpty() ? Shown.age(age) : details + ", after " + Shown.age(age))
                .to("#" + CalfPage.anchor(event));
    }

    private static String words(Life life, List<LifeEvent> events) {
        StringBuilder words = new StringBuilder("Hours after birth, one row a kind of event. ");
        events.forEach(event -> words.append(EventWords.of(event))
                .append(" after ")
                .append(Shown.age(life.ageAt(event.time())))
                .append(". "));
        return words.toString().strip();
    }
}
