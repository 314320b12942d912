package wisp.site;

import io.javalin.http.Context;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import wisp.indicator.SelectionReader;

/**
 * What a request's address says: all that a page may hang on beside the log.
 *
 * @param path its path
 * @param name the animal or the figure that the path names, empty where it names none
 * @param parameters what follows it, each name with all that was given
 * @param minute the minute since 1970 that a page which hangs on the clock is of, 0 for any other
 */
record Address(String path, String name, Map<String, List<String>> parameters, long minute) {

    static Address of(Context ctx) {
        String name = String.join("/", ctx.pathParamMap().values());
        Map<String, List<String>> parameters = new LinkedHashMap<>(ctx.queryParamMap());
        // a form sends along every filter, those not in use as well
        parameters
                .entrySet()
                .removeIf(one -> SelectionReader.NAMES.contains(one.getKey())
                        && one.getValue().equals(List.of("")));
        return new Address(ctx.path(), name, parameters, 0);
    }

    /** An address without parameters. */
    static Address of(String path, String name) {
        return new Address(path + name, name, Map.of(), 0);
    }

    /** The same, of a page that hangs on the clock. */
    Address at(Instant moment) {
        return new Address(path, name, parameters, moment.getEpochSecond() / 60);
    }

    Set<String> names() {
        return parameters.keySet();
    }

    /** Everything that was given under a name. */
    List<String> all(String name) {
        return parameters.getOrDefault(name, List.of());
    }

    /** What was given first under a name, or null. */
    String parameter(String name) {
        List<String> all = all(name);
        return all.isEmpty() ? null : all.get(0);
    }
}
