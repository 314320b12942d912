package wisp.indicator;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import wisp.event.EventType;

/** Words for kinds of event and their fields, as they stand in a definition's sentence. */
final class EventPhrase {
    /** Units that end a field's name, the longer ones first where one ends another. */
    private static final List<Map.Entry<String, String>> UNITS = List.of(
            Map.entry("_g_dl", " g/dl"),
            Map.entry("_g_l", " g/l"),
            Map.entry("_percent", " %"),
            Map.entry("_kg", " kg"),
            Map.entry("_cm", " cm"),
            Map.entry("_l", " l"),
            Map.entry("_c", " °C"),
            Map.entry("_days", " days"));

    private static final Map<String, String> NAMES = new TreeMap<>(Map.of(
            "igg", "IgG",
            "serum_brix", "serum Brix",
            "brix", "Brix",
            "volume", "volume",
            "both_in", "both testicles in the ring",
            "keep_entire", "to stay entire"));

    private EventPhrase() {}

    /** The kind of event as a noun, such as {@code cleanliness score}. */
    static String noun(EventType type) {
        return switch (type) {
            case BIRTH -> "birth";
            case CLEANLINESS_SCORED -> "cleanliness score";
            case NAVEL_TREATED -> "navel treatment";
            case NAVEL_CHECKED -> "navel check";
            case COLOSTRUM_FED -> "colostrum feeding";
            case BLOOD_TESTED -> "blood test";
            case TAG_FITTED -> "ear tag";
            case TISSUE_SAMPLED -> "tissue sample";
            case SAMPLE_SENT -> "sample sent";
            case SAMPLE_RESULT -> "sample result";
            case REGISTERED -> "registration";
            case CASTRATED -> "castration";
            case DISBUDDED -> "disbudding";
            case ILLNESS_FOUND -> "finding of illness";
            case RECOVERED -> "recovery";
            case TREATED -> "treatment with a medicine";
            case VACCINATED -> "vaccination";
            case MOVED -> "move";
            case WEIGHED -> "weighing";
            case WEANED -> "weaning";
            case LEFT -> "leaving";
            case DIED -> "death";
            case PEN_BEDDED -> "bedding of the pen";
            case PEN_CLEANED -> "cleaning of the pen";
            case NOTED -> "note";
            case FARM_DESCRIBED, RETRACTED, AMENDED -> type.wireName();
        };
    }

    /** A noun with its article. */
    static String one(String noun) {
        return ("aeiouI".indexOf(noun.charAt(0)) >= 0 ? "an " : "a ") + noun;
    }

    /** A field's name without its unit, such as {@code serum protein}. */
    static String field(String field) {
        String plain = UNITS.stream()
                .map(Map.Entry::getKey)
                .filter(field::endsWith)
                .findFirst()
                .map(unit -> field.substring(0, field.length() - unit.length()))
                .orElse(field);
        return NAMES.getOrDefault(plain, plain.replace('_', ' ').toLowerCase(Locale.ROOT));
    }

    /** A field's unit with a space before it, or nothing. */
    static String unit(String field) {
        return UNITS.stream()
                .filter(unit -> field.endsWith(unit.getKey()))
                .findFirst()
                .map(Map.Entry::getValue)
                .orElse("");
    }
}
