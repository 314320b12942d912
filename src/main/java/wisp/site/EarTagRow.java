package wisp.site;

import java.time.ZoneId;
import java.util.List;
import wisp.event.TagFitted;
import wisp.history.EarTags;
import wisp.history.Life;

/**
 * One ear tag of a calf on its page. What nobody said is empty.
 *
 * @param number in its usual groups
 * @param where ear and role
 * @param state whether it is in place, replaced or lost, and since when
 */
public record EarTagRow(String number, String where, String fitted, String state) {

    /** Every tag that a calf ever had, in order. */
    static List<EarTagRow> of(Life life) {
        ZoneId zone = life.farm().zone();
        return EarTags.of(life).fittings().stream().map(one -> row(one, zone)).toList();
    }

    private static EarTagRow row(EarTags.Fitting one, ZoneId zone) {
        String gone = one.inPlace()
                ? "in place"
                : (one.lost() ? "found lost " : "replaced ")
                        + Shown.day(one.gone().time(), zone);
        return new EarTagRow(
                one.number().shown(), where(one.tag()), Shown.day(one.event().time(), zone), gone);
    }

    private static String where(TagFitted tag) {
        String ear = tag.ear() == null ? "" : tag.ear().word();
        String role = tag.role() == null ? "" : tag.role().word();
        return ear + (ear.isEmpty() || role.isEmpty() ? "" : ", ") + role;
    }
}
