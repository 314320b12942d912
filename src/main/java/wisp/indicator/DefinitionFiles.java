package wisp.indicator;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Finds definition files: those that come with Wisp, and those of the data folder that add to them or replace them. */
final class DefinitionFiles {
    private static final String SHIPPED = "/analytics";

    private DefinitionFiles() {}

    /** Texts of the YAML files of one folder of {@code analytics}, by file name, shipped ones. */
    static Map<String, String> shipped(String folder) {
        URL url = DefinitionFiles.class.getResource(SHIPPED);
        if (url == null) {
            throw new IllegalStateException("the shipped analytics folder is missing from the program");
        }
        try {
            URI uri = url.toURI();
            if (!uri.getScheme().equals("jar")) {
                return texts(Path.of(uri).resolve(folder));
            }
            try (FileSystem jar = FileSystems.newFileSystem(jarOf(uri))) {
                return texts(jar.getPath(SHIPPED, folder));
            }
        } catch (URISyntaxException | IOException unreadable) {
            throw new IllegalStateException("the shipped analytics folder cannot be read", unreadable);
        }
    }

    /** The same of somebody's own {@code analytics} folder; none where there is no such folder. */
    static Map<String, String> own(Path analytics, String folder) {
        if (analytics == null) {
            return Map.of();
        }
        Map<String, String> named = new LinkedHashMap<>();
        texts(analytics.resolve(folder))
                .forEach((name, text) -> named.put("analytics/" + (folder.isEmpty() ? "" : folder + "/") + name, text));
        return named;
    }

    private static Path jarOf(URI inside) {
        return Path.of(URI.create(inside.getSchemeSpecificPart().split("!")[0]));
    }

    private static Map<String, String> texts(Path folder) {
        Map<String, String> texts = new TreeMap<>();
        if (!Files.isDirectory(folder)) {
            return texts;
        }
        try (Stream<Path> files = Files.list(folder)) {
            List<Path> yaml = files.filter(f -> f.getFileName().toString().matches(".*\\.ya?ml"))
                    .toList();
            for (Path file : yaml) {
                texts.put(file.getFileName().toString(), Files.readString(file));
            }
        } catch (IOException unreadable) {
            throw new UncheckedIOException("The folder " + folder + " cannot be read.", unreadable);
        }
        return texts;
    }
}
