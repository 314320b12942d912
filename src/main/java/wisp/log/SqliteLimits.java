package wisp.log;

import java.time.Duration;

/**
 * How far one process may go with a SQLite file.
 *
 * @param busyTimeout how long to wait for another process's write
 * @param pages how many pages of 4 kB the file may have; SQLite's own limit where nothing else is said
 */
record SqliteLimits(Duration busyTimeout, long pages) {
    /** A write takes milliseconds: ten seconds of waiting mean that something is wrong. */
    static final SqliteLimits USUAL = new SqliteLimits(Duration.ofSeconds(10), 4_294_967_294L);
}
