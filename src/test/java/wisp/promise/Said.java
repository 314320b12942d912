package wisp.promise;

import java.util.Random;
import wisp.event.Event;
import wisp.event.EventReader;

/**
 * One event of the model: calves are weighed, and weighings corrected. A correction names a lower number than its own,
 * so that no circle comes about; its target may be missing or a correction itself.
 *
 * @param number its id; the calf that it is about is the number's rest by three, for a correction that of its root
 * @param kind weighed, amended or retracted
 * @param target the number that a correction corrects; -1 for a weighing
 * @param kg the weight said; 0 for a retraction
 * @param day the day of April on which it was recorded; 0 leaves it to the log
 */
record Said(int number, String kind, int target, int kg, int day) {
    /** When the log says that an event was recorded that does not say so itself. */
    static final String LOG_TIME = "2026-05-01T00:00:00.000Z";

    static final int NUMBERS = 45;

    /** A calf's birth, the same for every model. */
    static Event birth(int calf) {
        return read("{\"specversion\":\"1.0\",\"source\":\"m\",\"id\":\"birth-" + calf
                + "\",\"type\":\"birth\",\"subject\":\"calf-" + calf + "\",\"time\":\"2026-03-01T08:00:00Z\","
                + "\"recordedtime\":\"2026-03-01T09:00:00Z\",\"data\":{\"alive\":true,\"sex\":\"female\"}}");
    }

    /** Draws one; numbers are few, so that many are repeated and many are in conflict. */
    static Said draw(Random random) {
        int number = random.nextInt(NUMBERS);
        int kg = 40 + random.nextInt(2);
        int day = random.nextInt(3) == 0 ? 0 : 1 + random.nextInt(25);
        if (number < 6 || random.nextInt(5) < 2) {
            return new Said(number, "weighed", -1, kg, day);
        }
        int target = Math.max(0, number - 3 * (1 + random.nextInt(5)));
        return random.nextBoolean()
                ? new Said(number, "retracted", target, 0, day)
                : new Said(number, "amended", target, kg, day);
    }

    boolean isWeighing() {
        return kind.equals("weighed");
    }

    String subject() {
        return "calf-" + number % 3;
    }

    /** When it was recorded, as the log keeps it. */
    String recorded() {
        return day == 0 ? LOG_TIME : "2026-04-%02dT12:00:00.000Z".formatted(day);
    }

    /** Whether offering this is offering again what is kept. */
    boolean repeats(Said kept) {
        Said sameDay = new Said(number, kind, target, kg, kept.day);
        return sameDay.equals(kept) && (day == 0 || recorded().equals(kept.recorded()));
    }

    Event event() {
        String recordedTime = day == 0 ? "" : "\"recordedtime\":\"" + recorded() + "\",";
        return read("{\"specversion\":\"1.0\",\"source\":\"m\",\"id\":\"" + number + "\",\"type\":\"" + kind
                + "\",\"subject\":\"" + subject() + "\",\"time\":\"" + time(number) + "\"," + recordedTime
                + "\"data\":" + data() + "}");
    }

    private String data() {
        String name = "\"event_source\":\"m\",\"event_id\":\"" + target + "\"";
        return switch (kind) {
            case "weighed" -> "{\"weight_kg\":" + kg + "}";
            case "retracted" -> "{" + name + "}";
            default -> "{" + name + ",\"time\":\"" + time(target) + "\",\"data\":{\"weight_kg\":" + kg + "}}";
        };
    }

    private static String time(int number) {
        return "2026-03-02T%02d:%02d:00Z".formatted(number / 60, number % 60);
    }

    private static Event read(String json) {
        EventReader.Reading reading = EventReader.recorded().read(json);
        if (!reading.sound()) {
            throw new IllegalStateException(json + ": " + reading.faults());
        }
        return reading.event();
    }
}
