package wisp.question;

import java.util.stream.Stream;

/**
 * The calves behind the counts of dirty and clean calves that fell ill.
 *
 * @param dirtyIll dirty calves that fell ill
 * @param dirty all dirty calves that can be judged
 * @param cleanIll clean calves that fell ill
 * @param clean all clean calves that can be judged
 * @param leftOut scored calves that cannot be judged
 */
public record IllCalves(
        ScoredCalves dirtyIll, ScoredCalves dirty, ScoredCalves cleanIll, ScoredCalves clean, ScoredCalves leftOut) {

    Stream<ScoredCalves> lists() {
        return Stream.of(dirtyIll, dirty, cleanIll, clean, leftOut);
    }
}
