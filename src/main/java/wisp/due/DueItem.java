package wisp.due;

import java.util.ArrayList;
import java.util.List;
import wisp.event.EventType;
import wisp.history.Life;
import wisp.history.LifeEvent;

/**
 * One step with one calf, as it stands at one moment.
 *
 * @param life the calf
 * @param row its row in the cohort
 * @param pen where it stands, null where not known
 * @param tag its number, null before it has one
 * @param step the step's id
 * @param title what is to be done
 * @param event the type of event that records it
 * @param state how it stands
 * @param span when it can be done
 * @param rule what makes it due
 * @param why why it is not needed or stands as it does, empty where the window says all
 * @param ways the lawful ways that are left
 * @param cautions what to beware of
 * @param done the event that did it, null while not done
 * @param goesOn whether it also concerns a calf that is dead
 * @param listed whether a list for the morning shows it
 */
public record DueItem(
        Life life,
        int row,
        String pen,
        String tag,
        String step,
        String title,
        EventType event,
        DueState state,
        DueSpan span,
        DueRule rule,
        String why,
        List<String> ways,
        List<String> cautions,
        LifeEvent done,
        boolean goesOn,
        boolean listed) {

    /** Whether it was done after its end. */
    public boolean doneLate() {
        return done != null && span.over(done.time());
    }

    /** The same in another state. */
    public DueItem state(DueState other, String because) {
        return new DueItem(
                life,
                row,
                pen,
                tag,
                step,
                title,
                event,
                other,
                span,
                rule,
                because,
                ways,
                cautions,
                done,
                goesOn,
                other.open());
    }

    /** The same, done by an event. */
    public DueItem doneBy(LifeEvent by) {
        return new DueItem(
                life,
                row,
                pen,
                tag,
                step,
                title,
                event,
                DueState.DONE,
                span,
                rule,
                why,
                List.of(),
                cautions,
                by,
                goesOn,
                false);
    }

    /** The same with the lawful ways that are left. */
    public DueItem ways(List<String> left) {
        return new DueItem(
                life, row, pen, tag, step, title, event, state, span, rule, why, left, cautions, done, goesOn, listed);
    }

    /** The same with one more caution; an empty one changes nothing. */
    public DueItem caution(String more) {
        if (more.isEmpty()) {
            return this;
        }
        List<String> all = new ArrayList<>(cautions);
        all.add(more);
        return new DueItem(
                life,
                row,
                pen,
                tag,
                step,
                title,
                event,
                state,
                span,
                rule,
                why,
                ways,
                List.copyOf(all),
                done,
                goesOn,
                listed);
    }

    /** The same, which does not end with the calf's death. */
    public DueItem goingOn(boolean on) {
        return new DueItem(
                life, row, pen, tag, step, title, event, state, span, rule, why, ways, cautions, done, on, listed);
    }

    /** The same, shown in lists or not. */
    public DueItem listed(boolean in) {
        return new DueItem(
                life, row, pen, tag, step, title, event, state, span, rule, why, ways, cautions, done, goesOn, in);
    }
}
