package wisp.question;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import wisp.cohort.Cohort;
import wisp.cohort.Herd;
import wisp.event.EventReader;
import wisp.indicator.Selection;
import wisp.log.StoredEvent;

/** The demo's built-in truth: from 2025-26 on the north boxes are bedded seldom and lie wetter. */
class PensDemoTest {
    private static Cohort demo;

    @BeforeAll
    static void read() throws IOException {
        List<StoredEvent> stored = new ArrayList<>();
        try (BufferedReader lines = new BufferedReader(new InputStreamReader(
                PensDemoTest.class.getResourceAsStream("/demo-data/demo.jsonl"), StandardCharsets.UTF_8))) {
            lines.lines()
                    .map(EventReader.recorded()::read)
                    .forEach(reading -> stored.add(new StoredEvent(stored.size() + 1L, "", reading.event())));
        }
        Herd herd = Herd.following();
        herd.apply(stored);
        demo = herd.cohort();
    }

    private static PensAnswer season(String name) {
        return new PensQuestion(PenBook.SHIPPED).of(demo, Selection.NEWEST.ofSeason(name));
    }

    private static PenShare north(PensAnswer answer) {
        return answer.pens().stream()
                .filter(pen -> pen.pen().equals("north boxes"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theNorthBoxesAreFoundInTheSeasonInWhichTheyLayWetter() {
        PensAnswer answer = season("2025-26");
        assertEquals(PenShare.Standing.DIRTIER, north(answer).standing());
        assertTrue(answer.sentences().get(0).startsWith("North boxes gave more dirty calves than the other pens"));
        assertTrue(answer.sentences().get(1).contains("north boxes went from"), answer.sentences()::toString);
        assertTrue(north(answer).daysSinceBedding() > answer.circumstances().medianDays());
    }

    @Test
    void aLimitThatLeavesOutOneReadsAsAboveOne() {
        // 1.047: with one decimal place it would read as 1.0 and contradict the claim beside it
        String ill = season("2024-25").sentences().stream()
                .filter(line -> line.startsWith("Dirty calves fell ill more often"))
                .findFirst()
                .orElseThrow();
        assertTrue(ill.endsWith("by more than chance: risk ratio 1.6 (95 % interval 1.05 to 2.3)."), ill);
    }

    @Test
    void whatIsSaidOfBeddingComesAfterTheOpeningWithItsInterval() {
        List<String> sentences = season("2025-26").sentences();
        int bedding = sentences.indexOf(sentences.stream()
                .filter(line -> line.startsWith("Bedding in north boxes"))
                .findFirst()
                .orElseThrow());
        assertTrue(bedding >= 2, sentences::toString);
        assertTrue(sentences.get(bedding).contains("Whether that is the reason stays open: within pens, one more day"));
        assertTrue(sentences.get(bedding).contains("(95 % interval "), sentences::toString);
    }

    @Test
    void theNorthBoxesAreNotBlamedBefore() {
        for (String season : List.of("2023-24", "2024-25")) {
            assertTrue(north(season(season)).standing() != PenShare.Standing.DIRTIER, season);
        }
    }

    @Test
    void theOddsRatioBuiltInForADayOfBeddingLiesInItsInterval() {
        DirtinessTerm days = season(Selection.ALL).circumstances().terms().get(0);
        assertTrue(days.within().low() < 1.15 && 1.15 < days.within().high(), days::toString);
    }

    @Test
    void howManyCalvesAPenHasHadIsNotSaidToMatter() {
        DirtinessTerm calvings = season(Selection.ALL).circumstances().terms().get(1);
        assertTrue(!calvings.moreThanChance(), calvings::toString);
    }

    @Test
    void countsAreThoseOfTheFigureAndItsStrata() {
        PensAnswer answer = season("2025-26");
        assertEquals((int) answer.figure().denominator(), answer.overall().n() + answer.noPen());
        answer.pens().forEach(pen -> {
            assertEquals(pen.figure().numerator(), pen.share().dirty());
            assertEquals((int) pen.figure().denominator(), pen.share().n());
        });
        assertEquals(
                answer.overall().n(),
                answer.weeks().stream().mapToInt(week -> week.share().n()).sum());
        assertEquals(
                answer.overall().n(),
                answer.circumstances().bedding().stream()
                        .mapToInt(DirtyShare::n)
                        .sum());
    }
}
