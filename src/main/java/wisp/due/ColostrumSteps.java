package wisp.due;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import wisp.event.ColostrumFed;
import wisp.event.EventType;
import wisp.history.LifeEvent;
import wisp.indicator.Practice;
import wisp.indicator.PracticeStep;

/** Colostrum: an amount by an age. A calf that suckled an amount nobody knows cannot be asked for the rest. */
final class ColostrumSteps implements Step {
    @Override
    public List<DueItem> of(DueCalf calf) {
        List<DueItem> items = new ArrayList<>();
        for (String id : List.of(Practice.COLOSTRUM_FIRST, Practice.COLOSTRUM_TOTAL)) {
            calf.practice().step(id).ifPresent(step -> items.add(amount(calf, step)));
        }
        return items;
    }

    private static DueItem amount(DueCalf calf, PracticeStep step) {
        DueItem item = NavelSteps.asked(calf, step, EventType.COLOSTRUM_FED);
        double wanted = step.litres(calf.life().birth().weightKg());
        double fed = 0;
        LifeEvent unmeasured = null;
        for (LifeEvent event : calf.events(EventType.COLOSTRUM_FED).toList()) {
            Double volume = ((ColostrumFed) event.data()).volumeL();
            if (volume == null) {
                unmeasured = unmeasured == null ? event : unmeasured;
            } else {
                fed += volume;
            }
            // an amount of 10 % of a weight such as 41 kg is no exact number
            if (fed >= wanted - 1e-9) {
                return item.doneBy(event);
            }
        }
        if (unmeasured != null) {
            return item.doneBy(unmeasured)
                    .caution("The amount was not measured; a blood sample at 24 h to 7 d tells whether it was enough.");
        }
        String so = String.format(Locale.ROOT, "%.1f l of %.1f l on record.", fed, wanted);
        DueItem open = item.caution(so);
        return switch (open.state()) {
            case OVERDUE -> open.ways(List.of("Feed it now; ask the vet if it will not drink."));
            case IMPOSSIBLE_NOW ->
                open.ways(List.of("Ask the vet; a blood sample at 24 h to 7 d tells how it stands."));
            default -> open;
        };
    }
}
