package wisp.log;

import java.util.List;

/** The rows of a store, in order of sequence, as they stand there. */
interface Rows {
    /** Rows with a sequence of at least {@code from}, in order, at most {@code limit} of them. */
    List<StoredRow> from(long from, long limit);
}
