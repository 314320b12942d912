package wisp.indicator;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What good practice asks beside the law.
 *
 * @param steps by id
 */
public record Practice(Map<String, PracticeStep> steps) {
    /** The navel treated. */
    public static final String NAVEL_TREATED = "navel-treated";

    /** The first look at the navel again. */
    public static final String NAVEL_LOOK_EARLY = "navel-look-early";

    /** The second look at the navel. */
    public static final String NAVEL_LOOK_LATE = "navel-look-late";

    /** The first colostrum. */
    public static final String COLOSTRUM_FIRST = "colostrum-first";

    /** All the colostrum of the first hours. */
    public static final String COLOSTRUM_TOTAL = "colostrum-total";

    /** Blood for passive transfer. */
    public static final String BLOOD_SAMPLE = "blood-sample";

    /** The laboratory's answer. */
    public static final String SAMPLE_RESULT = "sample-result";

    /** Horn buds. */
    public static final String DISBUDDING = "disbudding";

    /** The steps that a file may define. */
    public static final List<String> IDS = List.of(
            NAVEL_TREATED,
            NAVEL_LOOK_EARLY,
            NAVEL_LOOK_LATE,
            COLOSTRUM_FIRST,
            COLOSTRUM_TOTAL,
            BLOOD_SAMPLE,
            SAMPLE_RESULT,
            DISBUDDING);

    /** One step, empty where the farm took it away. */
    public Optional<PracticeStep> step(String id) {
        return Optional.ofNullable(steps.get(id));
    }
}
