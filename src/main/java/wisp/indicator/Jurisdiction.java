package wisp.indicator;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wisp.event.FarmDescribed.Enterprise;

/**
 * The limits that the law of one place sets; one file each.
 *
 * @param id the file's name, as a farm's description names it
 * @param aliases other names, such as ISO 3166 codes
 * @param readOn when the sources were last read
 * @param dairy the law for dairy calves, one for each date from which it changed, in order
 * @param beef the same for beef calves
 */
public record Jurisdiction(
        String id, String title, List<String> aliases, String readOn, List<Law> dairy, List<Law> beef) {

    /** The names by which a farm's description may mean this place, in plain form. */
    List<String> names() {
        List<String> names = new ArrayList<>(aliases);
        names.add(0, id);
        return names;
    }

    /** A name as it is compared: small letters, hyphens for spaces. */
    static String plain(String name) {
        return name.strip().toLowerCase(Locale.ROOT).replace(' ', '-');
    }

    /** The law for a calf born on a local date. */
    public Optional<Law> on(LocalDate born, Enterprise enterprise) {
        List<Law> laws = enterprise == Enterprise.BEEF ? beef : dairy;
        return laws.stream()
                .filter(law -> law.from() == null || !born.isBefore(law.from()))
                .reduce((earlier, later) -> later);
    }
}
