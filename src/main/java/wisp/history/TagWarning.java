package wisp.history;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import wisp.tag.CheckDigit;
import wisp.tag.LikelyNumber;
import wisp.tag.Likeness;
import wisp.tag.TagDoubt;
import wisp.tag.TagNumber;

/**
 * Something about an animal's tags that somebody should look at. It is no mark: the tag counts in every figure.
 *
 * @param life whose it is
 * @param event the tag, or the note of its loss
 * @param kind what is odd
 * @param problem the same as a whole sentence
 * @param likely numbers that may have been meant, best first
 */
public record TagWarning(Life life, LifeEvent event, Kind kind, String problem, List<TagNumber> likely) {
    private static final int LIKELY_SHOWN = 3;

    /** What is odd, with the mend. */
    public enum Kind {
        CHECK_DIGIT("tag number's check digit does not fit", "Look at the tag and correct the number if it is wrong."),
        LENGTH("tag number's length does not fit", "Look at the tag and correct the number if it is wrong."),
        TEST_CODE("test number on an animal", "Look at the tag and correct the number if it is wrong."),
        BEYOND_ELECTRONIC(
                "number too large for an electronic tag", "Look at the tag and correct the number if it is wrong."),
        TWO_NUMBERS(
                "two ears, two numbers",
                "Look at both tags: correct the one that was mistyped, or order the right tag."),
        LOST("lost tag not replaced", "Fit a new tag and record it with its ear; local law says by when.");

        private final String word;
        private final String mend;

        Kind(String word, String mend) {
            this.word = word;
            this.mend = mend;
        }

        /** The kind's name on pages and in files. */
        public String word() {
            return word;
        }

        /** What to do, a whole sentence. */
        public String mend() {
            return mend;
        }
    }

    /** The warnings of a whole herd. */
    public static List<TagWarning> of(List<Life> herd) {
        HerdMarks marks = new HerdMarks(herd);
        return herd.stream().flatMap(life -> of(life, marks).stream()).toList();
    }

    /** The warnings of one animal of a herd; one that is gone has none about lost tags. */
    public static List<TagWarning> of(Life life, List<Life> herd) {
        return of(life, new HerdMarks(herd));
    }

    private static List<TagWarning> of(Life life, HerdMarks herdMarks) {
        List<TagWarning> warnings = new ArrayList<>();
        EarTags tags = EarTags.of(life);
        tags.fittings().forEach(one -> doubts(life, tags, one, herdMarks, warnings));
        EarTags.Fitting odd = tags.odd();
        if (odd != null) {
            List<TagNumber> official = tags.officialInPlace();
            String problem = "Its ears carry different official numbers: "
                    + String.join(
                            " and ", official.stream().map(TagNumber::shown).toList()) + ".";
            List<TagNumber> others = official.stream()
                    .filter(number -> !number.same(odd.number()))
                    .toList();
            warnings.add(new TagWarning(life, odd.event(), Kind.TWO_NUMBERS, problem, others));
        }
        if (life.exit() == null) {
            tags.lost().forEach(one -> warnings.add(lost(life, one)));
        }
        return warnings;
    }

    /** Herd marks of numbers whose check digit fits. */
    public static Set<String> herdMarks(List<Life> lives) {
        return new HerdMarks(lives).get();
    }

    /** The same, read from every tag of a herd only once a tag is in doubt. */
    private static final class HerdMarks {
        private final List<Life> lives;
        private Set<String> marks;

        private HerdMarks(List<Life> lives) {
            this.lives = lives;
        }

        private Set<String> get() {
            if (marks == null) {
                marks = new HashSet<>();
                for (Life life : lives) {
                    for (TagNumber number : EarTags.of(life).numbers()) {
                        if (CheckDigit.fits(number) && !number.herdMark().isEmpty()) {
                            marks.add(number.herdMark());
                        }
                    }
                }
            }
            return marks;
        }
    }

    private static void doubts(
            Life life, EarTags tags, EarTags.Fitting one, HerdMarks marks, List<TagWarning> warnings) {
        for (TagDoubt doubt : TagDoubt.of(one.number())) {
            Kind kind = switch (doubt.kind()) {
                case CHECK_DIGIT -> Kind.CHECK_DIGIT;
                case LENGTH -> Kind.LENGTH;
                case TEST_CODE -> Kind.TEST_CODE;
                case BEYOND_ELECTRONIC -> Kind.BEYOND_ELECTRONIC;
            };
            List<TagNumber> likely = likely(one.number(), tags, marks);
            warnings.add(new TagWarning(life, one.event(), kind, doubt.sentence(), likely));
        }
    }

    private static TagWarning lost(Life life, EarTags.Fitting one) {
        String problem = "Its " + one.tag().ear().word() + " tag "
                + one.number().shown() + " is recorded as lost, and no other in that ear.";
        return new TagWarning(life, one.gone(), Kind.LOST, problem, List.of());
    }

    /** A number of the animal's other tag that is near is likelier than any that nobody has written. */
    private static List<TagNumber> likely(TagNumber number, EarTags tags, HerdMarks herdMarks) {
        List<TagNumber> likely = new ArrayList<>();
        for (TagNumber other : tags.numbers()) {
            Likeness likeness = Likeness.of(number, other);
            if (likeness != Likeness.SAME
                    && likeness != Likeness.NONE
                    && TagDoubt.of(other).isEmpty()) {
                likely.add(other);
            }
        }
        for (LikelyNumber one : LikelyNumber.of(number, herdMarks.get())) {
            if (likely.size() < LIKELY_SHOWN && likely.stream().noneMatch(one.number()::same)) {
                likely.add(one.number());
            }
        }
        return likely;
    }
}
