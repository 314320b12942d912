package wisp.simulation;

import java.util.ArrayList;
import java.util.List;

/** Truths as they are told, in that order. */
final class TruthList {
    private final List<Truth> truths = new ArrayList<>();

    void add(String name, double value, String means) {
        truths.add(new Truth(name, value, means));
    }

    List<Truth> told() {
        return List.copyOf(truths);
    }
}
