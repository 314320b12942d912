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

    static Box around(double x, double y, double reach) {
        return new Box(x - reach, y - reach, x + reach, y + reach);
    }
}
