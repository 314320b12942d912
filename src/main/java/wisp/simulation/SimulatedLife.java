package wisp.simulation;

import java.time.OffsetDateTime;
import java.util.List;
import wisp.event.Event;

/**
 * One calf's events in order of recording; their {@code json} is null.
 *
 * @param subject the calf's key
 * @param born the true moment of birth, no earlier than that of the life before but for twins
 * @param navelMinutes the true minutes from birth to navel treatment, infinite where never treated, written or not
 * @param dirtScore the true cleanliness score
 */
public record SimulatedLife(
        String subject, OffsetDateTime born, double navelMinutes, int dirtScore, List<Event> events) {}
