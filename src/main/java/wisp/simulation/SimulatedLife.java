package wisp.simulation;

import java.util.List;
import wisp.event.Event;

/**
 * One calf's events in order of recording; their {@code json} is null.
 *
 * @param subject the calf's key
 * @param navelMinutes the true minutes from birth to navel treatment, infinite where never treated, written or not
 * @param dirtScore the true cleanliness score
 */
public record SimulatedLife(String subject, double navelMinutes, int dirtScore, List<Event> events) {}
