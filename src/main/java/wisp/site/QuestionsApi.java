package wisp.site;

import io.javalin.http.Context;
import java.util.Set;
import wisp.question.Question;
import wisp.question.Questions;
import wisp.records.Records;

/** The answers as JSON. */
final class QuestionsApi {
    private final Records records;
    private final Questions questions;

    QuestionsApi(Records records) {
        this.records = records;
        this.questions = new Questions(records.definitions());
    }

    /** {@code GET /api/v1/questions/{name}}. */
    void answer(Context ctx) {
        String name = ctx.pathParam("name");
        Question question = questions
                .named(name)
                .orElseThrow(() -> Problem.notFound("There is no question " + name + "; those that there are: "
                        + String.join(", ", questions.names()) + "."));
        Asked asked = Asked.of(ctx, records, Set.of());
        ctx.json(question.answer(asked.cohort(), asked.selection()));
    }
}
