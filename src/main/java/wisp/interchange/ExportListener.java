package wisp.interchange;

/** Hears how an export goes on. */
@FunctionalInterface
public interface ExportListener {

    /** So many of the log's events have been gone through. */
    void progress(long events, long all);

    /** A listener that listens to nothing. */
    static ExportListener silent() {
        return (events, all) -> {};
    }
}
