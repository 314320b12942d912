package wisp.statistics;

import java.lang.reflect.Array;
import java.lang.reflect.Method;
import java.lang.reflect.Parameter;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Arguments for a function of the package by the types of its parameters: about half of them good, so that a bad one is
 * met behind the first check too.
 */
record BadArguments(Random random) {
    private static final int[] WHOLE = {-1, 0, 0, 1, 1, 2, 3, 5, 7, 12, 40};
    private static final double[] BAD = {
        Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, -1, 0, -0.0, Double.MIN_VALUE, 1e-300, 1e300
    };
    private static final double[] GOOD = {0.05, 0.2, 0.5, 0.8, 0.95, 0.99, 1, 1.5, 2, 3, 7, 40};

    Object[] of(Method function) {
        int rows = random.nextInt(7);
        boolean careful = random.nextBoolean();
        Object[] drawn = new Object[function.getParameterCount()];
        Parameter[] parameters = function.getParameters();
        for (int i = 0; i < drawn.length; i++) {
            Parameter parameter = parameters[i];
            drawn[i] = parameter.getType() == List.class
                    ? listOf(
                            ((ParameterizedType) parameter.getParameterizedType()).getActualTypeArguments()[0],
                            rows,
                            careful)
                    : one(parameter.getType(), rows, careful);
        }
        return drawn;
    }

    /** The same for what a result offers: whole numbers there are columns, and the first one always exists. */
    Object[] ofFirstColumn(Method method) {
        Object[] drawn = of(method);
        for (int i = 0; i < drawn.length; i++) {
            drawn[i] = drawn[i] instanceof Integer ? 0 : drawn[i];
        }
        return drawn;
    }

    private Object one(Class<?> type, int rows, boolean careful) {
        if (type == double.class) {
            return number(careful);
        }
        if (type == int.class) {
            return whole(careful);
        }
        if (type == long.class) {
            return 1L;
        }
        if (type == boolean.class) {
            return random.nextBoolean();
        }
        if (type.isEnum()) {
            return type.getEnumConstants()[random.nextInt(type.getEnumConstants().length)];
        }
        if (type.isArray()) {
            return array(type.getComponentType(), rows, careful);
        }
        return built(type, careful);
    }

    private List<Object> listOf(Type type, int rows, boolean careful) {
        return Stream.generate(() -> built((Class<?>) type, careful))
                .limit(rows)
                .toList();
    }

    private Object built(Class<?> type, boolean careful) {
        if (type == TwoByTwoTable.class) {
            return table(careful);
        }
        if (type == Interval.class) {
            return careful
                    ? WilsonInterval.of(random.nextInt(9), 8, 0.95)
                    : new Interval(number(false), number(false), number(false), number(false), "made up");
        }
        if (type == SurvivalCurve.class) {
            return KaplanMeier.of(new double[] {1, 2, 2, 5}, new boolean[] {true, false, true, random.nextBoolean()});
        }
        RegressionFit fit = Logistic.fit(
                new boolean[] {true, false, true, false, random.nextBoolean()},
                new double[][] {{1, 0}, {1, 0}, {1, 1}, {1, 1}, {1, 1}});
        if (type == RegressionFit.class) {
            return fit;
        }
        if (type == Coefficients.class) {
            return fit.coefficients();
        }
        throw new IllegalArgumentException("No way is known to draw a " + type + ": add one here.");
    }

    private TwoByTwoTable table(boolean careful) {
        int[] cells =
                IntStream.generate(() -> Math.max(0, whole(careful))).limit(4).toArray();
        return new TwoByTwoTable(cells[0], cells[1], cells[2], cells[3]);
    }

    private Object array(Class<?> of, int rows, boolean careful) {
        int length = careful || random.nextInt(4) > 0 ? rows : random.nextInt(7);
        Object array = Array.newInstance(of, length);
        int columns = 1 + random.nextInt(3);
        boolean zeros = random.nextInt(8) == 0;
        for (int i = 0; i < length; i++) {
            if (zeros && !of.isArray() && of != boolean.class) {
                continue;
            }
            Array.set(array, i, one(of, columns, careful));
        }
        return array;
    }

    private double number(boolean careful) {
        boolean good = random.nextInt(careful ? 12 : 3) > 0;
        double[] from = good ? GOOD : BAD;
        return from[random.nextInt(from.length)];
    }

    private int whole(boolean careful) {
        return WHOLE[careful ? 1 + random.nextInt(WHOLE.length - 1) : random.nextInt(WHOLE.length)];
    }

    static String written(Object value) {
        return value instanceof Object[] many
                ? Arrays.deepToString(many)
                : value instanceof double[] row ? Arrays.toString(row) : String.valueOf(value);
    }
}
