package wisp.indicator;

import java.time.LocalDate;

/**
 * What the law of one place says of one method of castration. Ages count in days of life or calendar months.
 *
 * @param allowed false where the method is forbidden at any age
 * @param byDay the last day of life on which it may be used, null where none is set
 * @param anaestheticFromDay the first day of life on which an anaesthetic must be given, null where counted in months
 * @param anaestheticFromMonths the age in calendar months from which an anaesthetic must be given, null where in days
 */
public record CastrationLimit(
        boolean allowed,
        Integer byDay,
        Integer anaestheticFromDay,
        Integer anaestheticFromMonths,
        String source,
        String status) {

    /** Why a castration is outside the law, or null where it is inside. */
    String breach(LocalDate born, LocalDate done, boolean anaesthetic) {
        long day = done.toEpochDay() - born.toEpochDay();
        if (!allowed) {
            return "the method is forbidden";
        }
        if (byDay != null && day > byDay) {
            return "done on day " + day + ", after day " + byDay;
        }
        boolean old = (anaestheticFromDay != null && day >= anaestheticFromDay)
                || (anaestheticFromMonths != null && !done.isBefore(born.plusMonths(anaestheticFromMonths)));
        return old && !anaesthetic ? "no anaesthetic recorded on day " + day : null;
    }
}
