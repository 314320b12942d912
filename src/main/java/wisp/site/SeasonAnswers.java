package wisp.site;

import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.Map;
import wisp.cohort.Cohort;
import wisp.indicator.Indicator;
import wisp.indicator.Selection;
import wisp.question.season.SeasonAnswer;
import wisp.question.season.SeasonQuestion;
import wisp.records.Records;

/**
 * The answers given lately. An answer holds as long as its cohort does: a new event makes a new cohort, and nothing that
 * was worked out from an older one is found again.
 */
final class SeasonAnswers {
    private static final int KEPT = 16;

    private record Key(Selection selection, String divided) {}

    private record Given(Cohort cohort, SeasonAnswer answer) {}

    private final SeasonQuestion question;
    private final Map<Key, Given> given = new LinkedHashMap<>(KEPT, 0.75f, true);

    SeasonAnswers(Records records) {
        this.question = new SeasonQuestion(records.definitions());
    }

    SeasonAnswer of(Asked asked, Indicator divided) {
        Key key = new Key(asked.selection().by(null), divided.id());
        synchronized (given) {
            Given last = given.get(key);
            // the very same cohort: comparing two of them by content would cost more than the answer
            if (last != null && last.cohort() == asked.cohort()) {
                return last.answer();
            }
        }
        SeasonAnswer answer = question.of(asked.cohort(), asked.selection(), divided);
        synchronized (given) {
            given.put(key, new Given(asked.cohort(), answer));
            if (given.size() > KEPT) {
                Iterator<Key> oldest = given.keySet().iterator();
                oldest.next();
                oldest.remove();
            }
        }
        return answer;
    }
}
