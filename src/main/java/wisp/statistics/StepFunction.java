package wisp.statistics;

import java.util.Arrays;

/** Reading a right-continuous step function between its steps and after the last. */
final class StepFunction {
    private StepFunction() {}

    /** Index of the last step at or before {@code time}, or -1 before the first. */
    static int lastAtOrBefore(double[] times, double time) {
        if (!(time >= 0)) {
            throw new CannotEstimate("A curve", "the time asked for is " + time + ", not a number from 0 up");
        }
        int found = Arrays.binarySearch(times, time + 0.0);
        return found >= 0 ? found : -found - 2;
    }

    /** The interval as it is up to the last exit; after it, marked as held from there. */
    static Interval held(Interval there, double time, FollowUp followUp) {
        if (time <= followUp.last()) {
            return there;
        }
        String method = there.method() + ", held from the last follow-up at " + followUp.last();
        return new Interval(there.value(), there.low(), there.high(), there.level(), method);
    }
}
