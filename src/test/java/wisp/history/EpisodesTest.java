package wisp.history;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import wisp.testing.Calf;

class EpisodesTest {
    private static final Duration WEEK = Duration.ofHours(7 * 24);
    private static final Duration DAY_3 = Duration.ofDays(3);
    private final Calf calf = Calf.bornAt("2026-03-01 07:30");

    private void found(Duration age, String condition) {
        calf.aged(age, "illness-found", "condition: " + condition);
    }

    private void treated(Duration age, String condition) {
        calf.aged(age, "treated", "medicine: fluids" + (condition.isEmpty() ? "" : ", condition: " + condition));
    }

    private void recovered(Duration age, String condition) {
        calf.aged(age, "recovered", condition.isEmpty() ? "" : "condition: " + condition);
    }

    /** Each episode as its condition, its opening and its closing in hours of age. */
    private List<String> episodes() {
        Life life = calf.life();
        return life.episodes().stream()
                .map(one -> one.condition() + " " + life.ageAt(one.opened()).toHours() + "-"
                        + life.ageAt(one.closed()).toHours())
                .toList();
    }

    @Test
    void anEpisodeClosesSevenTimesTwentyFourHoursAfterTheLastWord() {
        found(DAY_3, "diarrhoea");
        assertEquals(List.of("diarrhoea 72-240"), episodes());
    }

    @Test
    void aFindingAtExactlySevenTimesTwentyFourHoursContinues() {
        found(DAY_3, "diarrhoea");
        found(DAY_3.plus(WEEK), "diarrhoea");
        assertEquals(List.of("diarrhoea 72-408"), episodes());
    }

    @Test
    void aFindingOneMillisecondLaterOpensANewEpisode() {
        found(DAY_3, "diarrhoea");
        found(DAY_3.plus(WEEK).plusMillis(1), "diarrhoea");
        assertEquals(List.of("diarrhoea 72-240", "diarrhoea 240-408"), episodes());
    }

    @Test
    void aTreatmentThatNamesTheConditionProlongs() {
        found(DAY_3, "diarrhoea");
        treated(DAY_3.plus(WEEK), "diarrhoea");
        found(DAY_3.plus(WEEK).plus(WEEK), "diarrhoea");
        assertEquals(List.of("diarrhoea 72-576"), episodes());
    }

    @Test
    void aTreatmentThatNamesNothingOrAnotherConditionDoesNotProlong() {
        found(DAY_3, "diarrhoea");
        treated(Duration.ofDays(5), "");
        treated(Duration.ofDays(6), "pneumonia");
        assertEquals(List.of("diarrhoea 72-240"), episodes());
    }

    @Test
    void aTreatmentAloneOpensNothing() {
        treated(DAY_3, "diarrhoea");
        assertEquals(List.of(), episodes());
    }

    @Test
    void aTreatmentAfterTheSilenceDoesNotRevive() {
        found(DAY_3, "diarrhoea");
        treated(DAY_3.plus(WEEK).plusMillis(1), "diarrhoea");
        assertEquals(List.of("diarrhoea 72-240"), episodes());
    }

    @Test
    void recoveryClosesTheConditionItNames() {
        found(DAY_3, "diarrhoea");
        found(DAY_3, "pneumonia");
        recovered(Duration.ofDays(5), "diarrhoea");
        assertEquals(List.of("diarrhoea 72-120", "pneumonia 72-240"), episodes());
    }

    @Test
    void recoveryWithoutConditionClosesEverything() {
        found(DAY_3, "diarrhoea");
        found(Duration.ofDays(4), "pneumonia");
        recovered(Duration.ofDays(5), "");
        assertEquals(List.of("diarrhoea 72-120", "pneumonia 96-120"), episodes());
    }

    @Test
    void afterRecoveryTheNextFindingIsANewEpisodeEvenTheSameDay() {
        found(DAY_3, "diarrhoea");
        recovered(Duration.ofDays(5), "diarrhoea");
        treated(Duration.ofDays(5), "diarrhoea");
        found(Duration.ofDays(5), "diarrhoea");
        assertEquals(List.of("diarrhoea 72-120", "diarrhoea 120-288"), episodes());
    }

    @Test
    void aSecondRecoveryAndOneOfNothingChangeNothing() {
        recovered(Duration.ofDays(1), "diarrhoea");
        found(DAY_3, "diarrhoea");
        recovered(Duration.ofDays(4), "diarrhoea");
        recovered(Duration.ofDays(5), "diarrhoea");
        assertEquals(List.of("diarrhoea 72-96"), episodes());
    }

    @Test
    void aRecoveryAfterTheSilenceChangesNothing() {
        found(DAY_3, "diarrhoea");
        recovered(Duration.ofDays(20), "diarrhoea");
        assertEquals(List.of("diarrhoea 72-240"), episodes());
    }

    @Test
    void deathOrLeavingClosesAnOpenEpisode() {
        found(DAY_3, "diarrhoea");
        calf.aged(Duration.ofDays(4), "died", "");
        assertEquals(List.of("diarrhoea 72-96"), episodes());
    }

    @Test
    void anExitAfterTheSilenceDoesNotLengthenAnEpisode() {
        found(DAY_3, "diarrhoea");
        calf.aged(Duration.ofDays(40), "left", "");
        assertEquals(List.of("diarrhoea 72-240"), episodes());
    }

    @Test
    void aMarkedFindingOpensNothing() {
        found(Duration.ofDays(-1), "diarrhoea");
        calf.aged(Duration.ofDays(4), "died", "");
        found(Duration.ofDays(5), "diarrhoea");
        assertEquals(List.of(), episodes());
    }

    @Test
    void aFindingKnownOnlyByDateSaysSo() {
        calf.at("2026-03-05", "illness-found", "condition: diarrhoea");
        assertEquals(false, calf.life().episodes().get(0).timeKnown());
        assertEquals(
                calf.events().instant("2026-03-05 00:00"),
                calf.life().episodes().get(0).opened());
    }

    @Test
    void hoursAreExactOverTheNightOfTheSpringClockChange() {
        // Europe/London goes from 01:00 to 02:00 on 29 March 2026: the same wall clock a week on is 167 h later.
        calf.at("2026-03-27 12:00", "illness-found", "condition: diarrhoea");
        calf.at("2026-04-03 13:00", "illness-found", "condition: diarrhoea");
        assertEquals(1, episodes().size());
        calf.at("2026-04-10 13:00:00.001", "illness-found", "condition: diarrhoea");
        assertEquals(2, episodes().size());
    }

    @Test
    void hoursAreExactOverTheNightOfTheAutumnClockChange() {
        // Back from 02:00 to 01:00 on 25 October 2026: the same wall clock a week on is 169 h later.
        calf.at("2026-10-20 12:00", "illness-found", "condition: pneumonia");
        calf.at("2026-10-27 11:00:00.001", "illness-found", "condition: pneumonia");
        assertEquals(2, episodes().size());
    }

    @Test
    void twoConditionsRunBesideEachOther() {
        found(Duration.ofDays(3), "pneumonia");
        found(Duration.ofDays(4), "diarrhoea");
        found(Duration.ofDays(9), "pneumonia");
        assertEquals(List.of("pneumonia 72-384", "diarrhoea 96-264"), episodes());
    }
}
