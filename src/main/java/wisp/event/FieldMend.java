package wisp.event;

import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Words for mending a field: its unit, and the field that a wrong name probably meant. */
public final class FieldMend {
    private static final Map<String, String> UNITS = Map.of(
            "_kg", "kilograms",
            "_l", "litres",
            "_percent", "percent",
            "_g_dl", "grams per decilitre",
            "_g_l", "grams per litre",
            "_c", "degrees Celsius",
            "_days", "days",
            "_cm", "centimetres");

    private FieldMend() {}

    /** The unit that a field's name ends in. */
    static Optional<String> unitOf(String field) {
        return UNITS.entrySet().stream()
                .filter(unit -> field.endsWith(unit.getKey()))
                .max(Comparator.comparingInt(unit -> unit.getKey().length()))
                .map(Map.Entry::getValue);
    }

    /** What to do about a field that the type of event does not have. */
    static String forUnknown(String field, Set<String> known) {
        String list = known.isEmpty() ? "This type of event has no fields" : "It takes: " + String.join(", ", known);
        return known.stream()
                .filter(name -> stem(name).equals(stem(field)) || distance(name, field) <= 2)
                .findFirst()
                .map(name -> "Did you mean " + name
                        + unitOf(name).map(u -> " (" + u + ")").orElse("") + "?")
                .orElse(list + ".");
    }

    private static String stem(String field) {
        int cut = field.indexOf('_');
        return cut < 0 ? field : field.substring(0, cut);
    }

    /** Levenshtein's distance: the fewest letters to put in, take out or change. */
    public static int distance(String a, String b) {
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int swap = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(swap, Math.min(row[j], row[j - 1]) + 1);
            }
        }
        return row[b.length()];
    }
}
