package wisp.statistics;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.RecordComponent;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Every public function of the package, found by reflection so that none is forgotten, on bad arguments: each answers
 * without a NaN, or refuses in a sentence. Infinity is allowed where the class says so.
 */
class BadInputTest {
    private static final long SEED = 20301;
    private static final int ROUNDS = 400;

    /**
     * Ratios over nothing, limits that nothing bounds and the shapes of a spread of 0 are infinite by their
     * documentation.
     */
    private static final Set<Class<?>> MAY_BE_INFINITE = Set.of(
            RiskRatio.class,
            OddsRatio.class,
            RateRatio.class,
            MantelHaenszel.class,
            Mover.class,
            EValue.class,
            SurvivalCurve.class,
            BetaBinomial.class,
            GammaPoisson.class);

    /** Lays out columns as they are; the regressions check the numbers. */
    private static final Set<Class<?>> ESTIMATES_NOTHING = Set.of(Design.class);

    private final BadArguments arguments = new BadArguments(new Random(SEED));
    private final Set<String> faults = new TreeSet<>();
    private final Map<String, int[]> tally = new TreeMap<>();

    @Test
    void everyPublicFunctionAnswersWithoutNaNOrRefusesInASentence() throws Exception {
        System.out.println("Bad arguments drawn with seed " + SEED);
        for (Class<?> type : publicTypes()) {
            for (Method function : inOrder(type)) {
                boolean open = Modifier.isPublic(function.getModifiers()) && Modifier.isStatic(function.getModifiers());
                for (int round = 0; open && !type.isEnum() && round < ROUNDS; round++) {
                    hold(type, function, null);
                }
            }
        }
        assertTrue(faults.isEmpty(), () -> faults.size() + " faults:\n" + String.join("\n", faults));
        assertTrue(tally.size() > 80, "only " + tally.size() + " functions found");
        int refusals = tally.values().stream().mapToInt(count -> count[1]).sum();
        assertTrue(refusals > 5000, "only " + refusals + " refusals");
    }

    /** By signature: the virtual machine gives them in any order, and the draws are to be the same each time. */
    private static List<Method> inOrder(Class<?> type) {
        return Stream.of(type.getDeclaredMethods())
                .sorted(Comparator.comparing(Method::toString))
                .toList();
    }

    private static List<Class<?>> publicTypes() throws IOException, URISyntaxException, ClassNotFoundException {
        Path folder = Path.of(
                        WilsonInterval.class.getResource("WilsonInterval.class").toURI())
                .getParent();
        List<Class<?>> types = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.sorted().toList()) {
                String name = file.getFileName().toString();
                if (name.endsWith(".class") && !name.contains("$") && !name.startsWith("package-info")) {
                    Class<?> type = Class.forName("wisp.statistics." + name.replace(".class", ""));
                    if (Modifier.isPublic(type.getModifiers())) {
                        types.add(type);
                    }
                }
            }
        }
        return types;
    }

    private void hold(Class<?> type, Method function, Object on) throws IllegalAccessException {
        Object[] drawn = on == null ? arguments.of(function) : arguments.ofFirstColumn(function);
        String call = type.getSimpleName() + "." + function.getName();
        int[] count = tally.computeIfAbsent(call + "/" + drawn.length, key -> new int[2]);
        try {
            Object result = function.invoke(on, drawn);
            count[0]++;
            if (!ESTIMATES_NOTHING.contains(type) && hasNaN(result, MAY_BE_INFINITE.contains(type))) {
                fault(call, drawn, "gave " + BadArguments.written(result));
            } else if (on == null
                    && result instanceof Record
                    && type.getPackage() == result.getClass().getPackage()) {
                methodsOf(result);
            }
        } catch (InvocationTargetException thrown) {
            count[1]++;
            if (!(thrown.getCause() instanceof CannotEstimate refusal)) {
                fault(call, drawn, "threw " + thrown.getCause());
            } else if (!refusal.getMessage().matches("(?s)[A-Z].* cannot be estimated because .*[^.]\\.")) {
                fault(call, drawn, "says: " + refusal.getMessage());
            }
        }
    }

    /** What a result offers to do: a curve at a time, a fit's interval, a chart's path. */
    private void methodsOf(Object result) throws IllegalAccessException {
        for (Method method : inOrder(result.getClass())) {
            boolean ours = !Set.of("equals", "hashCode", "toString").contains(method.getName());
            boolean open = Modifier.isPublic(method.getModifiers()) && !Modifier.isStatic(method.getModifiers());
            if (ours && open && method.getParameterCount() > 0) {
                hold(result.getClass(), method, result);
            }
        }
    }

    private void fault(String call, Object[] drawn, String what) {
        if (faults.stream().filter(fault -> fault.startsWith(call + "(")).count() < 3) {
            faults.add(call + "(" + BadArguments.written(drawn) + ") " + what);
        }
    }

    private static boolean hasNaN(Object value, boolean mayBeInfinite) throws IllegalAccessException {
        if (value instanceof Double number) {
            return number.isNaN() || number.isInfinite() && !mayBeInfinite;
        }
        if (value instanceof double[] row) {
            return Arrays.stream(row).anyMatch(x -> Double.isNaN(x) || Double.isInfinite(x));
        }
        if (value instanceof Object[] rows) {
            return anyHasNaN(List.of(rows), mayBeInfinite);
        }
        if (value instanceof Iterable<?> many) {
            return anyHasNaN(many, mayBeInfinite);
        }
        if (value instanceof Map<?, ?> map) {
            return anyHasNaN(map.values(), mayBeInfinite);
        }
        if (value instanceof Record record) {
            for (RecordComponent component : record.getClass().getRecordComponents()) {
                try {
                    // Entries at the origin are held as minus infinity, by FollowUp's own convention
                    if (!(record instanceof FollowUp)
                            && hasNaN(component.getAccessor().invoke(record), mayBeInfinite)) {
                        return true;
                    }
                } catch (InvocationTargetException thrown) {
                    throw new IllegalStateException(thrown.getCause());
                }
            }
        }
        return false;
    }

    private static boolean anyHasNaN(Iterable<?> many, boolean mayBeInfinite) throws IllegalAccessException {
        for (Object one : many) {
            if (hasNaN(one, mayBeInfinite)) {
                return true;
            }
        }
        return false;
    }
}
