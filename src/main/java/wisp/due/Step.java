package wisp.due;

import java.util.List;

/** A kind of step that may be due: what it asks of a calf, as if the calf were alive and present. */
public interface Step {
    /** The items for one calf, done ones and later ones among them; none where the step does not concern it. */
    List<DueItem> of(DueCalf calf);
}
