package wisp.indicator;

import java.util.List;

/** One thing that a limits file sets, with what it stands on. */
public sealed interface Limit permits DayLimit, ProcedureLimit, Limit.Hours, Limit.Span, Limit.Duty {

    /** What it stands on. */
    Basis basis();

    /** Statute or guidance. */
    default String source() {
        return basis().source();
    }

    /** Whether the source was read. */
    default String status() {
        return basis().status();
    }

    /**
     * A limit in exact hours of age.
     *
     * @param before done at a lower age it is inside; at this very age it is late
     */
    record Hours(int before, Basis basis) implements Limit {}

    /**
     * A limit in calendar days after another event, whose own day is day 0.
     *
     * @param days the last day that is inside
     */
    record Span(int days, Basis basis) implements Limit {}

    /**
     * Something that must be so, with a number where it has one.
     *
     * @param number tags to be fitted, or years a record is kept; 0 where it has none
     * @param text what is asked, in words
     * @param fields what a record must hold, empty where it is none
     */
    record Duty(int number, String text, List<String> fields, Basis basis) implements Limit {}
}
