package wisp.site;

import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import wisp.chart.Picture;
import wisp.event.Fault;
import wisp.indicator.Indicator;
import wisp.indicator.Selection;
import wisp.question.season.CalfList;
import wisp.question.season.SeasonAnswer;
import wisp.question.season.SeasonQuestion;
import wisp.records.Records;

/** The addresses of the season: its page, its pictures, its tables, and the calves behind its counts. */
final class SeasonPages {
    private static final String PICTURE = "picture";
    private static final String TABLE = "table";

    private final Records records;
    private final SeasonQuestion question;
    private final Remembered<Divided, SeasonAnswer> answers = new Remembered<>();

    private record Divided(Selection selection, String figure) {}

    SeasonPages(Records records) {
        this.records = records;
        this.question = new SeasonQuestion(records.definitions(), records.figures());
    }

    /** {@code GET /} and {@code GET /season}. */
    String page(Address address) {
        Asked asked = Asked.of(address, records, Set.of(SeasonLinks.FIGURE));
        return Pages.rendered("season.jte", SeasonPage.of(records, asked, answer(address, asked)));
    }

    /** {@code GET /season/weeks}. */
    String weeks(Address address) {
        Asked asked = Asked.of(address, records, Set.of());
        return Pages.rendered("season-weeks.jte", SeasonWeeksPage.of(asked, answer(address, asked)));
    }

    /** {@code GET /season/calves}. */
    String calves(Address address) {
        Asked asked = Asked.of(address, records, Set.of(SeasonLinks.LIST, Leaf.PARAMETER));
        SeasonAnswer answer = answer(address, asked);
        String list = address.parameter(SeasonLinks.LIST);
        CalfList calves = answer.list(list == null ? "" : list)
                .orElseThrow(() -> Problem.parameters(List.of(new Fault(
                        SeasonLinks.LIST,
                        "The season has no list of that name.",
                        "Open it from a count on the season's page."))));
        Frame frame = Frame.of(asked, calves.title(), SeasonLinks.CALVES, Map.of(SeasonLinks.LIST, calves.id()));
        return Pages.rendered(
                "calf-list.jte",
                CalfListPage.of(
                        frame, asked.cohort(), calves.rows(), address.parameter(Leaf.PARAMETER), "the season", "/"));
    }

    /** {@code GET /season.png}. */
    void png(Context ctx) {
        Asked asked = Asked.of(ctx, records, Set.of(PICTURE));
        String name = ctx.queryParam(PICTURE) == null ? "risks" : ctx.queryParam(PICTURE);
        Optional<Picture> picture =
                SeasonPictures.named(name, answer(Address.of(ctx), asked), new Links(asked.parameters()));
        Pages.png(
                ctx,
                picture.orElseThrow(() -> Problem.parameters(List.of(new Fault(
                        PICTURE,
                        "There is no picture " + name + ".",
                        "Write one of: " + String.join(", ", SeasonPictures.NAMES) + ".")))));
    }

    /** {@code GET /season.csv}. */
    void csv(Context ctx) {
        Asked asked = Asked.of(ctx, records, Set.of(TABLE, SeasonLinks.FIGURE));
        String name = ctx.queryParam(TABLE) == null ? "figures" : ctx.queryParam(TABLE);
        String csv = SeasonCsv.of(name, answer(Address.of(ctx), asked))
                .orElseThrow(() -> Problem.parameters(List.of(new Fault(
                        TABLE,
                        "There is no table " + name + ".",
                        "Write one of: " + String.join(", ", SeasonCsv.TABLES) + "."))));
        ctx.contentType("text/csv; charset=utf-8");
        ctx.header("Content-Disposition", "inline; filename=\"season-" + name + ".csv\"");
        ctx.result(csv);
    }

    private SeasonAnswer answer(Address address, Asked asked) {
        Indicator divided = figure(address);
        Divided key = new Divided(asked.selection().by(null), divided.id());
        return answers.of(key, asked.cohort(), () -> question.of(asked.cohort(), asked.selection(), divided));
    }

    private Indicator figure(Address address) {
        String wanted = address.parameter(SeasonLinks.FIGURE);
        String id = wanted == null || wanted.isBlank() ? SeasonQuestion.MORTALITY : wanted;
        return records.definitions()
                .indicator(id)
                .orElseThrow(() -> Problem.parameters(List.of(new Fault(
                        SeasonLinks.FIGURE,
                        "There is no figure " + id + ".",
                        "Choose one that the page offers; /api/v1/figures lists them."))));
    }
}
