package wisp.report;

import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import wisp.log.DayHead;
import wisp.log.DayHeads;

/** The newest day's head of the log in words; on paper it shows later whether the log was written anew. */
final class NotedHead {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMM yyyy", Locale.ENGLISH);

    private NotedHead() {}

    /** What to print, empty where nothing was ever recorded. */
    static String words(DayHeads heads) {
        List<DayHead> days = heads.days();
        if (days.isEmpty()) {
            return "";
        }
        DayHead newest = days.get(days.size() - 1);
        return "When this was printed, the head of the log on its newest day, " + DAY.format(newest.day()) + ", was "
                + newest.head() + ". Kept with this paper, it shows later whether what stood in the log until then was"
                + " changed: verify --head tells.";
    }
}
