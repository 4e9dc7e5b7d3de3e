package weekwright.base;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.JarFile;
import java.util.stream.Stream;

/** What is packed with the program: in its jar, or in the folder of its classes while it is being worked on. */
public final class Packed {
    private Packed() {}

    /**
     * The files below a folder, as the class path has them.
     *
     * @param folder such as {@code migrations}
     * @return paths within the folder, sorted; none where there is no such folder
     */
    public static List<String> files(String folder) {
        try {
            Path program = Path.of(Packed.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI());
            return files(program, folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    /** @param program the jar or the folder of classes */
    static List<String> files(Path program, String folder) throws IOException {
        String below = folder + "/";
        if (Files.isRegularFile(program)) {
            try (JarFile jar = new JarFile(program.toFile())) {
                return jar.stream()
                        .filter(entry -> !entry.isDirectory() && entry.getName().startsWith(below))
                        .map(entry -> entry.getName().substring(below.length()))
                        .sorted()
                        .toList();
            }
        }
        Path root = program.resolve(folder);
        if (!Files.isDirectory(root)) {
            return List.of();
        }
        try (Stream<Path> all = Files.walk(root)) {
            return all.filter(Files::isRegularFile)
                    .map(file -> root.relativize(file).toString().replace('\\', '/'))
                    .sorted()
                    .toList();
        }
    }
}
