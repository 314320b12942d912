package wisp.sample;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import wisp.event.EventType;
import wisp.history.Life;
import wisp.history.LifeEvent;
import wisp.history.Mark;
import wisp.tag.TagNumber;

/**
 * The tissue samples of one calf. A sending or a result belongs to the sample of its tag number that waits for it, the
 * newest first; where none waits it begins one of its own, as a blood test does that nobody recorded the taking of.
 *
 * @param life whose they are
 * @param samples in order of their first event
 */
public record SampleChain(Life life, List<TissueSample> samples) {

    /** The samples of a calf, by its events that count. */
    public static SampleChain of(Life life) {
        List<TissueSample> samples = new ArrayList<>();
        for (LifeEvent event : life.events()) {
            switch (event.type()) {
                case TISSUE_SAMPLED -> taken(event, samples, life.farm().zone());
                case SAMPLE_SENT -> joined(event, samples, life.farm().zone(), one -> one.sent() == null);
                case SAMPLE_RESULT -> joined(event, samples, life.farm().zone(), one -> one.result() == null);
                default -> {}
            }
        }
        if (life.exit() != null) {
            samples.replaceAll(sample -> sample.of(life.exit()));
        }
        return new SampleChain(life, List.copyOf(samples));
    }

    /** Of events of one day whose hours are not all known, the taking may come last though it was first. */
    private static void taken(LifeEvent event, List<TissueSample> samples, ZoneId zone) {
        int last = samples.size() - 1;
        boolean begun = last >= 0 && samples.get(last).taken() == null;
        LifeEvent other = begun ? first(samples.get(last)) : null;
        if (begun && unclear(event, other, zone)) {
            samples.set(last, samples.get(last).with(event));
            return;
        }
        samples.replaceAll(TissueSample::overtaken);
        samples.add(new TissueSample(event, null, null, false, null));
    }

    private static void joined(
            LifeEvent event, List<TissueSample> samples, ZoneId zone, Predicate<TissueSample> waits) {
        boolean sending = event.type() == EventType.SAMPLE_SENT;
        Predicate<TissueSample> open =
                waits.and(one -> !sending || one.result() == null || unclear(event, one.result(), zone));
        String number = TissueSample.tagNumber(event);
        int at = newest(samples, open.and(one -> sameNumber(number, one.tagNumber())));
        at = at < 0
                ? newest(
                        samples,
                        open.and(one -> number == null || one.tagNumber().isEmpty()))
                : at;
        if (at < 0) {
            samples.add(TissueSample.of(event));
        } else {
            samples.set(at, samples.get(at).with(event));
        }
    }

    private static int newest(List<TissueSample> samples, Predicate<TissueSample> fits) {
        for (int i = samples.size() - 1; i >= 0; i--) {
            if (fits.test(samples.get(i))) {
                return i;
            }
        }
        return -1;
    }

    private static boolean sameNumber(String one, String other) {
        return one != null && TagNumber.read(one).same(TagNumber.read(other));
    }

    private static LifeEvent first(TissueSample sample) {
        return sample.sent() == null ? sample.result() : sample.sent();
    }

    private static boolean unclear(LifeEvent one, LifeEvent other, ZoneId zone) {
        boolean known = one.timeKnown() && other.timeKnown();
        return !known && day(one.time(), zone).equals(day(other.time(), zone));
    }

    private static LocalDate day(Instant time, ZoneId zone) {
        return time.atZone(zone).toLocalDate();
    }

    /**
     * The result that counts: the last one. Of several on the last day whose order is not known, because an hour is
     * not, the worst. A marked result counts too: a date typed wrong must silence nothing.
     */
    public static Optional<LifeEvent> counts(Life life) {
        ZoneId zone = life.farm().zone();
        List<LifeEvent> results = Stream.concat(
                        life.events().stream(), life.marks().stream().map(Mark::event))
                .filter(event -> event.type() == EventType.SAMPLE_RESULT)
                .sorted(LifeEvent.ORDER)
                .toList();
        if (results.isEmpty()) {
            return Optional.empty();
        }
        LifeEvent last = results.get(results.size() - 1);
        return results.stream()
                .filter(one -> one.sequence() == last.sequence() || unclear(one, last, zone))
                .max(Comparator.comparing(TissueSample::state));
    }
}
