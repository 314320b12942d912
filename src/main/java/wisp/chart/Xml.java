package wisp.chart;

import java.util.Locale;

/** Text and numbers as they are written in XML. */
final class Xml {

    private Xml() {}

    /** The text with its markup characters escaped; characters that XML 1.0 forbids become U+FFFD. */
    static String text(String text) {
        StringBuilder out = new StringBuilder();
        text.codePoints().forEach(letter -> {
            switch (letter) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                case '\'' -> out.append("&#39;");
                default -> out.appendCodePoint(isAllowed(letter) ? letter : 0xFFFD);
            }
        });
        return out.toString();
    }

    private static boolean isAllowed(int letter) {
        return letter == '\t'
                || letter == '\n'
                || letter >= 0x20 && letter <= 0xD7FF
                || letter >= 0xE000 && letter <= 0xFFFD
                || letter >= 0x10000;
    }

    /** A length in pixels, to a tenth. */
    static String px(double length) {
        double rounded = Math.round(length * 10) / 10.0;
        return rounded == Math.rint(rounded)
                ? Long.toString((long) rounded)
                : String.format(Locale.ROOT, "%.1f", rounded);
    }

    /** A place on paper. */
    static String at(double x, double y) {
        return px(x) + "," + px(y);
    }
}
