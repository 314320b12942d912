package wisp.browser;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/**
 * Chromium and its driver on this machine. Where they are missing, and this is Debian and the user may, Debian's own
 * packages are installed; otherwise one line says what to install.
 *
 * @param browser the browser's program
 * @param driver the program that steers it
 */
public record Chromium(Path browser, Path driver) {
    private static final List<String> BROWSERS = List.of("chromium", "chromium-browser", "google-chrome", "chrome");
    private static final List<String> DRIVERS = List.of("chromedriver", "chromium-driver", "chromium.chromedriver");
    private static final List<Path> USUAL = List.of(
            Path.of("/usr/bin"),
            Path.of("/usr/local/bin"),
            Path.of("/snap/bin"),
            Path.of("/usr/lib/chromium"),
            Path.of("/usr/lib/chromium-browser"),
            Path.of("/opt/google/chrome"),
            Path.of("/opt/homebrew/bin"),
            Path.of("/Applications/Chromium.app/Contents/MacOS"));
    private static final long INSTALL_MINUTES_MOST = 15;

    /** What the user reads where neither is there and nothing can be installed. */
    static final String MISSING = "The browser tests need Chromium and its driver: on Debian or Ubuntu run"
            + " \"apt-get install chromium chromium-driver\" as root, elsewhere put chromium and chromedriver on the PATH.";

    /**
     * The programs of this machine, installed first where need be.
     *
     * @throws IllegalStateException with one line that says what to install
     */
    public static synchronized Chromium ready() {
        List<Path> folders = folders();
        Optional<Chromium> there = in(folders);
        if (there.isEmpty() && mayInstall()) {
            System.err.println("Chromium or its driver is missing; Debian's packages are installed now.");
            run("apt-get", "update");
            run("apt-get", "install", "-y", "--no-install-recommends", "chromium", "chromium-driver");
            there = in(folders);
        }
        return there.orElseThrow(() -> new IllegalStateException(MISSING));
    }

    /** The programs in these folders, the first of each. */
    static Optional<Chromium> in(List<Path> folders) {
        return first(folders, BROWSERS)
                .flatMap(browser -> first(folders, DRIVERS).map(driver -> new Chromium(browser, driver)));
    }

    private static Optional<Path> first(List<Path> folders, List<String> names) {
        return names.stream()
                .flatMap(name -> folders.stream().map(folder -> folder.resolve(name)))
                .filter(Files::isExecutable)
                .findFirst();
    }

    private static List<Path> folders() {
        List<Path> folders = new ArrayList<>();
        String path = System.getenv("PATH");
        for (String folder : path == null ? new String[0] : path.split(java.io.File.pathSeparator)) {
            if (!folder.isBlank()) {
                folders.add(Path.of(folder));
            }
        }
        folders.addAll(USUAL);
        return folders;
    }

    private static boolean mayInstall() {
        return "root".equals(System.getProperty("user.name"))
                && Files.exists(Path.of("/etc/debian_version"))
                && Files.isExecutable(Path.of("/usr/bin/apt-get"));
    }

    private static void run(String... command) {
        try {
            ProcessBuilder builder = new ProcessBuilder(command);
            builder.environment().put("DEBIAN_FRONTEND", "noninteractive");
            Path log = Files.createTempFile("apt-get", ".log");
            Process process = builder.redirectErrorStream(true)
                    .redirectOutput(log.toFile())
                    .start();
            boolean ended = process.waitFor(INSTALL_MINUTES_MOST, TimeUnit.MINUTES);
            if (!ended) {
                process.destroyForcibly();
            }
            if (!ended || process.exitValue() != 0) {
                System.err.println(String.join(" ", command) + " failed; its words are in " + log + ".");
            }
        } catch (IOException unable) {
            System.err.println(String.join(" ", command) + " could not be run: " + unable.getMessage() + ".");
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
    }
}
