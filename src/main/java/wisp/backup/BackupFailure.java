package wisp.backup;

/** A backup cannot be made, read or restored; the message is whole sentences with the mend. */
public class BackupFailure extends RuntimeException {
    BackupFailure(String sentence, Throwable cause) {
        super(sentence, cause);
    }
}
