package wisp.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class ModelTest {
    private final Model model = StandardModel.model();

    @Test
    void anIllnessCannotFollowANavelInfectionThatComesAfterIt() {
        List<Illness> backwards = new ArrayList<>(model.illnesses());
        Collections.reverse(backwards);
        IllegalArgumentException refused =
                assertThrows(IllegalArgumentException.class, () -> model.withIllnesses(backwards));
        assertEquals(
                "The model lets septicaemia follow a navel infection that is not there yet:"
                        + " name navel-infection before it.",
                refused.getMessage());
    }

    @Test
    void deadBirthsAddUpOverParityTwinsAndEase() {
        Calvings two = new Calvings(
                List.of(0.4, 0.6),
                0,
                0.5,
                List.of(0.5, 0.5, 0.0, 0.0, 0.0),
                List.of(1.0, 0.0, 0.0, 0.0, 0.0),
                List.of(1.0, 0.0, 0.0, 0.0, 0.0),
                model.calvings().breeds(),
                0.5,
                0,
                0,
                0,
                0.02,
                List.of(1.0, 3.0, 3.0, 3.0, 3.0),
                2,
                4);
        // Of 100 calvings 40 first calves at 0.02 × 2 × (1 + 3) / 2, 30 later ones at 0.02, 60 twins at 0.02 × 4.
        assertEquals((40 * 0.08 + 30 * 0.02 + 60 * 0.08) / 130, two.bornDeadOverall(), 1e-12);
    }

    @Test
    void navelsNeverTreatedAreTreatedWithinNoTime() {
        NavelCare care = model.navelCare();
        assertEquals(0.97 * 0.5, care.treatedWithin(30, false, false), 1e-12);
        assertEquals(0.94 * 0.5, care.treatedWithin(30 * 2.2 * 2.0, true, true), 1e-12);
    }
}
