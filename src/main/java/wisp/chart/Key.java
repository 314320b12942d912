package wisp.chart;

/** The key of a picture: a small sample of each named layer beside its name. */
final class Key {

    /** Width of a sample in pixels. */
    static final double SAMPLE = 22;

    private Key() {}

    /**
     * A sample of a layer's drawing.
     *
     * @param x left edge, in pixels
     * @param y middle, in pixels
     * @param layer the layer it stands for
     */
    record Sample(double x, double y, Layer layer) {}

    /** Whether the layer is named elsewhere, or not at all. */
    static boolean leavesOut(Layer layer) {
        return layer.name().isEmpty() || layer instanceof Limit || layer instanceof NumbersAtRisk;
    }
}
