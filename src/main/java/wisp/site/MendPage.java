package wisp.site;

import java.util.List;
import java.util.Map;
import wisp.event.EventType;
import wisp.event.Fault;
import wisp.history.Life;
import wisp.history.LifeEvent;
import wisp.history.TagWarning;
import wisp.indicator.Conditions;
import wisp.tag.TagNumber;

/**
 * One event and the form that withdraws or corrects it.
 *
 * @param href the page of whose it is, empty for a pen
 * @param who the animal in words, empty for a pen
 * @param what the event, such as {@code navel treated}
 * @param problem what is wrong with it where it is marked
 * @param doubt why the tag number may be wrong, empty where nothing says so
 * @param likely numbers that may have been meant
 * @param fallen why it no longer stands, empty where it does
 * @param fallenHref where the correction that withdrew it is withdrawn in turn
 * @param correction true for a correction, which can only be withdrawn
 * @param form what stands in the form
 * @param token lets this page's form record something
 * @param ambiguous true where the clocks showed the event's hour twice
 * @param zone the name of the farm's clocks
 * @param faults what is wrong with what was sent
 */
public record MendPage(
        Frame frame,
        String subject,
        String href,
        String source,
        String id,
        String who,
        String what,
        String when,
        String details,
        String recorded,
        String problem,
        String doubt,
        List<String> likely,
        String fallen,
        String fallenHref,
        boolean correction,
        MendForm form,
        String token,
        boolean ambiguous,
        String zone,
        List<Fault> faults) {

    static MendPage of(
            Asked asked, MendTarget target, MendForm form, String token, List<Fault> faults, Conditions conditions) {
        LifeEvent event = target.event();
        Map<String, String> kept = Map.of("source", event.source(), "id", event.id());
        Frame frame = Frame.of(asked, "Mend: " + EventWords.of(event), "/records/mend", kept);
        LifeEvent by = target.fallenBy();
        List<TagWarning> doubts = doubts(asked, target);
        return new MendPage(
                frame,
                target.subject(),
                target.row() < 0 ? "" : frame.links().calf(target.subject()),
                event.source(),
                event.id(),
                target.row() < 0
                        ? ""
                        : CalfPage.summary(asked.cohort().lives().get(target.row()), target.zone(), conditions),
                EventWords.of(event),
                Shown.moment(event.time(), event.timeKnown(), target.zone()),
                EventWords.details(event),
                Shown.moment(event.recorded(), true, target.zone())
                        + (event.recordedBy() == null ? "" : " by " + event.recordedBy()),
                target.problem(),
                String.join(" ", doubts.stream().map(TagWarning::problem).toList()),
                doubts.stream()
                        .flatMap(doubt -> doubt.likely().stream())
                        .map(TagNumber::shown)
                        .distinct()
                        .toList(),
                by == null
                        ? ""
                        : "It was " + EventWords.of(by) + " on " + Shown.moment(by.recorded(), true, target.zone()),
                by == null ? "" : CalfPage.mendHref(by, frame.links()),
                target.correction(),
                form,
                token,
                TypedTime.twice(form.time(), target.zone()),
                target.zone().getId(),
                faults);
    }

    private static List<TagWarning> doubts(Asked asked, MendTarget target) {
        if (target.event().type() != EventType.TAG_FITTED || target.row() < 0) {
            return List.of();
        }
        List<Life> herd = asked.cohort().lives();
        return TagWarning.of(herd.get(target.row()), herd).stream()
                .filter(warning -> warning.event().sequence() == target.event().sequence())
                .toList();
    }

    /** What may be offered for one field. */
    public List<String> offered(String field) {
        return field.equals("number") ? likely : List.of();
    }

    /** What is wrong with one field, empty where nothing is. */
    public String fault(String field) {
        return FieldFaults.of(faults, field);
    }

    /** Faults of no field of the form. */
    public List<Fault> otherFaults() {
        List<String> shown = form.fields().stream()
                .map(field -> MendForm.PREFIX + field.name())
                .toList();
        return faults.stream()
                .filter(fault -> !shown.contains(fault.field()))
                .filter(fault -> !fault.field().equals("time") && !fault.field().equals("reason"))
                .toList();
    }
}
