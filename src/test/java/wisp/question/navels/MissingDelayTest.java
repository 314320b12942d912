package wisp.question.navels;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import wisp.indicator.Selection;
import wisp.testing.Calf;

class MissingDelayTest {
    private static final Duration EARLY = Duration.ofMinutes(20);
    private static final Duration LATE = Duration.ofHours(3);

    /**
     * Known: 10 early with 2 cases, 10 late with 4. Of unknown delay, all born or treated on 1 March:
     *
     * <pre>
     * born 08:00, treated that day     case     either
     * born 08:00, treated next day     clear    late: more than 16 hours
     * born that day, treated 00:40     clear    early: at most 40 minutes
     * born that day, treated 14:00     case     either
     * born that day, treated 14:00     clear    either
     * born that day, never treated     case     late
     * born that day, ill on the 1st    outside  a case before 24 hours
     * </pre>
     */
    private static NavelHerd herd() {
        NavelHerd herd = new NavelHerd().add("a", EARLY, 10, 2).add("a", LATE, 10, 4);
        Calf sick = herd.calf("a");
        sick.at("2026-03-01", "navel-treated", "");
        sick.at("2026-03-05 08:00", "navel-checked", "finding: painful");
        herd.calf("a").at("2026-03-02", "navel-treated", "");
        herd.dayCalf("a").at("2026-03-01 00:40", "navel-treated", "");
        Calf either = herd.dayCalf("a");
        either.at("2026-03-01 14:00", "navel-treated", "");
        either.at("2026-03-10 08:00", "illness-found", "condition: navel-infection");
        herd.dayCalf("a").at("2026-03-01 14:00", "navel-treated", "");
        herd.dayCalf("a").at("2026-03-10 08:00", "illness-found", "condition: navel-infection");
        herd.dayCalf("a").at("2026-03-01 20:00", "illness-found", "condition: navel-infection");
        return herd;
    }

    @Test
    void bothKindsAreInItAndCertainOnesAreNotMovedAbout() {
        MissingDelay missing = herd().answer().missing();
        assertEquals(new MissingDelay.Calves(2, 1), missing.treatmentHour());
        assertEquals(new MissingDelay.Calves(4, 2), missing.birthHour());
        assertEquals(new MissingDelay.Calves(1, 0), missing.placedEarly());
        assertEquals(new MissingDelay.Calves(2, 1), missing.placedLate());
        assertEquals(new MissingDelay.Calves(3, 2), missing.movable());
        // late 10 + 2 with 4 + 1 cases, early 10 + 1 with 2; least: the two cases early, the clear one late
        assertEquals((5.0 / 13) / (4.0 / 13), missing.least().interval().value(), 1e-12);
        // most: the two cases late, the clear one early
        assertEquals((7.0 / 14) / (2.0 / 12), missing.most().interval().value(), 1e-12);
    }

    @Test
    void thePageSaysHowManyOfWhichKind() {
        // Katz by hand: 1.25 with log error sqrt(1/5 - 1/13 + 1/4 - 1/13) = 0.544; 3 with sqrt(1/7 - 1/14 + 1/2 - 1/12)
        assertEquals(
                "The delay of 6 calves is not known, 3 cases among them: 2 treated on a day written without its hour, 4"
                        + " born on a day written without its hour (ages counted from the midnight before). Whatever the"
                        + " hours were, 2 can only have been late or untreated and 1 can only have been early; the"
                        + " others may be either. Placed so that delay looks least harmful, the risk ratio of late to"
                        + " early treatment would be 1.3 (0.4 to 3.6); placed so that it looks most harmful, 3.0 (0.8"
                        + " to 12).",
                MissingDelayWords.of(herd().answer().missing()).plain());
    }

    @Test
    void theRestOfTheAnswerStaysWithKnownHoursOfBirth() {
        NavelsAnswer answer = herd().answer();
        assertEquals(20, answer.late().known().n());
        assertEquals(2, answer.delayUnknown());
        assertEquals(22, answer.figure().denominator());
        assertEquals(26, answer.calves().size());
    }

    @Test
    void theJsonCountsEachKind() {
        NavelsAnswer answer = herd().answer();
        JsonNode missing = NavelsJson.of(answer, Selection.NEWEST).get("missing_delay");
        assertEquals(6, missing.get("n").asInt());
        assertEquals(3, missing.get("cases").asInt());
        assertEquals(4, missing.get("birth_hour_unknown").get("n").asInt());
        assertEquals(1, missing.get("late_either_way").get("cases").asInt());
    }

    @Test
    void withoutAnybodyUnknownItSaysSo() {
        MissingDelay missing = new NavelHerd().add("a", EARLY, 10, 2).answer().missing();
        assertEquals(
                "The delay is known for every calf at risk.",
                MissingDelayWords.of(missing).plain());
    }

    @Test
    void aTreatmentJustBeforeMidnightBoundsABirthOfThatDay() {
        NavelHerd herd = new NavelHerd();
        herd.calf("a", "2026-03-01 23:30").at("2026-03-01", "navel-treated", "");
        assertEquals(1, herd.answer().missing().placedEarly().n());
    }

    @Test
    void everyGroupOfTheAnswerHoldsAsManyCalvesAsItCounts() {
        NavelsAnswer answer = herd().answer();
        assertEquals(
                answer.missing().calves(),
                NavelGroup.UNKNOWN.of(answer.calves()).size());
        assertEquals(
                answer.missing().movable().n(),
                NavelGroup.MOVABLE.of(answer.calves()).size());
        assertEquals(
                answer.late().late().n(), NavelGroup.LATE.of(answer.calves()).size());
        assertEquals(
                answer.late().adjusted().calves(),
                NavelGroup.MODELLED.of(answer.calves()).size());
        assertTrue(NavelGroup.named("placed-late").isPresent());
    }
}
