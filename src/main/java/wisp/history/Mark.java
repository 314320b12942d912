package wisp.history;

/**
 * An event that is kept but cannot be true beside the others, so that no figure counts it.
 *
 * @param event the event
 * @param kind why it is marked
 * @param detail what stands against it, a whole sentence; may be empty
 */
public record Mark(LifeEvent event, Kind kind, String detail) {

    /** Why an event is marked, with what is wrong and how it is mended. */
    public enum Kind {
        NO_BIRTH("no-birth", "No birth is recorded for this animal.", "Record its birth, or retract this event."),
        BEFORE_BIRTH(
                "before-birth",
                "It happened before the animal was born.",
                "Amend the time of this event or of the birth."),
        AFTER_EXIT(
                "after-exit",
                "It happened after the animal had died or left.",
                "Amend its time, or retract the death or leaving if that is wrong."),
        SECOND_BIRTH(
                "second-birth",
                "The animal has an earlier birth already.",
                "Retract the birth that is wrong; a twin needs a key of its own."),
        SECOND_DEATH("second-death", "The animal has died already.", "Retract the death that is wrong."),
        TAG_IN_USE(
                "tag-in-use",
                "Another living animal has this tag number.",
                "Check both animals' tags and amend the number that is wrong."),
        CASTRATED_FEMALE(
                "castrated-female",
                "The animal is recorded as female.",
                "Amend the sex at birth, or retract the castration."),
        CORRECTION_WITHOUT_TARGET(
                "correction-without-target",
                "The event that it corrects is not recorded for this animal.",
                "Check event_source, event_id and the subject."),
        AMENDS_A_CORRECTION(
                "amends-a-correction",
                "It amends a correction.",
                "Retract that correction and amend the first event again."),
        AMENDMENT_DOES_NOT_FIT(
                "amendment-does-not-fit",
                "Its data is not that of the event which it replaces.",
                "Retract it and amend again with the whole data of that type of event."),
        CIRCULAR_CORRECTION(
                "circular-correction",
                "It takes part in a circle of corrections that withdraw each other.",
                "Record the correction that is meant anew.");

        private final String word;
        private final String problem;
        private final String mend;

        Kind(String word, String problem, String mend) {
            this.word = word;
            this.problem = problem;
            this.mend = mend;
        }

        /** The kind's name in figures and files. */
        public String word() {
            return word;
        }

        /** What is wrong, a whole sentence. */
        public String problem() {
            return problem;
        }

        /** What to do, a whole sentence. */
        public String mend() {
            return mend;
        }
    }
}
