package wisp.due;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import wisp.event.EventType;
import wisp.indicator.Basis;
import wisp.indicator.DayLimit;
import wisp.indicator.Law;
import wisp.indicator.Limit;
import wisp.indicator.TagPair;

/** Registration, by a day of life or within days of tagging, whichever ends first. */
final class RegisterStep implements Step {
    static final String ID = "register";

    @Override
    public List<DueItem> of(DueCalf calf) {
        Optional<DayLimit> limit = calf.law().flatMap(law -> law.day("registration"));
        if (limit.isEmpty()) {
            return List.of();
        }
        Law law = calf.law().orElseThrow();
        DueSpan span = calf.days(0, limit.get().byDay());
        String words = "by the end of day " + limit.get().byDay() + " of life";
        Basis basis = limit.get().basis();
        Optional<Instant> afterTags = law.after("registration").flatMap(within -> afterTags(calf, within));
        if (afterTags.isPresent() && afterTags.get().isBefore(span.closes())) {
            Limit.Span within = law.after("registration").orElseThrow();
            span = DueSpan.before(span.opens(), afterTags.get());
            words = "within " + within.days() + " days of tagging";
            basis = within.basis();
        }
        DueItem item = calf.item(ID, "Register", EventType.REGISTERED, span, DueRule.of(law, words, basis));
        Optional<DueItem> done = calf.first(EventType.REGISTERED).map(item::doneBy);
        if (done.isPresent()) {
            return List.of(done.get());
        }
        DueItem open = item.caution(Said.weekend(span, calf.zone()));
        return List.of(
                open.state() == DueState.OVERDUE
                        ? open.ways(List.of("Tell the authority now; what it still accepts is for it to say."))
                        : open);
    }

    private static Optional<Instant> afterTags(DueCalf calf, Limit.Span within) {
        return TagPair.completed(calf.life().events()).map(tag -> {
            LocalDate day = tag.time().atZone(calf.zone()).toLocalDate();
            return day.plusDays(within.days() + 1L).atStartOfDay(calf.zone()).toInstant();
        });
    }
}
