package wisp.question.season;

import java.util.ArrayList;
import java.util.List;
import wisp.indicator.Comparison;
import wisp.indicator.Estimate;
import wisp.indicator.Measure;
import wisp.indicator.Stratum;
import wisp.indicator.Target;

/**
 * Something that stands out once chance and the number of looks are allowed for.
 *
 * @param figure the id of the figure that it is about
 * @param by the division that it was found in, null for the whole season
 * @param group the group of that division, empty for the whole season
 * @param text what it is, a whole sentence
 */
public record Finding(String figure, Stratum by, String group, String text) {

    static List<Finding> among(List<SeasonFigure> figures, StrataTable strata) {
        List<Finding> findings = new ArrayList<>();
        long searched = figures.stream().filter(SeasonFigure::lookedThrough).count();
        for (SeasonFigure figure : figures) {
            Estimate estimate = figure.estimate();
            if (figure.headline() && figure.chance() == Chance.MORE_THAN_CHANCE) {
                findings.add(whole(estimate, changed(estimate, searched)));
            }
            if (estimate.standing() == Target.Standing.MISSED) {
                findings.add(
                        whole(estimate, missed(estimate, estimate.indicator().target(), "published")));
            }
            if (figure.ownStanding() == Target.Standing.MISSED) {
                findings.add(whole(estimate, missed(estimate, figure.own(), "farm's own")));
            }
        }
        for (StrataTable.Line line : strata.standingOut()) {
            findings.add(new Finding(
                    line.group().indicator().id(), line.by(), line.group().name(), apart(line, strata.comparisons())));
        }
        return findings;
    }

    private static Finding whole(Estimate estimate, String text) {
        return new Finding(estimate.indicator().id(), null, "", text);
    }

    private static String changed(Estimate estimate, long searched) {
        Comparison comparison = estimate.comparison();
        Measure measure = estimate.indicator().measure();
        return Subject.of(estimate.indicator()) + " was " + Said.value(estimate) + ", "
                + Said.side(measure, comparison.difference().value()) + " than in " + comparison.with() + " ("
                + Said.sides(measure, comparison.difference()) + "): more than chance" + looks(estimate, searched)
                + ".";
    }

    /** Mortality was asked for beforehand; what is found among others says among how many. */
    private static String looks(Estimate estimate, long searched) {
        boolean alone = estimate.indicator().id().equals(SeasonQuestion.MORTALITY) || searched < 2;
        return alone ? "" : ", " + searched + " figures having been compared";
    }

    private static String missed(Estimate estimate, Target target, String whose) {
        Measure measure = estimate.indicator().measure();
        return Subject.of(estimate.indicator()) + " was " + Said.value(estimate) + " (" + Said.span(estimate)
                + ") and misses the " + whose + " target of " + Said.target(target, measure) + ".";
    }

    private static String apart(StrataTable.Line line, int comparisons) {
        Comparison comparison = line.group().comparison();
        Measure measure = line.group().indicator().measure();
        return line.group().indicator().title() + ", " + line.by().title() + " "
                + line.group().name() + ": " + Said.value(line.group()) + ", "
                + Said.side(measure, comparison.difference().value()) + " than among all others ("
                + Said.sides(measure, comparison.difference()) + "): more than chance, " + comparisons
                + " groups having been compared.";
    }
}
