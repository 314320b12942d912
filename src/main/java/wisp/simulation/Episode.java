package wisp.simulation;

/**
 * One episode of illness as it truly went.
 *
 * @param onset when it was seen, minutes since 1970 in UTC
 * @param end when the calf was well again or died of it
 * @param fatal true where it ends in death
 */
record Episode(Illness illness, long onset, long end, boolean fatal) {}
