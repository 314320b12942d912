package wisp.interchange;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** What a file holds, told from its first bytes and its name. */
enum FileKind {
    JSON_LINES,
    JSON_DOCUMENT,
    CSV;

    private static final int LOOK = 8192;

    static FileKind of(Path file) throws IOException {
        if (Files.isDirectory(file)) {
            throw new RefusedFile("", "It is a folder.", "Name the files in it.");
        }
        if (!Files.exists(file)) {
            throw new RefusedFile("", "There is no such file.", "Check its name and folder.");
        }
        String head = head(file);
        notText(head);
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        if (name.endsWith(".jsonl") || name.endsWith(".ndjson")) {
            return JSON_LINES;
        }
        String text = head.replace("\0", "")
                .replaceFirst("^(\u00ef\u00bb\u00bf|\u00ff\u00fe|\u00fe\u00ff)", "")
                .stripLeading();
        boolean json = text.startsWith("{") || text.startsWith("[");
        if (!json && !name.endsWith(".json") || name.endsWith(".csv") || name.endsWith(".tsv")) {
            return CSV;
        }
        return JsonDocument.firstLineIsWhole(file) ? JSON_LINES : JSON_DOCUMENT;
    }

    private static String head(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return new String(in.readNBytes(LOOK), StandardCharsets.ISO_8859_1);
        }
    }

    private static void notText(String head) {
        String kind = null;
        if (head.startsWith("PK\u0003\u0004") || head.startsWith("\u00d0\u00cf\u0011\u00e0")) {
            kind = "a spreadsheet's workbook or an archive";
        } else if (head.startsWith("\u001f\u008b")) {
            kind = "compressed";
        } else if (head.startsWith("%PDF")) {
            kind = "a PDF";
        } else if (head.startsWith("PAR1")) {
            kind = "a Parquet file";
        }
        if (kind != null) {
            throw new RefusedFile("", "It is " + kind + ", not text.", "Save or export it as CSV in UTF-8.");
        }
        if (head.isBlank()) {
            throw new RefusedFile("", "It is empty.", "Check that it was saved.");
        }
    }
}
