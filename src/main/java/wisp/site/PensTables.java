package wisp.site;

import java.util.List;
import wisp.question.DirtyShare;
import wisp.question.DirtyThenIll;
import wisp.question.WeekShare;
import wisp.statistics.Interval;

/** The small tables of pens: shares by class, and illness of dirty and clean calves, each count opening its calves. */
final class PensTables {
    private PensTables() {}

    static PensPage.ShareTable of(String title, String head, List<DirtyShare> shares, PensLinks links) {
        return new PensPage.ShareTable(
                title, head, shares.stream().map(share -> row(share, links)).toList());
    }

    static PensPage.ShareRow row(DirtyShare share, PensLinks links) {
        return row(share.name(), share, links.count(share.dirtyCalves()), links.count(share.calves()));
    }

    /** Seasons are those of the figure, calves without a pen among them. */
    static PensPage.ShareTable seasons(List<DirtyShare> seasons, PensLinks links) {
        return new PensPage.ShareTable(
                "By season",
                "Season",
                seasons.stream()
                        .map(one -> row(
                                one.name(), one, links.dirty(one, one.name(), ""), links.scored(one, one.name(), "")))
                        .toList());
    }

    static PensPage.ShareTable weeks(List<WeekShare> weeks, PensLinks links) {
        return new PensPage.ShareTable(
                "By week of birth",
                "Week from",
                weeks.stream()
                        .map(week -> row(
                                Shown.date(week.monday()) + (week.outside() ? ", outside its limits" : ""),
                                week.share(),
                                links.count(week.share().dirtyCalves()),
                                links.count(week.share().calves())))
                        .toList());
    }

    private static PensPage.ShareRow row(String name, DirtyShare share, Count dirty, Count scored) {
        return new PensPage.ShareRow(
                name,
                dirty,
                scored,
                share.n() == 0 ? "–" : PenRow.percent(share.share()),
                PenRow.span(share.interval()));
    }

    static PensPage.IllRow ill(DirtyThenIll one, PensLinks links) {
        Interval ratio = one.byPen() == null ? one.crude() : one.byPen();
        return new PensPage.IllRow(
                one.outcome(),
                links.count(one.behind().dirtyIll()),
                links.count(one.behind().dirty()),
                links.count(one.behind().cleanIll()),
                links.count(one.behind().clean()),
                links.count(one.behind().leftOut()),
                ratio == null ? "–" : PensWords.ratio(ratio, 1) + (one.byPen() == null ? ", over all pens" : ""),
                one.moreThanChance() ? "more than chance" : "could be chance");
    }
}
