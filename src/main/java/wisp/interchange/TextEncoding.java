package wisp.interchange;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * How a text file's letters are written: UTF-8, UTF-16 by its mark or its empty bytes, else Windows-1252, which every
 * older spreadsheet of western Europe writes.
 *
 * @param charset the letters' code
 * @param markBytes bytes of the byte-order mark to skip
 * @param note what a reader should know; empty for UTF-8
 */
record TextEncoding(Charset charset, int markBytes, String note) {
    private static final Charset WINDOWS = Charset.forName("windows-1252");
    private static final int LOOK = 4096;

    static TextEncoding of(Path file) throws IOException {
        byte[] head;
        try (InputStream in = Files.newInputStream(file)) {
            head = in.readNBytes(LOOK);
        }
        if (starts(head, 0xEF, 0xBB, 0xBF)) {
            return utf8(file, 3);
        }
        if (starts(head, 0xFF, 0xFE) || starts(head, 0xFE, 0xFF)) {
            Charset charset = head[0] == (byte) 0xFF ? StandardCharsets.UTF_16LE : StandardCharsets.UTF_16BE;
            return new TextEncoding(charset, 2, "Its letters are read as UTF-16.");
        }
        int even = empty(head, 0);
        int odd = empty(head, 1);
        if (even + odd > head.length / 4) {
            Charset charset = odd > even ? StandardCharsets.UTF_16LE : StandardCharsets.UTF_16BE;
            return new TextEncoding(charset, 0, "Its letters are read as UTF-16, though it has no mark of that.");
        }
        if (even + odd > 0) {
            throw new RefusedFile("", "It holds empty bytes, which no text does.", "Save it as CSV in UTF-8.");
        }
        return utf8(file, 0);
    }

    /** What a mapping states; a mark at the file's beginning is still skipped. */
    static TextEncoding stated(Charset charset, Path file) throws IOException {
        TextEncoding marked = of(file);
        return new TextEncoding(charset, marked.charset.equals(charset) ? marked.markBytes : 0, "");
    }

    private static TextEncoding utf8(Path file, int mark) throws IOException {
        if (decodes(file, StandardCharsets.UTF_8)) {
            return new TextEncoding(StandardCharsets.UTF_8, mark, "");
        }
        if (mark == 0 && decodes(file, WINDOWS)) {
            return new TextEncoding(WINDOWS, 0, "It is not UTF-8; its letters are read as Windows-1252.");
        }
        throw new RefusedFile("", "Its letters are neither UTF-8 nor Windows-1252.", "Save it as CSV in UTF-8.");
    }

    private static boolean decodes(Path file, Charset charset) throws IOException {
        CharsetDecoder decoder = charset.newDecoder();
        ByteBuffer bytes = ByteBuffer.allocate(1 << 16);
        CharBuffer sink = CharBuffer.allocate(1 << 16);
        try (InputStream in = Files.newInputStream(file)) {
            boolean end = false;
            while (!end) {
                int read = in.read(bytes.array(), bytes.position(), bytes.remaining());
                end = read < 0;
                bytes.position(bytes.position() + Math.max(0, read)).flip();
                CoderResult result = decoder.decode(bytes, sink.clear(), end);
                if (result.isError()) {
                    return false;
                }
                bytes.compact();
            }
        }
        return true;
    }

    private static boolean starts(byte[] head, int... mark) {
        for (int i = 0; i < mark.length; i++) {
            if (head.length <= i || head[i] != (byte) mark[i]) {
                return false;
            }
        }
        return true;
    }

    private static int empty(byte[] head, int from) {
        int count = 0;
        for (int i = from; i < head.length; i += 2) {
            count += head[i] == 0 ? 1 : 0;
        }
        return count;
    }
}
