package wisp.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import wisp.event.Event;
import wisp.event.EventReader;
import wisp.event.EventType;

@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SeasonTest {
    private static final long SEED = 7;
    private static final int CALVES = 1500;

    private final Model model = StandardModel.model();
    private final List<Event> events = Season.simulate(model, CALVES, SEED);

    static EventReader reader(Model model) {
        Set<String> conditions =
                model.illnesses().stream().map(Illness::condition).collect(Collectors.toSet());
        return EventReader.offered(
                conditions, Clock.fixed(model.calendar().cut().toInstant(), ZoneOffset.UTC));
    }

    @Test
    void everyEventIsTakenWhenOfferedAndReadBackTheSame() {
        EventReader reader = reader(model);
        for (Event event : events) {
            EventReader.Reading reading = reader.read(event.json());
            assertTrue(reading.sound(), () -> "seed " + SEED + ": " + event.json() + " " + reading.faults());
            assertEquals(event, reading.event());
        }
    }

    @Test
    void everyTypeOfEventOccurs() {
        EnumSet<EventType> seen = EnumSet.noneOf(EventType.class);
        events.forEach(event -> seen.add(event.type()));
        assertEquals(EnumSet.allOf(EventType.class), seen, "seed " + SEED);
    }

    @Test
    void theSameSeedGivesTheSameTextAndAnotherDoesNot() {
        assertEquals(events, Season.simulate(model, CALVES, SEED));
        assertNotEquals(events, Season.simulate(model, CALVES, SEED + 1));
    }

    @Test
    void eventsComeInOrderOfRecordingAndTheCutIsTheNewest() {
        OffsetDateTime before = OffsetDateTime.MIN;
        for (Event event : events) {
            assertFalse(event.recordedTime().isBefore(before), () -> "seed " + SEED + ": " + event.json());
            assertFalse(event.time().isAfter(event.recordedTime()), () -> "seed " + SEED + ": " + event.json());
            before = event.recordedTime();
        }
        Event newest = events.get(events.size() - 1);
        assertEquals(model.calendar().cut(), newest.time());
        assertEquals("books read", ((wisp.event.Noted) newest.data()).text());
    }

    @Test
    void noTwoEventsShareAName() {
        Set<String> names = new HashSet<>();
        events.forEach(event -> assertTrue(names.add(event.id()), event.id()));
    }

    @Test
    void asManyCalvesAreBornAsWereAskedFor() {
        int[] lives = {0};
        Season.eachLife(settled(), 777, SEED, life -> lives[0]++);
        assertEquals(777, lives[0], "seed " + SEED);
    }

    @Test
    void livesWithoutTextAreTheLivesWithText() {
        List<Event> quick = new ArrayList<>();
        Season.eachLife(model, CALVES, SEED, life -> quick.addAll(life.events()));
        assertNull(quick.get(0).json());
        Set<Event> written = new HashSet<>(events);
        quick.forEach(event -> assertTrue(written.contains(EventJson.written(event)), event.id()));
        assertEquals(events.size() - 2 - Season.pens(model).size(), quick.size());
    }

    @Test
    void livesComeInOrderOfBirthButForTwins() {
        OffsetDateTime[] latest = {OffsetDateTime.MIN};
        Season.eachLife(model, CALVES, SEED, life -> {
            assertFalse(life.born().plusMinutes(40).isBefore(latest[0]), life.subject());
            latest[0] = life.born();
        });
    }

    @Test
    void aSeasonWithoutCalvesIsStillAFarm() {
        List<Event> none = Season.simulate(model, 0, SEED);
        assertEquals(EventType.FARM_DESCRIBED, none.get(0).type());
        assertEquals(Season.pens(model).size() + 2, none.size());
    }

    @Test
    void fewerCalvesThanNoneAreRefused() {
        IllegalArgumentException refused =
                assertThrows(IllegalArgumentException.class, () -> Season.simulate(model, -1, SEED));
        assertEquals("A season cannot have -1 calves: ask for none or more.", refused.getMessage());
    }

    /** The same season read a year later, when everything is written down. */
    private Model settled() {
        return model.with(StandardModel.calendar(2024, model.calendar().cut().plusYears(1)));
    }
}
