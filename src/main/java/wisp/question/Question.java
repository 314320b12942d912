package wisp.question;

import com.fasterxml.jackson.databind.node.ObjectNode;
import wisp.cohort.Cohort;
import wisp.indicator.Selection;

/** One of the questions that Wisp answers as a whole. */
@FunctionalInterface
public interface Question {

    /** Everything that the page of the question shows, as JSON. */
    ObjectNode answer(Cohort cohort, Selection selection);
}
