package wisp.backup;

/** A backup that is not as it was written from some event on. */
final class DamagedBackup extends BackupFailure {
    private final long whole;

    DamagedBackup(String sentence, long whole, Throwable cause) {
        super(sentence, cause);
        this.whole = whole;
    }

    /** How many events, from the first on, are as they were written. */
    long whole() {
        return whole;
    }
}
