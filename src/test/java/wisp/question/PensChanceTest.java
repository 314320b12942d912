package wisp.question;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import wisp.indicator.Selection;
import wisp.simulation.Model;
import wisp.simulation.Place;
import wisp.simulation.StandardModel;
import wisp.statistics.FisherExactTest;
import wisp.statistics.MultipleTesting;
import wisp.statistics.NewcombeDifference;
import wisp.statistics.TwoByTwoTable;
import wisp.testing.SimulatedHerd;

/** Simulated seasons: the sentences never claim more than what is worked out here once more from the counts. */
class PensChanceTest {
    private static final int SEASONS = 40;
    private static final int CALVES = 120;

    private static PensAnswer season(Model model, int calves, long seed) {
        return new PensQuestion(PenBook.SHIPPED).of(SimulatedHerd.season(model, calves, seed), Selection.NEWEST);
    }

    /**
     * Whether each pen differs from the others: Newcombe's interval and Holm-adjusted Fisher, from the counts alone.
     */
    private static boolean[] differs(PensAnswer answer) {
        int n = answer.overall().n();
        int dirty = answer.overall().dirty();
        List<TwoByTwoTable> tables = answer.pens().stream()
                .map(pen -> TwoByTwoTable.ofGroups(
                        pen.share().dirty(),
                        pen.share().n(),
                        dirty - pen.share().dirty(),
                        n - pen.share().n()))
                .toList();
        double[] p = tables.stream().mapToDouble(FisherExactTest::twoSided).toArray();
        double[] adjusted = p.length == 2 ? p : MultipleTesting.holm(p);
        boolean[] differs = new boolean[p.length];
        for (int i = 0; i < p.length; i++) {
            var difference = NewcombeDifference.of(tables.get(i), 0.95);
            differs[i] = adjusted[i] < 0.05 && (difference.low() > 0 || difference.high() < 0);
        }
        return differs;
    }

    private static boolean firstLineIsBorneOut(PensAnswer answer) {
        String line = answer.sentences().get(0);
        boolean[] differs = differs(answer);
        for (int i = 0; i < differs.length; i++) {
            PenShare pen = answer.pens().get(i);
            boolean named = line.toLowerCase().startsWith(pen.pen().toLowerCase() + " gave")
                    || line.contains(pen.pen() + " (" + pen.share().dirty() + " of");
            boolean outside = pen.share().share() > pen.limits95().high()
                    || pen.share().share() < pen.limits95().low();
            if (named && !(differs[i] && outside)) {
                return false;
            }
        }
        boolean any = answer.pens().stream().anyMatch(pen -> pen.standing() != PenShare.Standing.WITHIN);
        return any || !line.contains("more than chance") || answer.homogeneity().p() < 0.05;
    }

    private static Model placesOfOneDirtiness() {
        Model standard = StandardModel.model();
        return standard.withPlaces(standard.places().stream()
                .map(place -> new Place(place.name(), place.calvingPen(), place.share(), 0, 0))
                .toList());
    }

    @Test
    void noSentenceClaimsMoreThanItsIntervalAndTestAllow() {
        long seed = 7_000;
        System.out.println("PensChanceTest, standard places, seeds from " + seed);
        for (int i = 0; i < SEASONS; i++) {
            PensAnswer answer = season(StandardModel.model(), CALVES, seed + i);
            String lines = String.join(" ", answer.sentences());
            assertTrue(firstLineIsBorneOut(answer), "seed " + (seed + i) + ": " + lines);
        }
    }

    @Test
    void wherePensAreAlikeAPenIsSeldomBlamed() {
        long seed = 9_000;
        System.out.println("PensChanceTest, places alike, seeds from " + seed);
        int blamed = 0;
        for (int i = 0; i < SEASONS; i++) {
            PensAnswer answer = season(placesOfOneDirtiness(), CALVES, seed + i);
            assertTrue(firstLineIsBorneOut(answer), "seed " + (seed + i) + ": " + answer.sentences());
            blamed += answer.standing(PenShare.Standing.DIRTIER).isEmpty() ? 0 : 1;
        }
        // at most one season in twenty by design: P(more than 6 of 40) is below 0.004 at 0.05
        assertTrue(blamed <= 6, blamed + " of " + SEASONS + " seasons blamed a pen");
    }

    @Test
    void randomCountsOfPensAlikeAreSeldomBlamedHoweverManyPens() {
        long seed = 20260401;
        System.out.println("PensChanceTest, random counts, seed " + seed);
        Random random = new Random(seed);
        int blamed = 0;
        int rounds = 2_000;
        for (int round = 0; round < rounds; round++) {
            List<DirtyShare> shares = new ArrayList<>();
            int pens = 2 + random.nextInt(9);
            for (int pen = 0; pen < pens; pen++) {
                int n = 3 + random.nextInt(60);
                int dirty = (int) random.doubles(n).filter(u -> u < 0.25).count();
                shares.add(DirtyShare.of("pen " + pen, dirty, n));
            }
            blamed += PenContrast.all(shares, others(shares)).stream().anyMatch(PenContrast::moreThanChance) ? 1 : 0;
        }
        // Fisher's test is conservative: the share blamed stays below the nominal 0.05
        assertTrue(blamed < 0.05 * rounds, blamed + " of " + rounds);
        assertTrue(blamed > 0, "a test that never speaks");
    }

    private static List<DirtyShare> others(List<DirtyShare> shares) {
        int[] dirty = shares.stream().mapToInt(DirtyShare::dirty).toArray();
        int[] sizes = shares.stream().mapToInt(DirtyShare::n).toArray();
        if (shares.size() == 2) {
            return List.of(shares.get(1), shares.get(0));
        }
        return shares.stream()
                .map(share -> DirtyShare.of(
                        "others",
                        Arrays.stream(dirty).sum() - share.dirty(),
                        Arrays.stream(sizes).sum() - share.n()))
                .toList();
    }

    @Test
    void twoPensAreOneComparisonAndNotTwo() {
        List<DirtyShare> shares = List.of(DirtyShare.of("A", 1, 20), DirtyShare.of("B", 7, 20));
        List<PenContrast> contrasts = PenContrast.all(shares, others(shares));
        assertEquals(contrasts.get(0).p(), contrasts.get(0).adjustedP());
    }
}
