package wisp.due;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wisp.cohort.Cohort;
import wisp.event.Castrated;
import wisp.event.EventType;
import wisp.history.Exit;
import wisp.history.Life;
import wisp.history.LifeEvent;
import wisp.indicator.Basis;
import wisp.indicator.DayLimit;
import wisp.indicator.Definitions;
import wisp.indicator.Estimate;
import wisp.indicator.LimitTimes;
import wisp.indicator.ProcedureLimit;
import wisp.indicator.Verdict;

/** Finds what each calf is to a proof: by a figure's own verdicts, or by a step that is due. */
final class ProofCalves {
    private ProofCalves() {}

    /** By the verdicts of a figure inside a limit, so that its share is the figure's. */
    static List<ProofCalf> ofFigure(Estimate figure, Definitions definitions, Cohort cohort) {
        LimitTimes times = new LimitTimes(definitions, figure.indicator().rule());
        List<ProofCalf> calves = new ArrayList<>();
        for (Verdict verdict : figure.verdicts()) {
            if (LimitTimes.concerns(verdict)) {
                calves.add(ofVerdict(verdict, times, definitions, cohort));
            }
        }
        return calves;
    }

    private static ProofCalf ofVerdict(Verdict verdict, LimitTimes times, Definitions definitions, Cohort cohort) {
        Life life = cohort.lives().get(verdict.row());
        LifeEvent done = times.done(life, cohort.cut()).orElse(null);
        ProofCalf.Part part = switch (verdict.part()) {
            case CASE -> ProofCalf.Part.INSIDE;
            case CLEAR -> ProofCalf.Part.BREACH;
            case PENDING -> ProofCalf.Part.PENDING;
            case EXCLUDED, OUTSIDE -> ProofCalf.Part.LEFT_OUT;
        };
        Instant born = life.born().time();
        String breach = done == null ? "" : times.breach(life, done).orElse("");
        Optional<DayLimit> day = times.limit(life);
        DueSpan span = day.map(limit -> DueSpan.before(born, life.endOfDay(limit.byDay())))
                .orElse(method(done, life, definitions)
                        .map(limit -> DueSpan.before(born, life.endOfDay(limit.byDay())))
                        .orElse(DueSpan.from(born)));
        String place = definitions.law(life).map(law -> law.title()).orElse("");
        DueRule rule = day.map(
                        limit -> new DueRule(place, "by the end of day " + limit.byDay() + " of life", limit.basis()))
                .orElse(
                        done != null && done.data() instanceof Castrated castrated
                                ? definitions
                                        .law(life)
                                        .flatMap(law -> law.castration(castrated.method()))
                                        .map(limit -> new DueRule(
                                                place, castrated.method().word() + " " + limit.words(), limit.basis()))
                                        .orElse(DueRule.none(place, ""))
                                : DueRule.none(place, ""));
        return new ProofCalf(life, verdict.row(), part, done, born, span, rule, breach);
    }

    /** The limit of age of the method that was used, where it has one. */
    private static Optional<ProcedureLimit> method(LifeEvent done, Life life, Definitions definitions) {
        return done != null && done.data() instanceof Castrated castrated
                ? definitions
                        .law(life)
                        .flatMap(law -> law.castration(castrated.method()))
                        .filter(limit -> limit.byDay() != null)
                : Optional.empty();
    }

    /** By how a step stands at the cut. */
    static List<ProofCalf> ofStep(Due due, String step, Cohort cohort, int[] rows) {
        List<ProofCalf> calves = new ArrayList<>();
        for (int row : rows) {
            Life life = cohort.lives().get(row);
            boolean bornDead = life.exit() != null && life.exit().kind() == Exit.Kind.BORN_DEAD;
            due.asIfPresent(life, row, cohort.cut()).stream()
                    .filter(item -> item.step().equals(step) && item.span().closes() != null)
                    .filter(item -> item.state() != DueState.NOT_NEEDED && !bornDead)
                    .forEach(item -> calves.add(ofItem(item, cohort.cut())));
        }
        return calves;
    }

    private static ProofCalf ofItem(DueItem item, Instant cut) {
        boolean ofSample = item.event() == EventType.SAMPLE_SENT || item.event() == EventType.SAMPLE_RESULT;
        Instant origin = ofSample ? item.span().opens() : item.life().born().time();
        return new ProofCalf(
                item.life(), item.row(), part(item, cut), item.done(), origin, item.span(), item.rule(), "");
    }

    private static ProofCalf.Part part(DueItem item, Instant cut) {
        DueSpan span = item.span();
        LifeEvent done = item.done();
        if (done != null) {
            boolean unsure = span.perhapsOver(done.time()) || (span.byHours() && !done.timeKnown());
            return unsure
                    ? ProofCalf.Part.LEFT_OUT
                    : span.over(done.time()) ? ProofCalf.Part.BREACH : ProofCalf.Part.INSIDE;
        }
        Optional<Exit> exit =
                Optional.ofNullable(item.life().exit()).filter(e -> !e.time().isAfter(cut));
        if (exit.isPresent() && !span.over(exit.get().time())) {
            boolean practice = item.rule().basis().kind() == Basis.Kind.GOOD_PRACTICE;
            return exit.get().death() || practice ? ProofCalf.Part.LEFT_OUT : ProofCalf.Part.BREACH;
        }
        return span.over(cut) ? ProofCalf.Part.BREACH : ProofCalf.Part.PENDING;
    }
}
