package wisp.site;

import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import wisp.cohort.Cohort;
import wisp.event.Fault;
import wisp.records.Records;
import wisp.sample.TagIndex;
import wisp.sample.TissueSample;
import wisp.sample.UnmatchedSample;

/**
 * Tissue samples: what waits and for how long, what the laboratory said, and what it said of numbers that are nobody's.
 *
 * @param waiting samples without a result, those that wait longest first
 * @param results samples with a result, the grave ones first
 * @param unanswered samples without a result of calves that died or left
 * @param waits how many samples are waited for, on all leaves
 * @param longest how long the longest wait is, empty where nothing waits
 * @param leaf which of all the samples stand on this leaf
 * @param unmatched results of the whole log that match no one calf
 * @param matched what came of saying whose a result is, empty where nothing was said
 * @param faults what is wrong with what was sent
 * @param opened when this page was made, RFC 3339
 * @param token lets this page's forms record something
 * @param now whether what is known now is shown, which alone can be matched
 */
public record SamplesPage(
        Frame frame,
        List<SampleRow> waiting,
        List<SampleRow> results,
        List<SampleRow> unanswered,
        int waits,
        String longest,
        Leaf leaf,
        List<UnmatchedRow> unmatched,
        CalfName matched,
        List<Fault> faults,
        String opened,
        String token,
        boolean now) {
    static SamplesPage of(
            Asked asked, Records records, String matched, String number, String token, List<Fault> faults) {
        Frame frame = Frame.of(asked, "Samples", "/samples", Map.of());
        Cohort cohort = asked.cohort();
        boolean now = asked.selection().asOf() == null;
        List<SampleRow> waiting = new ArrayList<>();
        List<SampleRow> results = new ArrayList<>();
        List<SampleRow> unanswered = new ArrayList<>();
        for (SampleRow row : rows(asked, frame.links())) {
            (row.waits() ? waiting : answered(row) ? results : unanswered).add(row);
        }
        waiting.sort(Comparator.comparingLong(SampleRow::days).reversed());
        results.sort(Comparator.comparing(SampleRow::state).reversed());
        List<SampleRow> all = new ArrayList<>(waiting);
        all.addAll(results);
        all.addAll(unanswered);
        Leaf leaf = Leaf.of(all.size(), number, frame, Map.of());
        ZoneId zone = cohort.farm().latest().zone();
        int row = matched == null ? -1 : cohort.rowOf(matched);
        return new SamplesPage(
                frame,
                leaf.of(all).stream().filter(SampleRow::waits).toList(),
                leaf.of(all).stream()
                        .filter(one -> !one.waits() && answered(one))
                        .toList(),
                leaf.of(all).stream().filter(one -> !answered(one)).toList(),
                waiting.size(),
                waiting.isEmpty() ? "" : waiting.get(0).waiting(),
                leaf,
                UnmatchedSample.of(cohort, new TagIndex(cohort)).stream()
                        .map(one -> UnmatchedRow.of(one, zone, now ? frame.links() : null))
                        .toList(),
                row < 0 ? null : CalfName.of(cohort.lives().get(row)),
                faults,
                records.clock().instant().truncatedTo(ChronoUnit.SECONDS).toString(),
                token,
                now);
    }

    /** The samples of the calves asked for. */
    static List<SampleRow> rows(Asked asked, Links links) {
        List<SampleRow> rows = new ArrayList<>();
        for (int row : asked.selection().calves(asked.cohort())) {
            rows.addAll(SampleRow.of(asked.cohort().lives().get(row), moment(asked), links));
        }
        return rows;
    }

    private static boolean answered(SampleRow row) {
        return row.unanswered().isEmpty();
    }

    /** The moment up to which waiting is counted: the one to which every figure is followed. */
    static Instant moment(Asked asked) {
        return asked.selection().asOf() == null
                ? asked.cohort().cut()
                : asked.selection().asOf().minusMillis(1);
    }

    /** Results that somebody has to think of: all but negative ones. */
    public List<SampleRow> notable() {
        return results.stream()
                .filter(row -> row.state() != TissueSample.State.NEGATIVE)
                .toList();
    }

    /** Negative results. */
    public List<SampleRow> negative() {
        return results.stream()
                .filter(row -> row.state() == TissueSample.State.NEGATIVE)
                .toList();
    }

    /** How it stands, in one sentence. */
    public String answer() {
        if (waits == 0) {
            return "No sample is waited for.";
        }
        return (waits == 1 ? "One sample is" : waits + " samples are") + " waited for, the longest " + longest
                + ", counted to " + frame.followedTo() + ".";
    }

    /** The page of a calf that a result was given to. */
    public String href(CalfName calf) {
        return frame.links().calf(calf.key()) + "#samples";
    }
}
