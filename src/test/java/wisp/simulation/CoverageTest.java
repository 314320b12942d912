package wisp.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import wisp.cohort.Cohort;
import wisp.indicator.Definitions;
import wisp.indicator.Estimate;
import wisp.indicator.Figures;
import wisp.indicator.Indicator;
import wisp.indicator.Selection;

/**
 * The 95 % intervals of the shipped figures hold the truth as often as they say. The truth is each figure's value over
 * one very large season of the same model, read at the same cut; against it stand seasons of an ordinary size. Nobody
 * in the denominator means no value and no interval: such seasons are counted apart.
 *
 * <p>The seeds were fixed before the first run and are not to be changed to make a figure fit. With 1,000 seasons a
 * single figure's coverage has a standard error of 0.007, a kind's pooled one less.
 */
class CoverageTest {
    private static final long TRUTH_SEED = 1_000_003;
    private static final int TRUTH_CALVES = 500_000;
    private static final int PART = 2_500;
    private static final int SEASONS = 1_000;
    private static final int CALVES = 250;

    private final Model model = StandardModel.model();
    private final SimulatedCohorts cohorts = new SimulatedCohorts(model);
    private final Definitions definitions = Definitions.load(null);
    private final Figures figures = new Figures(definitions);
    private final List<Indicator> shipped = List.copyOf(definitions.indicators());
    private final Selection everything = Selection.NEWEST.ofSeason(Selection.ALL);

    @Test
    void intervalsOfEachKindHoldTheTruthAsOftenAsTheySay() throws IOException {
        Map<String, Double> truths = truths();
        CoverageTally tally = new CoverageTally();
        // Seeds 1 to 1,000.
        IntStream.rangeClosed(1, SEASONS).parallel().forEach(seed -> {
            for (Estimate estimate : estimates(cohorts.folded(cohorts.lives(CALVES, seed)))) {
                String id = estimate.indicator().id();
                if (estimate.interval() == null) {
                    tally.addWithout(id);
                } else {
                    tally.add(id, estimate.interval(), truths.get(id));
                }
            }
        });
        report(tally);
        assertEquals(List.of("Aalen-Johansen", "Garwood", "Kaplan-Meier", "Wilson"), tally.kinds());
        for (String kind : List.of("Wilson", "Kaplan-Meier", "Aalen-Johansen")) {
            double coverage = tally.coverage(kind);
            assertTrue(coverage >= 0.935 && coverage <= 0.97, kind + " intervals hold the truth in " + coverage);
        }
        double exact = tally.coverage("Garwood");
        assertTrue(exact >= 0.945, "exact Poisson intervals hold the truth in " + exact);
    }

    @Test
    void livesFoldedOneByOneGiveTheFiguresOfTheHerd() {
        List<SimulatedLife> lives = cohorts.lives(CALVES, TRUTH_SEED + 1);
        assertEquals(counts(cohorts.kept(lives)), counts(cohorts.folded(lives)));
    }

    /** Everything of each figure but its calves, whose events stand at other places in another log. */
    private List<List<Object>> counts(Cohort cohort) {
        return estimates(cohort).stream()
                .map(e -> Arrays.<Object>asList(
                        e.indicator().id(),
                        e.numerator(),
                        e.denominator(),
                        e.interval(),
                        e.why(),
                        e.pending(),
                        e.excluded(),
                        e.attrition()))
                .toList();
    }

    /** Simulates here while another thread judges the part before, so that two parts at most are held. */
    private Map<String, Double> truths() {
        TrueValues truths = new TrueValues(TRUTH_CALVES);
        List<CompletableFuture<Void>> judging = new ArrayList<>();
        cohorts.parts(TRUTH_CALVES, TRUTH_SEED, PART, part -> {
            judging.forEach(CompletableFuture::join);
            judging.clear();
            judging.add(CompletableFuture.runAsync(() -> estimates(cohorts.folded(part))
                    .forEach(estimate -> truths.add(estimate.indicator().id(), estimate))));
        });
        judging.forEach(CompletableFuture::join);
        return truths.values();
    }

    private List<Estimate> estimates(Cohort cohort) {
        return shipped.stream()
                .map(indicator -> figures.plain(indicator, cohort, everything))
                .toList();
    }

    private static void report(CoverageTally tally) throws IOException {
        List<String> table = new ArrayList<>();
        table.add("Truth: " + TRUTH_CALVES + " calves, seed " + TRUTH_SEED + ". Against it " + SEASONS + " seasons of "
                + CALVES + " calves, seeds 1 to " + SEASONS + ".");
        table.addAll(tally.table());
        Path file = Path.of(System.getProperty("wisp.basedir", "."), "target", "coverage.txt");
        Files.createDirectories(file.getParent());
        Files.write(file, table);
        table.forEach(System.out::println);
    }
}
