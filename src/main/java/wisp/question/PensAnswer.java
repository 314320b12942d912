package wisp.question;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wisp.indicator.Estimate;

/**
 * Everything that the records say to the question which pens give dirty calves.
 *
 * @param season the season asked for
 * @param only which calves alone were asked for, in words; empty where no filter narrows the season
 * @param asOf where follow-up ends
 * @param asked calves asked for
 * @param figure the shipped figure of dirty calves, whole and by pen; every count here is one of its counts
 * @param pens pens with a scored calf, in order of their names
 * @param overall their calves together: what pens are held against
 * @param noPen scored calves whose pen nobody wrote down; they stand in no pen and not in {@code overall}
 * @param unscored pens where calves were born and none was scored in time
 * @param spread how far the pens' true shares lie apart
 * @param homogeneity whether the pens differ at all
 * @param places kept pens beside passages and fields
 * @param weeks the p-chart
 * @param circumstances bedding, stocking, month
 * @param illness whether dirty calves fell ill more
 * @param seasons every season with calves; empty where dates narrow what was asked for
 * @param lastSeason the season before, null where there is none to compare with
 */
public record PensAnswer(
        String season,
        String only,
        Instant asOf,
        int asked,
        Estimate figure,
        List<PenShare> pens,
        DirtyShare overall,
        int noPen,
        List<String> unscored,
        PenSpread spread,
        PenHomogeneity homogeneity,
        KeptPlaces places,
        List<WeekShare> weeks,
        Circumstances circumstances,
        List<DirtyThenIll> illness,
        List<DirtyShare> seasons,
        String lastSeason) {

    /** The answer in plain words, the most important first. */
    public List<String> sentences() {
        return said().stream().map(Counted::plain).toList();
    }

    /** The same with the calves behind its counts. */
    public List<Counted> said() {
        return PensSentence.of(this);
    }

    /** What must be kept in mind before a pen is blamed. */
    public List<String> cautions() {
        return PensCautions.of(this);
    }

    /** How it was worked out, a sentence a step. */
    public List<String> method() {
        return steps().stream().map(Counted::plain).toList();
    }

    /** The same with the calves behind its counts. */
    public List<Counted> steps() {
        return PensMethod.of(this);
    }

    /** The calves behind one of its counts; those of pens and seasons are the figure's. */
    public Optional<ScoredCalves> list(String id) {
        return lists().filter(list -> list.id().equals(id)).findFirst();
    }

    /** The calves of all other pens. */
    DirtyShare others(PenShare pen) {
        return DirtyShare.of(
                "others." + pen.pen(),
                "all other pens",
                "of all pens but " + pen.pen(),
                overall.calves().calves().stream()
                        .filter(calf -> !calf.pen().equals(pen.pen()))
                        .toList());
    }

    private Stream<ScoredCalves> lists() {
        Stream<DirtyShare> shares = Stream.of(
                        Stream.of(overall, places.kept(), places.elsewhere()),
                        weeks.stream().map(WeekShare::share),
                        circumstances.bedding().stream(),
                        circumstances.stocking().stream(),
                        circumstances.months().stream())
                .flatMap(some -> some);
        return Stream.of(
                        shares.flatMap(DirtyShare::lists),
                        pens.stream().flatMap(pen -> others(pen).lists()),
                        circumstances.terms().stream().map(DirtinessTerm::calves),
                        illness.stream().flatMap(one -> one.behind().lists()))
                .flatMap(some -> some);
    }

    /** The pens that stand so among the others, the most calves first. */
    public List<PenShare> standing(PenShare.Standing standing) {
        return pens.stream()
                .filter(pen -> pen.standing() == standing)
                .sorted((one, other) ->
                        Integer.compare(other.share().n(), one.share().n()))
                .toList();
    }

    /**
     * Whether the pens, taken together, differ by more than chance; of two pens that is the same question as whether
     * one is the dirtier, and has the same answer.
     */
    public boolean differTogether() {
        return homogeneity.moreThanChance()
                && (pens.size() != 2 || pens.get(0).others().moreThanChance());
    }

    /** The pens that changed since last season by more than chance. */
    public List<PenShare> changed() {
        return pens.stream()
                .filter(pen -> pen.before() != null && pen.before().moreThanChance())
                .toList();
    }
}
