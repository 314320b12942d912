package wisp.question;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import wisp.indicator.Stratum;

/**
 * A sentence whose counts know which calves they are of: {@link #plain} is its words alone, {@link #pieces} the counts
 * with the names of their lists, for whoever can open them.
 *
 * <p>A count stands in the text between marks, so that sentences are put together like any other text. The marks are
 * noncharacters of Unicode, which no text that people write holds: {@code FDD0 name FDD1 value FDD1 words FDD2}.
 *
 * @param marked the words, each count between its marks
 */
public record Counted(String marked) {
    /** Names a figure whose calves are counted. */
    public static final String FIGURE = "figure";
    /** Names which part of a figure. */
    public static final String PART = "part";
    /** Names one of an answer's own lists. */
    public static final String LIST = "list";
    /** Stands where everybody asked for is counted. */
    public static final String ASKED = "asked";

    private static final String OPEN = "\uFDD0";
    private static final String NEXT = "\uFDD1";
    private static final String CLOSE = "\uFDD2";
    private static final Pattern COUNT = Pattern.compile(OPEN + "([^" + OPEN + CLOSE + "]*)" + CLOSE);

    /**
     * Some words of a sentence.
     *
     * @param calves names of the list of the calves that the words count, empty where they count none
     */
    public record Piece(String text, Map<String, String> calves) {}

    /**
     * A count in words, with the names of its list; the words alone where there is nobody to list.
     *
     * @param names name and value in turn
     */
    public static String count(int n, String words, String... names) {
        return n == 0 ? words : OPEN + String.join(NEXT, names) + NEXT + words + CLOSE;
    }

    /** A count of everybody asked for. */
    public static String asked(int n, String words) {
        return count(n, words, ASKED, "");
    }

    /** A count that is a part of a figure, such as its numerator. */
    public static String figure(long n, String words, String figure, String part) {
        return count((int) n, words, FIGURE, figure, PART, part);
    }

    /** A count of calves in a list of the answer's own. */
    public static String list(int n, String words, String list) {
        return count(n, words, LIST, list);
    }

    /** The same of one stratum. */
    static String stratum(int n, String words, String figure, String part, Stratum by, String stratum, String season) {
        return season == null
                ? count(n, words, FIGURE, figure, PART, part, "by", by.word(), "stratum", stratum)
                : count(n, words, FIGURE, figure, PART, part, "by", by.word(), "stratum", stratum, "season", season);
    }

    /** Scored calves whose pen nobody wrote down. */
    static String noPen(int n, String words) {
        return stratum(n, words, PensQuestion.FIGURE, "denominator", Stratum.PEN, Stratum.NOT_RECORDED, null);
    }

    /** The words alone. */
    public String plain() {
        StringBuilder plain = new StringBuilder();
        pieces().forEach(piece -> plain.append(piece.text()));
        return plain.toString();
    }

    /** The words in their order, each count by itself. */
    public List<Piece> pieces() {
        List<Piece> pieces = new ArrayList<>();
        Matcher count = COUNT.matcher(marked);
        int from = 0;
        while (count.find()) {
            words(pieces, from, count.start());
            String[] parts = count.group(1).split(NEXT, -1);
            Map<String, String> names = new LinkedHashMap<>();
            for (int i = 0; i + 1 < parts.length; i += 2) {
                names.put(parts[i], parts[i + 1]);
            }
            pieces.add(new Piece(parts[parts.length - 1], names));
            from = count.end();
        }
        words(pieces, from, marked.length());
        return pieces;
    }

    private void words(List<Piece> pieces, int from, int to) {
        if (to > from) {
            pieces.add(new Piece(marked.substring(from, to), Map.of()));
        }
    }
}
