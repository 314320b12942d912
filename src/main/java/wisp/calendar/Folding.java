package wisp.calendar;

import java.nio.charset.StandardCharsets;

/** Lines folded to 75 octets of UTF-8, their ends not counted, and never inside a character (RFC 5545, section 3.1). */
final class Folding {
    private static final int OCTETS = 75;

    private Folding() {}

    /** Folds every line of a text whose lines end with CR LF. */
    static String fold(String text) {
        StringBuilder folded = new StringBuilder(text.length() + text.length() / OCTETS * 3);
        int octets = 0;
        for (int i = 0; i < text.length(); ) {
            int character = text.codePointAt(i);
            String one = Character.toString(character);
            int size = one.getBytes(StandardCharsets.UTF_8).length;
            boolean ending = character == '\r' || character == '\n';
            if (!ending && octets + size > OCTETS) {
                folded.append("\r\n ");
                octets = 1;
            }
            folded.append(one);
            octets = ending ? 0 : octets + size;
            i += one.length();
        }
        return folded.toString();
    }
}
