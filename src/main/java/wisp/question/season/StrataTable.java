package wisp.question.season;

import java.util.ArrayList;
import java.util.List;
import wisp.cohort.Cohort;
import wisp.indicator.Estimate;
import wisp.indicator.Figures;
import wisp.indicator.Indicator;
import wisp.indicator.Selection;
import wisp.indicator.Stratum;
import wisp.statistics.MultipleTesting;

/**
 * One figure divided in every way that can point to a reason, each group beside all other calves. Looking at many
 * groups finds differences that are none, so the p-values carry Holm's adjustment for all comparisons of the table.
 *
 * @param figure the figure, undivided
 * @param lines the groups
 * @param comparisons how many were tested
 */
public record StrataTable(Estimate figure, List<Line> lines, int comparisons) {
    /** What the figure is divided by, in this order. */
    public static final List<Stratum> DIVISIONS =
            List.of(Stratum.PEN, Stratum.PLACE, Stratum.SEX, Stratum.PARITY, Stratum.EASE, Stratum.BREED, Stratum.TWIN);

    /**
     * One group.
     *
     * @param by what divides
     * @param group the figure among its calves, its name the group's, its comparison with all others
     * @param adjustedP after Holm's adjustment for the whole table, NaN where nothing could be tested
     */
    public record Line(Stratum by, Estimate group, double adjustedP) {

        /** Whether chance explains its difference from all others. */
        public Chance chance() {
            return Chance.of(group.comparison(), adjustedP);
        }
    }

    static StrataTable of(Indicator indicator, Figures figures, Cohort cohort, Selection selection) {
        List<Stratum> by = new ArrayList<>();
        List<Estimate> groups = new ArrayList<>();
        List<Integer> testOf = new ArrayList<>();
        List<Double> tests = new ArrayList<>();
        Estimate whole = figures.of(indicator, cohort, selection.by(null));
        for (Stratum division : DIVISIONS) {
            List<Estimate> strata = figures.divided(indicator, cohort, selection.by(division));
            for (int i = 0; i < strata.size(); i++) {
                Estimate group = strata.get(i);
                // of two groups the second comparison is the first one turned round
                boolean again = strata.size() == 2 && i == 1;
                boolean tested = group.comparison() != null
                        && !Double.isNaN(group.comparison().p());
                if (tested && !again) {
                    tests.add(group.comparison().p());
                }
                by.add(division);
                groups.add(group);
                testOf.add(tested ? tests.size() - 1 : -1);
            }
        }
        double[] adjusted = holm(tests);
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < groups.size(); i++) {
            double p = testOf.get(i) < 0 ? Double.NaN : adjusted[testOf.get(i)];
            lines.add(new Line(by.get(i), groups.get(i), p));
        }
        return new StrataTable(whole, lines, tests.size());
    }

    private static double[] holm(List<Double> tests) {
        double[] p = tests.stream().mapToDouble(one -> one).toArray();
        return p.length == 0 ? p : MultipleTesting.holm(p);
    }

    /** The groups of one division. */
    public List<Line> lines(Stratum by) {
        return lines.stream().filter(line -> line.by() == by).toList();
    }

    /** The groups that differ from all others by more than chance. */
    public List<Line> standingOut() {
        return lines.stream()
                .filter(line -> line.chance() == Chance.MORE_THAN_CHANCE)
                .toList();
    }

    /** What it is divided by, where any calf is recorded to belong to a group. */
    public List<Stratum> divisions() {
        return DIVISIONS.stream()
                .filter(by ->
                        lines(by).stream().anyMatch(line -> !line.group().name().equals(Stratum.NOT_RECORDED)))
                .toList();
    }
}
