package wisp.interchange;

import java.nio.file.Path;

/** Hears how an import goes on. */
public interface ImportListener {

    /** Some more of a file has been read: bytes of it, of its size, and rows so far over all files. */
    default void progress(Path file, long bytes, long size, long rows) {}

    /** A row cannot go in; told for every one of them, however many there are. */
    default void refused(Refusal refusal) {}

    /** A listener that listens to nothing. */
    static ImportListener silent() {
        return new ImportListener() {};
    }
}
