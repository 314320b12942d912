package wisp.question.season;

import java.util.ArrayList;
import java.util.List;
import wisp.indicator.Estimate;
import wisp.indicator.Verdict;

/** The rows behind a rate's episodes: a calf stands once for each. */
final class Episodic {
    private Episodic() {}

    static List<Integer> rows(Estimate rate) {
        List<Integer> rows = new ArrayList<>();
        for (Verdict verdict : rate.verdicts()) {
            for (int i = 0; i < verdict.count() && verdict.atRisk(); i++) {
                rows.add(verdict.row());
            }
        }
        return rows;
    }
}
