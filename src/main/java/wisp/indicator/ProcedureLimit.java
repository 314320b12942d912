package wisp.indicator;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * What the law of one place says of one method of castration or disbudding. Ages count in days of life or calendar
 * months.
 *
 * @param allowed false where the method is forbidden at any age
 * @param byDay the last day of life on which it may be used, null where none is set
 * @param anaesthetic from when an anaesthetic must be given
 * @param painRelief from when pain relief must be given
 * @param vet from when only a vet may do it
 */
public record ProcedureLimit(
        boolean allowed, Integer byDay, AgeFrom anaesthetic, AgeFrom painRelief, AgeFrom vet, Basis basis)
        implements Limit {

    /** Why a castration is outside the law, or null where it is inside. */
    String breach(LocalDate born, LocalDate done, boolean anaestheticGiven) {
        long day = done.toEpochDay() - born.toEpochDay();
        if (!allowed) {
            return "the method is forbidden";
        }
        if (byDay != null && day > byDay) {
            return "done on day " + day + ", after day " + byDay;
        }
        boolean old = anaesthetic.reached(born, done);
        return old && !anaestheticGiven ? "no anaesthetic recorded on day " + day : null;
    }

    /** Whether the method may still be used on a local date. */
    public boolean open(LocalDate born, LocalDate date) {
        return allowed && (byDay == null || date.toEpochDay() - born.toEpochDay() <= byDay);
    }

    /** What it asks, in words. */
    public String words() {
        if (!allowed) {
            return "forbidden at any age";
        }
        List<String> parts = new ArrayList<>();
        if (byDay != null) {
            parts.add("by the end of day " + byDay + " of life");
        }
        add(parts, "with an anaesthetic", anaesthetic);
        add(parts, "with pain relief", painRelief);
        add(parts, "by a vet", vet);
        return parts.isEmpty() ? "no limit of age stated" : String.join(", ", parts);
    }

    private static void add(List<String> parts, String what, AgeFrom from) {
        if (from.day() != null && from.day() == 0) {
            parts.add(what + " at any age");
        } else if (!from.never()) {
            parts.add(what + " from " + from.words());
        }
    }
}
