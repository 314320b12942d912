package wisp.question;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import wisp.indicator.Definitions;
import wisp.question.navels.NavelsJson;
import wisp.question.navels.NavelsQuestion;
import wisp.question.season.SeasonJson;
import wisp.question.season.SeasonQuestion;

/** The questions by their names in addresses and on the command line. */
public final class Questions {
    private final Map<String, Question> byName = new LinkedHashMap<>();

    /** The questions, answered by these definitions. */
    public Questions(Definitions definitions) {
        byName.put(
                "season",
                (cohort, selection) -> SeasonJson.of(new SeasonQuestion(definitions).of(cohort, selection), selection));
        byName.put(
                "navels",
                (cohort, selection) -> NavelsJson.of(new NavelsQuestion(definitions).of(cohort, selection), selection));
        byName.put(
                "pens",
                (cohort, selection) -> PensJson.of(new PensQuestion(definitions).of(cohort, selection), selection));
    }

    /** The question of a name. */
    public Optional<Question> named(String name) {
        return Optional.ofNullable(byName.get(name));
    }

    /** All names. */
    public Set<String> names() {
        return Collections.unmodifiableSet(byName.keySet());
    }
}
