package wisp.history;

import java.time.Instant;

/**
 * One episode of illness. It closes at the first {@code recovered}, or 7 × 24 h after the last event that names the
 * condition, or when the animal dies or leaves.
 *
 * @param condition the illness
 * @param opened when it was found
 * @param timeKnown false where only the day of finding is known
 * @param closed when it closed, as far as recorded
 * @param event the {@code illness-found} that opened it
 */
public record Episode(String condition, Instant opened, boolean timeKnown, Instant closed, LifeEvent event) {}
