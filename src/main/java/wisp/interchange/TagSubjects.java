package wisp.interchange;

import java.time.Instant;

/** Says whose a tag number is. */
public interface TagSubjects {

    /**
     * What is known of a number.
     *
     * @param subject the one animal's key, null where the number means none or several
     * @param sentence what to tell of a number that means none or several: those who had it, or who may be meant
     */
    record Whose(String subject, String sentence) {}

    /** Whose the number is, or was, at a time. */
    Whose of(String number, Instant time);
}
