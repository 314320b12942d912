package wisp.interchange;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import wisp.event.FieldMend;

/** The name that somebody probably meant. */
final class Nearest {
    private Nearest() {}

    /** The nearest of the known names by Levenshtein's distance, else one that begins so, else an empty text. */
    static String of(String name, Collection<String> known) {
        String plain = plain(name);
        String near = known.stream()
                .min(Comparator.comparingInt((String other) -> FieldMend.distance(plain, plain(other)))
                        .thenComparing(Comparator.naturalOrder()))
                .filter(other -> FieldMend.distance(plain, plain(other)) <= Math.max(1, name.length() / 3))
                .orElse("");
        return near.isEmpty()
                ? known.stream()
                        .filter(other -> plain(other).startsWith(plain + "_"))
                        .sorted()
                        .findFirst()
                        .orElse("")
                : near;
    }

    private static String plain(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", "_");
    }
}
