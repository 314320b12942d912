package wisp.cohort;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import tech.tablesaw.api.Table;
import wisp.history.FarmHistory;
import wisp.testing.Calf;
import wisp.testing.Events;

class CohortTableTest {
    private final CohortTable table = new CohortTable();

    private static CohortRow row(Calf calf) {
        return CohortRow.of(calf.life(), FarmHistory.UNDESCRIBED);
    }

    @Test
    void aRowPutInPlaceOfAFullerOneLeavesNothingOfIt() {
        Calf calf = new Calf("A").born("2026-03-01 07:30", "alive: true, pen: P1, ease: 2, weight_kg: 40");
        calf.at("2026-03-01 07:40", "navel-treated", "");
        calf.at("2026-03-02 07:40", "died", "");
        table.put(0, row(calf));
        calf.events().retract(calf.birth(), "2026-03-03 07:40");
        table.put(0, row(calf));
        assertEquals(1, table.copy().rowCount());
        List<String> filled = table.copy().columns().stream()
                .filter(column -> !column.isMissing(0))
                .map(column -> column.name())
                .toList();
        assertEquals(List.of("calf", "events", "marks"), filled);
    }

    @Test
    void aCopyStaysAsItWasAndSharesOnlyWhatDidNotChange() {
        Calf calf = new Calf("A").born("2026-03-01 07:30", "alive: true, pen: P1, weight_kg: 40");
        table.put(0, row(calf));
        Table before = table.copy();
        calf.at("2026-03-02 07:40", "noted", "text: seen");
        table.put(0, row(calf));
        Table after = table.copy();
        assertEquals(1, before.intColumn("events").get(0));
        assertEquals(2, after.intColumn("events").get(0));
        assertSame(before.column("pen"), after.column("pen"));
    }

    @Test
    void wordsThatOtherProgramsTakeForMissingAreWordsHere() {
        int row = 0;
        for (String word : List.of("NA", "null", "*", "-", "NaN", "N/A", "true", "0")) {
            table.put(row, row(new Calf(word).born("2026-03-01 07:30", "alive: true, pen: '" + word + "'")));
            assertEquals(word, table.copy().stringColumn("calf").get(row));
            assertFalse(table.copy().stringColumn("pen").isMissing(row));
            assertEquals(word, table.copy().stringColumn("pen").get(row));
            row++;
        }
    }

    @Test
    void manyDifferentWordsAreKeptThroughEveryRebuildingOfARow() {
        Events events = Events.london();
        Calf calf = new Calf(events, "A").born("2026-03-01 07:30", "alive: true");
        CohortRow plain = row(calf);
        for (int i = 0; i < 66_000; i++) {
            table.put(i, renamed(plain, "calf " + i, "pen " + i));
        }
        for (int i = 0; i < 66_000; i++) {
            table.put(i, renamed(plain, "calf " + i, "pen " + (i + 1)));
        }
        Table copy = table.copy();
        for (int i = 0; i < 66_000; i += 997) {
            assertEquals("calf " + i, copy.stringColumn("calf").get(i));
            assertEquals("pen " + (i + 1), copy.stringColumn("pen").get(i));
            assertTrue(copy.stringColumn("dam").isMissing(i));
        }
    }

    @Test
    void everyColumnHoldsWhatItsNameSays() {
        Calf calf = new Calf("A")
                .born(
                        "2026-03-01 07:30",
                        "alive: true, sex: male, dam: D1, breed: AA, pen: P1, ease: 3, litter_size: 2, dam_parity: 4, weight_kg: 41.5");
        calf.at("2026-03-01 07:40", "navel-treated", "");
        calf.at("2026-03-01 08:00", "cleanliness-scored", "score: 1, pen: P2");
        calf.at("2026-03-05 08:00", "died", "");
        calf.at("2026-03-06 08:00", "weaned", "");
        table.put(0, row(calf));
        List<String> cells = table.copy().columns().stream()
                .map(column -> column.name() + "=" + column.getString(0))
                .toList();
        assertEquals(
                List.of(
                        "calf=A",
                        "born_at=2026-03-01T07:30:00.000Z",
                        "birth_time_known=true",
                        "birth_date=2026-03-01",
                        "season=2026",
                        "week=2026-W09",
                        "sex=male",
                        "born_alive=true",
                        "dam=D1",
                        "breed=AA",
                        "pen=P1",
                        "ease=3",
                        "litter_size=2",
                        "dam_parity=4",
                        "birth_weight_kg=41.5",
                        "navel_delay_minutes=10",
                        "navel_delay=0-15 min",
                        "cleanliness_score=1",
                        "cleanliness_pen=P2",
                        "exit=died",
                        "exit_at=2026-03-05T08:00:00.000Z",
                        "events=4",
                        "marks=1"),
                cells);
    }

    private static CohortRow renamed(CohortRow row, String calf, String pen) {
        return new CohortRow(
                calf,
                row.bornAt(),
                row.birthTimeKnown(),
                row.birthDate(),
                row.season(),
                row.week(),
                row.sex(),
                row.bornAlive(),
                row.dam(),
                row.breed(),
                pen,
                row.ease(),
                row.litterSize(),
                row.damParity(),
                row.birthWeightKg(),
                row.navelDelayMinutes(),
                row.navelDelay(),
                row.cleanlinessScore(),
                row.cleanlinessPen(),
                row.exit(),
                row.exitAt(),
                row.events(),
                row.marks());
    }
}
