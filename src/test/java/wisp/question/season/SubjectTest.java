package wisp.question.season;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import org.junit.jupiter.api.Test;
import wisp.indicator.Indicator;

class SubjectTest {
    @Test
    void aShareOfCalvesIsCalledOne() {
        assertEquals("The share of dirty calves", of("dirty-calves"));
        assertEquals("The share of calves with both ear tags inside the legal limit", of("tagged-inside-limit"));
        assertEquals("The share of castrations inside the legal limits", of("castrated-inside-limit"));
    }

    @Test
    void whatNamesANumberStandsAsItIs() {
        assertEquals("Pre-weaning mortality, 24 h to 60 days", of("preweaning-mortality"));
        assertEquals("Rate of diarrhoea", of("diarrhoea-rate"));
    }

    @Test
    void everyShippedFigureHasWordsAndNeedsNoQuotes() {
        SeasonBook.SHIPPED
                .indicators()
                .forEach(indicator -> assertFalse(Subject.of(indicator).contains("“"), indicator::title));
    }

    @Test
    void aFarmsOwnShareIsQuoted() {
        Indicator dirty = SeasonBook.SHIPPED.indicator("dirty-calves").orElseThrow();
        Indicator own = new Indicator(
                "own",
                1,
                "Kept warm",
                dirty.measure(),
                false,
                dirty.population(),
                dirty.rule(),
                null,
                "own",
                "",
                "own.yaml");
        assertEquals("The share of “Kept warm”", Subject.of(own));
    }

    private static String of(String id) {
        return Subject.of(SeasonBook.SHIPPED.indicator(id).orElseThrow());
    }
}
