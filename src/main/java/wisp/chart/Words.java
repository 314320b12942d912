package wisp.chart;

/** Checks on what a picture is given; the messages name the place. */
final class Words {

    private Words() {}

    static String require(String text, String what) {
        if (text == null || text.isBlank()) {
            throw new IllegalArgumentException("There is no text for " + what + ": say in words what it shows.");
        }
        return text;
    }

    static double finite(double number, String what) {
        if (!Double.isFinite(number)) {
            throw new IllegalArgumentException("A picture cannot draw " + what + " = " + number
                    + ": leave out what could not be computed, or leave its limits empty.");
        }
        return number;
    }
}
