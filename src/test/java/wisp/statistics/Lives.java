package wisp.statistics;

import java.util.Random;

/** Invented lives for the randomised tests, drawn from a seed that the test prints. */
record Lives(double[] times, int[] causes, int[] groups, int[] strata) {

    /** Exponential causes 1 and 2 and censoring, on a grid coarse enough for many ties. */
    static Lives drawn(long seed, int n) {
        System.out.println("Lives drawn with seed " + seed + ", n = " + n);
        Random random = new Random(seed);
        double[] times = new double[n];
        int[] causes = new int[n];
        int[] groups = new int[n];
        int[] strata = new int[n];
        for (int i = 0; i < n; i++) {
            times[i] = Math.ceil(-12 * Math.log(1 - random.nextDouble()));
            double which = random.nextDouble();
            causes[i] = which < 0.35 ? 0 : which < 0.75 ? 1 : 2;
            groups[i] = random.nextInt(3);
            strata[i] = random.nextInt(2);
        }
        return new Lives(times, causes, groups, strata);
    }

    boolean[] anyEvent() {
        boolean[] events = new boolean[causes.length];
        for (int i = 0; i < events.length; i++) {
            events[i] = causes[i] > 0;
        }
        return events;
    }

    int[] oneCause() {
        return RiskTable.causes(anyEvent());
    }

    Lives scaled(double factor) {
        double[] scaled = new double[times.length];
        for (int i = 0; i < scaled.length; i++) {
            scaled[i] = factor * times[i];
        }
        return new Lives(scaled, causes, groups, strata);
    }

    Lives reversed() {
        int n = times.length;
        Lives other = new Lives(new double[n], new int[n], new int[n], new int[n]);
        for (int i = 0; i < n; i++) {
            other.times[i] = times[n - 1 - i];
            other.causes[i] = causes[n - 1 - i];
            other.groups[i] = groups[n - 1 - i];
            other.strata[i] = strata[n - 1 - i];
        }
        return other;
    }
}
