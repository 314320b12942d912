package wisp.chart;

import java.util.HashSet;
import java.util.List;
import java.util.OptionalDouble;

/** How the values of an axis become places along it. */
public sealed interface Scale {

    /** The same scale with both ends fixed. */
    Scale within(double low, double high);

    /**
     * Equal steps are equally far apart.
     *
     * @param low fixed lower end; empty to find it from what is drawn
     * @param high fixed upper end; empty to find it from what is drawn
     */
    record Linear(OptionalDouble low, OptionalDouble high) implements Scale {
        static final Linear FREE = new Linear(OptionalDouble.empty(), OptionalDouble.empty());

        public Linear {
            ordered(low, high);
        }

        /** The same scale from a fixed lower end. */
        public Linear from(double end) {
            return new Linear(OptionalDouble.of(end), high);
        }

        /** The same scale to a fixed upper end. */
        public Linear to(double end) {
            return new Linear(low, OptionalDouble.of(end));
        }

        @Override
        public Linear within(double from, double to) {
            return new Linear(OptionalDouble.of(from), OptionalDouble.of(to));
        }
    }

    /**
     * Equal ratios are equally far apart; every value must be above zero.
     *
     * @param low fixed lower end, above zero; empty to find it from what is drawn
     * @param high fixed upper end, above zero; empty to find it from what is drawn
     */
    record Log(OptionalDouble low, OptionalDouble high) implements Scale {
        static final Log FREE = new Log(OptionalDouble.empty(), OptionalDouble.empty());

        public Log {
            ordered(low, high);
            if (low.orElse(1) <= 0 || high.orElse(1) <= 0) {
                throw new IllegalArgumentException(
                        "A log scale cannot start at or below zero: give it ends above zero.");
            }
        }

        @Override
        public Log within(double from, double to) {
            return new Log(OptionalDouble.of(from), OptionalDouble.of(to));
        }
    }

    /**
     * Named places, one step apart.
     *
     * @param names the names in order, each once
     */
    record Categories(List<String> names) implements Scale {
        public Categories {
            names = List.copyOf(names);
            if (new HashSet<>(names).size() < names.size()) {
                throw new IllegalArgumentException(
                        "A category stands twice in " + names + ": give every category its own name.");
            }
        }

        @Override
        public Categories within(double from, double to) {
            return this;
        }
    }

    /**
     * Days, counted from 1 January 1970.
     *
     * @param low fixed first day; empty to find it from what is drawn
     * @param high fixed last day; empty to find it from what is drawn
     */
    record Dates(OptionalDouble low, OptionalDouble high) implements Scale {
        static final Dates FREE = new Dates(OptionalDouble.empty(), OptionalDouble.empty());

        public Dates {
            ordered(low, high);
        }

        @Override
        public Dates within(double from, double to) {
            return new Dates(OptionalDouble.of(from), OptionalDouble.of(to));
        }
    }

    private static void ordered(OptionalDouble low, OptionalDouble high) {
        low.ifPresent(v -> Words.finite(v, "the lower end of an axis"));
        high.ifPresent(v -> Words.finite(v, "the upper end of an axis"));
        if (low.isPresent() && high.isPresent() && low.getAsDouble() >= high.getAsDouble()) {
            throw new IllegalArgumentException("An axis cannot run from " + low.getAsDouble() + " to "
                    + high.getAsDouble() + ": give the lower end first.");
        }
    }
}
