package wisp.indicator;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wisp.event.Castrated;
import wisp.event.EventType;
import wisp.history.Life;
import wisp.history.LifeEvent;

/** When a calf's limit ends and when what it asks was done, by the same rules as the figure inside that limit. */
public final class LimitTimes {
    private final Definitions definitions;
    private final Rule rule;

    /** Of one figure's rule. */
    public LimitTimes(Definitions definitions, Rule rule) {
        this.definitions = definitions;
        this.rule = rule;
    }

    /** Whether a rule sets a limit to a time. */
    public static boolean timed(Rule rule) {
        return rule instanceof Rule.DoneByLimit
                || rule instanceof Rule.DoneAtEnd
                || rule instanceof Rule.CastratedLawfully;
    }

    /** Whether a calf belongs to those whose time counts, settled or not. */
    public static boolean concerns(Verdict verdict) {
        return switch (verdict.part()) {
            case OUTSIDE -> verdict.reason().equals(LimitVerdict.NOT_PRESENT_AT_END);
            case EXCLUDED -> !verdict.reason().equals(LimitVerdict.NO_LIMIT);
            default -> true;
        };
    }

    /** What was done about the limit, empty where nothing was by the cut. */
    public Optional<LifeEvent> done(Life life, Instant cut) {
        List<LifeEvent> events = life.events().stream()
                .filter(event -> !event.time().isAfter(cut))
                .toList();
        if (rule instanceof Rule.DoneByLimit byLimit) {
            return byLimit.done() instanceof Rule.FirstEvent first
                    ? events.stream()
                            .filter(event -> first.event().matches(event))
                            .findFirst()
                    : TagPair.completed(events);
        }
        if (rule instanceof Rule.DoneAtEnd atEnd) {
            return events.stream().filter(event -> atEnd.event().matches(event)).findFirst();
        }
        return events.stream()
                .filter(event -> event.type() == EventType.CASTRATED)
                .findFirst();
    }

    /** The limit in days of life that a calf stands under, empty where it has none, or only one of its method. */
    public Optional<DayLimit> limit(Life life) {
        String name = rule instanceof Rule.DoneByLimit byLimit
                ? byLimit.limit()
                : rule instanceof Rule.DoneAtEnd atEnd ? atEnd.limit() : "";
        return definitions.law(life).flatMap(law -> law.day(name));
    }

    /** Why a castration was outside the law, empty where it was inside or something else is asked. */
    public Optional<String> breach(Life life, LifeEvent done) {
        if (!(rule instanceof Rule.CastratedLawfully) || !(done.data() instanceof Castrated castrated)) {
            return Optional.empty();
        }
        boolean anaesthetic =
                castrated.anaesthetic() != null && castrated.anaesthetic().given();
        return definitions
                .law(life)
                .flatMap(law -> law.castration(castrated.method()))
                .map(limit -> limit.breach(
                        life.birthDate(), done.time().atZone(life.farm().zone()).toLocalDate(), anaesthetic));
    }
}
