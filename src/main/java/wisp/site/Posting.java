package wisp.site;

import io.javalin.http.Context;
import java.util.function.Supplier;
import wisp.records.Intake;

/** How events that somebody sends are recorded, so that what is shown afterwards is known to have them or not. */
interface Posting {

    /**
     * Records what a request brought.
     *
     * @param taking records it
     * @return what came of it
     */
    Intake of(Context ctx, Supplier<Intake> taking);
}
