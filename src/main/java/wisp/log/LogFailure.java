package wisp.log;

/** The log cannot be opened, read or written; the message is one whole sentence with the mend. */
public class LogFailure extends RuntimeException {
    /** A failure with the sentence that a user reads, and what lay behind it. */
    public LogFailure(String sentence, Throwable cause) {
        super(sentence, cause);
    }
}
