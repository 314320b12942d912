package wisp.site;

import java.util.List;

/**
 * A page's text with a no-break space between a number and a short unit, so that no line begins with "%" or "h". What
 * stands inside tags is left alone: a field must send back what was recorded.
 */
final class BoundUnits {
    private static final char NO_BREAK = '\u00a0';

    private static final List<String> UNITS =
            List.of("%", "h", "d", "min", "kg", "g", "l", "ml", "cm", "°C", "hours", "hour", "days", "day", "points");

    private BoundUnits() {}

    /** The page with its units bound. */
    static String in(String html) {
        char[] letters = html.toCharArray();
        boolean tag = false;
        char quote = 0;
        for (int i = 0; i < letters.length; i++) {
            char letter = letters[i];
            if (tag) {
                if (quote != 0) {
                    quote = letter == quote ? 0 : quote;
                } else if (letter == '"' || letter == '\'') {
                    quote = letter;
                } else if (letter == '>') {
                    tag = false;
                }
            } else if (letter == '<') {
                tag = true;
            } else if (letter == ' ' && i > 0 && ends(letters[i - 1]) && unit(html, i + 1)) {
                letters[i] = NO_BREAK;
            }
        }
        return new String(letters);
    }

    private static boolean ends(char number) {
        return number >= '0' && number <= '9' || number == '∞';
    }

    private static boolean unit(String html, int at) {
        for (String unit : UNITS) {
            if (html.startsWith(unit, at)) {
                int end = at + unit.length();
                if (end == html.length() || !Character.isLetterOrDigit(html.charAt(end))) {
                    return true;
                }
            }
        }
        return false;
    }
}
