package wisp.sample;

import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.Objects;
import java.util.stream.Stream;
import wisp.event.SampleResult;
import wisp.event.SampleSent;
import wisp.event.TissueSampled;
import wisp.history.Exit;
import wisp.history.LifeEvent;

/**
 * One sample on its way. What is not recorded is null, at least one of the three events is there.
 *
 * @param taken its taking
 * @param sent its sending
 * @param result what the laboratory said
 * @param again true where another sample was taken before this one had a result
 * @param end the calf's death or leaving, with which waiting ends; null while it is there
 */
public record TissueSample(LifeEvent taken, LifeEvent sent, LifeEvent result, boolean again, Exit end) {
    /** How far it has come. */
    public enum State {
        TAKEN("taken, not sent"),
        SENT("at the laboratory"),
        TAKEN_AGAIN("no result, taken again"),
        NEGATIVE("negative"),
        INCONCLUSIVE("inconclusive"),
        POSITIVE("positive");

        private final String word;

        State(String word) {
            this.word = word;
        }

        /** The state in words. */
        public String word() {
            return word;
        }

        private boolean open() {
            return this == TAKEN || this == SENT;
        }
    }

    /** How far it has come. */
    public State state() {
        if (result != null) {
            return state(result);
        }
        return again ? State.TAKEN_AGAIN : sent == null ? State.TAKEN : State.SENT;
    }

    /** Whether somebody still waits for its result. */
    public boolean waiting() {
        return state().open() && end == null;
    }

    /** Whether it never had a result and, as the calf is gone, is waited for no more. */
    public boolean unanswered() {
        return state().open() && end != null;
    }

    static State state(LifeEvent result) {
        return switch (((SampleResult) result.data()).result()) {
            case NEGATIVE -> State.NEGATIVE;
            case INCONCLUSIVE -> State.INCONCLUSIVE;
            case POSITIVE -> State.POSITIVE;
        };
    }

    /** Calendar days since its first event, by the farm's clocks; 0 where nobody waits for it. */
    public long daysWaiting(Instant now, ZoneId zone) {
        if (!waiting()) {
            return 0;
        }
        Instant since = (taken == null ? sent : taken).time();
        return Math.max(
                0,
                ChronoUnit.DAYS.between(
                        since.atZone(zone).toLocalDate(), now.atZone(zone).toLocalDate()));
    }

    /** The tag number that it bears, as it was first written; empty where nobody said. */
    public String tagNumber() {
        return Stream.of(taken, sent, result)
                .filter(Objects::nonNull)
                .map(TissueSample::tagNumber)
                .filter(Objects::nonNull)
                .findFirst()
                .orElse("");
    }

    /** Who examines it, empty where nobody said. */
    public String laboratory() {
        String told = result == null ? null : ((SampleResult) result.data()).laboratory();
        String sentTo = sent == null ? null : ((SampleSent) sent.data()).laboratory();
        return told != null ? told : sentTo != null ? sentTo : "";
    }

    /** What it was tested for, empty where nobody said. */
    public String test() {
        String test = result == null ? null : ((SampleResult) result.data()).test();
        return test == null ? "" : test;
    }

    /** The tag number that an event of a sample says; null where it says none or is no such event. */
    static String tagNumber(LifeEvent event) {
        if (event.data() instanceof TissueSampled one) {
            return one.tagNumber();
        }
        if (event.data() instanceof SampleSent one) {
            return one.tagNumber();
        }
        return event.data() instanceof SampleResult one ? one.tagNumber() : null;
    }

    /** A sample of which this event alone is known. */
    public static TissueSample of(LifeEvent event) {
        return new TissueSample(null, null, null, false, null).with(event);
    }

    TissueSample with(LifeEvent event) {
        return switch (event.type()) {
            case TISSUE_SAMPLED -> new TissueSample(event, sent, result, again, end);
            case SAMPLE_SENT -> new TissueSample(taken, event, result, again, end);
            default -> new TissueSample(taken, sent, event, again, end);
        };
    }

    TissueSample overtaken() {
        return new TissueSample(taken, sent, result, result == null, end);
    }

    /** The same sample of a calf that is gone; one that was taken afterwards is waited for all the same. */
    TissueSample of(Exit exit) {
        boolean before = Stream.of(taken, sent, result)
                .filter(Objects::nonNull)
                .anyMatch(event -> !event.time().isAfter(exit.time()));
        return before ? new TissueSample(taken, sent, result, again, exit) : this;
    }
}
