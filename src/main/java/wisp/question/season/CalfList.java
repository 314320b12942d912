package wisp.question.season;

import java.util.List;

/**
 * The calves, or episodes, behind one count of the answer; as many rows as the count says.
 *
 * @param id its name in an address
 * @param title what they have in common, a few words
 * @param rows rows of the cohort; a calf stands twice where two of its episodes count
 */
public record CalfList(String id, String title, List<Integer> rows) {

    /** How many there are. */
    public int count() {
        return rows.size();
    }
}
