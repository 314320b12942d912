package wisp.site;

import java.util.List;
import java.util.Map;
import wisp.event.Fault;
import wisp.question.PensAnswer;
import wisp.question.ScoredCalf;
import wisp.question.ScoredCalves;

/**
 * The calves behind one count of the pens' page.
 *
 * @param title what they have in common
 * @param calves one a row, as many as the count says
 * @param leaf which of them stand on this leaf
 */
public record PensCalvesPage(Frame frame, String title, List<Row> calves, Leaf leaf) {

    /**
     * One calf.
     *
     * @param score as written down, empty where the definition in use judges by something else
     * @param bedding days since the pen was bedded, empty where no bedding is on record
     */
    public record Row(
            CalfName name,
            String href,
            String born,
            String pen,
            String score,
            String verdict,
            String bedding,
            int calvings,
            String state) {}

    static PensCalvesPage of(Asked asked, PensAnswer answer, String id, String number) {
        ScoredCalves list = answer.list(id == null ? "" : id)
                .orElseThrow(() -> Problem.parameters(List.of(new Fault(
                        PensLinks.LIST,
                        "The pens have no list of that name.",
                        "Open it from a count on the pens' page."))));
        Frame frame = Frame.of(asked, list.title(), PensLinks.CALVES, Map.of(PensLinks.LIST, list.id()));
        Leaf leaf = Leaf.of(list.calves().size(), number, frame, Map.of());
        List<Row> rows = leaf.of(list.calves()).stream()
                .map(calf -> row(calf, frame.links()))
                .toList();
        return new PensCalvesPage(frame, list.title(), rows, leaf);
    }

    private static Row row(ScoredCalf calf, Links links) {
        return new Row(
                CalfName.of(calf.life()),
                links.calf(calf.life().key()),
                Shown.moment(
                        calf.life().born().time(),
                        calf.life().birthTimeKnown(),
                        calf.life().farm().zone()),
                calf.pen(),
                calf.score() == null ? "" : calf.score().toString(),
                calf.dirty() ? "dirty" : "clean",
                calf.beddingKnown() ? Shown.decimals(calf.daysSinceBedding(), 1) : "",
                calf.calvingsBefore(),
                CalfListPage.state(calf.life()));
    }
}
