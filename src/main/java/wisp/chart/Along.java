package wisp.chart;

/** The axis along which a layer's values run: whiskers, bars, reference values. */
public enum Along {
    /** Values run from left to right. */
    X,
    /** Values run from bottom to top. */
    Y
}
