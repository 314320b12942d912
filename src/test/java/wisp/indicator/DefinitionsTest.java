package wisp.indicator;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class DefinitionsTest {
    /** The ids that other programs may rely on. */
    private static final List<String> FIXED = List.of(
            "stillbirth",
            "perinatal-mortality",
            "preweaning-mortality",
            "preweaning-mortality-rate",
            "tagged-inside-limit",
            "tissue-sampled-inside-limit",
            "registered-inside-limit",
            "castrated-inside-limit",
            "ring-window",
            "dirty-calves",
            "colostrum-in-time",
            "passive-transfer");

    @Test
    void everyFixedFigureIsShipped() {
        Definitions definitions = Definitions.load(null);
        for (String id : FIXED) {
            assertTrue(definitions.indicator(id).isPresent(), id);
        }
        for (String condition : definitions.conditions().keys()) {
            for (String kind : List.of("-rate", "-risk-21d", "-risk-60d", "-case-fatality")) {
                assertTrue(definitions.indicator(condition + kind).isPresent(), condition + kind);
            }
        }
    }
}
