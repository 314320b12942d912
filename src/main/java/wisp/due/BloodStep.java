package wisp.due;

import java.util.List;
import java.util.Optional;
import wisp.event.EventType;
import wisp.history.LifeEvent;
import wisp.indicator.Practice;
import wisp.indicator.PracticeStep;

/** The window in which blood tells of passive transfer. */
final class BloodStep implements Step {
    @Override
    public List<DueItem> of(DueCalf calf) {
        Optional<PracticeStep> step = calf.practice().step(Practice.BLOOD_SAMPLE);
        if (step.isEmpty()) {
            return List.of();
        }
        DueSpan window = calf.window(step.get());
        DueItem item = calf.item(
                step.get().id(),
                step.get().text(),
                EventType.BLOOD_TESTED,
                window.until(window.lastEnd()),
                DueRule.of(step.get()));
        Optional<LifeEvent> tested = calf.events(EventType.BLOOD_TESTED)
                .filter(event -> !event.time().isBefore(window.opens()) || !event.timeKnown())
                .findFirst();
        return List.of(tested.map(item::doneBy)
                .orElse(
                        item.state() == DueState.IMPOSSIBLE_NOW
                                ? item.ways(List.of(
                                        "Blood taken now tells of the calf's own defence, not of its colostrum."))
                                : item));
    }
}
