package wisp.testing;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import wisp.event.EventType;
import wisp.log.StoredEvent;

/**
 * A log of plausible and implausible events of a few calves, pens and the farm, drawn from a seed: late and early
 * records, dates without hours, clashing tags, deaths and births twice, corrections of everything, corrections of
 * corrections, circles, and targets that come later or never.
 */
public final class RandomLog {
    private static final LocalDateTime FIRST = LocalDateTime.parse("2026-03-20T00:00");
    private static final int MINUTES = 14 * 24 * 60;
    private static final String[] CALVES = {"C1", "C2", "C3", "C4", "C5", "C6"};
    private static final String[] PENS = {"P1", "P2", "C1"};
    private static final String[] CONDITIONS = {"diarrhoea", "pneumonia", "navel-infection"};
    private static final String[] ZONES = {"Europe/London", "Europe/Berlin", "America/New_York"};
    private static final String[] OF_CALVES = {
        "birth",
        "birth",
        "birth",
        "cleanliness-scored",
        "navel-treated",
        "navel-checked",
        "colostrum-fed",
        "tag-fitted",
        "tag-fitted",
        "tag-fitted",
        "tissue-sampled",
        "registered",
        "castrated",
        "illness-found",
        "illness-found",
        "recovered",
        "treated",
        "moved",
        "weighed",
        "left",
        "died",
        "noted"
    };

    private final Random random;
    private final Events events = Events.london();
    private final boolean timesDistinct;
    private final List<Integer> minutesUsed = new ArrayList<>();

    private RandomLog(long seed, boolean timesDistinct) {
        this.random = new Random(seed);
        this.timesDistinct = timesDistinct;
    }

    /** A log of any events. */
    public static List<StoredEvent> of(long seed, int size) {
        return new RandomLog(seed, false).draw(size);
    }

    /** A log in which no two events have the same time, every hour is known and nothing is amended. */
    public static List<StoredEvent> withDistinctTimes(long seed, int size) {
        return new RandomLog(seed, true).draw(size);
    }

    private List<StoredEvent> draw(int size) {
        while (events.all().size() < size) {
            int kind = random.nextInt(20);
            if (kind < 13) {
                ofCalf();
            } else if (kind < 15) {
                String type = random.nextBoolean() ? "pen-bedded" : "pen-cleaned";
                add(type, pick(PENS), "");
            } else if (kind < 16) {
                add("farm-described", "farm", farm());
            } else if (kind < 17) {
                add("noted", random.nextBoolean() ? "farm" : pick(PENS), "text: seen");
            } else {
                correct();
            }
        }
        return events.all();
    }

    private void ofCalf() {
        String type = pick(OF_CALVES);
        add(type, pick(CALVES), fields(type));
    }

    private String fields(String type) {
        return switch (type) {
            case "birth" ->
                "alive: " + (random.nextInt(6) > 0) + ", sex: "
                        + pick("female", "male", "unknown") + ", ease: " + (1 + random.nextInt(5)) + ", pen: "
                        + pick(PENS) + ", weight_kg: " + (30 + random.nextInt(200) / 10.0);
            case "cleanliness-scored" -> "score: " + random.nextInt(4) + (random.nextBoolean() ? ", pen: P2" : "");
            case "navel-checked" -> "finding: " + pick("normal", "painful", "discharging");
            case "tag-fitted" -> "number: UK" + random.nextInt(4);
            case "castrated" -> "method: ring";
            case "illness-found" -> "condition: " + pick(CONDITIONS);
            case "recovered" -> random.nextBoolean() ? "" : "condition: " + pick(CONDITIONS);
            case "treated" -> "medicine: fluids" + (random.nextBoolean() ? "" : ", condition: " + pick(CONDITIONS));
            case "moved" -> "pen: " + pick(PENS);
            case "weighed" -> "weight_kg: " + (30 + random.nextInt(30));
            case "noted" -> "text: seen";
            case "farm-described" -> farm();
            default -> "";
        };
    }

    private String farm() {
        return switch (random.nextInt(4)) {
            case 0 -> "zone: " + pick(ZONES);
            case 1 -> "jurisdiction: " + pick("england", "scotland");
            case 2 ->
                "seasons: [{name: S" + random.nextInt(2) + ", from: 2026-03-2" + random.nextInt(5) + ", to: 2026-03-3"
                        + random.nextInt(2) + "}]";
            default -> "name: Low Farm";
        };
    }

    private void correct() {
        int sequence = 1 + random.nextInt(events.all().size() + 4);
        List<StoredEvent> so = events.all();
        StoredEvent target = sequence <= so.size() ? so.get(sequence - 1) : null;
        String own = target == null ? pick(CALVES) : target.event().subject();
        String subject = random.nextInt(8) == 0 ? pick("C1", "C2", "P1", "farm") : own;
        String name = "event_source: test, event_id: e" + sequence;
        if (timesDistinct || random.nextInt(5) < 2) {
            add("retracted", subject, name);
        } else {
            boolean known = target != null && random.nextInt(8) > 0;
            String type = known ? target.event().type().wireName() : pick(OF_CALVES);
            boolean correction = EventType.named(type).orElseThrow().isCorrection();
            String date = random.nextInt(6) == 0 ? ", time_known: false" : "";
            String data = correction ? name : fields(type) + date;
            String time = LocalDateTime.parse(clock(minute())) + ":00Z";
            add("amended", subject, name + ", time: '" + time + "', data: {" + data.replaceAll("^, ", "") + "}");
        }
    }

    private void add(String type, String subject, String fields) {
        int minute = minute();
        String when = clock(minute).replace('T', ' ');
        boolean dateOnly = !timesDistinct && random.nextInt(8) == 0;
        int later = random.nextInt(3) == 0 ? random.nextInt(6 * 24 * 60) : 0;
        events.recordedAt(clock(minute + later).replace('T', ' '));
        events.add(type, subject, dateOnly ? when.substring(0, 10) : when, fields);
    }

    private int minute() {
        int minute = random.nextInt(4) == 0 ? random.nextInt(14) * 24 * 60 : random.nextInt(MINUTES / 15) * 15;
        while (timesDistinct && minutesUsed.contains(minute)) {
            minute = random.nextInt(MINUTES);
        }
        minutesUsed.add(minute);
        return minute;
    }

    private static String clock(int minute) {
        return FIRST.plus(Duration.ofMinutes(minute)).toString();
    }

    private String pick(String... words) {
        return words[random.nextInt(words.length)];
    }

    /** The subjects of a log. */
    public static Map<String, List<StoredEvent>> bySubject(List<StoredEvent> events) {
        return events.stream()
                .collect(Collectors.groupingBy(stored -> stored.event().subject()));
    }
}
