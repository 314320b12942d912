package wisp.indicator;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/** Which calves a selection keeps, in words; the season and the day of knowledge have words of their own. */
public final class SelectionWords {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter DAY_OF_YEAR = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);

    private SelectionWords() {}

    /**
     * The calves, such as {@code female calves of breed Angus born in north boxes, from 1 Mar to 31 Mar 2026}; empty
     * where nothing narrows them.
     */
    public static String of(Selection selection) {
        if (!selection.filtered()) {
            return "";
        }
        String where = bornWhere(selection);
        return kind(selection, false) + (where.isEmpty() ? "" : " born" + where);
    }

    /** What the calves are beside where and when they were born, such as {@code female calves of breed Angus}. */
    public static String kind(Selection selection, boolean one) {
        boolean sexed = selection.sex() != null && !selection.sex().equals("unknown");
        StringBuilder words = new StringBuilder((sexed ? selection.sex() + " " : "") + (one ? "calf" : "calves"));
        words.append(selection.sex() != null && !sexed ? " of unknown sex" : "");
        words.append(selection.breed() == null ? "" : " of breed " + selection.breed());
        return words.append(parity(selection.parity())).toString();
    }

    /**
     * Where and when they were born, such as {@code in north boxes, from 1 Mar to 31 Mar 2026}, after a space; empty
     * where neither narrows them.
     */
    public static String bornWhere(Selection selection) {
        String dates = dates(selection.from(), selection.to());
        if (selection.pen() == null) {
            return dates;
        }
        String pen = selection.pen().equals(Stratum.NOT_RECORDED) ? "a pen not recorded" : selection.pen();
        return " in " + pen + (dates.isEmpty() ? "" : ",") + dates;
    }

    /**
     * A sentence about some calves alone.
     *
     * @param only which, as {@link #of} names them; where it is empty the sentence stands as it is
     */
    public static String among(String only, String sentence) {
        return only.isEmpty()
                ? sentence
                : "Among " + only + ": " + Character.toLowerCase(sentence.charAt(0)) + sentence.substring(1);
    }

    /** The parameters that narrow the calves, by name. */
    public static Map<String, String> filters(Selection selection) {
        Map<String, String> filters = new LinkedHashMap<>(selection.parameters());
        filters.keySet().retainAll(Selection.FILTERS);
        return filters;
    }

    private static String parity(String parity) {
        if (parity == null) {
            return "";
        }
        return parity.equals(Stratum.NOT_RECORDED)
                ? " of dams whose parity is not recorded"
                : " of dams of parity " + parity;
    }

    /** Both days among them, though the second of a selection is the first that is not. */
    private static String dates(LocalDate from, LocalDate to) {
        if (from == null) {
            return to == null ? "" : " up to " + DAY.format(to.minusDays(1));
        }
        if (to == null) {
            return " from " + DAY.format(from) + " on";
        }
        LocalDate last = to.minusDays(1);
        if (last.equals(from)) {
            return " on " + DAY.format(from);
        }
        boolean year = last.getYear() == from.getYear();
        return " from " + (year ? DAY_OF_YEAR : DAY).format(from) + " to " + DAY.format(last);
    }
}
