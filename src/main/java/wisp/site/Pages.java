package wisp.site;

import io.javalin.config.JavalinConfig;
import io.javalin.http.Context;
import wisp.records.Records;

/** The pages' addresses. */
final class Pages {
    private final Records records;

    Pages(Records records) {
        this.records = records;
    }

    void addTo(JavalinConfig config) {
        config.routes.get("/", ctx -> ctx.result("Wisp " + records.log().last()));
    }

    static void problem(Context ctx, Problem problem) {
        ctx.result(problem.title() + "\n" + problem.getMessage());
    }
}
