package wisp.site;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import wisp.event.Fault;

/**
 * A request that cannot be answered, as RFC 9457 problem details.
 */
final class Problem extends RuntimeException {
    private final int status;
    private final String title;
    private final transient List<Fault> faults;

    Problem(int status, String title, String detail, List<Fault> faults) {
        super(detail);
        this.status = status;
        this.title = title;
        this.faults = List.copyOf(faults);
    }

    /** Parameters that are wrong, all of them. */
    static Problem parameters(List<Fault> faults) {
        String detail = String.join(" ", faults.stream().map(Fault::toString).toList());
        return new Problem(400, "The address asks for something that is not there", detail, faults);
    }

    static Problem notFound(String detail) {
        return new Problem(404, "There is no such thing", detail, List.of());
    }

    int status() {
        return status;
    }

    String title() {
        return title;
    }

    List<Fault> faults() {
        return faults;
    }

    ObjectNode json() {
        ObjectNode json = JsonNodeFactory.instance.objectNode();
        json.put("type", "about:blank");
        json.put("title", title);
        json.put("status", status);
        json.put("detail", getMessage());
        if (!faults.isEmpty()) {
            ArrayNode list = json.putArray("faults");
            faults.forEach(fault -> list.addObject()
                    .put("field", fault.field())
                    .put("problem", fault.problem())
                    .put("mend", fault.mend()));
        }
        return json;
    }
}
