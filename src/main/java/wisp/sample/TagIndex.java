package wisp.sample;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import wisp.cohort.Cohort;
import wisp.event.SampleResult;
import wisp.event.TagFitted;
import wisp.history.Life;
import wisp.history.LifeEvent;
import wisp.history.Mark;
import wisp.tag.Likeness;
import wisp.tag.TagNumber;

/**
 * Whose a tag number is, however it is written: by any tag that was ever fitted, by the number of a sample that was
 * taken or sent, or by the animal's own key where that is an official number.
 */
public final class TagIndex {
    private static final int LIKELY_SHOWN = 3;

    private record Known(TagNumber number, Life life) {}

    private final List<Known> known = new ArrayList<>();
    private final Map<String, Set<Life>> byNumber = new HashMap<>();
    private final Map<String, Life> byKey = new HashMap<>();

    /** The numbers of a cohort's animals. */
    public TagIndex(Cohort cohort) {
        for (Life life : cohort.lives()) {
            if (life.born() != null || tagged(life)) {
                byKey.put(life.key(), life);
                numbers(life).forEach(number -> add(number, life));
            }
        }
    }

    /** Whether a subject stands for an animal, and not for a number that nobody has. */
    static boolean tagged(Life life) {
        return events(life).anyMatch(event -> event.data() instanceof TagFitted);
    }

    private void add(TagNumber number, Life life) {
        if (byNumber.computeIfAbsent(number.key(), k -> new LinkedHashSet<>()).add(life)) {
            known.add(new Known(number, life));
        }
    }

    private static Stream<TagNumber> numbers(Life life) {
        TagNumber key = TagNumber.read(life.key());
        Stream<TagNumber> own = key.format().official() ? Stream.of(key) : Stream.empty();
        return Stream.concat(
                own, events(life).map(TagIndex::number).filter(n -> n != null).map(TagNumber::read));
    }

    private static String number(LifeEvent event) {
        if (event.data() instanceof TagFitted tag) {
            return tag.number();
        }
        // a result is what is to be matched
        return event.data() instanceof SampleResult ? null : TissueSample.tagNumber(event);
    }

    private static Stream<LifeEvent> events(Life life) {
        return Stream.concat(life.events().stream(), life.marks().stream().map(Mark::event));
    }

    /**
     * The animals that the number can mean at a time: those born by the end of that day that ever had it. An animal's
     * own key means that animal alone.
     */
    public List<Life> find(String written, Instant time) {
        Life own = byKey.get(written.strip());
        if (own != null) {
            return List.of(own);
        }
        return byNumber.getOrDefault(TagNumber.read(written).key(), Set.of()).stream()
                .filter(life -> bornBy(life, time))
                .toList();
    }

    static boolean bornBy(Life life, Instant time) {
        ZoneId zone = life.farm().zone();
        return life.birthDate() == null
                || !life.birthDate().isAfter(time.atZone(zone).toLocalDate());
    }

    /** The animals that may have been meant, the nearest numbers first and living ones before those that are gone. */
    public List<Life> likely(String written, Instant time) {
        record Near(Likeness likeness, Life life) {}
        TagNumber number = TagNumber.read(written);
        return known.stream()
                .filter(one -> bornBy(one.life(), time))
                .map(one -> new Near(Likeness.of(number, one.number()), one.life()))
                .filter(near -> near.likeness() != Likeness.NONE)
                .sorted(Comparator.comparing(Near::likeness)
                        .thenComparing(near -> near.life().exit() != null)
                        .thenComparing(near -> near.life().key()))
                .map(Near::life)
                .distinct()
                .limit(LIKELY_SHOWN)
                .toList();
    }
}
