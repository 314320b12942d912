package wisp.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import wisp.tag.TagNumber;
import wisp.testing.Calf;

class EarTagsTest {
    private static final String ONE = "number: UK 123450 600001";
    private static final String TWO = "number: UK 123450 700002";

    private final Calf calf = Calf.bornAt("2026-03-01 07:30");

    private EarTags tags() {
        return EarTags.of(calf.life());
    }

    private List<String> inPlace() {
        return tags().inPlace().stream().map(one -> one.number().shown()).toList();
    }

    private String name() {
        return tags().number().map(TagNumber::shown).orElse("");
    }

    @Test
    void anUntaggedCalfHasNoNumber() {
        assertEquals("", name());
        assertNull(tags().odd());
    }

    @Test
    void aLaterTagInTheSameEarReplacesTheFormer() {
        calf.at("2026-03-02 09:00", "tag-fitted", TWO + ", ear: left");
        calf.at("2026-03-02 09:01", "tag-fitted", ONE + ", ear: right");
        assertEquals(
                "UK 123450 700002",
                tags().odd() == null ? "" : tags().fittings().get(0).number().shown());
        calf.at("2026-03-05 09:00", "tag-fitted", ONE + ", ear: left");
        assertEquals(List.of("UK 123450 600001", "UK 123450 600001"), inPlace());
        assertNull(tags().odd());
        assertEquals(2, tags().numbers().size(), "what it ever had stays");
    }

    @Test
    void aFarmsOwnTagDoesNotReplaceTheOfficialOne() {
        calf.at("2026-03-02 09:00", "tag-fitted", ONE + ", ear: left");
        calf.at("2026-03-05 09:00", "tag-fitted", "number: 'A 7', ear: left, role: primary");
        assertEquals(List.of("UK 123450 600001", "A 7"), inPlace());
        assertEquals("UK 123450 600001", name());
        assertNull(tags().odd(), "only official numbers must agree");
    }

    @Test
    void aLostTagIsGoneUntilTheEarHasAnother() {
        calf.at("2026-03-02 09:00", "tag-fitted", ONE + ", ear: left");
        calf.at("2026-03-02 09:00", "tag-fitted", ONE + ", ear: right");
        calf.at("2026-04-01 09:00", "noted", "text: torn out, tag_lost: left");
        assertEquals(1, inPlace().size());
        assertEquals(1, tags().lost().size());
        calf.at("2026-04-09 09:00", "tag-fitted", ONE + ", ear: left");
        assertEquals(2, inPlace().size());
        assertEquals(List.of(), tags().lost());
    }

    @Test
    void aCalfThatLostItsOnlyTagKeepsItsNumber() {
        calf.at("2026-03-02 09:00", "tag-fitted", ONE + ", ear: left");
        calf.at("2026-04-01 09:00", "noted", "text: torn out, tag_lost: left");
        assertEquals("UK 123450 600001", name());
    }

    @Test
    void aNoteOfTheOtherEarOrBeforeTheTagTakesNothingAway() {
        calf.at("2026-03-01 09:00", "noted", "text: wrong ear, tag_lost: left");
        calf.at("2026-03-02 09:00", "tag-fitted", ONE + ", ear: left");
        calf.at("2026-03-03 09:00", "noted", "text: wrong ear, tag_lost: right");
        calf.at("2026-03-04 09:00", "noted", "text: a note");
        assertEquals(1, inPlace().size());
    }

    @Test
    void theSameNumberWrittenOtherwiseAgrees() {
        calf.at("2026-03-02 09:00", "tag-fitted", ONE + ", ear: left");
        calf.at("2026-03-02 09:00", "tag-fitted", "number: '826123450600001', ear: right");
        assertNull(tags().odd());
        assertEquals(1, tags().numbers().size());
        assertTrue(TagWarning.of(List.of(calf.life())).isEmpty());
    }
}
