package wisp.site;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import wisp.indicator.Estimate;

/** Addresses of pages; the filters in use stay in every one of them. */
final class Links {
    private final Map<String, String> kept;

    /** Links that keep these filters. */
    Links(Map<String, String> kept) {
        this.kept = kept;
    }

    /** A page with the filters kept. */
    String to(String path) {
        return to(path, Map.of());
    }

    /** A page with the filters kept and some parameters added, in order of name, or, where empty, taken away. */
    String to(String path, Map<String, String> changes) {
        Map<String, String> all = new LinkedHashMap<>(kept);
        all.putAll(new TreeMap<>(changes)); // an address is the same at every start
        all.values().removeIf(String::isEmpty);
        return all.isEmpty()
                ? path
                : path + "?"
                        + all.entrySet().stream()
                                .map(entry -> encode(entry.getKey()) + "=" + encode(entry.getValue()))
                                .collect(Collectors.joining("&"));
    }

    /** The page of a figure. */
    String figure(Estimate estimate) {
        Map<String, String> all = estimate.name().isEmpty() ? Map.of() : Map.of("part", CalvesBehind.Part.ALL.word());
        return to("/figures/" + estimate.indicator().id(), stratum(estimate, all));
    }

    /** The calves behind one of a figure's counts. */
    String calves(Estimate estimate, CalvesBehind.Part part) {
        return to("/figures/" + estimate.indicator().id(), stratum(estimate, Map.of("part", part.word()))) + "#calves";
    }

    /** The calves that a figure leaves out for one reason. */
    String excluded(Estimate estimate, String reason) {
        return step(estimate, CalvesBehind.Part.EXCLUDED, reason);
    }

    /** The calves of one step from all asked for to those that a figure counts: lost in it, or still there before. */
    String step(Estimate estimate, CalvesBehind.Part part, String reason) {
        Map<String, String> changes = Map.of("part", part.word(), "reason", reason);
        return to("/figures/" + estimate.indicator().id(), stratum(estimate, changes)) + "#calves";
    }

    /** One calf's page. */
    String calf(String key) {
        return to(calfPath(key));
    }

    /** The same without parameters. */
    static String calfPath(String key) {
        return "/calves/" + encode(key).replace("+", "%20");
    }

    private static Map<String, String> stratum(Estimate estimate, Map<String, String> changes) {
        Map<String, String> all = new LinkedHashMap<>(changes);
        if (!estimate.name().isEmpty()) {
            all.put("stratum", estimate.name());
        }
        return all;
    }

    private static String encode(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }
}
