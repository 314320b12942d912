package wisp.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class HazardTest {
    private final Hazard hazard = Hazard.of(1, 0.1, 3, 0.0, 5, 0.2, 10);

    @Test
    void cumulativeHazardAddsUpTheBandsInside() {
        assertEquals(2 * 0.1 + 1 * 0.2, hazard.between(0, 6), 1e-12);
        assertEquals(0.5 * 0.1, hazard.between(2.5, 4), 1e-12);
        assertEquals(0, hazard.between(10, 50), 0);
    }

    @Test
    void aUnitIsReachedWhereTheCumulativeHazardEqualsIt() {
        assertEquals(2, hazard.reaches(0, 1, 0.1), 1e-12);
        assertEquals(6, hazard.reaches(0, 1, 2 * 0.1 + 1 * 0.2), 1e-12);
    }

    @Test
    void twiceTheHazardReachesItWithHalfTheTimeAtRisk() {
        assertEquals(1.5, hazard.reaches(0, 2, 0.1), 1e-12);
    }

    @Test
    void whatIsLeftBehindDoesNotCount() {
        assertEquals(5.25, hazard.reaches(2.5, 1, 0.5 * 0.1 + 0.25 * 0.2), 1e-12);
    }

    @Test
    void whatTheBandsCannotGiveIsNeverReached() {
        assertEquals(Double.POSITIVE_INFINITY, hazard.reaches(0, 1, 2 * 0.1 + 5 * 0.2 + 1e-9));
    }
}
