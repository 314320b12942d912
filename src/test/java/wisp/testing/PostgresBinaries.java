package wisp.testing;

import io.zonky.test.db.postgres.embedded.DefaultPostgresBinaryResolver;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.apache.commons.compress.archivers.tar.TarArchiveEntry;
import org.apache.commons.compress.archivers.tar.TarArchiveInputStream;
import org.tukaani.xz.XZInputStream;

/**
 * PostgreSQL's programs and who may run them: those that Maven brings, otherwise Debian's; under this user, or, as
 * PostgreSQL refuses root, under nobody.
 *
 * @param bin the folder of initdb and postgres
 * @param as words before a command that run it under another user; none where this user will do
 */
record PostgresBinaries(Path bin, List<String> as) {
    private static final String NOBODY = "65534";
    private static final List<List<String>> NOT_ROOT = List.of(
            List.of("setpriv", "--reuid=" + NOBODY, "--regid=" + NOBODY, "--clear-groups"), List.of("unshare", "-U"));

    /** Finds programs that run; the first way that works is taken. */
    static PostgresBinaries find(Path unpacked) throws IOException {
        boolean root = System.getProperty("user.name").equals("root");
        List<String> tried = new ArrayList<>();
        for (Path bin : folders(unpacked)) {
            for (List<String> as : root ? NOT_ROOT : List.of(List.<String>of())) {
                PostgresBinaries candidate = new PostgresBinaries(bin, as);
                String answer = run(candidate.command("postgres", "--version"));
                if (answer.contains("(PostgreSQL)")) {
                    return candidate;
                }
                tried.add(String.join(" ", candidate.command("postgres")) + " said: " + answer.strip());
            }
        }
        throw new IllegalStateException("The tests need a PostgreSQL that they can start: run the build as another user"
                + " than root, or install util-linux (setpriv) and, where Maven's binaries do not fit this machine,"
                + " Debian's postgresql. Tried: " + tried);
    }

    /** Words that run one of the programs. */
    List<String> command(String program, String... arguments) {
        List<String> words = new ArrayList<>(as);
        words.add(bin.resolve(program).toString());
        words.addAll(List.of(arguments));
        return words;
    }

    /** Gives a folder to whoever runs the programs. */
    void own(Path folder) throws IOException {
        if (!as.isEmpty() && as.get(0).equals("setpriv")) {
            Files.setAttribute(folder, "unix:uid", Integer.valueOf(NOBODY));
        }
    }

    private static List<Path> folders(Path unpacked) throws IOException {
        List<Path> folders = new ArrayList<>();
        if (unpack(unpacked)) {
            folders.add(unpacked.resolve("bin"));
        }
        Path debian = Path.of("/usr/lib/postgresql");
        if (Files.isDirectory(debian)) {
            try (Stream<Path> versions = Files.list(debian)) {
                versions.sorted().map(version -> version.resolve("bin")).forEach(folders::add);
            }
        }
        return folders;
    }

    private static boolean unpack(Path into) throws IOException {
        String system = System.getProperty("os.name");
        String machine = System.getProperty("os.arch").equals("amd64") ? "x86_64" : System.getProperty("os.arch");
        try (InputStream packed = DefaultPostgresBinaryResolver.INSTANCE.getPgBinary(system, machine)) {
            if (packed == null) {
                return false;
            }
            try (TarArchiveInputStream tar =
                    new TarArchiveInputStream(new XZInputStream(new BufferedInputStream(packed)))) {
                for (TarArchiveEntry entry = tar.getNextEntry(); entry != null; entry = tar.getNextEntry()) {
                    unpack(entry, tar, into.resolve(entry.getName()));
                }
            }
            return true;
        } catch (IllegalStateException | IllegalArgumentException notForThisMachine) {
            return false;
        }
    }

    private static void unpack(TarArchiveEntry entry, InputStream content, Path to) throws IOException {
        if (entry.isDirectory()) {
            Files.createDirectories(to);
            return;
        }
        Files.createDirectories(to.getParent());
        if (entry.isSymbolicLink()) {
            Files.createSymbolicLink(to, Path.of(entry.getLinkName()));
            return;
        }
        Files.copy(content, to);
        if ((entry.getMode() & 0100) != 0) {
            Files.setPosixFilePermissions(to, permissions());
        }
    }

    private static Set<PosixFilePermission> permissions() {
        return java.nio.file.attribute.PosixFilePermissions.fromString("rwxr-xr-x");
    }

    /** What a command says until it ends, or why it could not be started. */
    static String run(List<String> command) {
        try {
            Process process =
                    new ProcessBuilder(command).redirectErrorStream(true).start();
            process.getOutputStream().close();
            String said = new String(process.getInputStream().readAllBytes());
            if (!process.waitFor(1, TimeUnit.MINUTES)) {
                process.destroyForcibly();
                return said + " and did not end";
            }
            return said;
        } catch (IOException cannot) {
            return cannot.getMessage();
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
            return "interrupted";
        }
    }
}
