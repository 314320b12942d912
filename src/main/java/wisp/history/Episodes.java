package wisp.history;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wisp.event.IllnessFound;
import wisp.event.Recovered;
import wisp.event.Treated;

/** Folds an animal's illness events into episodes. */
final class Episodes {
    /**
     * An episode closes when this long has passed without a word of it; an event at just this time still continues it.
     */
    static final Duration SILENCE = Duration.ofHours(7 * 24);

    private static final class Open {
        private final LifeEvent first;
        private Instant lastWord;

        Open(LifeEvent first) {
            this.first = first;
            this.lastWord = first.time();
        }

        Episode closedAt(String condition, Instant time) {
            return new Episode(condition, first.time(), first.timeKnown(), time, first);
        }

        boolean silentAt(Instant time) {
            return time.isAfter(lastWord.plus(SILENCE));
        }
    }

    private final Map<String, Open> open = new LinkedHashMap<>();
    private final List<Episode> episodes = new ArrayList<>();

    private Episodes() {}

    /**
     * The episodes among an animal's events.
     *
     * @param events events that count, in order
     * @param exit when the animal died or left, null while it is here
     */
    static List<Episode> of(List<LifeEvent> events, Instant exit) {
        Episodes fold = new Episodes();
        for (LifeEvent event : events) {
            if (event.data() instanceof IllnessFound found) {
                fold.found(found.condition(), event);
            } else if (event.data() instanceof Treated treated && treated.condition() != null) {
                fold.mentioned(treated.condition(), event.time());
            } else if (event.data() instanceof Recovered recovered) {
                fold.recovered(recovered.condition(), event.time());
            }
        }
        fold.open.forEach((condition, last) -> {
            Instant silent = last.lastWord.plus(SILENCE);
            boolean cut = exit != null && exit.isBefore(silent);
            fold.episodes.add(last.closedAt(condition, cut ? exit : silent));
        });
        fold.episodes.sort(Comparator.comparing(Episode::opened)
                .thenComparing(episode -> episode.event().sequence()));
        return List.copyOf(fold.episodes);
    }

    private void found(String condition, LifeEvent event) {
        Open current = open.get(condition);
        if (current != null && current.silentAt(event.time())) {
            episodes.add(current.closedAt(condition, current.lastWord.plus(SILENCE)));
            current = null;
        }
        if (current == null) {
            open.put(condition, new Open(event));
        } else {
            current.lastWord = event.time();
        }
    }

    private void mentioned(String condition, Instant time) {
        Open current = open.get(condition);
        if (current != null && !current.silentAt(time)) {
            current.lastWord = time;
        }
    }

    private void recovered(String condition, Instant time) {
        for (String one : condition == null ? List.copyOf(open.keySet()) : List.of(condition)) {
            Open current = open.remove(one);
            if (current != null) {
                Instant silent = current.lastWord.plus(SILENCE);
                episodes.add(current.closedAt(one, time.isBefore(silent) ? time : silent));
            }
        }
    }
}
