package wisp.site;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import wisp.question.season.IllnessCalendar;
import wisp.question.season.SeasonAnswer;

/**
 * The counts behind the pictures of births and illness by week; an illness that never came has no column.
 *
 * @param illnesses the columns after births
 * @param rows one a week in which a calf was born or an illness found
 */
public record WeeksTable(List<String> illnesses, List<Row> rows) {

    /**
     * One week.
     *
     * @param monday its first day
     * @param born calves born
     * @param episodes episodes found, one for each illness
     */
    public record Row(String monday, int born, List<Integer> episodes) {}

    static WeeksTable of(SeasonAnswer answer) {
        List<IllnessCalendar> found = answer.calendars().stream()
                .filter(one ->
                        one.weeks().stream().anyMatch(week -> week.episodes().count() > 0))
                .toList();
        Map<LocalDate, int[]> weeks = new TreeMap<>();
        answer.births()
                .forEach(week -> counts(weeks, week.monday(), found.size())[0] =
                        week.born().count());
        for (int i = 0; i < found.size(); i++) {
            for (IllnessCalendar.Week week : found.get(i).weeks()) {
                counts(weeks, week.monday(), found.size())[i + 1] =
                        week.episodes().count();
            }
        }
        List<Row> rows = new ArrayList<>();
        weeks.forEach((monday, counts) -> {
            List<Integer> episodes = new ArrayList<>();
            boolean any = counts[0] > 0;
            for (int i = 1; i < counts.length; i++) {
                episodes.add(counts[i]);
                any |= counts[i] > 0;
            }
            if (any) {
                rows.add(new Row(Shown.date(monday), counts[0], episodes));
            }
        });
        return new WeeksTable(found.stream().map(IllnessCalendar::title).toList(), rows);
    }

    /** All calves born. */
    public int born() {
        return rows.stream().mapToInt(Row::born).sum();
    }

    /** All episodes of one illness. */
    public int episodes(int illness) {
        return rows.stream().mapToInt(row -> row.episodes().get(illness)).sum();
    }

    private static int[] counts(Map<LocalDate, int[]> weeks, LocalDate monday, int illnesses) {
        return weeks.computeIfAbsent(monday, day -> new int[illnesses + 1]);
    }
}
