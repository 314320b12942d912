package wisp.interchange;

import java.io.BufferedReader;
import java.io.IOException;

/** What stands between the cells of a CSV file: told from its first line, or said there as {@code sep=;}. */
final class Delimiter {
    private static final String CANDIDATES = ",;\t|";
    private static final int LONGEST_HEADER = 1 << 16;

    private Delimiter() {}

    /** The candidate that the header line holds most of, outside quotation marks; a comma where it holds none. */
    static char sniff(String header) {
        int[] seen = new int[CANDIDATES.length()];
        boolean quoted = false;
        for (char letter : header.toCharArray()) {
            quoted ^= letter == '"';
            int candidate = quoted ? -1 : CANDIDATES.indexOf(letter);
            if (candidate >= 0) {
                seen[candidate]++;
            }
        }
        int most = 0;
        for (int i = 1; i < seen.length; i++) {
            most = seen[i] > seen[most] ? i : most;
        }
        return CANDIDATES.charAt(most);
    }

    /** The first line with anything in it, quoted line breaks inside. */
    static String header(BufferedReader text) throws IOException {
        StringBuilder line = new StringBuilder();
        boolean quoted = false;
        for (int next = text.read(); next >= 0 && line.length() < LONGEST_HEADER; next = text.read()) {
            quoted ^= next == '"';
            if (!quoted && (next == '\n' || next == '\r')) {
                if (!line.toString().isBlank()) {
                    return line.toString();
                }
                line.setLength(0);
            } else {
                line.append((char) next);
            }
        }
        return line.toString();
    }
}
