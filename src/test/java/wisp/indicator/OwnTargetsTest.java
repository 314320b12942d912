package wisp.indicator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Its mistakes stand with those of all other definitions, in {@code definitions/bad}. */
class OwnTargetsTest {
    private static final Definitions OWN = Definitions.load(Path.of("src", "test", "resources", "definitions", "own"));

    @Test
    void aFarmsTargetStandsBesideThePublishedOneAndReplacesNone() {
        assertEquals(
                new Target(true, 0.04, "the farm's own target"),
                OWN.ownTarget("preweaning-mortality").orElseThrow());
        Target published = OWN.indicator("preweaning-mortality").orElseThrow().target();
        assertEquals(0.05, published.value());
    }

    @Test
    void aRateMayLieOverOneAndNameItsSource() {
        assertEquals(
                new Target(true, 1.2, "agreed with the vet in January"),
                OWN.ownTarget("preweaning-mortality-rate").orElseThrow());
        assertEquals(
                new Target(false, 0.8, "the farm's own target"),
                OWN.ownTarget("colostrum-in-time").orElseThrow());
    }

    @Test
    void whatHasNoTargetHasNone() {
        assertTrue(OWN.ownTarget("stillbirth").isEmpty());
        assertTrue(Definitions.load(null).ownTarget("preweaning-mortality").isEmpty());
    }
}
