package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class TwoByTwoTableTest {

    @Test
    void theSumsAreThoseOfTheMargins() {
        TwoByTwoTable table = TwoByTwoTable.ofGroups(3, 10, 1, 7);
        assertEquals(new TwoByTwoTable(3, 7, 1, 6), table);
        assertEquals(10, table.exposed());
        assertEquals(7, table.unexposed());
        assertEquals(4, table.cases());
        assertEquals(17, table.total());
    }

    @Test
    void negativeCountsAndMoreCasesThanMembersAreRefused() {
        assertEquals(
                "The two-by-two table cannot be estimated because a count in it is negative.",
                assertThrows(CannotEstimate.class, () -> TwoByTwoTable.ofGroups(8, 7, 1, 7))
                        .getMessage());
        assertThrows(CannotEstimate.class, () -> new TwoByTwoTable(-1, 0, 0, 0));
    }

    @Test
    void countsTooLargeToAddAreNotWrappedRound() {
        TwoByTwoTable table = new TwoByTwoTable(Integer.MAX_VALUE, 1, 1, 1);
        assertThrows(ArithmeticException.class, table::exposed);
    }
}
