package wisp.calendar;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;

/**
 * The secret addresses of people's calendars, kept in one file beside the records. They are no husbandry events: one
 * that got about can be taken back, and the log would keep it for ever. The file is read anew at every question, so
 * that an address taken back is gone at once.
 */
public final class CalendarAddresses {
    private static final int SECRET_BYTES = 20;
    private static final JsonMapper JSON = new JsonMapper();

    private final Path file;

    /**
     * The addresses in a file.
     *
     * @param file may not be there yet; null: there are none and none can be made
     */
    public CalendarAddresses(Path file) {
        this.file = file;
    }

    /** Every address, in the order in which they were made. */
    public List<CalendarAddress> all() {
        List<CalendarAddress> all = new ArrayList<>();
        if (file == null || !Files.exists(file)) {
            return all;
        }
        try {
            for (JsonNode one : JSON.readTree(Files.readString(file))) {
                all.add(new CalendarAddress(
                        one.path("person").asText(),
                        one.path("pen").asText(),
                        LocalDate.parse(one.path("made").asText()),
                        one.path("digest").asText()));
            }
            return all;
        } catch (DateTimeParseException wrong) {
            throw unreadable(new IOException(wrong));
        } catch (IOException wrong) {
            throw unreadable(wrong);
        }
    }

    /** The address with this secret. */
    public Optional<CalendarAddress> of(String secret) {
        byte[] digest = digest(secret).getBytes(StandardCharsets.US_ASCII);
        return all().stream()
                .filter(one -> MessageDigest.isEqual(digest, one.digest().getBytes(StandardCharsets.US_ASCII)))
                .findFirst();
    }

    /**
     * Makes an address.
     *
     * @param pen the pen whose calves it holds, empty for all
     * @return its secret, which is told this once
     * @throws IllegalStateException where the person has one already
     */
    public String add(String person, String pen, LocalDate today) {
        List<CalendarAddress> all = all();
        if (all.stream().anyMatch(one -> one.person().equals(person))) {
            throw new IllegalStateException(
                    person + " has a calendar already. Take it back first, then make a new one.");
        }
        byte[] random = new byte[SECRET_BYTES];
        new SecureRandom().nextBytes(random);
        String secret = HexFormat.of().formatHex(random);
        all.add(new CalendarAddress(person, pen, today, digest(secret)));
        write(all);
        return secret;
    }

    /** Takes a person's address back; says whether there was one. */
    public boolean remove(String person) {
        List<CalendarAddress> all = all();
        boolean there = all.removeIf(one -> one.person().equals(person));
        if (there) {
            write(all);
        }
        return there;
    }

    private void write(List<CalendarAddress> all) {
        ArrayNode list = JSON.createArrayNode();
        all.forEach(one -> list.addObject()
                .put("person", one.person())
                .put("pen", one.pen())
                .put("made", one.made().toString())
                .put("digest", one.digest()));
        try {
            Path beside = file.resolveSibling(file.getFileName() + ".new");
            Files.writeString(beside, JSON.writerWithDefaultPrettyPrinter().writeValueAsString(list) + "\n");
            Files.move(beside, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException(impossible);
        } catch (IOException unwritable) {
            throw new UncheckedIOException(
                    file + " cannot be written. Give this user the right to write there, or name another file.",
                    unwritable);
        }
    }

    private UncheckedIOException unreadable(IOException wrong) {
        String mend = " Let this user read it; if it is damaged, move it away and make the addresses anew.";
        return new UncheckedIOException(file + " cannot be read as a list of calendar addresses." + mend, wrong);
    }

    private static String digest(String secret) {
        try {
            byte[] bytes = MessageDigest.getInstance("SHA-256").digest(secret.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(bytes);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
