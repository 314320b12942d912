package wisp.testing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class FewestStepsTest {
    @Test
    void whatDoesNotMatterIsDropped() {
        List<Integer> steps = IntStream.range(0, 97).boxed().toList();
        assertEquals(List.of(13, 41, 90), FewestSteps.of(steps, some -> some.containsAll(List.of(13, 41, 90))));
        assertEquals(5, FewestSteps.of(steps, some -> some.size() >= 5).size());
        assertEquals(List.of(), FewestSteps.of(steps, some -> true));
    }
}
