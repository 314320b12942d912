package wisp.promise;

import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Events as a phone sends them, each batch about a calf of its own. */
final class Births {
    private Births() {}

    /** A birth and what was done next to that calf, one event a line; the same name and size give the same lines. */
    static String batch(String name, int size) {
        Random random = new Random(name.hashCode());
        return IntStream.range(0, size).mapToObj(i -> event(name, i, random)).collect(Collectors.joining("\n"));
    }

    /** The id of an event of a batch. */
    static String id(String name, int place) {
        return name + "/" + place;
    }

    private static String event(String name, int place, Random random) {
        String day = "2026-03-" + (10 + Math.floorMod(name.hashCode(), 18));
        return switch (place) {
            case 0 -> line(name, place, "birth", day + "T06:00:00Z", "{\"alive\":" + (random.nextInt(9) > 0) + "}");
            case 1 -> line(name, place, "navel-treated", day + "T06:%02d:00Z".formatted(1 + random.nextInt(58)), "{}");
            case 2 -> line(name, place, "colostrum-fed", day + "T08:30:00Z", "{\"volume_l\":3.5}");
            case 3 -> line(name, place, "illness-found", day + "T20:00:00Z", "{\"condition\":\"diarrhoea\"}");
            default -> line(name, place, "noted", day + "T21:00:00Z", "{\"text\":\"seen, " + place + "\"}");
        };
    }

    private static String line(String name, int place, String type, String time, String data) {
        return "{\"specversion\":\"1.0\",\"id\":\"" + id(name, place) + "\",\"source\":\"phone\",\"type\":\"" + type
                + "\",\"subject\":\"calf-" + name + "\",\"time\":\"" + time + "\",\"data\":" + data + "}";
    }
}
