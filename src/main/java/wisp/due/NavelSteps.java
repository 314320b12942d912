package wisp.due;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wisp.event.EventType;
import wisp.history.LifeEvent;
import wisp.indicator.Practice;
import wisp.indicator.PracticeStep;

/** The navel: treated at once, looked at again twice. */
final class NavelSteps implements Step {
    @Override
    public List<DueItem> of(DueCalf calf) {
        List<DueItem> items = new ArrayList<>();
        Optional<PracticeStep> late = calf.practice().step(Practice.NAVEL_LOOK_LATE);
        calf.practice().step(Practice.NAVEL_TREATED).ifPresent(step -> {
            DueItem item = asked(calf, step, EventType.NAVEL_TREATED);
            Optional<LifeEvent> treated = calf.first(EventType.NAVEL_TREATED);
            items.add(treated.map(item::doneBy)
                    .orElse(item.state() == DueState.OVERDUE ? item.ways(List.of("Treat it now.")) : item));
        });
        long end = late.filter(step -> step.fromDay() != null)
                .map(step -> (long) step.fromDay())
                .orElse(Long.MAX_VALUE);
        calf.practice()
                .step(Practice.NAVEL_LOOK_EARLY)
                .filter(step -> step.fromDay() != null)
                .ifPresent(step -> items.add(look(calf, step, end)));
        late.filter(step -> step.fromDay() != null).ifPresent(step -> items.add(look(calf, step, Long.MAX_VALUE)));
        return items;
    }

    /** A look counts for a step from its first day on, until the next step's first day. */
    private static DueItem look(DueCalf calf, PracticeStep step, long before) {
        DueItem item = asked(calf, step, EventType.NAVEL_CHECKED);
        Optional<LifeEvent> look = calf.events(EventType.NAVEL_CHECKED)
                .filter(event -> calf.life().dayOfLife(event.time()) >= step.fromDay()
                        && calf.life().dayOfLife(event.time()) < before)
                .findFirst();
        return look.map(item::doneBy)
                .orElse(
                        item.state().open() && item.state() != DueState.SOON && item.state() != DueState.DUE_NOW
                                ? item.ways(List.of(
                                        "Look at it now, and tell the vet of pain, heat, swelling or discharge."))
                                : item);
    }

    static DueItem asked(DueCalf calf, PracticeStep step, EventType event) {
        return calf.item(step.id(), step.text(), event, calf.window(step), DueRule.of(step));
    }
}
