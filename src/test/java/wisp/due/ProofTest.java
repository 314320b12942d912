package wisp.due;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import wisp.cohort.Cohort;
import wisp.cohort.Herd;
import wisp.history.Exit;
import wisp.indicator.Definitions;
import wisp.indicator.Estimate;
import wisp.indicator.Figures;
import wisp.indicator.Selection;
import wisp.testing.Calf;
import wisp.testing.Events;
import wisp.testing.RandomLog;

class ProofTest {
    private static final Definitions DEFINITIONS = Definitions.load(null);
    private static final Due DUE = new Due(DEFINITIONS);
    private static final Selection ALL = Selection.NEWEST.ofSeason(Selection.ALL);

    private final Events events = Events.london();

    private Calf calf(String key) {
        return new Calf(events, key).born("2026-02-01 08:00", "alive: true, sex: male");
    }

    private Proof proof(String id, String cut) {
        events.add("noted", "farm", cut, "text: the newest event");
        Herd herd = Herd.following();
        herd.apply(events.all());
        return Proof.of(DUE, DEFINITIONS, herd.cohort(), ALL, id).orElseThrow();
    }

    static Stream<String> figures() {
        return Stream.of(
                "tagged-inside-limit",
                "registered-inside-limit",
                "tissue-sampled-inside-limit",
                "castrated-inside-limit",
                "ring-window");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("figures")
    void theShareInsideIsThatOfTheFigure(String id) {
        for (long seed = 1; seed <= 40; seed++) {
            Herd herd = Herd.following();
            herd.apply(RandomLog.of(seed, 150));
            Cohort cohort = herd.cohort();
            Estimate figure =
                    new Figures(DEFINITIONS).of(DEFINITIONS.indicator(id).orElseThrow(), cohort, ALL);
            Proof proof = Proof.of(DUE, DEFINITIONS, cohort, ALL, id).orElseThrow();
            assertEquals(figure.interval(), proof.share(), "seed " + seed);
            assertEquals(figure.numerator(), proof.count(ProofCalf.Part.INSIDE), "seed " + seed);
            assertEquals(figure.pending(), proof.count(ProofCalf.Part.PENDING), "seed " + seed);
            assertEquals(
                    figure.denominator(),
                    proof.count(ProofCalf.Part.INSIDE) + proof.count(ProofCalf.Part.BREACH),
                    "seed " + seed);
            assertEquals(proof.count(ProofCalf.Part.BREACH), proof.outside().size(), "seed " + seed);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("steps")
    void aStepAndItsFigureAgree(String step, String figure) {
        for (long seed = 1; seed <= 40; seed++) {
            Herd herd = Herd.following();
            herd.apply(RandomLog.of(seed, 150));
            Proof ofStep = Proof.of(DUE, DEFINITIONS, herd.cohort(), ALL, step).orElse(null);
            Proof ofFigure =
                    Proof.of(DUE, DEFINITIONS, herd.cohort(), ALL, figure).orElseThrow();
            if (ofStep != null) {
                assertEquals(ofFigure.share(), ofStep.share(), "seed " + seed);
            }
        }
    }

    static Stream<Arguments> steps() {
        return Stream.of(
                Arguments.of("both-tags", "tagged-inside-limit"), Arguments.of("register", "registered-inside-limit"));
    }

    @Test
    void withNobodyDeadOrGoneTheCurveAtTheLimitIsTheShare() {
        calf("A").aged(Duration.ofDays(3), "registered", "");
        calf("B").aged(Duration.ofDays(27), "registered", "");
        calf("C").aged(Duration.ofDays(30), "registered", "");
        calf("D");
        Proof proof = proof("registered-inside-limit", "2026-06-01 00:00");
        assertEquals(2 / 4.0, proof.share().value());
        assertEquals(2 / 4.0, proof.curve().at(27).value(), 1e-12);
        assertEquals(3 / 4.0, proof.curve().at(30).value(), 1e-12);
        assertEquals(List.of(27.0), List.copyOf(proof.limits().values()));
        assertEquals(
                "The last day was Saturday 28 February 2026. Done 3 March 2026 08:00, 3 days late."
                        + " Recorded 3 March 2026 08:00.",
                proof.outside().get(0).words());
        assertEquals(
                "The last day was Saturday 28 February 2026. Nothing is on record of it by 1 June 2026 00:00.",
                proof.outside().get(1).words());
    }

    @Test
    void aCalfThatDiedWaitingCompetesAndOneThatLeftIsCensored() {
        calf("A").aged(Duration.ofDays(2), "died", "");
        calf("B").aged(Duration.ofDays(4), "left", "reason: sold");
        calf("C").aged(Duration.ofDays(5), "registered", "");
        calf("D").aged(Duration.ofDays(6), "registered", "");
        Proof proof = proof("registered-inside-limit", "2026-06-01 00:00");
        // 4 at risk: 1 of 4 dies on day 2; 1 of 3 leaves on day 4; the last 2 of 2 are done: 3/4
        assertEquals(3 / 4.0, proof.curve().at(27).value(), 1e-12);
        // the figure leaves the dead one out and counts the one that left as not done
        assertEquals(2 / 3.0, proof.share().value());
        assertEquals(
                "The last day was Saturday 28 February 2026. It left Thursday 5 February 2026 without it.",
                proof.outside().get(0).words());
        assertEquals(Exit.Kind.LEFT, proof.outside().get(0).life().exit().kind());
    }

    @Test
    void enteredLateIsNotDoneLateAndDoneLateIsLate() {
        Calf inside = calf("A");
        Calf late = calf("B");
        events.recordedAt("2026-03-20 09:00");
        inside.at("2026-02-10 10:00", "registered", "");
        late.at("2026-03-02 10:00", "registered", "");
        events.recordedAt(null);
        Proof proof = proof("registered-inside-limit", "2026-06-01 00:00");
        assertEquals(1 / 2.0, proof.share().value());
        assertEquals(1, proof.outside().size());
        assertEquals("B", proof.outside().get(0).life().key());
        assertTrue(proof.outside().get(0).words().contains("Recorded 20 March 2026 09:00."));
        assertEquals(1, proof.enteredLate().size());
        assertEquals("A", proof.enteredLate().get(0).life().key());
        assertTrue(proof.enteredLate()
                .get(0)
                .words()
                .endsWith("after the limit had passed; entered late is not done late."));
    }

    @Test
    void theFirstTagIsProvedInHoursAndABirthKnownByDateIsLeftOutWhereItDecides() {
        calf("A").aged(Duration.ofHours(35), "tag-fitted", "number: UK1");
        calf("B").aged(Duration.ofHours(36), "tag-fitted", "number: UK2");
        Calf byDate = new Calf(events, "C").born("2026-02-01", "alive: true");
        byDate.at("2026-02-02 20:00", "tag-fitted", "number: UK3");
        Proof proof = proof("first-tag", "2026-06-01 00:00");
        assertTrue(proof.byHours());
        assertEquals(1 / 2.0, proof.share().value());
        assertEquals(1, proof.count(ProofCalf.Part.LEFT_OUT));
        assertEquals(36.0, proof.limits().values().iterator().next());
        assertEquals(1 / 2.0, proof.curve().at(35).value(), 1e-12);
    }

    @Test
    void aCastrationOutsideTheLawSaysWhy() {
        calf("A").aged(Duration.ofDays(100), "castrated", "method: clamp");
        Proof proof = proof("castrated-inside-limit", "2026-06-10 00:00");
        assertTrue(proof.outside().get(0).words().endsWith("Outside the law: no anaesthetic recorded on day 100."));
    }

    @Test
    void anIdThatNothingHasIsNoProof() {
        Herd herd = Herd.following();
        herd.apply(calf("A").events().all());
        assertFalse(Proof.of(DUE, DEFINITIONS, herd.cohort(), ALL, "stillbirth").isPresent());
        assertFalse(Proof.of(DUE, DEFINITIONS, herd.cohort(), ALL, "luck").isPresent());
    }
}
