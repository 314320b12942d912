package wisp.log;

/**
 * What a walk along the hash chain found.
 *
 * @param events how many events were read
 * @param head the newest event's hash; of an empty log the chain's beginning
 * @param broken the first sequence that is not as it was written, or 0 where the chain is whole
 * @param problem what is wrong there, a whole sentence; empty where the chain is whole
 */
public record Verification(long events, String head, long broken, String problem) {

    /** True when every event is as it was written. */
    public boolean whole() {
        return broken == 0;
    }
}
