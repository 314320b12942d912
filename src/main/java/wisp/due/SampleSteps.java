package wisp.due;

import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wisp.event.EventType;
import wisp.event.SampleResult;
import wisp.history.LifeEvent;
import wisp.indicator.DayLimit;
import wisp.indicator.Law;
import wisp.indicator.Limit;
import wisp.indicator.Practice;

/**
 * The tissue sample: taken, sent, its result, and taken again after an inconclusive one. What was sent or has a result
 * was taken, even where nobody wrote the taking down.
 */
final class SampleSteps implements Step {
    static final String TAKEN = "tissue-sample";
    static final String SENT = "sample-sent";
    static final String RESULT = "sample-result";
    static final String AGAIN = "sample-again";

    @Override
    public List<DueItem> of(DueCalf calf) {
        Optional<DayLimit> limit = calf.law().flatMap(law -> law.day("tissue-sample"));
        List<LifeEvent> round = newestRound(calf);
        List<DueItem> items = new ArrayList<>();
        limit.ifPresent(scheme -> items.add(taken(calf, calf.law().orElseThrow(), scheme)));
        again(calf, round).ifPresent(items::add);
        sent(calf, round).ifPresent(items::add);
        result(calf, round).ifPresent(items::add);
        boolean deadToo = limit.map(DayLimit::deadToo).orElse(false);
        return items.stream().map(item -> item.goingOn(deadToo)).toList();
    }

    private static DueItem taken(DueCalf calf, Law law, DayLimit limit) {
        DueSpan span = calf.days(0, limit.byDay());
        boolean dead = calf.life().exit() != null && calf.life().exit().death();
        String words = "by the end of day " + limit.byDay() + " of life";
        DueItem item = calf.item(
                TAKEN,
                "Tissue sample",
                EventType.TISSUE_SAMPLED,
                dead ? span.until(span.closes()) : span,
                DueRule.of(law, words, limit.basis()));
        Optional<LifeEvent> taken = calf.first(EventType.TISSUE_SAMPLED);
        if (taken.isPresent()) {
            return item.doneBy(taken.get());
        }
        Optional<LifeEvent> implied = calf.life().events().stream()
                .filter(event -> event.type() == EventType.SAMPLE_SENT || event.type() == EventType.SAMPLE_RESULT)
                .findFirst();
        return implied.map(event ->
                        item.doneBy(event).caution("The taking itself is not on record: write it down with its day."))
                .orElse(item.state() == DueState.OVERDUE ? item.ways(List.of("Sample it now; it is late.")) : item);
    }

    /** What was recorded of the newest sample: after the last inconclusive result, else from birth on. */
    private static List<LifeEvent> newestRound(DueCalf calf) {
        List<LifeEvent> round = new ArrayList<>();
        for (LifeEvent event : calf.life().events()) {
            boolean ofSample = event.type() == EventType.TISSUE_SAMPLED
                    || event.type() == EventType.SAMPLE_SENT
                    || event.type() == EventType.SAMPLE_RESULT;
            if (inconclusive(event)) {
                round.clear();
            }
            if (ofSample) {
                round.add(event);
            }
        }
        return round;
    }

    private static boolean inconclusive(LifeEvent event) {
        return event.data() instanceof SampleResult result && result.result() == SampleResult.Result.INCONCLUSIVE;
    }

    private static Optional<DueItem> again(DueCalf calf, List<LifeEvent> round) {
        if (round.isEmpty() || !inconclusive(round.get(0))) {
            return Optional.empty();
        }
        LifeEvent result = round.get(0);
        DueItem item = calf.item(
                AGAIN,
                "Sample again, the result was inconclusive",
                EventType.TISSUE_SAMPLED,
                DueSpan.from(result.time()),
                DueRule.none(place(calf), "The laboratory's own report says what it needs."));
        return Optional.of(
                round.size() > 1
                        ? item.doneBy(round.get(1))
                        : item.state(DueState.DUE_NOW, "The laboratory's last result was inconclusive.")
                                .caution("Keep it as the vet says for a calf that may be infected."));
    }

    private static Optional<DueItem> sent(DueCalf calf, List<LifeEvent> round) {
        Optional<LifeEvent> taken = ofType(round, EventType.TISSUE_SAMPLED);
        if (taken.isEmpty()) {
            return Optional.empty();
        }
        Optional<Limit.Span> limit = calf.law().flatMap(law -> law.after("sample-sent"));
        Instant from = taken.get().time();
        DueSpan span = limit.map(within -> DueSpan.before(from, endOfDay(calf, from, within.days())))
                .orElse(DueSpan.from(from));
        DueRule rule = limit.map(within -> DueRule.of(
                        calf.law().orElseThrow(), "within " + within.days() + " days of the sample", within.basis()))
                .orElse(DueRule.none(place(calf), "No scheme's time for sending is on record."));
        DueItem item = calf.item(SENT, "Send the sample", EventType.SAMPLE_SENT, span, rule);
        Optional<LifeEvent> gone = round.stream()
                .filter(event -> event.type() == EventType.SAMPLE_SENT
                        || (event.type() == EventType.SAMPLE_RESULT && !inconclusive(event)))
                .findFirst();
        if (gone.isPresent()) {
            return Optional.of(item.doneBy(gone.get()));
        }
        DueItem open =
                limit.isPresent() ? item : item.state(DueState.SOON, "A sample was taken and has not been sent.");
        return Optional.of(open.caution(Said.weekend(span, calf.zone())));
    }

    private static Optional<DueItem> result(DueCalf calf, List<LifeEvent> round) {
        Optional<LifeEvent> sent = ofType(round, EventType.SAMPLE_SENT);
        if (sent.isEmpty()) {
            return Optional.empty();
        }
        Instant from = sent.get().time();
        long days = Math.max(0, ChronoUnit.DAYS.between(date(calf, from), calf.today()));
        String title = "Result awaited, " + days + (days == 1 ? " day" : " days");
        DueItem item = calf.practice()
                .step(Practice.SAMPLE_RESULT)
                .map(step -> calf.item(
                        RESULT,
                        title,
                        EventType.SAMPLE_RESULT,
                        DueSpan.before(from, endOfDay(calf, from, step.byDay() == null ? 0 : step.byDay())),
                        new DueRule("", "within " + step.byDay() + " days of sending", step.basis())))
                .orElse(calf.item(
                        RESULT,
                        title,
                        EventType.SAMPLE_RESULT,
                        DueSpan.from(from),
                        DueRule.none(place(calf), "Ask the laboratory how long it takes.")));
        Optional<LifeEvent> result = round.stream()
                .filter(event -> event.type() == EventType.SAMPLE_RESULT && !inconclusive(event))
                .findFirst();
        return Optional.of(result.map(item::doneBy)
                .orElse(
                        item.state() == DueState.OVERDUE
                                ? item.ways(List.of("Ask the laboratory."))
                                : item.state(DueState.SOON, "The laboratory has the sample.")));
    }

    private static Optional<LifeEvent> ofType(List<LifeEvent> round, EventType type) {
        return round.stream().filter(event -> event.type() == type).findFirst();
    }

    private static Instant endOfDay(DueCalf calf, Instant from, int days) {
        return date(calf, from).plusDays(days + 1L).atStartOfDay(calf.zone()).toInstant();
    }

    private static LocalDate date(DueCalf calf, Instant moment) {
        return moment.atZone(calf.zone()).toLocalDate();
    }

    private static String place(DueCalf calf) {
        return calf.law().map(Law::title).orElse("");
    }
}
