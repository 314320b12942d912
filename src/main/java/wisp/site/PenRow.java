package wisp.site;

import wisp.question.PenContrast;
import wisp.question.PenShare;
import wisp.question.Percent;
import wisp.statistics.Interval;

/**
 * One pen as a row of the pens' table, its counts with the addresses of the calves behind them.
 *
 * @param standing how it stands among the others, in words
 * @param drawn share drawn toward the herd's with its interval, a dash where it cannot be given
 * @param dirtiest the probability of being the dirtiest, a dash where it cannot be given
 * @param bedding median days since bedding at birth, in words
 * @param before last season's share, empty where there is none
 * @param dirtyBefore last season's dirty calves, null where there are none
 * @param nBefore last season's scored calves, null likewise
 * @param changed whether it changed since by more than chance
 */
public record PenRow(
        String pen,
        String href,
        Count dirty,
        Count n,
        String share,
        String interval,
        String standing,
        String drawn,
        String drawnInterval,
        String dirtiest,
        String bedding,
        String before,
        Count dirtyBefore,
        Count nBefore,
        boolean changed) {
    private static final String NONE = "–";

    static PenRow of(PenShare pen, String lastSeason, Links links) {
        PensLinks calves = new PensLinks(links);
        PenContrast last = pen.before();
        boolean drawn = pen.shrunken() != null;
        return new PenRow(
                pen.pen(),
                links.figure(pen.figure()),
                calves.dirty(pen.share(), "", pen.pen()),
                calves.scored(pen.share(), "", pen.pen()),
                percent(pen.share().share()),
                span(pen.share().interval()),
                standing(pen),
                drawn ? percent(pen.shrunken().value()) : NONE,
                drawn ? span(pen.shrunken()) : "",
                Double.isNaN(pen.probabilityDirtiest()) ? NONE : percent(pen.probabilityDirtiest()),
                bedding(pen),
                last == null ? "" : percent(last.with().share()),
                last == null ? null : calves.dirty(last.with(), lastSeason, pen.pen()),
                last == null ? null : calves.scored(last.with(), lastSeason, pen.pen()),
                last != null && last.moreThanChance());
    }

    private static String standing(PenShare pen) {
        return switch (pen.standing()) {
            case DIRTIER -> "dirtier, more than chance";
            case CLEANER -> "cleaner, more than chance";
            case WITHIN -> pen.tooFewToRank() ? "too few to say" : "could be chance";
        };
    }

    private static String bedding(PenShare pen) {
        if (!Double.isNaN(pen.daysSinceBedding())) {
            return Shown.decimals(pen.daysSinceBedding(), 1);
        }
        return pen.kept() ? NONE : "none";
    }

    /** A share with its unit, whole percents. */
    static String percent(double share) {
        double percent = 100 * share;
        boolean hides = Math.round(percent) == 0 && share > 0 || Math.round(percent) == 100 && share < 1;
        if (hides) {
            return share < 0.5 ? "under 1 %" : "over 99 %";
        }
        return Math.round(percent) + " %";
    }

    static String span(Interval interval) {
        return interval == null ? "" : Percent.span(interval.low(), interval.high());
    }
}
