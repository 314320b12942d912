package wisp.history;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import wisp.event.Birth;

/**
 * One animal's life as its events tell it.
 *
 * @param key the animal's own key
 * @param born the birth that counts, null where none is recorded
 * @param farm the farm as it was when the animal was born
 * @param birthDate the local date of birth, null without a birth
 * @param events every event that counts, the birth among them, in order of time and sequence
 * @param episodes episodes of illness in order of their opening
 * @param exit how it died or left, null while it is here
 * @param marks events that no figure counts, and why
 * @param withdrawn events that a correction withdrew or replaced
 */
public record Life(
        String key,
        LifeEvent born,
        Farm farm,
        LocalDate birthDate,
        List<LifeEvent> events,
        List<Episode> episodes,
        Exit exit,
        List<Mark> marks,
        List<Withdrawn> withdrawn) {

    /** What was said at birth. Only for an animal with a recorded birth. */
    public Birth birth() {
        return (Birth) born.data();
    }

    /** Whether the time of birth is known, and not only its date. */
    public boolean birthTimeKnown() {
        return born.timeKnown();
    }

    /** Exact age at a time. */
    public Duration ageAt(Instant time) {
        return Duration.between(born.time(), time);
    }

    /** Day of life of a time: calendar days of the farm's zone since the day of birth, which is day 0. */
    public long dayOfLife(Instant time) {
        return time.atZone(farm.zone()).toLocalDate().toEpochDay() - birthDate.toEpochDay();
    }

    /** The moment at which a day of life is over in the farm's zone. */
    public Instant endOfDay(long day) {
        return birthDate.plusDays(day + 1).atStartOfDay(farm.zone()).toInstant();
    }
}
