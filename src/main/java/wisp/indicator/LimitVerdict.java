package wisp.indicator;

import java.time.Instant;
import java.util.Optional;
import wisp.event.Castrated;
import wisp.event.EventType;
import wisp.history.LifeEvent;

/** Judges one calf against a limit that law sets. */
final class LimitVerdict {
    static final String NO_LIMIT = "no-limit-in-jurisdiction";
    static final String DIED_BEFORE_LIMIT = "died-before-limit";
    static final String NOT_PRESENT_AT_END = "not present at the end of the limit";

    private final Definitions definitions;

    LimitVerdict(Definitions definitions) {
        this.definitions = definitions;
    }

    Verdict doneByLimit(Rule.DoneByLimit rule, FollowedLife followed) {
        Optional<DayLimit> limit = dayLimit(followed, rule.limit());
        if (limit.isEmpty()) {
            return Verdict.excluded(followed.row(), NO_LIMIT, null);
        }
        Optional<LifeEvent> done = done(rule.done(), followed);
        if (done.isPresent()) {
            long day = followed.life().dayOfLife(done.get().time());
            return Verdict.settled(followed.row(), day <= limit.get().byDay(), done.get());
        }
        Instant over = followed.life().endOfDay(limit.get().byDay());
        if (!followed.endTime().isBefore(over)) {
            return Verdict.settled(followed.row(), false, null);
        }
        return switch (followed.end()) {
            case DEATH ->
                Verdict.excluded(
                        followed.row(),
                        DIED_BEFORE_LIMIT,
                        followed.life().exit().event());
            case LEFT ->
                Verdict.settled(followed.row(), false, followed.life().exit().event());
            case CUT -> Verdict.pending(followed.row());
        };
    }

    Verdict doneAtEnd(Rule.DoneAtEnd rule, FollowedLife followed) {
        Optional<DayLimit> limit = dayLimit(followed, rule.limit());
        if (limit.isEmpty()) {
            return Verdict.excluded(followed.row(), NO_LIMIT, null);
        }
        Instant over = followed.life().endOfDay(limit.get().byDay());
        if (followed.endTime().isBefore(over)) {
            return followed.end() == FollowedLife.End.CUT
                    ? Verdict.pending(followed.row())
                    : Verdict.outside(followed.row(), NOT_PRESENT_AT_END);
        }
        Optional<LifeEvent> done = followed.events(rule.event()).stream()
                .filter(event -> event.time().isBefore(over))
                .findFirst();
        return Verdict.settled(followed.row(), done.isPresent(), done.orElse(null));
    }

    Verdict castratedLawfully(FollowedLife followed) {
        Optional<LifeEvent> castration =
                followed.events(EventType.CASTRATED).stream().findFirst();
        if (castration.isEmpty()) {
            return Verdict.outside(followed.row(), "not castrated");
        }
        Castrated done = (Castrated) castration.get().data();
        Optional<ProcedureLimit> limit = definitions.law(followed.life()).flatMap(law -> law.castration(done.method()));
        if (limit.isEmpty()) {
            return Verdict.excluded(followed.row(), NO_LIMIT, castration.get());
        }
        var day = castration.get().time().atZone(followed.life().farm().zone()).toLocalDate();
        boolean anaesthetic = done.anaesthetic() != null && done.anaesthetic().given();
        String breach = limit.get().breach(followed.life().birthDate(), day, anaesthetic);
        return Verdict.settled(followed.row(), breach == null, castration.get());
    }

    private Optional<DayLimit> dayLimit(FollowedLife followed, String name) {
        return definitions.law(followed.life()).flatMap(law -> law.day(name));
    }

    private static Optional<LifeEvent> done(Rule.Done done, FollowedLife followed) {
        if (done instanceof Rule.FirstEvent first) {
            return followed.events(first.event()).stream().findFirst();
        }
        return TagPair.completed(followed.events(EventType.TAG_FITTED));
    }
}
