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
    private final Remembered<Page, String> pages = new Remembered<>();

    private record Divided(Selection selection, String figure) {}

    private record Page(Map<String, String> parameters, String figure) {}

    SeasonPages(Records records) {
        this.records = records;
        this.question = new SeasonQuestion(records.definitions());
    }

    /** {@code GET /} and {@code GET /season}. */
    void page(Context ctx) {
        Asked asked = Asked.of(ctx, records, Set.of(SeasonLinks.FIGURE));
        Page wanted = new Page(asked.parameters(), figure(ctx).id());
        Pages.html(ctx, pages.of(wanted, asked.cohort(), () -> {
            SeasonPage page = SeasonPage.of(records, asked, answer(ctx, asked));
            return Pages.rendered("season.jte", page);
        }));
    }

    /** {@code GET /season/weeks}. */
    void weeks(Context ctx) {
        Asked asked = Asked.of(ctx, records, Set.of());
        Pages.show(ctx, "season-weeks.jte", SeasonWeeksPage.of(asked, answer(ctx, asked)));
    }

    /** {@code GET /season/calves}. */
    void calves(Context ctx) {
        Asked asked = Asked.of(ctx, records, Set.of(SeasonLinks.LIST));
        SeasonAnswer answer = answer(ctx, asked);
        String list = ctx.queryParam(SeasonLinks.LIST);
        Pages.show(ctx, "season-calves.jte", SeasonCalvesPage.of(asked, answer, list));
    }

    /** {@code GET /season.png}. */
    void png(Context ctx) {
        Asked asked = Asked.of(ctx, records, Set.of(PICTURE));
        String name = ctx.queryParam(PICTURE) == null ? "risks" : ctx.queryParam(PICTURE);
        Optional<Picture> picture = SeasonPictures.named(name, answer(ctx, asked), new Links(asked.parameters()));
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
        String csv = SeasonCsv.of(name, answer(ctx, asked))
                .orElseThrow(() -> Problem.parameters(List.of(new Fault(
                        TABLE,
                        "There is no table " + name + ".",
                        "Write one of: " + String.join(", ", SeasonCsv.TABLES) + "."))));
        ctx.contentType("text/csv; charset=utf-8");
        ctx.header("Content-Disposition", "inline; filename=\"season-" + name + ".csv\"");
        ctx.result(csv);
    }

    private SeasonAnswer answer(Context ctx, Asked asked) {
        Indicator divided = figure(ctx);
        Divided key = new Divided(asked.selection().by(null), divided.id());
        return answers.of(key, asked.cohort(), () -> question.of(asked.cohort(), asked.selection(), divided));
    }

    private Indicator figure(Context ctx) {
        String wanted = ctx.queryParam(SeasonLinks.FIGURE);
        String id = wanted == null || wanted.isBlank() ? SeasonQuestion.MORTALITY : wanted;
        return records.definitions()
                .indicator(id)
                .orElseThrow(() -> Problem.parameters(List.of(new Fault(
                        SeasonLinks.FIGURE,
                        "There is no figure " + id + ".",
                        "Choose one that the page offers; /api/v1/figures lists them."))));
    }
}
