package wisp.question;

import java.util.List;
import java.util.Locale;

/**
 * The calves behind one count of the pens' answer, as many as the count says.
 *
 * @param id its name in an address
 * @param title what they have in common, a few words
 * @param calves in the order of their pens, then of the records
 */
public record ScoredCalves(String id, String title, List<ScoredCalf> calves) {

    /** How many there are. */
    public int count() {
        return calves.size();
    }

    /** A word of an address for a class's name. */
    static String word(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    }
}
