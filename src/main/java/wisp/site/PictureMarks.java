package wisp.site;

import wisp.chart.Mark;
import wisp.indicator.Estimate;

/** Turns an estimate into a dot with its whisker. */
final class PictureMarks {
    private PictureMarks() {}

    /** A dot in the row of a category, its interval running across. */
    static Mark across(Estimate estimate, String label, int row) {
        return Mark.at(estimate.interval().value(), row, label)
                .between(estimate.interval().low(), estimate.interval().high())
                .saying(Shown.count(estimate.numerator()) + " of " + Shown.denominator(estimate) + ", "
                        + Shown.value(estimate) + " (" + Shown.interval(estimate) + ")");
    }
}
