package wisp.testing;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Makes a failing list of steps as short as dropping steps from it can. */
public final class FewestSteps {
    private FewestSteps() {}

    /** The steps that are left when dropping any one of them would make it pass; order is kept. */
    public static <T> List<T> of(List<T> failing, Predicate<List<T>> fails) {
        List<T> left = new ArrayList<>(failing);
        for (int size = Math.max(1, left.size() / 2); size >= 1; size /= 2) {
            boolean shorter = true;
            while (shorter) {
                shorter = false;
                for (int from = 0; from < left.size(); from += size) {
                    List<T> without = new ArrayList<>(left.subList(0, from));
                    without.addAll(left.subList(Math.min(left.size(), from + size), left.size()));
                    if (fails.test(without)) {
                        left = without;
                        shorter = true;
                    }
                }
            }
        }
        return left;
    }
}
