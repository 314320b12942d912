package wisp.log;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;

/**
 * The chain's head at the end of each local day of recording. An event brought in from an old book says an earlier
 * {@code recordedtime} than those before it in the chain; it counts to their day, as days never go back along the
 * chain.
 *
 * @param zone whose days
 * @param head the newest event that was looked at
 * @param days in order, none twice; the last day may still be going on
 */
public record DayHeads(ZoneId zone, ChainHead head, List<DayHead> days) {

    /** Keeps the days as they are. */
    public DayHeads {
        days = List.copyOf(days);
    }

    /** Before any event. */
    public static DayHeads none(ZoneId zone) {
        return new DayHeads(zone, ChainHead.OF_NOTHING, List.of());
    }

    /** With the next events of the chain, in order. */
    public DayHeads with(List<StoredEvent> next) {
        List<DayHead> all = new ArrayList<>(days);
        ChainHead newest = head;
        for (StoredEvent stored : next) {
            newest = new ChainHead(stored.sequence(), stored.hash());
            LocalDate day =
                    stored.event().recordedTime().atZoneSameInstant(zone).toLocalDate();
            LocalDate latest =
                    all.isEmpty() ? LocalDate.MIN : all.get(all.size() - 1).day();
            if (day.isAfter(latest)) {
                all.add(new DayHead(day, newest));
            } else {
                all.set(all.size() - 1, new DayHead(latest, newest));
            }
        }
        return new DayHeads(zone, newest, all);
    }
}
