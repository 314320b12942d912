package wisp.question.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import wisp.indicator.Estimate;
import wisp.indicator.Rule;
import wisp.indicator.Verdict;
import wisp.question.Counted;

/**
 * Whom the share dead within the first hours leaves out: what stands between the calves born and those that it counts.
 *
 * @param estimate the figure, which counts hours
 */
record FirstDay(Estimate estimate) {
    private static final String NO_HOUR_OF_BIRTH = "birth-time-unknown";
    private static final String NO_HOUR_OF_EXIT = "event-time-unknown";

    /** The sentence, empty where every calf born is counted. */
    Optional<String> said(Deaths deaths) {
        List<String> parts = new ArrayList<>();
        leftOut().forEach((reason, n) -> parts.add(part(reason, n, deaths)));
        String end = ((Rule.Risk) estimate.indicator().rule()).window().end().text();
        if (estimate.pending() > 0) {
            parts.add(count(estimate.pending(), "pending", "") + " not " + end + " old yet");
        }
        if (parts.isEmpty()) {
            return Optional.empty();
        }
        int last = parts.size() - 1;
        String all = last == 0 ? parts.get(0) : String.join(", ", parts.subList(0, last)) + " and " + parts.get(last);
        return Optional.of("The share dead within " + end + " leaves out " + all + ".");
    }

    /** How many calves born dead it leaves out because nobody wrote down the hour. */
    int bornDeadWithoutHour(Deaths deaths) {
        Set<Integer> without = estimate.verdicts().stream()
                .filter(verdict -> verdict.part() == Verdict.Part.EXCLUDED
                        && verdict.reason().equals(NO_HOUR_OF_BIRTH))
                .map(Verdict::row)
                .collect(Collectors.toSet());
        return (int) deaths.all().byAge().get(DeathAge.BORN_DEAD).rows().stream()
                .filter(without::contains)
                .count();
    }

    private TreeMap<String, Integer> leftOut() {
        return estimate.verdicts().stream()
                .filter(verdict -> verdict.part() == Verdict.Part.EXCLUDED)
                .collect(Collectors.toMap(Verdict::reason, verdict -> 1, Integer::sum, TreeMap::new));
    }

    private String part(String reason, int n, Deaths deaths) {
        String those = count(n, "excluded", reason);
        if (reason.equals(NO_HOUR_OF_BIRTH)) {
            int dead = bornDeadWithoutHour(deaths);
            String of =
                    dead == 0 ? "" : n == 1 ? ", born dead" : ", " + (dead == 1 ? "one" : dead) + " of them born dead";
            return those + " whose hour of birth nobody wrote down" + of;
        }
        return those
                + (reason.equals(NO_HOUR_OF_EXIT)
                        ? " whose hour of death or leaving nobody wrote down"
                        : " for another reason (" + reason.replace('-', ' ') + ")");
    }

    private String count(int n, String part, String reason) {
        String words = n == 1 ? "one" : Said.count(n);
        String id = estimate.indicator().id();
        return reason.isEmpty()
                ? Counted.figure(n, words, id, part)
                : Counted.count(n, words, Counted.FIGURE, id, Counted.PART, part, "reason", reason);
    }
}
