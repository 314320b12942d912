package wisp.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import wisp.history.TagWarning.Kind;
import wisp.tag.TagNumber;
import wisp.testing.Calf;
import wisp.testing.Events;

class TagWarningTest {
    private final Events events = Events.london();

    private Calf calf(String key) {
        return new Calf(events, key).born("2026-03-01 07:30", "alive: true");
    }

    private static List<Kind> kinds(Calf... herd) {
        return TagWarning.of(List.of(herd).stream().map(Calf::life).toList()).stream()
                .map(TagWarning::kind)
                .toList();
    }

    @Test
    void aWrongDigitOffersTheNumberOfTheOtherEarFirst() {
        Calf a = calf("A");
        a.at("2026-03-02 09:00", "tag-fitted", "number: UK 123450 600001, ear: left");
        a.at("2026-03-02 09:00", "tag-fitted", "number: UK 123450 600007, ear: right");
        assertEquals(List.of(Kind.CHECK_DIGIT, Kind.TWO_NUMBERS), kinds(a));
        for (TagWarning warning : TagWarning.of(List.of(a.life()))) {
            assertEquals(
                    "UK 123450 600001",
                    warning.likely().get(0).shown(),
                    warning.kind().word());
            assertEquals(3, warning.event().sequence());
        }
    }

    @Test
    void aWrongDigitOffersNumbersOfTheHerdsMarkFirst() {
        Calf a = calf("A");
        Calf b = calf("B");
        a.at("2026-03-02 09:00", "tag-fitted", "number: UK 123450 600001");
        b.at("2026-03-02 09:00", "tag-fitted", "number: UK 123460 700002");
        List<TagNumber> likely =
                TagWarning.of(List.of(a.life(), b.life())).get(0).likely();
        assertEquals("UK 123450 700002", likely.get(0).shown());
    }

    @Test
    void aWarningIsNoMarkAndKeepsNothingOutOfTheLife() {
        Calf a = calf("A");
        a.at("2026-03-02 09:00", "tag-fitted", "number: UK 123450 500001");
        assertEquals(List.of(Kind.CHECK_DIGIT), kinds(a));
        assertEquals(List.of(), a.life().marks());
        assertEquals(2, a.life().events().size());
    }

    @Test
    void aLostTagWarnsWhileTheCalfIsHere() {
        Calf a = calf("A");
        a.at("2026-03-02 09:00", "tag-fitted", "number: UK 123450 600001, ear: left");
        a.at("2026-03-09 09:00", "noted", "text: torn out, tag_lost: left");
        assertEquals(List.of(Kind.LOST), kinds(a));
        a.at("2026-03-10 09:00", "left", "reason: sold");
        assertEquals(List.of(), kinds(a));
    }

    @Test
    void twoNumbersWithoutAnEarAreTwoNumbersToo() {
        Calf a = calf("A");
        a.at("2026-03-02 09:00", "tag-fitted", "number: UK 123450 600001");
        a.at("2026-03-02 09:00", "tag-fitted", "number: UK 123450 700002");
        assertEquals(List.of(Kind.TWO_NUMBERS), kinds(a));
        assertTrue(TagWarning.of(List.of(a.life())).get(0).problem().contains("UK 123450 600001 and UK 123450 700002"));
    }

    @Test
    void theSameNumberInAnotherWritingIsInUseOnASecondAnimal() {
        Calf a = calf("A");
        Calf b = calf("B");
        a.at("2026-03-02 09:00", "tag-fitted", "number: UK 123450 600001");
        long second = b.at("2026-03-03 09:00", "tag-fitted", "number: uk123450-600001")
                .sequence();
        TagRegister register = new TagRegister();
        register.update(a.life());
        register.update(b.life());
        assertEquals(java.util.Set.of(second), register.inUse("B"));
    }
}
