package wisp.log;

import wisp.event.Event;

/**
 * An event as the log holds it.
 *
 * @param sequence its place: 1, 2, 3 … without gaps
 * @param hash SHA-256, in hex, over the previous event's hash and this event's canonical JSON
 * @param event the event; its {@code recordedTime} is always set and its {@code json} is canonical (RFC 8785)
 */
public record StoredEvent(long sequence, String hash, Event event) {}
