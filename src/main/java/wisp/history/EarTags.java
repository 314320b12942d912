package wisp.history;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wisp.event.Noted;
import wisp.event.TagFitted;
import wisp.tag.TagNumber;

/**
 * The ear tags of one animal through its life. A later tag in the same ear replaces the former of its sort, official or
 * the farm's own; a note that says which ear's tag was lost takes it away until another is fitted there. The animal
 * keeps a lost number: nothing about who holds a number rests on this.
 *
 * @param fittings every tag that was fitted, in order
 */
public record EarTags(List<Fitting> fittings) {

    /**
     * One tag.
     *
     * @param event its fitting
     * @param tag what was said of it
     * @param number its number
     * @param gone the fitting that replaced it, or the note of its loss; null while it is in place
     */
    public record Fitting(LifeEvent event, TagFitted tag, TagNumber number, LifeEvent gone) {

        /** Whether it is in the ear, as far as anybody has recorded. */
        public boolean inPlace() {
            return gone == null;
        }

        /** Whether it was found lost, and not replaced since. */
        public boolean lost() {
            return gone != null && gone.data() instanceof Noted;
        }

        private Fitting goneBy(LifeEvent event) {
            return new Fitting(this.event, tag, number, event);
        }

        private boolean replacedBy(TagFitted later, TagNumber laterNumber) {
            boolean sort = number.format().official() == laterNumber.format().official();
            return tag.ear() != null && tag.ear() == later.ear() && sort && (inPlace() || lost());
        }
    }

    /** The tags of an animal. */
    public static EarTags of(Life life) {
        List<Fitting> fittings = new ArrayList<>();
        for (LifeEvent event : life.events()) {
            if (event.data() instanceof TagFitted tag) {
                TagNumber number = TagNumber.read(tag.number());
                fittings.replaceAll(one -> one.replacedBy(tag, number) ? one.goneBy(event) : one);
                fittings.add(new Fitting(event, tag, number, null));
            } else if (event.data() instanceof Noted note && note.tagLost() != null) {
                fittings.replaceAll(
                        one -> one.inPlace() && one.tag().ear() == note.tagLost() ? one.goneBy(event) : one);
            }
        }
        return new EarTags(List.copyOf(fittings));
    }

    /** Tags that are in its ears now. */
    public List<Fitting> inPlace() {
        return fittings.stream().filter(Fitting::inPlace).toList();
    }

    /** Tags that were lost and not replaced since. */
    public List<Fitting> lost() {
        return fittings.stream().filter(Fitting::lost).toList();
    }

    /** Every number that it ever had, each once. */
    public List<TagNumber> numbers() {
        List<TagNumber> numbers = new ArrayList<>();
        for (Fitting fitting : fittings) {
            if (numbers.stream().noneMatch(fitting.number()::same)) {
                numbers.add(fitting.number());
            }
        }
        return numbers;
    }

    /** The number by which it is called: official before the farm's own, in place before gone, primary first. */
    public Optional<TagNumber> number() {
        return fittings.stream()
                .min(Comparator.comparing(
                                (Fitting one) -> !one.number().format().official())
                        .thenComparing(one -> !one.inPlace())
                        .thenComparing(one -> one.tag().role() != TagFitted.Role.PRIMARY))
                .map(Fitting::number);
    }

    /** Official numbers in its ears now, each once; there should be one. */
    public List<TagNumber> officialInPlace() {
        List<TagNumber> numbers = new ArrayList<>();
        for (Fitting one : inPlace()) {
            if (one.number().format().official() && numbers.stream().noneMatch(one.number()::same)) {
                numbers.add(one.number());
            }
        }
        return numbers;
    }

    /** The first official tag in place whose number is not that of an earlier one in place; null where all agree. */
    public Fitting odd() {
        List<TagNumber> numbers = officialInPlace();
        return inPlace().stream()
                .filter(one -> one.number().format().official())
                .filter(one -> !one.number().same(numbers.get(0)))
                .findFirst()
                .orElse(null);
    }
}
