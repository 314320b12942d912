package wisp.interchange;

/** A file that cannot be written; the message is one whole sentence with the mend. */
public final class FileFailure extends RuntimeException {
    private static final long serialVersionUID = 1L;

    FileFailure(String sentence, Throwable cause) {
        super(sentence, cause);
    }
}
