package wisp.indicator;

import java.util.List;

/** How a figure is worked out; one record a kind of rule. */
public sealed interface Rule {

    /**
     * The probability of the outcome inside a window.
     *
     * @param leaveOutCensored true: calves not followed to the window's end are left out; false: the risk is estimated
     *     with what they lend (Kaplan–Meier for death, Aalen–Johansen with death competing for the rest)
     */
    record Risk(Window window, Outcome outcome, boolean leaveOutCensored) implements Rule {}

    /** Outcomes per 1000 calf-days at risk inside a window. */
    record Rate(Window window, Outcome outcome) implements Rule {}

    /** Deaths within an age of an episode's opening, among episodes followed that long. */
    record CaseFatality(String condition, String title, Age within) implements Rule {}

    /** Calves done inside the limit that law sets, among calves whose outcome is settled. */
    record DoneByLimit(Done done, String limit) implements Rule {}

    /** Among castrated calves, those done at an age and with the anaesthetic that the method's limit asks. */
    record CastratedLawfully() implements Rule {}

    /** Among calves alive and present at the end of a limit, those with the event by then. */
    record DoneAtEnd(EventMatch event, String limit) implements Rule {}

    /** Calves whose first event of a kind in a window has a feature, among calves with such an event. */
    record Feature(EventMatch record, Window window, List<FieldTest> firstPresent, boolean placeOfRecord)
            implements Rule {}

    /**
     * Calves whose recorded amounts by an age reach a share of birth weight, among calves with any such record.
     *
     * @param shareOfBirthWeight litres for each kilogram of birth weight
     * @param otherwise litres where no birth weight is recorded
     */
    record AmountByAge(EventMatch record, String field, Age by, double shareOfBirthWeight, double otherwise)
            implements Rule {}

    /** What must be done by a limit. */
    sealed interface Done {
        /** In words. */
        String words();
    }

    /** Two ear tags: two numbers, or one number in both ears; the later decides. */
    record BothTags() implements Done {
        @Override
        public String words() {
            return "both ear tags fitted (two numbers, or one number in both ears; the later one decides)";
        }
    }

    /** The first event that matches. */
    record FirstEvent(EventMatch event) implements Done {
        @Override
        public String words() {
            return event.words();
        }
    }
}
