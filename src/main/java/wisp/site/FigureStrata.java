package wisp.site;

import java.util.List;
import java.util.Map;
import wisp.chart.SvgPainter;
import wisp.indicator.Estimate;
import wisp.indicator.Stratum;

/**
 * A figure divided, as a picture and a table. A long division stands on several leaves, and not at all beside a list of
 * calves, so that no page grows heavy; then it is one link away.
 *
 * @param by what it is divided by
 * @param all how many strata there are
 * @param rows those on this leaf, empty where they stand elsewhere
 * @param picture SVG of the same
 * @param pictureHref all of them as PNG
 * @param leaf which of them these are
 * @param href the page on which they stand
 */
public record FigureStrata(
        String by, int all, List<FigureRow> rows, String picture, String pictureHref, Leaf leaf, String href) {
    /** The weeks of a year fit on one leaf. */
    private static final int ROWS = 53;

    /** So many still stand beside a list of calves. */
    private static final int FEW = 20;

    /**
     * The strata of a figure.
     *
     * @param listed whether the page holds a list of calves
     * @param number the leaf asked for, as written, or null
     */
    static FigureStrata of(Estimate whole, Stratum by, Frame frame, boolean listed, String number) {
        int all = whole.strata().size();
        Leaf leaf = Leaf.of(ROWS, all, listed ? null : number, frame, Map.of());
        String path = frame.path();
        String href = frame.to(path) + "#strata";
        if (listed && all > FEW) {
            return new FigureStrata(by.title(), all, List.of(), "", frame.to(path + ".png"), leaf, href);
        }
        List<Estimate> shown = leaf.of(whole.strata());
        List<FigureRow> rows =
                shown.stream().map(one -> FigureRow.of(one, frame.links())).toList();
        String picture = SvgPainter.figure(StrataPicture.of(whole, shown, by, frame.links()));
        return new FigureStrata(by.title(), all, rows, picture, frame.to(path + ".png"), leaf, href);
    }
}
