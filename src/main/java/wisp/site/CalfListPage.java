package wisp.site;

import java.util.List;
import java.util.Map;
import wisp.cohort.Cohort;
import wisp.event.Died;
import wisp.history.Exit;
import wisp.history.Life;

/**
 * The calves, or episodes, behind one count of a page.
 *
 * @param title what they have in common
 * @param calves one a row, as many as the count says
 * @param leaf which of them stand on this leaf
 * @param back the page of the count in words
 * @param backHref its address
 */
public record CalfListPage(Frame frame, String title, List<Row> calves, Leaf leaf, String back, String backHref) {

    /** One calf. */
    public record Row(
            CalfName name,
            String href,
            String born,
            String sex,
            String parity,
            String pen,
            String ease,
            String state) {}

    /**
     * The page of a list.
     *
     * @param list rows of the cohort
     * @param number of the leaf asked for, or null
     */
    static CalfListPage of(
            Frame frame, Cohort cohort, List<Integer> list, String number, String back, String backHref) {
        Leaf leaf = Leaf.of(list.size(), number, frame, Map.of());
        List<Row> rows = leaf.of(list).stream()
                .map(row -> row(cohort.lives().get(row), frame.links()))
                .toList();
        return new CalfListPage(frame, frame.title(), rows, leaf, back, frame.to(backHref));
    }

    private static Row row(Life life, Links links) {
        return new Row(
                CalfName.of(life),
                links.calf(life.key()),
                Shown.moment(
                        life.born().time(), life.birthTimeKnown(), life.farm().zone()),
                life.birth().sex() == null ? "" : life.birth().sex().word(),
                text(life.birth().damParity()),
                life.birth().pen() == null ? "not recorded" : life.birth().pen(),
                text(life.birth().ease()),
                state(life));
    }

    private static String text(Integer number) {
        return number == null ? "" : number.toString();
    }

    static String state(Life life) {
        Exit exit = life.exit();
        if (exit == null) {
            return "here";
        }
        String age = Shown.age(life, exit.time());
        return switch (exit.kind()) {
            case BORN_DEAD -> "born dead";
            case LEFT -> "left at " + age;
            case DIED -> {
                String cause = exit.event().data() instanceof Died died ? died.cause() : null;
                yield "died at " + age + ", " + (cause == null ? "cause not recorded" : cause);
            }
        };
    }
}
