package wisp.interchange;

import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * The words of the ICAR Animal Data Exchange standard, version 1.3, that have a counterpart in Wisp's events:
 * enumerations
 * {@code icarReproCalvingEaseType}, {@code icarDiagnosisSeverityType}, {@code uncefactDoseUnitsType} and
 * {@code uncefactMassUnitsType} of its schemas.
 */
final class Icar {
    /** Schemes of the identifiers that Wisp gives itself. */
    static final String ANIMAL = "wisp.animal";

    static final String PEN = "wisp.pen";
    static final String FARM = "wisp.farm";
    static final String BREED = "wisp.breed";
    static final String CONDITION = "wisp.condition";

    /** A treatment that is a vaccination says so in its procedure. */
    static final String VACCINATION = "vaccination";

    static final Map<Integer, String> EASE = Map.of(
            1,
            "EasyUnassisted",
            2,
            "EasyAssisted",
            3,
            "DifficultExtraAssistance",
            4,
            "DifficultVeterinaryCare",
            5,
            "CaesareanOrSurgery");
    static final Map<Integer, String> SEVERITY = Map.of(1, "Light", 2, "Moderate", 3, "Severe");
    static final Map<String, String> DOSE_UNIT = Map.of("ml", "MLT", "l", "LTR", "mg", "MGM", "g", "GRM");
    static final Map<String, String> SEX = Map.of("female", "Female", "male", "Male", "unknown", "Unknown");
    /** Kilograms in one of each mass unit; the pound is 0.45359237 kg by definition. */
    static final Map<String, Double> KILOGRAMS =
            Map.of("KGM", 1.0, "GRM", 0.001, "LBR", 0.45359237, "TNE", 1000.0, "ONZ", 0.45359237 / 16);

    private Icar() {}

    /** The same table from right to left. */
    static <K> Map<String, K> back(Map<K, String> table) {
        return table.entrySet().stream().collect(Collectors.toMap(Map.Entry::getValue, Map.Entry::getKey));
    }

    /** The short name of a resource type, which may be written as a URI, as {@code icar:Name} or as its file's name. */
    static String shortName(String resourceType) {
        Function<String, String> last =
                text -> text.substring(Math.max(text.lastIndexOf('/'), text.lastIndexOf(':')) + 1);
        String name = last.apply(resourceType);
        return name.startsWith("icar") && name.endsWith("Resource")
                ? name.substring("icar".length(), name.length() - "Resource".length())
                : name;
    }
}
