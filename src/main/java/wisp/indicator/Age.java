package wisp.indicator;

import java.time.Duration;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An exact age as definitions write it, such as {@code 24 h}.
 *
 * @param exact the age
 * @param text as written
 */
public record Age(Duration exact, String text) implements Comparable<Age> {
    /** The moment of birth. */
    public static final Age BIRTH = new Age(Duration.ZERO, "birth");

    private static final Pattern SHAPE = Pattern.compile("(\\d{1,6}) ?(min|h|d)");

    /** Reads {@code birth}, {@code 15 min}, {@code 24 h} or {@code 60 d}; a day is 24 h. */
    static Optional<Age> read(String text) {
        if (text.strip().toLowerCase(Locale.ROOT).equals("birth")) {
            return Optional.of(BIRTH);
        }
        Matcher matcher = SHAPE.matcher(text.strip());
        if (!matcher.matches()) {
            return Optional.empty();
        }
        long count = Long.parseLong(matcher.group(1));
        Duration exact = switch (matcher.group(2)) {
            case "min" -> Duration.ofMinutes(count);
            case "h" -> Duration.ofHours(count);
            default -> Duration.ofHours(24 * count);
        };
        return Optional.of(new Age(exact, matcher.group(1) + " " + matcher.group(2)));
    }

    @Override
    public int compareTo(Age other) {
        return exact.compareTo(other.exact);
    }
}
