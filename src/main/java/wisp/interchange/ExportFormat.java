package wisp.interchange;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** What an export writes. */
public enum ExportFormat {
    /** CloudEvents, one canonical JSON object a line. */
    JSONL,
    /** Wisp's own columns, one row an event. */
    CSV,
    /** Typed columns for data tools. */
    PARQUET,
    /** ICAR Animal Data Exchange resources, as corrections have left the events. */
    ICAR;

    /** The word on the command line. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The format of this word, or empty where there is none. */
    public static Optional<ExportFormat> named(String word) {
        return Arrays.stream(values()).filter(f -> f.word().equals(word)).findFirst();
    }

    /** Every word, for an error's mend. */
    public static String allWords() {
        return Arrays.stream(values()).map(ExportFormat::word).collect(Collectors.joining(", "));
    }
}
