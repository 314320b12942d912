package wisp.sample;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import wisp.cohort.Cohort;
import wisp.event.EventType;
import wisp.history.Life;
import wisp.history.LifeEvent;
import wisp.tag.TagNumber;

/**
 * A result that is not negative stands on every page until the animal is gone or a later result is negative. One that
 * matches no calf stands too, under the tag number that the laboratory wrote.
 *
 * @param life the animal; without a birth where the result matches none
 * @param result what the laboratory said
 */
public record StandingAlert(Life life, LifeEvent result) {
    private static final Comparator<StandingAlert> WORST_AND_NEWEST_FIRST = Comparator.comparing(
                    (StandingAlert alert) -> !alert.positive())
            .thenComparing(StandingAlert::result, LifeEvent.ORDER.reversed());

    /** Those of a herd, positive ones before inconclusive ones, the newest first. */
    public static List<StandingAlert> of(Cohort cohort) {
        List<StandingAlert> alerts = new ArrayList<>();
        Set<String> strays = new HashSet<>();
        for (Life life : cohort.suspects()) {
            if (!gone(life)) {
                SampleChain.counts(life)
                        .filter(result -> TissueSample.state(result) != TissueSample.State.NEGATIVE)
                        .ifPresent(result -> alerts.add(new StandingAlert(life, result)));
            }
        }
        alerts.sort(WORST_AND_NEWEST_FIRST);
        alerts.removeIf(alert ->
                alert.stray() && !strays.add(TagNumber.read(alert.life().key()).key()));
        return alerts;
    }

    /** A number that is no animal's; two writings of one number are one alert. */
    private boolean stray() {
        return life.born() == null && !TagIndex.tagged(life);
    }

    /** An animal without a recorded birth has no exit that counts, and may be gone all the same. */
    private static boolean gone(Life life) {
        return life.exit() != null
                || life.born() == null
                        && events(life).anyMatch(e -> e.type() == EventType.DIED || e.type() == EventType.LEFT);
    }

    private static Stream<LifeEvent> events(Life life) {
        return Stream.concat(life.events().stream(), life.marks().stream().map(mark -> mark.event()));
    }

    /** Whether the laboratory said positive, and not inconclusive. */
    public boolean positive() {
        return TissueSample.state(result) == TissueSample.State.POSITIVE;
    }

    /** Whether it is known whose the result is. */
    public boolean matched() {
        return life.born() != null;
    }
}
