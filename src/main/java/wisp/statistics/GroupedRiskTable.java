package wisp.statistics;

import java.util.Arrays;

/**
 * The risk table of one stratum, split by group: what the tests that compare curves walk through.
 *
 * @param times distinct exit times of the stratum, ascending
 * @param atRisk lives at risk by group and time
 * @param events events by cause (cause - 1), group and time
 */
record GroupedRiskTable(double[] times, int[][] atRisk, int[][][] events) {

    /** One table a stratum, from lives labelled by group and stratum; groups counted by rank of their label. */
    static GroupedRiskTable[] of(
            String what, double[] times, int[] causes, int causeCount, int[] groups, int[] strata) {
        if (groups.length != times.length || strata.length != times.length) {
            throw new CannotEstimate(what, "the groups or strata given are not one a life");
        }
        double[] checked =
                RiskTable.of(what, new double[0], times, causes, causeCount).times();
        int[] groupLabels = labels(groups);
        if (groupLabels.length < 2) {
            throw new CannotEstimate(what, "there is only one group");
        }
        int[] stratumLabels = labels(strata);
        if (stratumLabels.length == 1) {
            return new GroupedRiskTable[] {of(checked, times, causes, causeCount, groups, groupLabels)};
        }
        GroupedRiskTable[] tables = new GroupedRiskTable[stratumLabels.length];
        for (int s = 0; s < tables.length; s++) {
            int stratum = stratumLabels[s];
            int[] rows = rows(strata, stratum);
            double[] own = Arrays.stream(rows).mapToDouble(i -> times[i] + 0.0).toArray();
            int[] ownCauses = Arrays.stream(rows).map(i -> causes[i]).toArray();
            int[] ownGroups = Arrays.stream(rows).map(i -> groups[i]).toArray();
            double[] distinct = Arrays.stream(own).sorted().distinct().toArray();
            tables[s] = of(distinct, own, ownCauses, causeCount, ownGroups, groupLabels);
        }
        return tables;
    }

    /** Events of one cause at the {@code i}-th time in all groups. */
    int allEvents(int cause, int i) {
        int sum = 0;
        for (int[] group : events[cause - 1]) {
            sum += group[i];
        }
        return sum;
    }

    /** Lives at risk at the {@code i}-th time in all groups. */
    int allAtRisk(int i) {
        int sum = 0;
        for (int[] group : atRisk) {
            sum += group[i];
        }
        return sum;
    }

    /** The distinct labels, ascending. */
    static int[] labels(int[] values) {
        int[] ascending = values.clone();
        Arrays.sort(ascending);
        int count = 0;
        for (int value : ascending) {
            if (count == 0 || value != ascending[count - 1]) {
                ascending[count++] = value;
            }
        }
        return Arrays.copyOf(ascending, count);
    }

    private static int[] rows(int[] strata, int stratum) {
        int[] rows = new int[strata.length];
        int count = 0;
        for (int i = 0; i < strata.length; i++) {
            if (strata[i] == stratum) {
                rows[count++] = i;
            }
        }
        return Arrays.copyOf(rows, count);
    }

    private static GroupedRiskTable of(
            double[] distinct, double[] times, int[] causes, int causeCount, int[] groups, int[] labels) {
        int[][] atRisk = new int[labels.length][distinct.length];
        int[][][] events = new int[causeCount][labels.length][distinct.length];
        for (int i = 0; i < times.length; i++) {
            int at = Arrays.binarySearch(distinct, times[i] + 0.0);
            int group = Arrays.binarySearch(labels, groups[i]);
            atRisk[group][at]++;
            if (causes[i] > 0) {
                events[causes[i] - 1][group][at]++;
            }
        }
        for (int[] group : atRisk) {
            for (int i = distinct.length - 2; i >= 0; i--) {
                group[i] += group[i + 1]; // those leaving at a time or later are at risk there
            }
        }
        return new GroupedRiskTable(distinct, atRisk, events);
    }
}
