package wisp.indicator;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.Map;
import org.junit.jupiter.api.Test;

class SelectionWordsTest {
    private static Selection of(String from, String to, String pen, String sex, String parity, String breed) {
        return new Selection(
                "S2",
                from == null ? null : LocalDate.parse(from),
                to == null ? null : LocalDate.parse(to),
                null,
                Stratum.WEEK,
                pen,
                sex,
                parity,
                breed);
    }

    private static String said(String from, String to, String pen, String sex, String parity, String breed) {
        return SelectionWords.of(of(from, to, pen, sex, parity, breed));
    }

    @Test
    void aSeasonAloneAndADivisionNarrowNobody() {
        assertEquals("", said(null, null, null, null, null, null));
        assertEquals(Map.of(), SelectionWords.filters(of(null, null, null, null, null, null)));
    }

    @Test
    void everyFilterHasItsWords() {
        assertEquals(
                "female calves of breed Angus of dams of parity 2 born in north boxes, from 1 Mar to 31 Mar 2026",
                said("2026-03-01", "2026-04-01", "north boxes", "female", "2", "Angus"));
        assertEquals("calves of unknown sex", said(null, null, null, "unknown", null, null));
        assertEquals("male calves born in north boxes", said(null, null, "north boxes", "male", null, null));
        assertEquals(
                "calves of dams whose parity is not recorded born in a pen not recorded",
                said(null, null, "not recorded", null, "not recorded", null));
    }

    @Test
    void theDaySetAsTheFirstAfterTheSpanIsNotInIt() {
        assertEquals("calves born from 1 Mar 2026 on", said("2026-03-01", null, null, null, null, null));
        assertEquals("calves born up to 31 Mar 2026", said(null, "2026-04-01", null, null, null, null));
        assertEquals("calves born on 1 Mar 2026", said("2026-03-01", "2026-03-02", null, null, null, null));
        assertEquals(
                "calves born from 20 Dec 2025 to 3 Jan 2026", said("2025-12-20", "2026-01-04", null, null, null, null));
    }

    @Test
    void filtersAreTheParametersThatNarrow() {
        Selection all = of("2026-03-01", "2026-04-01", "boxes", "male", "1", "Angus");
        assertEquals(
                "{from=2026-03-01, to=2026-04-01, pen=boxes, sex=male, parity=1, breed=Angus}",
                SelectionWords.filters(all).toString());
    }

    @Test
    void aSentenceBeginsWithTheCalvesThatItIsAbout() {
        assertEquals("Of 3 calves none died.", SelectionWords.among("", "Of 3 calves none died."));
        assertEquals(
                "Among male calves: of 3 calves none died.",
                SelectionWords.among("male calves", "Of 3 calves none died."));
    }
}
