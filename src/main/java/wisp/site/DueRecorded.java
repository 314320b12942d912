package wisp.site;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wisp.cohort.Cohort;

/** What a tick recorded, as the list tells of it. */
final class DueRecorded {
    private static final int MOST = 2;

    private DueRecorded() {}

    /**
     * The line of a tick; empty where no such event stands any more.
     *
     * @param ids of its events, with full stops between
     * @param before the anchor of the item that it stands before
     */
    static Optional<DuePage.Recorded> of(DueAsked asked, String ids, String before) {
        Cohort cohort = asked.asked().cohort();
        Links links = new Links(asked.asked().parameters());
        List<DuePage.Recorded.Line> lines = new ArrayList<>();
        for (String id : ids.split("\\.", MOST + 1)) {
            MendTarget.of(cohort, DueForm.SOURCE, id)
                    .filter(target -> target.row() >= 0 && target.fallenBy() == null)
                    .ifPresent(target -> lines.add(line(target, cohort, links)));
        }
        return lines.isEmpty() ? Optional.empty() : Optional.of(new DuePage.Recorded(lines, before));
    }

    private static DuePage.Recorded.Line line(MendTarget target, Cohort cohort, Links links) {
        String details = EventWords.details(target.event());
        return new DuePage.Recorded.Line(
                EventWords.of(target.event()) + (details.isEmpty() ? "" : ", " + details),
                CalfName.of(cohort.lives().get(target.row())).shown(),
                links.calf(target.subject()),
                Shown.moment(target.event().time(), target.event().timeKnown(), target.zone()),
                links.to(
                        "/records/mend",
                        Map.of("source", DueForm.SOURCE, "id", target.event().id())));
    }
}
