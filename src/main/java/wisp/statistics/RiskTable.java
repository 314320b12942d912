package wisp.statistics;

import java.util.Arrays;

/**
 * The counts at each distinct exit time from which every curve and test of time to event is computed.
 *
 * <p>Ties: an event at t precedes a censoring at t, so lives with either are at risk at t. A life that enters late is
 * at risk over (entry, exit]; entry 0 counts as observed from the origin, so that an event at time 0 is in the risk
 * set.
 *
 * @param times distinct exit times, ascending
 * @param atRisk lives at risk at each time
 * @param events events by cause (row cause - 1) at each time
 * @param censored lives censored at each time
 * @param followUp the spans themselves
 */
record RiskTable(double[] times, int[] atRisk, int[][] events, int[] censored, FollowUp followUp) {

    static RiskTable of(String what, double[] entries, double[] exits, int[] causes, int causeCount) {
        check(what, entries, exits, causes, causeCount);
        FollowUp followUp = FollowUp.of(entriesAfterOrigin(entries), exits);
        double[] times = distinct(followUp.exits());
        int[][] events = new int[causeCount][times.length];
        int[] censored = new int[times.length];
        for (int i = 0; i < exits.length; i++) {
            int at = Arrays.binarySearch(times, exits[i] + 0.0);
            if (causes[i] == 0) {
                censored[at]++;
            } else {
                events[causes[i] - 1][at]++;
            }
        }
        return new RiskTable(times, atRisk(times, events, censored, followUp), events, censored, followUp);
    }

    /** Events of any cause at the {@code i}-th time. */
    int allEvents(int i) {
        int sum = 0;
        for (int[] cause : events) {
            sum += cause[i];
        }
        return sum;
    }

    /** Causes of one kind of event: 1 where it happened, 0 where the life was censored. */
    static int[] causes(boolean[] events) {
        int[] causes = new int[events.length];
        for (int i = 0; i < events.length; i++) {
            causes[i] = events[i] ? 1 : 0;
        }
        return causes;
    }

    private static int[] atRisk(double[] times, int[][] events, int[] censored, FollowUp followUp) {
        int[] atRisk = new int[times.length];
        if (followUp.entries().length > 0) {
            Arrays.setAll(atRisk, i -> followUp.atRiskAt(times[i]));
            return atRisk;
        }
        int left = 0;
        for (int i = times.length - 1; i >= 0; i--) {
            left += censored[i];
            for (int[] cause : events) {
                left += cause[i];
            }
            atRisk[i] = left;
        }
        return atRisk;
    }

    private static double[] entriesAfterOrigin(double[] entries) {
        double[] shifted = new double[entries.length];
        Arrays.setAll(shifted, i -> entries[i] == 0 ? Double.NEGATIVE_INFINITY : entries[i]);
        return shifted;
    }

    private static double[] distinct(double[] ascending) {
        double[] kept = new double[ascending.length];
        int count = 0;
        for (double time : ascending) {
            if (count == 0 || time != kept[count - 1]) {
                kept[count++] = time + 0.0; // -0.0 becomes 0.0, for the binary search tells them apart
            }
        }
        return Arrays.copyOf(kept, count);
    }

    private static void check(String what, double[] entries, double[] exits, int[] causes, int causeCount) {
        if (exits.length == 0) {
            throw new CannotEstimate(what, "there are no observations");
        }
        if (causes.length != exits.length || (entries.length != 0 && entries.length != exits.length)) {
            throw new CannotEstimate(what, "the times, events and entries given are not equally many");
        }
        for (int i = 0; i < exits.length; i++) {
            if (!(exits[i] >= 0 && exits[i] < Double.POSITIVE_INFINITY)) {
                throw new CannotEstimate(what, "time " + (i + 1) + " is " + exits[i] + ", not a number from 0 up");
            }
            if (causes[i] < 0 || causes[i] > causeCount) {
                throw new CannotEstimate(
                        what, "cause " + (i + 1) + " is " + causes[i] + ", not between 0 and " + causeCount);
            }
        }
        for (int i = 0; i < entries.length; i++) {
            boolean origin = entries[i] == 0;
            if (!(origin || entries[i] > 0 && entries[i] < exits[i])) {
                throw new CannotEstimate(
                        what, "entry " + (i + 1) + " at " + entries[i] + " is not before its exit at " + exits[i]);
            }
        }
    }
}
