package wisp.chart;

import java.util.ArrayList;
import java.util.List;

/**
 * A line of text at its place on the paper.
 *
 * @param x where it is anchored, in pixels
 * @param y its base line, in pixels
 * @param anchor which end of it stands at x
 * @param role what it is for; a style sheet's class
 * @param text the words
 * @param upright whether it is turned to read from bottom to top
 */
record Lettering(double x, double y, Anchor anchor, Role role, String text, boolean upright) {

    /** Height of the letters in pixels; the painters and the style sheet use the same. */
    static final double SIZE = 13;
    /** From one line to the next. */
    static final double LINE = 17;

    enum Anchor {
        START,
        MIDDLE,
        END
    }

    enum Role {
        TICK,
        AXIS,
        LIMIT,
        CAPTION,
        KEY,
        RISK
    }

    static Lettering of(double x, double y, Anchor anchor, Role role, String text) {
        return new Lettering(x, y, anchor, role, text, false);
    }

    /**
     * A careful guess of a text's width: shares of the letter height as in common sans serif faces, a tenth wider, as
     * the page's own face is not known here.
     */
    static double width(String text) {
        double shares = text.codePoints().mapToDouble(Lettering::share).sum();
        return shares * SIZE * 1.1;
    }

    private static double share(int letter) {
        if (" ijlt.,:;'|!fr()[]/-".indexOf(letter) >= 0) {
            return 0.36;
        }
        if ("mwMW@%".indexOf(letter) >= 0) {
            return 0.9;
        }
        return Character.isUpperCase(letter) || letter > 0x2000 ? 0.69 : 0.58;
    }

    /** The words cut into lines that fit the width; a word that is longer than the width keeps a line of its own. */
    static List<String> wrap(String text, double room) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.strip().split("\\s+")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (!line.isEmpty() && width(longer) > room) {
                lines.add(line.toString());
                line.setLength(0);
                line.append(word);
            } else {
                line.setLength(0);
                line.append(longer);
            }
        }
        lines.add(line.toString());
        return lines;
    }

    /** The space that the text takes up. */
    Box box() {
        double wide = width(text);
        double left = anchor == Anchor.START ? x : anchor == Anchor.MIDDLE ? x - wide / 2 : x - wide;
        return upright
                ? new Box(x - SIZE, y - (anchor == Anchor.END ? 0 : wide), x, y + (anchor == Anchor.END ? wide : 0))
                : new Box(left, y - SIZE * 0.8, left + wide, y + SIZE * 0.25);
    }
}
