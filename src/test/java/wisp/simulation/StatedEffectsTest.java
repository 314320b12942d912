package wisp.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import wisp.cohort.Cohort;
import wisp.cohort.NavelDelay;
import wisp.indicator.Definitions;
import wisp.indicator.Estimate;
import wisp.indicator.Figures;
import wisp.indicator.Indicator;
import wisp.indicator.Selection;
import wisp.indicator.Stratum;

/**
 * The shipped figures, divided as a vet would divide them, find what the model states: events, herd, strata and all.
 * Nothing is missing from the books here and no calf dies, so that what is stated has a formula; calves are still sold.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class StatedEffectsTest {
    private static final long SEED = 47;
    private static final int CALVES = 40_000;
    private static final int PART = 4_000;
    private static final String LATE = "late";
    private static final String EARLY = "early";

    private final Model model = TruthRecoveryTest.undying(StandardModel.model())
            .with(StandardModel.calendar(
                    2024, StandardModel.model().calendar().cut().plusYears(1)))
            .with(new Recording(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0));
    private final TrueValues found = new TrueValues(CALVES);
    private final Map<String, Double> values;
    private final Map<String, double[]> stated = new LinkedHashMap<>();

    StatedEffectsTest() {
        Definitions definitions = Definitions.load(null);
        SimulatedCohorts cohorts = new SimulatedCohorts(model);
        cohorts.parts(CALVES, SEED, PART, part -> find(cohorts.kept(part), definitions));
        values = found.values();
        state();
    }

    @Test
    void navelInfectionByDelayIsAsFrequentAsItsHazardSays() {
        for (NavelDelay delay : NavelDelay.values()) {
            if (delay == NavelDelay.UNKNOWN) {
                continue;
            }
            double p = stated(delay.word());
            double error = Math.sqrt(p * (1 - p) / found.denominator(delay.word()));
            // A case of the 21st night is seen the morning after, which the formula does not know: under 0.001.
            assertEquals(p, found(delay.word()), 0.001 + 4 * error, delay.word() + ", seed " + SEED);
        }
    }

    @Test
    void lateTreatmentRaisesTheRiskByTheStatedRatio() {
        double ratio = stated(LATE) / stated(EARLY);
        double foundRatio = found(LATE) / found(EARLY);
        System.out.printf("landmark, late against early: stated %.4f, found %.4f, seed %d%n", ratio, foundRatio, SEED);
        assertTrue(ratio > 1.4, "the effect must be there to be found: " + ratio);
        double variance = 0;
        for (String name : List.of(LATE, EARLY)) {
            variance += (1 - stated(name)) / (stated(name) * found.denominator(name));
        }
        assertEquals(0, Math.log(foundRatio / ratio), 4 * Math.sqrt(variance), "seed " + SEED);
    }

    @Test
    void dirtyCalvesByPenAreAsFrequentAsStated() {
        for (Place place : model.places()) {
            double p = model.cleanliness().dirty(place);
            // Births do not fall quite evenly on the days between beddings, hence the half percent.
            double tolerance = 0.005 + 4 * Math.sqrt(p * (1 - p) / found.denominator(place.name()));
            assertEquals(p, found(place.name()), tolerance, place.name() + ", seed " + SEED);
        }
    }

    private void find(Cohort cohort, Definitions definitions) {
        Figures figures = new Figures(definitions);
        Indicator landmark = definitions.indicator("navel-infection-landmark").orElseThrow();
        for (Estimate part : figures.of(landmark, cohort, Selection.NEWEST.by(Stratum.NAVEL_DELAY))
                .strata()) {
            found.add(part.name(), part);
            found.add(late(part.name()) ? LATE : EARLY, part);
        }
        Indicator dirty = definitions.indicator("dirty-calves").orElseThrow();
        for (Estimate part :
                figures.of(dirty, cohort, Selection.NEWEST.by(Stratum.PEN)).strata()) {
            found.add(part.name(), part);
        }
    }

    /** The mean risk that each calf's own hazard gives it from 24 h to 21 days, by class of delay. */
    private void state() {
        Illness navel = model.illnesses().get(0);
        assertEquals("navel-infection", navel.condition());
        WallClock clock = new WallClock(model.farm().zone());
        int number = 1;
        for (Calving calving : Calving.draw(model, CALVES, SEED)) {
            for (Newborn calf : Newborn.of(model, calving, number++, clock, new Chance(calving.seed()))) {
                if (calf.alive()) {
                    double hazard =
                            Course.ratio(navel.ratios(), calf) * navel.hazard().between(1, 21);
                    String delay = delay(calf.navelMinutes());
                    state(delay, 1 - Math.exp(-hazard));
                    state(late(delay) ? LATE : EARLY, 1 - Math.exp(-hazard));
                }
            }
        }
    }

    private void state(String name, double risk) {
        double[] sum = stated.computeIfAbsent(name, n -> new double[2]);
        sum[0] += risk;
        sum[1]++;
    }

    private double stated(String name) {
        return stated.get(name)[0] / stated.get(name)[1];
    }

    private double found(String name) {
        return values.get(name);
    }

    private static boolean late(String delay) {
        return NavelDelay.words().indexOf(delay) >= 2;
    }

    private static String delay(double minutes) {
        double[] bounds = {15, 60, 120, 360, 1440};
        int at = 0;
        while (at < bounds.length && minutes > bounds[at]) {
            at++;
        }
        return NavelDelay.words().get(at);
    }
}
