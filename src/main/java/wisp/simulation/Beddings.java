package wisp.simulation;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import wisp.event.Event;
import wisp.event.PenBedded;
import wisp.event.PenCleaned;

/**
 * The days on which pens are bedded (every so many days from 15 days before the first birth on, at 10 h) and cleaned
 * out (with every sixth bedding, at 9 h): fixed, so that no season has luck of its own.
 */
record Beddings(Model model, WallClock clock) {
    private static final int TEN = 600;

    /** Whole days by the wall clock since the place was bedded, 0 for a place that gets no bedding. */
    int daysSince(Place place, long minute) {
        if (place.beddedEveryDays() == 0) {
            return 0;
        }
        LocalDate day = clock.date(minute);
        if (minute < clock.minute(day, TEN)) {
            day = day.minusDays(1);
        }
        return (int) Math.floorMod(ChronoUnit.DAYS.between(start(), day), (long) place.beddedEveryDays());
    }

    /** Beddings and cleanings of every place until the season's end or the cut. */
    List<Event> events(String source) {
        List<Event> events = new ArrayList<>();
        long cut = model.calendar().cut().toEpochSecond() / 60;
        for (Place place : model.places()) {
            String key = place.name().replace(' ', '-');
            int n = 0;
            for (LocalDate day = start();
                    place.beddedEveryDays() > 0 && day.isBefore(model.calendar().to());
                    day = day.plusDays(place.beddedEveryDays())) {
                long bedded = clock.minute(day, TEN);
                if (bedded + 15 > cut) {
                    break;
                }
                if (n % 6 == 0) {
                    events.add(new Event(
                            source,
                            id(key, "cleaned", n),
                            place.name(),
                            clock.at(bedded - 60),
                            true,
                            clock.at(bedded + 10),
                            "morning",
                            new PenCleaned(null, null),
                            null));
                }
                events.add(new Event(
                        source,
                        id(key, "bedded", n++),
                        place.name(),
                        clock.at(bedded),
                        true,
                        clock.at(bedded + 15),
                        "morning",
                        new PenBedded("barley straw", 20.0),
                        null));
            }
        }
        return events;
    }

    private String id(String key, String what, int n) {
        return key + "-" + what + "-" + model.calendar().season() + "-" + (n + 1);
    }

    private LocalDate start() {
        return model.calendar().firstBirth().minusDays(15);
    }
}
