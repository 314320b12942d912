package wisp.simulation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.OffsetDateTime;
import org.junit.jupiter.api.Test;
import wisp.event.Birth;
import wisp.event.Event;
import wisp.event.EventType;

/** What the model says is not written down is missing as often as it says. */
class RecordingTest {
    private static final long SEED = 12;

    private final Model model = StandardModel.model()
            .with(StandardModel.calendar(2024, OffsetDateTime.parse("2026-01-01T12:00:00Z")))
            .with(new BackgroundDeath(Hazard.of(), 1, 1));
    private final Recording recording = model.recording();
    private final int[][] missing = new int[6][2];

    @Test
    void gapsAreAsFrequentAsStatedByDayAndByNight() {
        Season.eachLife(model, 60_000, SEED, this::count);
        assertShare("cleanliness by day", recording.cleanlinessMissingByDay(), missing[0]);
        assertShare("cleanliness by night", recording.cleanlinessMissingByNight(), missing[1]);
        assertShare("colostrum by day", recording.colostrumMissingByDay(), missing[2]);
        assertShare("colostrum by night", recording.colostrumMissingByNight(), missing[3]);
        assertShare("birth time", recording.birthTimeUnknown(), missing[4]);
        assertShare("birth weight", recording.weightMissing(), missing[5]);
    }

    private void count(SimulatedLife life) {
        Event birth = life.events().stream()
                .filter(e -> e.type() == EventType.BIRTH)
                .findFirst()
                .orElseThrow();
        tally(4, !birth.timeKnown());
        tally(5, ((Birth) birth.data()).weightKg() == null);
        if (((Birth) birth.data()).alive()) {
            int hour = life.born().getHour();
            int night = hour >= 22 || hour < 6 ? 1 : 0;
            tally(night, lacks(life, EventType.CLEANLINESS_SCORED));
            tally(2 + night, lacks(life, EventType.COLOSTRUM_FED));
        }
    }

    private void tally(int row, boolean lacking) {
        missing[row][0] += lacking ? 1 : 0;
        missing[row][1]++;
    }

    private static boolean lacks(SimulatedLife life, EventType type) {
        return life.events().stream().noneMatch(e -> e.type() == type);
    }

    private static void assertShare(String what, double p, int[] missing) {
        double found = missing[0] / (double) missing[1];
        assertEquals(p, found, 4 * Math.sqrt(p * (1 - p) / missing[1]), what + ", seed " + SEED);
    }
}
