package wisp.due;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import wisp.event.EventType;
import wisp.history.LifeEvent;
import wisp.indicator.Law;
import wisp.indicator.Practice;
import wisp.indicator.PracticeStep;
import wisp.indicator.ProcedureLimit;

/** Horn buds, in the herds of which good practice asks it; by which method is for the law of the place. */
final class DisbuddingStep implements Step {
    @Override
    public List<DueItem> of(DueCalf calf) {
        Optional<PracticeStep> step = calf.practice().step(Practice.DISBUDDING);
        if (step.isEmpty()) {
            return List.of();
        }
        DueItem item = NavelSteps.asked(calf, step.get(), EventType.DISBUDDED);
        Optional<LifeEvent> done = calf.first(EventType.DISBUDDED);
        if (done.isPresent()) {
            return List.of(item.doneBy(done.get()));
        }
        if (!step.get().herds().contains(calf.life().farm().enterprise())) {
            return List.of(item.state(DueState.NOT_NEEDED, "It is not asked of this kind of herd."));
        }
        Map<String, ProcedureLimit> methods = calf.law().map(Law::disbudding).orElse(Map.of());
        return List.of(item.ways(WaysLeft.of(methods, calf.life().birthDate(), calf.today())));
    }
}
