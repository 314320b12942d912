package wisp.site;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import wisp.question.season.CalfList;
import wisp.question.season.DeathAge;
import wisp.question.season.Deaths;
import wisp.question.season.SeasonAnswer;

/**
 * Deaths by recorded cause and age, each count opening its calves.
 *
 * @param ages the columns
 * @param rows one row a cause, all deaths last
 * @param withoutHour calves born dead that no figure in hours counts, as nobody wrote theirs down
 */
public record DeathsTable(List<String> ages, List<Row> rows, int withoutHour) {

    /** One cause. */
    public record Row(String cause, List<Cell> cells, Cell total) {}

    /**
     * One count and last season's beside it; an address is empty where its count is 0. Of last season only the totals
     * have one: as many more would make the page heavy, and last season's own page has them all.
     */
    public record Cell(int count, String href, int lastSeason, String lastSeasonHref) {

        /** Whether nobody died, in either season. */
        public boolean quiet() {
            return count == 0 && lastSeason == 0;
        }
    }

    /** All deaths of the season. */
    public int all() {
        return rows.get(rows.size() - 1).total().count();
    }

    /** Whether a row is that of all deaths. */
    public boolean last(Row row) {
        return row == rows.get(rows.size() - 1);
    }

    /** How many causes have no death this season. */
    public int zeros() {
        return (int) rows.stream()
                .filter(row -> !last(row) && row.total().count() == 0)
                .count();
    }

    static DeathsTable of(SeasonAnswer answer, SeasonLinks links) {
        Deaths deaths = answer.deaths();
        String before = answer.before();
        List<String> ages =
                Arrays.stream(DeathAge.values()).map(DeathAge::words).toList();
        List<Row> rows = new ArrayList<>();
        deaths.causes().forEach(cause -> rows.add(row(cause.cause(), cause, before, links)));
        rows.add(row("all", deaths.all(), before, links));
        return new DeathsTable(ages, rows, answer.bornDeadWithoutHour());
    }

    private static Row row(String name, Deaths.Cause cause, String before, SeasonLinks links) {
        List<Cell> cells = new ArrayList<>();
        cause.byAge()
                .forEach((age, calves) -> cells.add(new Cell(
                        calves.count(), links.calves(calves), cause.lastSeason().get(age), "")));
        CalfList total = cause.total();
        int then = cause.allLastSeason();
        return new Row(
                name,
                cells,
                new Cell(total.count(), links.calves(total), then, then == 0 ? "" : links.before(total, before)));
    }
}
