package wisp.statistics;

/**
 * Says that a figure cannot be estimated from the numbers given, and why. Thrown in place of a NaN, so that the reason
 * reaches the reader: "The risk ratio cannot be estimated because there are no cases in either group."
 */
public final class CannotEstimate extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /**
     * @param what the figure, with its article, such as "The risk ratio"
     * @param because the reason, a clause without its full stop, such as "there are no cases in either group"
     */
    public CannotEstimate(String what, String because) {
        super(what + " cannot be estimated because " + because + ".");
    }
}
