package wisp.site;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import wisp.cohort.Cohort;
import wisp.history.Life;
import wisp.indicator.Verdict;
import wisp.question.navels.NavelCalf;
import wisp.question.navels.NavelsAnswer;
import wisp.question.navels.Plain;

/**
 * The calves behind one count of the navels question.
 *
 * @param title what they have in common
 * @param calves one a row, as many as the count says
 * @param leaf which of them stand on this leaf
 */
public record NavelCalvesPage(Frame frame, String title, List<Row> calves, Leaf leaf) {

    /** One calf. */
    public record Row(
            CalfName name,
            String href,
            String born,
            String pen,
            String delay,
            String care,
            String outcome,
            boolean sick) {}

    static NavelCalvesPage of(Asked asked, NavelCalvesAsked wanted, NavelsAnswer answer, String number) {
        Frame frame = Frame.of(asked, wanted.title(), "/navels/calves", wanted.parameters());
        List<NavelCalf> calves = wanted.of(answer).stream()
                .sorted(Comparator.comparing(NavelCalf::sick).reversed())
                .toList();
        Leaf leaf = Leaf.of(calves.size(), number, frame, Map.of());
        List<Row> rows = leaf.of(calves).stream()
                .map(calf -> row(asked.cohort(), calf, frame.links()))
                .toList();
        return new NavelCalvesPage(frame, wanted.title(), rows, leaf);
    }

    private static Row row(Cohort cohort, NavelCalf calf, Links links) {
        Life life = cohort.lives().get(calf.verdict().row());
        String product = calf.product() == null ? "" : calf.product();
        String method = calf.method() == null ? "" : calf.method();
        return new Row(
                CalfName.of(life),
                links.calf(life.key()),
                Shown.moment(
                        life.born().time(), life.birthTimeKnown(), life.farm().zone()),
                calf.pen() == null ? "not recorded" : calf.pen(),
                Double.isNaN(calf.minutes())
                        ? calf.delay().word()
                        : Plain.number(calf.minutes(), calf.minutes() < 10 ? 1 : 0) + " min",
                product.isEmpty() || method.isEmpty() ? product + method : product + ", " + method,
                outcome(calf.verdict()),
                calf.sick());
    }

    private static String outcome(Verdict verdict) {
        String day = "day " + Plain.number(Math.floor(1 + verdict.days()), 0);
        return switch (verdict.ending()) {
            case OUTCOME -> "navel infection, " + day;
            case COMPETING -> "died, " + day;
            case CENSORED -> "no case, followed to " + day;
            case COMPLETE -> "no case";
        };
    }
}
