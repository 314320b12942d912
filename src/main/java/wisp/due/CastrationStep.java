package wisp.due;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wisp.event.Birth;
import wisp.event.Castrated;
import wisp.event.EventType;
import wisp.history.LifeEvent;
import wisp.indicator.AgeFrom;
import wisp.indicator.DayLimit;
import wisp.indicator.Law;
import wisp.indicator.ProcedureLimit;

/**
 * Castration of bull calves that are not to stay entire: the ring while it is lawful; elsewhere while a method needs
 * neither anaesthetic nor vet. After it, which ways are left. A castration that was not seen through is looked at
 * again.
 */
final class CastrationStep implements Step {
    static final String ID = "castrate";
    static final String LOOK = "castration-look";
    private static final String HURTS =
            "Castration hurts at any age: ask the vet about pain relief. Local law and the vet decide, and a vet may be"
                    + " needed.";

    @Override
    public List<DueItem> of(DueCalf calf) {
        Birth birth = calf.life().birth();
        if (birth.sex() == Birth.Sex.FEMALE) {
            return List.of();
        }
        Optional<LifeEvent> last = calf.last(EventType.CASTRATED);
        DueItem item = item(calf);
        if (last.isPresent()) {
            return looked(calf, item, last.get());
        }
        if (birth.sex() != Birth.Sex.MALE) {
            return List.of(item.state(DueState.NOT_NEEDED, "Its sex is not on record."));
        }
        if (Boolean.TRUE.equals(birth.keepEntire())) {
            return List.of(item.state(DueState.NOT_NEEDED, "It is to stay entire."));
        }
        return List.of(item.ways(ways(calf)).caution(HURTS));
    }

    private static List<DueItem> looked(DueCalf calf, DueItem item, LifeEvent last) {
        LifeEvent first = calf.first(EventType.CASTRATED).orElseThrow();
        DueItem done = item.doneBy(first);
        boolean ever = calf.events(EventType.CASTRATED)
                .anyMatch(event -> Boolean.FALSE.equals(((Castrated) event.data()).bothIn()));
        if (!ever) {
            return List.of(done);
        }
        DueItem look = calf.item(
                LOOK,
                "Look at the castration again: not both testicles were in",
                EventType.CASTRATED,
                DueSpan.from(last.time()),
                DueRule.none(place(calf), "A castration that was not seen through leaves the calf entire or hurt."));
        if (!Boolean.FALSE.equals(((Castrated) last.data()).bothIn())) {
            return List.of(done, look.doneBy(last));
        }
        return List.of(
                done,
                look.state(DueState.DUE_NOW, "The last castration on record did not have both testicles in.")
                        .ways(ways(calf))
                        .caution(HURTS));
    }

    private static DueItem item(DueCalf calf) {
        Optional<DayLimit> ring = calf.law().flatMap(law -> law.day("ring"));
        boolean allowed = calf.law()
                .flatMap(law -> law.castration(Castrated.Method.RING))
                .map(ProcedureLimit::allowed)
                .orElse(true);
        if (ring.isPresent() && allowed) {
            DueSpan span = calf.days(0, ring.get().byDay());
            String words = "by the end of day " + ring.get().byDay() + " of life";
            return calf.item(
                    ID,
                    "Ring",
                    EventType.CASTRATED,
                    span.until(span.closes()),
                    DueRule.of(calf.law().orElseThrow(), words, ring.get().basis()));
        }
        Map<String, ProcedureLimit> methods = calf.law().map(Law::castration).orElse(Map.of());
        return methods.isEmpty()
                ? calf.item(
                        ID,
                        "Castrate",
                        EventType.CASTRATED,
                        DueSpan.from(calf.life().born().time()),
                        DueRule.none(place(calf), "The limits file of the place sets no age for castration."))
                : simplest(calf, methods);
    }

    /** The window of the method that stays longest without anaesthetic, pain relief, vet and end. */
    private static DueItem simplest(DueCalf calf, Map<String, ProcedureLimit> methods) {
        LocalDate born = calf.life().birthDate();
        ProcedureLimit longest = null;
        for (ProcedureLimit limit : methods.values()) {
            if (limit.allowed() && (longest == null || simpleUntil(limit, born).isAfter(simpleUntil(longest, born)))) {
                longest = limit;
            }
        }
        LocalDate end = longest == null ? born : simpleUntil(longest, born);
        DueSpan from = DueSpan.from(calf.life().born().time());
        ProcedureLimit rule = longest == null ? methods.values().iterator().next() : longest;
        DueSpan span = end.equals(LocalDate.MAX)
                ? from
                : DueSpan.before(from.opens(), later(calf, end)).until(later(calf, end));
        return calf.item(
                ID,
                "Castrate",
                EventType.CASTRATED,
                span,
                DueRule.of(calf.law().orElseThrow(), rule.words(), rule.basis()));
    }

    private static Instant later(DueCalf calf, LocalDate day) {
        Instant start = day.atStartOfDay(calf.zone()).toInstant();
        return start.isBefore(calf.life().born().time()) ? calf.life().born().time() : start;
    }

    private static LocalDate simpleUntil(ProcedureLimit limit, LocalDate born) {
        LocalDate end = limit.byDay() == null ? LocalDate.MAX : born.plusDays(limit.byDay() + 1L);
        for (AgeFrom from : List.of(limit.anaesthetic(), limit.painRelief(), limit.vet())) {
            LocalDate first = from.first(born);
            end = first != null && first.isBefore(end) ? first : end;
        }
        return end;
    }

    private static List<String> ways(DueCalf calf) {
        Map<String, ProcedureLimit> methods = calf.law().map(Law::castration).orElse(Map.of());
        return WaysLeft.of(methods, calf.life().birthDate(), calf.today());
    }

    private static String place(DueCalf calf) {
        return calf.law().map(Law::title).orElse("");
    }
}
