package wisp.due;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wisp.event.EventType;
import wisp.event.TagFitted;
import wisp.history.LifeEvent;
import wisp.indicator.Law;
import wisp.indicator.Limit;
import wisp.indicator.TagPair;

/** The first ear tag, where law asks it sooner, and all tags. */
final class TagSteps implements Step {
    static final String FIRST = "first-tag";
    static final String ALL = "both-tags";

    @Override
    public List<DueItem> of(DueCalf calf) {
        List<DueItem> items = new ArrayList<>();
        calf.law().ifPresent(law -> {
            law.hours(Law.FIRST_TAG).ifPresent(limit -> items.add(first(calf, law, limit)));
            law.day("tags").ifPresent(limit -> {
                boolean one = law.tagCount().map(Limit.Duty::number).orElse(2) == 1;
                DueSpan span = calf.days(0, limit.byDay());
                String words = "by the end of day " + limit.byDay() + " of life";
                DueItem item = calf.item(
                        ALL,
                        one ? "Ear tag" : "Both ear tags",
                        EventType.TAG_FITTED,
                        span,
                        DueRule.of(law, words, limit.basis()));
                Optional<LifeEvent> done = one
                        ? calf.first(EventType.TAG_FITTED)
                        : TagPair.completed(calf.life().events());
                items.add(ended(item, law, done));
            });
        });
        return items;
    }

    private static DueItem first(DueCalf calf, Law law, Limit.Hours limit) {
        DueSpan span = calf.hours(Duration.ZERO, Duration.ofHours(limit.before()), false);
        DueRule rule = DueRule.of(law, "before " + limit.before() + " hours of age", limit.basis());
        DueItem item = calf.item(FIRST, "First ear tag", EventType.TAG_FITTED, span, rule);
        return ended(
                item,
                law,
                calf.events(EventType.TAG_FITTED)
                        .filter(event -> ((TagFitted) event.data()).role() != TagFitted.Role.SECONDARY)
                        .findFirst());
    }

    private static DueItem ended(DueItem open, Law law, Optional<LifeEvent> done) {
        if (done.isPresent()) {
            return open.doneBy(done.get());
        }
        DueItem item = law.movement().map(duty -> open.caution(duty.text())).orElse(open);
        return item.state() == DueState.OVERDUE
                ? item.ways(List.of("Tag it now; it is late, not forgiven. The tag's number and the day go on record."))
                : item;
    }
}
