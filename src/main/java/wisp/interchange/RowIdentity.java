package wisp.interchange;

import it.unimi.dsi.fastutil.longs.Long2IntOpenHashMap;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.SortedMap;

/**
 * Names rows that bring no id: SHA-256 over the names and texts of the cells that are used, and the row's number among
 * equal rows of the file. So the same file again, the same rows in another order of columns, or a longer file with the
 * same rows in it give the same ids, and nothing is recorded twice. A changed mapping gives other events under the same
 * ids, which the log refuses as conflicts instead of keeping both.
 */
final class RowIdentity {
    private static final int BYTES_SHOWN = 12;

    private final MessageDigest digest;
    private final Long2IntOpenHashMap seen = new Long2IntOpenHashMap();

    RowIdentity() {
        try {
            digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }

    /** The name of the next row with these cells, column name to text, empty ones left out. */
    String name(SortedMap<String, String> cells) {
        cells.forEach((column, text) -> {
            digest.update(column.getBytes(StandardCharsets.UTF_8));
            digest.update((byte) 0);
            digest.update(text.getBytes(StandardCharsets.UTF_8));
            digest.update((byte) 0);
        });
        byte[] hash = digest.digest();
        int occurrence = seen.addTo(ByteBuffer.wrap(hash).getLong(), 1) + 1;
        String name = HexFormat.of().formatHex(hash, 0, BYTES_SHOWN);
        return occurrence == 1 ? name : name + "-" + occurrence;
    }
}
