package wisp.due;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import wisp.event.EventType;
import wisp.history.EarTags;
import wisp.history.EarTags.Fitting;
import wisp.history.LifeEvent;
import wisp.indicator.Basis;
import wisp.indicator.Law;
import wisp.indicator.Limit;

/** A lost tag replaced, in the days after somebody noticed the loss; the newest loss counts. */
final class LostTagStep implements Step {
    static final String LOST = "lost-tag";

    @Override
    public List<DueItem> of(DueCalf calf) {
        List<Fitting> lost = EarTags.of(calf.life()).lost();
        return lost.isEmpty() ? List.of() : List.of(item(calf, lost.get(lost.size() - 1)));
    }

    private static DueItem item(DueCalf calf, Fitting lost) {
        LifeEvent noticed = lost.gone();
        LocalDate day = noticed.time().atZone(calf.zone()).toLocalDate();
        Optional<Limit.Span> limit = calf.law().flatMap(Law::lostTag);
        DueSpan span = limit.map(within -> DueSpan.before(
                        noticed.time(),
                        day.plusDays(within.days() + 1L)
                                .atStartOfDay(calf.zone())
                                .toInstant()))
                .orElse(DueSpan.from(noticed.time()));
        DueRule rule = limit.map(within -> DueRule.of(
                        calf.law().orElseThrow(),
                        "within " + within.days() + " days of noticing the loss",
                        within.basis()))
                .orElse(new DueRule(
                        "",
                        "as soon as can be",
                        new Basis(
                                Basis.Kind.GOOD_PRACTICE,
                                "Common practice, no source.",
                                "from memory",
                                "",
                                "No limit is on record for the place; its law may set one.")));
        String which = lost.number().shown()
                + (lost.tag().ear() == null ? "" : ", " + lost.tag().ear().word() + " ear");
        return calf.item(LOST, "Replace the lost tag (" + which + ")", EventType.TAG_FITTED, span, rule)
                .listed(true);
    }
}
