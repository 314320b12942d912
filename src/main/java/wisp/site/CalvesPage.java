package wisp.site;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import wisp.history.EarTags;
import wisp.history.Life;
import wisp.indicator.Selection;
import wisp.tag.TagNumber;

/**
 * The calves asked for, newest first.
 *
 * @param find what a calf's key or tag must hold, empty for all
 * @param calves one a row
 * @param leaf which of them stand on this leaf
 * @param elsewhere how many more are found among the calves that the filters leave out
 * @param everywhere the page that shows them too
 */
public record CalvesPage(Frame frame, String find, List<Row> calves, Leaf leaf, int elsewhere, String everywhere) {

    /** One calf. */
    public record Row(
            CalfName name, String href, String born, String sex, String pen, String tags, String state, int marks) {}

    static CalvesPage of(Asked asked, String find, String number) {
        String part = find == null ? "" : find.strip();
        Map<String, String> kept = part.isEmpty() ? Map.of() : Map.of("find", part);
        Frame frame = Frame.of(asked, "Calves", "/calves", kept);
        List<Life> lives = new ArrayList<>();
        for (int row : asked.selection().calves(asked.cohort())) {
            lives.add(asked.cohort().lives().get(row));
        }
        lives.sort((a, b) -> b.born().time().compareTo(a.born().time()));
        FoundCalf wanted = new FoundCalf(part);
        lives.removeIf(life -> !wanted.fits(life));
        Leaf leaf = Leaf.of(lives.size(), number, frame, Map.of());
        List<Row> rows =
                leaf.of(lives).stream().map(life -> row(life, frame.links())).toList();
        int all = part.isEmpty()
                ? lives.size()
                : (int) asked.cohort().lives().stream()
                        .filter(life -> life.born() != null && wanted.fits(life))
                        .count();
        Map<String, String> wide = new LinkedHashMap<>(Map.of("find", part, "season", Selection.ALL));
        asked.parameters().keySet().stream()
                .filter(name -> !name.equals("season") && !name.equals("as-of"))
                .forEach(name -> wide.put(name, ""));
        return new CalvesPage(
                frame, part, rows, leaf, all - lives.size(), frame.links().to("/calves", wide));
    }

    private static Row row(Life life, Links links) {
        CalfName name = CalfName.of(life);
        String tags = EarTags.of(life).numbers().stream()
                .map(TagNumber::shown)
                .filter(tag -> !tag.equals(name.shown()))
                .collect(Collectors.joining(", "));
        String state = life.exit() == null
                ? "here"
                : switch (life.exit().kind()) {
                    case BORN_DEAD -> "born dead";
                    case DIED ->
                        "died " + Shown.day(life.exit().time(), life.farm().zone());
                    case LEFT ->
                        "left " + Shown.day(life.exit().time(), life.farm().zone());
                };
        return new Row(
                name,
                links.calf(life.key()),
                Shown.moment(
                        life.born().time(), life.birthTimeKnown(), life.farm().zone()),
                life.birth().sex() == null ? "" : life.birth().sex().word(),
                life.birth().pen() == null ? "" : life.birth().pen(),
                tags,
                state,
                life.marks().size());
    }
}
