package wisp.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import wisp.indicator.Definitions;
import wisp.indicator.Selection;
import wisp.question.PensAnswer;
import wisp.question.PensQuestion;
import wisp.simulation.StandardModel;
import wisp.testing.SimulatedHerd;

/** What the pens' page says of many simulated seasons, read as text: no print contradicts the claim beside it. */
class PensWordsTest {
    private static final Pattern LIMITS = Pattern.compile("\\((?:95 % interval )?([0-9.]+) to ([0-9.]+)\\)");
    private static final long SEED = 31_000;
    private static final int SEASONS = 60;
    private static final List<PensAnswer> ANSWERS = new ArrayList<>();

    @BeforeAll
    static void ask() {
        System.out.println("PensWordsTest, seeds from " + SEED);
        PensQuestion question = new PensQuestion(Definitions.load(null));
        for (int i = 0; i < SEASONS; i++) {
            ANSWERS.add(
                    question.of(SimulatedHerd.season(StandardModel.model(), 120 + 5 * i, SEED + i), Selection.NEWEST));
        }
    }

    private static List<String> ratios(PensAnswer answer) {
        List<String> texts = new ArrayList<>(answer.sentences());
        answer.circumstances().terms().forEach(term -> texts.add(PensWords.term(term, answer.circumstances())));
        texts.add(PensWords.illness(answer.illness().get(0)).plain());
        answer.illness().forEach(one -> {
            if (one.byPen() != null) {
                texts.add(PensWords.ratio(one.byPen(), 1) + (one.moreThanChance() ? " more than chance" : ""));
            }
        });
        return texts;
    }

    @Test
    void noRatioReadsAsOneThatIsNotOne() {
        for (PensAnswer answer : ANSWERS) {
            for (String text : ratios(answer)) {
                assertFalse(
                        Pattern.compile("(?<![0-9.])1\\.0+(?![0-9])")
                                .matcher(text)
                                .find(),
                        text);
            }
        }
    }

    @Test
    void whatIsMoreThanChanceHasLimitsThatReadSo() {
        int claims = 0;
        for (PensAnswer answer : ANSWERS) {
            for (String text : ratios(answer)) {
                Matcher limits = LIMITS.matcher(text);
                if (text.contains("more than chance") && limits.find()) {
                    double low = Double.parseDouble(limits.group(1));
                    double high = Double.parseDouble(limits.group(2));
                    assertTrue(low > 1 || high < 1, text);
                    claims++;
                }
            }
        }
        assertTrue(claims > 10, claims + " claims");
    }

    @Test
    void noDifferenceReadsAsNoneThatIsNotNone() {
        for (PensAnswer answer : ANSWERS) {
            String text = PensWords.places(answer.places()).plain();
            if (answer.places().moreThanChance()) {
                assertFalse(text.contains(" none"), text);
                assertEquals(
                        1,
                        List.of(" fewer", " more").stream()
                                .filter(text.replace("more than chance", "")::contains)
                                .count(),
                        text);
            }
            assertFalse(Pattern.compile(" 0 (more|fewer)").matcher(text).find(), text);
        }
    }

    @Test
    void whatIsToldOfBeddingIsClaimedOrLeftOpen() {
        int told = 0;
        for (PensAnswer answer : ANSWERS) {
            for (String text : answer.sentences()) {
                if (text.startsWith("Bedding in ")) {
                    assertTrue(text.contains(" in the other bedded pens (medians)."), text);
                    boolean shown = answer.circumstances().terms().get(0).moreThanChance();
                    assertEquals(!shown, text.contains("Whether that is the reason stays open"), text);
                    told++;
                }
            }
        }
        assertTrue(told > 0, "no season had a dirtier pen with older bedding");
    }

    @Test
    void noPValueReadsAsTheLevelItself() {
        for (PensAnswer answer : ANSWERS) {
            String text = PensWords.homogeneity(answer)
                    + PensWords.timeOfYear(answer.circumstances().timeOfYear());
            assertFalse(Pattern.compile("p 0\\.050(?![0-9])").matcher(text).find(), text);
        }
    }
}
