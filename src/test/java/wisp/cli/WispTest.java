package wisp.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wisp.log.SqliteLog;

class WispTest {
    private static final String SOUND = """
            {"specversion":"1.0","id":"1","source":"shed","type":"birth","subject":"A","time":"2026-03-01T08:00:00Z","data":{"alive":true}}
            {"specversion":"1.0","id":"2","source":"shed","type":"birth","subject":"B","time":"2026-03-02T08:00:00Z","data":{"alive":false}}
            """;

    @TempDir
    private Path folder;

    @Test
    void withoutACommandItSaysHowItIsUsed() {
        Spoken spoken = Spoken.by().exits(2);
        assertTrue(spoken.err().startsWith("Usage: wisp"), spoken.err());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "milk",
                "serve --port many",
                "import",
                "export --out x",
                "export --format xml --out x",
                "figures --format pdf",
                "figures --colour red",
                "simulate --calves 5",
                "simulate --calves 0 --seed 1 --out x",
                "verify now",
                "backup",
                "restore"
            })
    void wrongUsageExitsWithTwo(String command) {
        Spoken spoken = Spoken.by((Object[]) command.split(" ")).exits(2);
        assertFalse(spoken.err().contains("Exception"), spoken.err());
        assertEquals("", spoken.out());
        assertFalse(Files.exists(Path.of("x")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"serve", "import", "export", "figures", "verify", "backup", "restore", "simulate"})
    void everyCommandExplainsItself(String command) {
        Spoken spoken = Spoken.by(command, "--help").exits(0);
        assertTrue(spoken.out().startsWith("Usage: wisp " + command), spoken.out());
    }

    @Test
    void whatIsImportedIsVerified() throws IOException {
        assertEquals("", recorded().err());
        Spoken verified = verify().exits(0);
        assertTrue(
                verified.out().matches("All 2 events are as they were written\\. Head [0-9a-f]{64}\\.\\R"),
                verified.out());
    }

    @Test
    void aDryRunRecordsNothing() throws IOException {
        Spoken.by("import", "--data", data(), "--dry-run", file("a.jsonl", SOUND))
                .exits(0);
        assertTrue(verify().out().startsWith("All 0 events"));
    }

    @Test
    void oneWrongLineStopsAllUnlessPartialIsSaid() throws IOException {
        Path wrong = file("b.jsonl", SOUND + "{\"specversion\":\"1.0\"\n");
        Spoken refused = Spoken.by("import", "--data", data(), wrong).exits(1);
        assertTrue(refused.err().contains("b.jsonl"), refused.err());
        assertTrue(
                refused.err().contains("Nothing was recorded. Mend the rows named, or say --partial."), refused.err());
        assertTrue(verify().out().startsWith("All 0 events"));
        Spoken.by("import", "--data", data(), "--partial", wrong).exits(1);
        assertTrue(verify().out().startsWith("All 2 events"));
    }

    @Test
    void aFileThatIsNotThereIsNamed() {
        Spoken spoken = Spoken.by("import", "--data", data(), folder.resolve("none.jsonl"))
                .exits(1);
        assertEquals(
                List.of(
                        "none.jsonl: There is no such file. Check its name and folder.",
                        "Nothing was recorded. Mend the rows named, or say --partial."),
                spoken.err().strip().lines().toList());
    }

    @Test
    void whatIsExportedAndImportedAgainHasTheSameHashes() throws IOException {
        recorded();
        Path out = folder.resolve("out.jsonl");
        Spoken.by("export", "--data", data(), "--format", "jsonl", "--out", out).exits(0);
        Path other = folder.resolve("other");
        Spoken.by("import", "--data", other, out).exits(0);
        assertEquals(verify().out(), Spoken.by("verify", "--data", other).out());
    }

    @Test
    void everyExportFormatWritesAFile() throws IOException {
        recorded();
        for (String format : List.of("jsonl", "csv", "parquet", "icar")) {
            Path out = folder.resolve("out." + format);
            Spoken.by("export", "--data", data(), "--format", format, "--out", out)
                    .exits(0);
            assertTrue(Files.size(out) > 0, format);
        }
    }

    @Test
    void aTamperedLogIsFoundOut() throws IOException, SQLException {
        recorded();
        try (Connection sqlite = DriverManager.getConnection("jdbc:sqlite:" + database());
                Statement statement = sqlite.createStatement()) {
            statement.execute("DROP TRIGGER event_is_never_changed");
            assertEquals(
                    1,
                    statement.executeUpdate(
                            "UPDATE event SET json = replace(json, 'true', 'false') WHERE sequence = 1"));
        }
        verify().exits(1).saysOnlyOneLineWith("Broken at sequence 1: ");
    }

    @Test
    void aSeasonIsSimulatedAndTheSameSeedGivesTheSame() throws IOException {
        Path first = folder.resolve("one.jsonl");
        Path second = folder.resolve("two.jsonl");
        Spoken.by("simulate", "--calves", 30, "--seed", 7, "--out", first).exits(0);
        Spoken.by("simulate", "--calves", 30, "--seed", 7, "--out", second).exits(0);
        assertEquals(-1, Files.mismatch(first, second));
        assertTrue(Files.exists(folder.resolve("one.truths.json")));
        Spoken.by("import", "--data", data(), first).exits(0);
    }

    @Test
    void aFolderThatIsNotThereCannotBeSimulatedInto() {
        Spoken.by("simulate", "--calves", 3, "--seed", 7, "--out", folder.resolve("none/one.jsonl"))
                .exits(1)
                .saysOnlyOneLineWith("cannot be written");
    }

    @Test
    void aTakenPortGivesOneClearLine() throws IOException {
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getByName("127.0.0.1"))) {
            Spoken spoken = Spoken.by("serve", "--data", data(), "--port", taken.getLocalPort())
                    .exits(1);
            assertEquals(
                    "Port " + taken.getLocalPort()
                            + " on 127.0.0.1 cannot be used, most likely because another program has"
                            + " it: choose another with --port.",
                    spoken.err().strip());
            assertEquals("", spoken.out());
        }
    }

    @Test
    void aPortThatNoMachineHasIsWrongUsage() {
        Spoken.by("serve", "--data", data(), "--port", "70000").exits(2);
    }

    @ParameterizedTest
    @ValueSource(strings = {"192.0.2.1", "no.such.host.invalid"}) // RFC 5737, RFC 6761: nobody's
    void anAddressThatIsNotThisMachinesIsRefused(String address) {
        Spoken.by("serve", "--data", data(), "--port", "0", "--bind", address)
                .exits(1)
                .saysOnlyOneLineWith(address + " is not an address of this machine: ");
    }

    @ParameterizedTest
    @ValueSource(strings = {"verify", "figures"})
    void aDataFolderThatIsAFileIsRefused(String command) throws IOException {
        Path file = file("plain", "not a folder");
        Spoken.by(command, "--data", file).exits(1).saysOnlyOneLineWith(file.toString());
        assertEquals("not a folder", Files.readString(file));
    }

    @ParameterizedTest
    @ValueSource(strings = {"verify", "figures"})
    void aCorruptDatabaseIsRefusedAndLeftAsItIs(String command) throws IOException {
        recorded();
        byte[] rubbish = "this was a database once".repeat(400).getBytes(StandardCharsets.UTF_8);
        Files.write(database(), rubbish);
        Spoken.by(command, "--data", data()).exits(1).saysOnlyOneLineWith("wisp.db");
        assertEquals(-1, Files.mismatch(database(), Files.write(folder.resolve("same"), rubbish)));
    }

    @Test
    void anotherStoreIsRefused() {
        Spoken spoken = Spoken.by("verify", "--data", "jdbc:mysql://x").exits(1);
        assertEquals(
                "There is no store for jdbc:mysql. Give a data folder, or a PostgreSQL database as"
                        + " jdbc:postgresql://HOST/DATABASE?user=NAME.",
                spoken.err().strip());
    }

    private Spoken recorded() throws IOException {
        return Spoken.by("import", "--data", data(), file("a.jsonl", SOUND)).exits(0);
    }

    private Spoken verify() {
        return Spoken.by("verify", "--data", data());
    }

    private Path data() {
        return folder.resolve("data");
    }

    private Path database() {
        return data().resolve(SqliteLog.FILE);
    }

    private Path file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }
}
