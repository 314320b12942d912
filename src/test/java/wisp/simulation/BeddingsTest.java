package wisp.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;
import wisp.event.Event;
import wisp.event.EventType;

class BeddingsTest {
    private final Model model = StandardModel.model();
    private final WallClock clock = new WallClock(model.farm().zone());
    private final Beddings beddings = new Beddings(model, clock);
    private final List<Event> events = beddings.events("simulated:test");

    @Test
    void daysSinceBeddingAreThoseSinceTheLastBeddingThatWasWritten() {
        Place shed = model.places().get(3);
        for (int hour = 0; hour < 24 * 40; hour += 5) {
            OffsetDateTime at = OffsetDateTime.parse("2024-11-01T09:30:00Z").plusHours(hour);
            OffsetDateTime last = events.stream()
                    .filter(e -> e.type() == EventType.PEN_BEDDED && e.subject().equals(shed.name()))
                    .map(Event::time)
                    .filter(time -> !time.isAfter(at))
                    .max(OffsetDateTime.timeLineOrder())
                    .orElseThrow();
            long days = Duration.between(wall(last), wall(at)).toDays();
            assertEquals(days, beddings.daysSince(shed, at.toEpochSecond() / 60), at.toString());
        }
    }

    private LocalDateTime wall(OffsetDateTime time) {
        return time.atZoneSameInstant(model.farm().zone()).toLocalDateTime();
    }

    @Test
    void placesOutsideTheCalvingPensAreNotBedded() {
        for (Place place : model.places()) {
            boolean bedded = events.stream().anyMatch(e -> e.subject().equals(place.name()));
            assertEquals(place.calvingPen(), bedded, place.name());
        }
    }

    @Test
    void nothingIsBeddedAfterTheCut() {
        assertTrue(events.stream()
                .noneMatch(e -> e.recordedTime().isAfter(model.calendar().cut())));
    }
}
