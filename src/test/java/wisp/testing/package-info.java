/** Short text for tests: logs and calves that are read like real ones. */
package wisp.testing;
