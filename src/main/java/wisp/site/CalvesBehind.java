package wisp.site;

import io.javalin.http.Context;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import wisp.event.Fault;
import wisp.indicator.Estimate;
import wisp.indicator.Figures;
import wisp.indicator.MarkedEvent;
import wisp.indicator.Stratum;
import wisp.indicator.Verdict;
import wisp.records.Records;

/**
 * The calves, or episodes, behind one count of a figure.
 *
 * @param estimate the figure, of the stratum asked for
 * @param part which of its counts
 * @param verdicts one a calf or episode
 * @param marked marked events that the figure leaves out; with the verdicts as many as the count says
 * @param asked whether the address names a count at all
 */
record CalvesBehind(Estimate estimate, Part part, List<Verdict> verdicts, List<MarkedEvent> marked, boolean asked) {
    /** The parameters that name a count, beside the filters. */
    static final Set<String> PARAMETERS = Set.of("figure", "part", "reason", "stratum");

    /** The counts of a figure. */
    enum Part {
        ALL,
        NUMERATOR,
        DENOMINATOR,
        PENDING,
        EXCLUDED,
        OUTSIDE,
        /** Whom one step on the way from all asked for to those counted leaves out; the reason names the step. */
        LOST,
        /** Who is still there before that step. */
        BEFORE;

        String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        boolean holds(Verdict verdict) {
            return switch (this) {
                case ALL -> verdict.part() != Verdict.Part.OUTSIDE;
                case NUMERATOR -> verdict.part() == Verdict.Part.CASE;
                case DENOMINATOR -> verdict.atRisk();
                case PENDING -> verdict.pending();
                case EXCLUDED -> verdict.part() == Verdict.Part.EXCLUDED;
                case OUTSIDE -> verdict.part() == Verdict.Part.OUTSIDE;
                case LOST -> !verdict.atRisk();
                case BEFORE -> true;
            };
        }
    }

    static CalvesBehind of(Context ctx, Records records, Asked asked) {
        return of(Address.of(ctx), records, asked, ctx.queryParam("figure"));
    }

    static CalvesBehind of(Address address, Records records, Asked asked, String figure) {
        Part part = part(address.parameter("part"));
        Estimate whole = records.figures().of(FiguresApi.indicator(records, figure), asked.cohort(), asked.selection());
        Estimate estimate =
                stratum(whole, address.parameter("stratum"), asked.selection().by());
        String reason = address.parameter("reason");
        List<Verdict> verdicts = estimate.verdicts().stream()
                .filter(part::holds)
                .filter(verdict -> reason == null || reason.isBlank() || because(reason, part, verdict, estimate))
                .toList();
        List<MarkedEvent> marked = part != Part.EXCLUDED
                ? List.of()
                : Figures.marked(estimate.indicator(), asked.cohort(), asked.selection(), estimate.name()).stream()
                        .filter(one -> reason == null
                                || reason.isBlank()
                                || reason.equals(one.mark().kind().word()))
                        .toList();
        if (reason != null && !reason.isBlank() && verdicts.isEmpty() && marked.isEmpty()) {
            throw wrong(
                    "reason",
                    "Nobody is " + part.word() + " for the reason " + reason + ".",
                    estimate.excluded().isEmpty()
                            ? "Leave it out: this figure leaves nobody out."
                            : "Write one of: "
                                    + String.join(", ", estimate.excluded().keySet()) + ".");
        }
        boolean named = PARAMETERS.stream().anyMatch(name -> address.parameter(name) != null);
        return new CalvesBehind(estimate, part, verdicts, marked, named);
    }

    private static boolean because(String reason, Part part, Verdict verdict, Estimate estimate) {
        String step = verdict.part() == Verdict.Part.PENDING ? "pending" : verdict.reason();
        return switch (part) {
            case LOST -> step.equals(reason);
            case BEFORE ->
                estimate.attrition().stream()
                        .map(Estimate.Attrition::reason)
                        .takeWhile(earlier -> !earlier.equals(reason))
                        .noneMatch(earlier -> !verdict.atRisk() && earlier.equals(step));
            default -> reason.equals(verdict.reason());
        };
    }

    /** How many rows the list has. */
    int count() {
        return verdicts.size() + marked.size();
    }

    private static Part part(String word) {
        if (word == null || word.isBlank()) {
            return Part.ALL;
        }
        return Arrays.stream(Part.values())
                .filter(part -> part.word().equals(word))
                .findFirst()
                .orElseThrow(() -> {
                    String all = Arrays.stream(Part.values()).map(Part::word).collect(Collectors.joining(", "));
                    return wrong("part", "A figure has no part " + word + ".", "Write one of: " + all + ".");
                });
    }

    private static Estimate stratum(Estimate whole, String name, Stratum by) {
        if (name == null || name.isBlank()) {
            return whole;
        }
        if (by == null) {
            throw wrong("stratum", "A stratum needs what to divide by.", "Add by=" + Stratum.allNames() + ".");
        }
        return whole.strata().stream()
                .filter(stratum -> stratum.name().equals(name))
                .findFirst()
                .orElseThrow(() -> wrong(
                        "stratum",
                        "No calf asked for has the " + by.title() + " " + name + ".",
                        "Write one of: "
                                + whole.strata().stream().map(Estimate::name).collect(Collectors.joining(", ")) + "."));
    }

    private static Problem wrong(String field, String problem, String mend) {
        return Problem.parameters(List.of(new Fault(field, problem, mend)));
    }
}
