package wisp.site;

import java.util.List;
import java.util.Map;
import wisp.event.Died;
import wisp.event.Fault;
import wisp.history.Exit;
import wisp.history.Life;
import wisp.question.season.CalfList;
import wisp.question.season.SeasonAnswer;

/**
 * The calves, or episodes, behind one count of the season.
 *
 * @param title what they have in common
 * @param calves one a row, as many as the count says
 * @param leaf which of them stand on this leaf
 */
public record SeasonCalvesPage(Frame frame, String title, List<Row> calves, Leaf leaf) {

    /** One calf. */
    public record Row(
            String key, String href, String born, String sex, String parity, String pen, String ease, String state) {}

    static SeasonCalvesPage of(Asked asked, SeasonAnswer answer, String id, String number) {
        CalfList list = answer.list(id == null ? "" : id)
                .orElseThrow(() -> Problem.parameters(List.of(new Fault(
                        SeasonLinks.LIST,
                        "The season has no list of that name.",
                        "Open it from a count on the season's page."))));
        Frame frame = Frame.of(asked, list.title(), "/season/calves", Map.of(SeasonLinks.LIST, list.id()));
        Leaf leaf = Leaf.of(list.rows().size(), number, frame, Map.of());
        List<Row> rows = leaf.of(list.rows()).stream()
                .map(row -> row(asked.cohort().lives().get(row), frame.links()))
                .toList();
        return new SeasonCalvesPage(frame, list.title(), rows, leaf);
    }

    private static Row row(Life life, Links links) {
        return new Row(
                life.key(),
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
        String age = Shown.age(life.ageAt(exit.time()));
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
