package wisp.site;

import java.util.ArrayList;
import java.util.List;
import wisp.event.IllnessFound;
import wisp.event.Recovered;
import wisp.history.Episode;
import wisp.history.Exit;
import wisp.history.Life;
import wisp.history.LifeEvent;
import wisp.history.MeatWithdrawal;

/** What a calf's line of time shows, in sentences for whoever cannot see it. */
final class LifeWords {
    private LifeWords() {}

    static String of(Life life, List<LifeLane> lanes, List<MeatWithdrawal> withdrawals) {
        List<String> words = new ArrayList<>();
        words.add("A line of time in days of life, one row a subject.");
        words.add(
                life.exit() == null
                        ? "The calf is on the farm from birth to the end of what is recorded."
                        : "The calf " + exit(life.exit()) + " on day "
                                + life.dayOfLife(life.exit().time()) + ".");
        for (LifeLane lane : lanes) {
            if (lane.name().contains(", by day ")) {
                String last = lane.events().isEmpty()
                        ? "nothing recorded"
                        : lane.events().get(lane.events().size() - 1).caption();
                words.add(lane.name() + ": " + last + ".");
            }
        }
        for (Episode episode : life.episodes()) {
            words.add(episode.condition().replace('-', ' ') + " from day " + life.dayOfLife(episode.opened())
                    + " to day " + life.dayOfLife(episode.closed()) + ".");
        }
        for (MeatWithdrawal one : withdrawals) {
            if (one.counts()) {
                words.add(one.medicine() + " on day "
                        + life.dayOfLife(one.treatment().time())
                        + (one.lastDay() == null
                                ? ", no withdrawal recorded."
                                : ", withdrawal to the end of day "
                                        + (one.lastDay().toEpochDay()
                                                - life.birthDate().toEpochDay()) + "."));
            }
        }
        return String.join(" ", words);
    }

    static String exit(Exit exit) {
        return switch (exit.kind()) {
            case BORN_DEAD -> "born dead";
            case DIED -> "died";
            case LEFT -> "left";
        };
    }

    /** Whether an illness event is about a condition; a recovery that names none is about every one. */
    static boolean names(LifeEvent event, String condition) {
        if (event.data() instanceof IllnessFound found) {
            return found.condition().equals(condition);
        }
        return event.data() instanceof Recovered recovered
                && (recovered.condition() == null || recovered.condition().equals(condition));
    }
}
