package wisp.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wisp.testing.OwnPostgres;
import wisp.testing.PostgresServer;

/** Every command that takes --data does in PostgreSQL what it does in a folder. */
@ExtendWith(OwnPostgres.class)
class PostgresCommandsTest {
    @TempDir
    private Path folder;

    private final String database;

    private final PostgresServer server;

    PostgresCommandsTest(PostgresServer server) {
        this.server = server;
        this.database = server.newSchema();
    }

    private String head(Object data) {
        return Spoken.by("verify", "--data", data).exits(0).out();
    }

    private Path season() {
        Path file = folder.resolve("season.jsonl");
        Spoken.by("simulate", "--calves", 12, "--seed", 7, "--out", file).exits(0);
        return file;
    }

    @Test
    void foldersAndDatabasesGiveTheSameHeadAndTheSameFigures() {
        Path data = folder.resolve("data");
        Spoken.by("import", "--data", data, season()).exits(0);
        Path out = folder.resolve("out.jsonl");
        Spoken.by("export", "--data", data, "--format", "jsonl", "--out", out).exits(0);
        Spoken.by("import", "--data", database, out).exits(0);
        assertEquals(head(data), head(database));
        String figures = Spoken.by("figures", "--data", data, "--format", "json")
                .exits(0)
                .out();
        assertTrue(figures.contains("\"preweaning-mortality\""), figures);
        assertEquals(
                figures,
                Spoken.by("figures", "--data", database, "--format", "json")
                        .exits(0)
                        .out());
        assertEquals(
                Spoken.by("answer", "navels", "--data", data).exits(0).out(),
                Spoken.by("answer", "navels", "--data", database).exits(0).out());
        Path back = folder.resolve("back.jsonl");
        Spoken.by("export", "--data", database, "--format", "jsonl", "--out", back)
                .exits(0);
        Path other = folder.resolve("other");
        Spoken.by("import", "--data", other, back).exits(0);
        assertEquals(head(database), head(other));
        Spoken again = Spoken.by("import", "--data", database, back).exits(0);
        assertEquals(head(other), head(database), again.out());
    }

    @Test
    void aBackupOfOneStoreIsRestoredIntoTheOther() {
        Spoken.by("import", "--data", database, season()).exits(0);
        Path file = folder.resolve("season.wisp");
        Spoken.by("backup", "--data", database, file).exits(0);
        Path data = folder.resolve("restored");
        Spoken.by("restore", "--data", data, file).exits(0);
        assertEquals(head(database), head(data));
        String other = server.newSchema();
        Spoken back = Spoken.by("restore", "--data", other, file).exits(0);
        assertFalse(back.out().contains("user="), back.out());
        assertEquals(head(database), head(other));
        Spoken.by("restore", "--data", other, file).exits(1);
        assertEquals(head(database), head(other));
    }

    @ParameterizedTest
    @ValueSource(strings = {"verify", "export --format jsonl --out never.jsonl"})
    void aDatabaseWithoutALogIsNotTakenForAnEmptyOne(String command) {
        Object[] words = (command + " --data " + database).split(" ");
        Spoken spoken = Spoken.by(words).exits(1).saysOnlyOneLineWith("There is no log in the PostgreSQL database");
        assertFalse(spoken.err().contains("user="), spoken.err());
        assertFalse(Files.exists(Path.of("never.jsonl")));
    }

    @Test
    void ownFiguresOfADatabaseStandInAFolderThatIsNamed() throws IOException {
        Spoken.by("import", "--data", database, season()).exits(0);
        Path indicators = Files.createDirectories(folder.resolve("ours/indicators"));
        Files.writeString(indicators.resolve("disbudded-with-relief.yaml"), """
                id: disbudded-with-relief
                title: Disbudded with pain relief
                measure: proportion
                clock: days
                record: {event: disbudded, window: {after: birth, to: 60 d}}
                feature: {pain_relief: [true]}
                source: Our vet's protocol.
                """);
        String figure = "disbudded-with-relief";
        Spoken.by("figures", "--data", database, "--indicator", figure).exits(1);
        Spoken own = Spoken.by(
                        "figures", "--data", database, "--analytics", folder.resolve("ours"), "--indicator", figure)
                .exits(0);
        assertTrue(own.out().contains("Disbudded with pain relief"), own.out());
        Spoken.by("figures", "--data", database, "--analytics", folder.resolve("nowhere"))
                .exits(1)
                .saysOnlyOneLineWith("Check --analytics");
        Path file = folder.resolve("with-ours.zip");
        Spoken.by("backup", "--data", database, "--analytics", folder.resolve("ours"), file)
                .exits(0);
        Path data = folder.resolve("data");
        Spoken.by("restore", "--data", data, file).exits(0);
        assertEquals(
                own.out(),
                Spoken.by("figures", "--data", data, "--indicator", figure)
                        .exits(0)
                        .out());
    }
}
