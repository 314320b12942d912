package wisp.cli;

/** A line on the terminal that says how far long work is; silent where nobody watches. */
final class Progress {
    private final boolean watched;
    private long shownAt;

    private Progress(boolean watched) {
        this.watched = watched;
    }

    static Progress onTerminal() {
        return new Progress(System.console() != null);
    }

    void show(String what, long done, long all) {
        long now = System.nanoTime();
        boolean end = done >= all;
        if (watched && (end || now - shownAt > 200_000_000L)) {
            shownAt = now;
            long percent = all == 0 ? 100 : Math.min(100, 100 * done / all);
            System.err.print("\r" + what + ", " + percent + " %" + (end ? System.lineSeparator() : "   "));
            System.err.flush();
        }
    }
}
