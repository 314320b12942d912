package wisp.statistics;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Stratified two-by-two tables for the tests. */
final class Strata {

    /**
     * Eight dairy herds, treatment of mastitis and cure, of the epiR manual's fourth example; the manual prints a
     * Mantel-Haenszel odds ratio of 5.97 (2.72 to 13.13).
     */
    static final List<TwoByTwoTable> MASTITIS = of(
            new int[] {23, 10, 20, 5, 14, 6, 10, 3},
            new int[] {10, 2, 1, 2, 2, 2, 3, 0},
            new int[] {3, 2, 3, 2, 1, 3, 3, 2},
            new int[] {6, 4, 3, 2, 6, 3, 1, 1});

    private Strata() {}

    static List<TwoByTwoTable> of(int[] a, int[] b, int[] c, int[] d) {
        List<TwoByTwoTable> strata = new ArrayList<>();
        for (int i = 0; i < a.length; i++) {
            strata.add(new TwoByTwoTable(a[i], b[i], c[i], d[i]));
        }
        return strata;
    }

    static List<TwoByTwoTable> read(ReferenceFile reference) {
        List<TwoByTwoTable> strata = new ArrayList<>();
        for (JsonNode stratum : reference.node("input/strata")) {
            JsonNode v = stratum.get("values");
            strata.add(new TwoByTwoTable(
                    v.get(0).get(0).asInt(),
                    v.get(0).get(1).asInt(),
                    v.get(1).get(0).asInt(),
                    v.get(1).get(1).asInt()));
        }
        return strata;
    }

    static List<TwoByTwoTable> random(Random random, int count) {
        List<TwoByTwoTable> strata = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            strata.add(new TwoByTwoTable(
                    1 + random.nextInt(20), 1 + random.nextInt(20), 1 + random.nextInt(20), 1 + random.nextInt(20)));
        }
        return strata;
    }
}
