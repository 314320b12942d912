package wisp.chart;

/**
 * A rectangle on the paper, in pixels, y downwards.
 *
 * @param left left edge
 * @param top top edge
 * @param right right edge
 * @param bottom bottom edge
 */
record Box(double left, double top, double right, double bottom) {

    double width() {
        return right - left;
    }

    double height() {
        return bottom - top;
    }

    boolean meets(Box other) {
        return left < other.right && other.left < right && top < other.bottom && other.top < bottom;
    }

    /** The area that both cover. */
    double shared(Box other) {
        return meets(other)
                ? (Math.min(right, other.right) - Math.max(left, other.left))
                        * (Math.min(bottom, other.bottom) - Math.max(top, other.top))
                : 0;
    }

    double middleX() {
        return (left + right) / 2;
    }

    double middleY() {
        return (top + bottom) / 2;
    }

    boolean holds(double x, double y) {
        return x >= left && x <= right && y >= top && y <= bottom;
    }

    /** How far a place is from its nearest point; 0 inside. */
    double from(double x, double y) {
        return Math.hypot(Math.max(0, Math.max(left - x, x - right)), Math.max(0, Math.max(top - y, y - bottom)));
    }

    static Box around(double x, double y, double reach) {
        return new Box(x - reach, y - reach, x + reach, y + reach);
    }
}
