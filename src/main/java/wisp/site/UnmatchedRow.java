package wisp.site;

import java.time.ZoneId;
import java.util.List;
import java.util.UUID;
import wisp.sample.UnmatchedSample;

/**
 * What a laboratory said of a number that is no one animal's, with the calves that may be meant.
 *
 * @param number as it was written
 * @param what such as {@code sample result: positive}
 * @param why why no calf was found
 * @param likely calves that may be meant, best first
 * @param mendHref where it is corrected or withdrawn by hand; empty where nothing can be
 * @param form a fresh name for the form that says whose it is
 */
public record UnmatchedRow(
        String number,
        String what,
        String when,
        String why,
        List<CalfName> likely,
        String source,
        String id,
        String mendHref,
        String form) {

    private static String why(int having) {
        return switch (having) {
            case 0 -> "No animal has this number.";
            case 1 -> "A calf is known by this number now, and was not when the row came.";
            default -> "Several animals have had this number.";
        };
    }

    static UnmatchedRow of(UnmatchedSample one, ZoneId zone, Links mending) {
        String details = EventWords.details(one.event());
        return new UnmatchedRow(
                one.number(),
                EventWords.of(one.event()) + (details.isEmpty() ? "" : ": " + details),
                Shown.moment(one.event().time(), one.event().timeKnown(), zone),
                why(one.having()),
                one.likely().stream().map(CalfName::of).toList(),
                one.event().source(),
                one.event().id(),
                CalfPage.mendHref(one.event(), mending),
                UUID.randomUUID().toString());
    }
}
