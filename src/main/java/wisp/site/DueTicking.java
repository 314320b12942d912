package wisp.site;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wisp.cohort.Cohort;
import wisp.due.Due;
import wisp.due.DueItem;
import wisp.due.DueState;
import wisp.event.EventData;
import wisp.event.EventReader;
import wisp.event.Fault;
import wisp.history.Life;
import wisp.records.Intake;
import wisp.records.Records;

/**
 * Records a tick once, however often it is sent. Its events bear ids made from calf, step and turn: a second tap of the
 * same button finds them there.
 */
final class DueTicking {
    private final Records records;
    private final Due due;

    DueTicking(Records records, Due due) {
        this.records = records;
        this.due = due;
    }

    /**
     * What came of a tick.
     *
     * @param recorded ids of its events in the log; empty where nothing was recorded
     * @param anchor the item's place on the page, empty where there is no such item
     * @param turn the turn under which it may be sent again
     * @param status of the answer where nothing was recorded
     */
    record Outcome(List<String> recorded, String anchor, int turn, int status, List<Fault> faults) {}

    Outcome of(DueForm form, String worker, Instant now, boolean own) {
        Cohort cohort = records.cohort();
        int row = cohort.rowOf(form.calf());
        Optional<DueItem> found =
                row < 0 ? Optional.empty() : item(cohort.lives().get(row), row, form.step(), now);
        if (found.isEmpty()) {
            throw Problem.notFound("No calf has this step. Open the list again and tick it there.");
        }
        DueItem item = found.get();
        if (!own) {
            return refused(
                    item,
                    form.turn(),
                    403,
                    new Fault(
                            "",
                            "This page was opened before the server last started, or not here.",
                            "Nothing is recorded yet: tick it again."));
        }
        Optional<DueTick> tick = DueTick.of(item, records.definitions(), now);
        if (tick.isEmpty()) {
            return refused(
                    item,
                    form.turn(),
                    422,
                    new Fault("", item.title() + " cannot be done yet.", "Nothing is recorded."));
        }
        DueEntry entry = DueEntry.of(form, item, tick.get(), records, cohort.lives(), worker);
        return already(form, item, entry).orElseGet(() -> record(form, item, entry, now));
    }

    private Outcome record(DueForm form, DueItem item, DueEntry entry, Instant now) {
        if (item.state() == DueState.DONE || item.state() == DueState.NOT_NEEDED) {
            String done = item.done() == null
                    ? item.why()
                    : "It was recorded on "
                            + Shown.moment(
                                    item.done().time(),
                                    item.done().timeKnown(),
                                    item.life().farm().zone()) + by(item.done().recordedBy()) + ".";
            return refused(
                    item,
                    form.turn(),
                    409,
                    new Fault("", item.title() + " is not due any more. " + done, "Nothing more was recorded."));
        }
        if (!entry.faults().isEmpty()) {
            return new Outcome(List.of(), DueRow.anchor(item), form.turn(), 422, entry.faults());
        }
        Intake intake = records.take(entry.events(), false);
        if (intake.refused().isEmpty()) {
            return new Outcome(ids(entry), DueRow.anchor(item), form.turn(), 303, List.of());
        }
        // another tap of the same button came between
        Life life = records.cohort().lives().get(item.row());
        DueItem later = item(life, item.row(), form.step(), now).orElse(item);
        return already(form, later, entry).orElseGet(() -> {
            return new Outcome(
                    List.of(),
                    DueRow.anchor(item),
                    form.turn(),
                    422,
                    List.of(intake.refused().get(0).fault()));
        });
    }

    /** What is to be answered where this turn was recorded before; empty where it was not. */
    private Optional<Outcome> already(DueForm form, DueItem item, DueEntry entry) {
        Life life = item.life();
        int next = DueForm.nextTurn(life, form.step());
        if (form.turn() >= next) {
            return Optional.empty();
        }
        EventData stands = life.events().stream()
                .filter(event ->
                        event.source().equals(DueForm.SOURCE) && event.id().equals(form.id(0)))
                .map(event -> event.data())
                .findFirst()
                .orElse(null);
        EventReader.Reading reading = entry.events().get(0);
        if (stands != null && reading.sound() && stands.equals(reading.event().data())) {
            return Optional.of(new Outcome(ids(entry), DueRow.anchor(item), next, 303, List.of()));
        }
        String problem = stands == null
                ? "What this page had recorded was taken back since."
                : "This step was recorded meanwhile, with other words.";
        return Optional.of(refused(
                item,
                next,
                409,
                new Fault("", problem, "Nothing more is recorded: look at it again and send it anew.")));
    }

    private static List<String> ids(DueEntry entry) {
        return entry.events().stream().map(reading -> reading.event().id()).toList();
    }

    private Optional<DueItem> item(Life life, int row, String step, Instant now) {
        return due.of(life, row, now).stream()
                .filter(item -> item.step().equals(step))
                .findFirst();
    }

    private static Outcome refused(DueItem item, int turn, int status, Fault fault) {
        return new Outcome(List.of(), DueRow.anchor(item), turn, status, List.of(fault));
    }

    private static String by(String name) {
        return name == null ? "" : " by " + name;
    }
}
