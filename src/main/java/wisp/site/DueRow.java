package wisp.site;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wisp.due.DueItem;
import wisp.due.DueState;
import wisp.event.Fault;
import wisp.history.Life;
import wisp.indicator.Basis;
import wisp.indicator.Definitions;
import wisp.indicator.Law;
import wisp.indicator.ProcedureLimit;
import wisp.report.DueWords;

/**
 * One step with one calf on the page.
 *
 * @param anchor its place on the page
 * @param step the step's id
 * @param end when it ends
 * @param title what is to be done
 * @param state how it stands
 * @param from from when it can be done, empty where it can be now
 * @param left what is left where law or biology has closed the usual way, or a word of what is overdue; may be empty
 * @param ways each lawful way that is left with what it asks
 * @param rule the limit with what it stands on
 * @param tick what can be recorded, null where nothing can
 * @param twice whether the clocks lately showed an hour twice, so that it must be said which was meant
 * @param form what was sent, or an untouched form
 * @param open whether its fold is open
 * @param faults what is wrong with what was sent
 */
public record DueRow(
        String anchor,
        String step,
        DueWords end,
        String title,
        DueState state,
        CalfName calf,
        String href,
        String pen,
        String age,
        String from,
        String left,
        String why,
        List<String> ways,
        List<String> cautions,
        String rule,
        DueTick tick,
        boolean twice,
        Typed form,
        boolean open,
        List<Fault> faults) {

    /** What stands in the form beside the event's fields. */
    public record Typed(String time, boolean later, boolean dayOnly) {
        static final Typed NOTHING = new Typed("", false, false);
    }

    /** A form that came back with what is wrong with it. */
    record Returned(DueForm form, List<Fault> faults) {
        boolean of(DueItem item) {
            return form.calf().equals(item.life().key()) && form.step().equals(item.step());
        }
    }

    static DueRow of(DueItem item, DueAsked asked, Definitions definitions, String open, Optional<Returned> returned) {
        Life life = item.life();
        ZoneId zone = life.farm().zone();
        String anchor = anchor(item);
        Optional<Returned> back = returned.filter(one -> one.of(item));
        DueTick tick =
                asked.ticks() ? DueTick.of(item, definitions, asked.now()).orElse(null) : null;
        DueForm form = back.map(Returned::form).orElse(null);
        boolean later = item.state() == DueState.SOON
                && item.span().opens().isAfter(asked.list().at());
        return new DueRow(
                anchor,
                item.step(),
                DueWords.end(item, asked.list().at()),
                item.title(),
                item.state(),
                CalfName.of(life),
                new Links(asked.asked().parameters()).calf(life.key()),
                item.pen() == null ? "" : item.pen(),
                DueWords.age(life, asked.list().at()),
                later ? Shown.moment(item.span().opens(), true, zone) : "",
                left(item, definitions.law(life), asked),
                item.why(),
                item.ways(),
                item.cautions(),
                rule(item),
                tick == null || form == null ? tick : tick.typed(form),
                TypedTime.twiceLately(asked.now(), zone),
                form == null ? Typed.NOTHING : new Typed(form.time(), form.later(), form.dayOnly()),
                back.isPresent() || anchor.equals(open),
                back.map(Returned::faults).orElse(List.of()));
    }

    /** The place of an item on the page; an animal's row stays its own. */
    static String anchor(DueItem item) {
        return "d-" + item.row() + "-" + item.step();
    }

    /** In one line what can still be done; procedures name the lawful methods. */
    private static String left(DueItem item, Optional<Law> law, DueAsked asked) {
        Map<String, ProcedureLimit> methods = DueProcedure.methods(item, law);
        boolean closed = item.state() == DueState.IMPOSSIBLE_NOW || item.state() == DueState.OVERDUE;
        if (methods.isEmpty()) {
            return closed ? String.join(" ", item.ways()) : "";
        }
        LocalDate born = item.life().birthDate();
        String open = DueProcedure.open(methods, born, asked.today());
        if (!closed && item.span().closes() != null) {
            return "";
        }
        if (open.isEmpty()) {
            return "No way that the limits file knows is left: ask the vet.";
        }
        return "Still lawful: " + open + "; "
                + (DueProcedure.vetOnly(methods, born, asked.today())
                        ? "only a vet may do it."
                        : "a vet may be needed.");
    }

    private static String rule(DueItem item) {
        Basis basis = item.rule().basis();
        List<String> parts = new ArrayList<>();
        parts.add(item.rule().limit());
        parts.add((item.rule().place().isEmpty() ? "" : item.rule().place() + ", ")
                + basis.kind().word());
        return String.join("; ", parts) + ". " + basis.source().replaceAll("\\.$", "") + " (" + basis.status()
                + (basis.readOn().isEmpty() ? "" : ", read " + basis.readOn()) + ").";
    }

    /** The state as a class of style. */
    public String look() {
        return state.word().replace(' ', '-');
    }

    /** Whether the number may be insisted on. */
    public boolean doubted() {
        return faults.stream().anyMatch(fault -> fault.field().equals("data.number"));
    }

    /** What is wrong with one field, empty where nothing is. */
    public String fault(String field) {
        return FieldFaults.of(faults, field);
    }

    /** Faults of no field of the form. */
    public List<String> otherFaults() {
        return faults.stream()
                .filter(fault -> !fault.field().equals("time"))
                .filter(fault -> tick == null
                        || tick.fields().stream()
                                .noneMatch(field -> fault.field().equals(MendForm.PREFIX + field.name())))
                .map(fault -> (fault.problem() + " " + fault.mend()).strip())
                .toList();
    }
}
