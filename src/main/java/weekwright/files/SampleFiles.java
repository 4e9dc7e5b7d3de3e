package weekwright.files;

import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The sample in plain files, unpacked from the program into a temporary folder that goes when this is closed. */
public final class SampleFiles implements AutoCloseable {
    private static final String NAME = "sample-project";

    private final Path temporary;

    private SampleFiles(Path temporary) {
        this.temporary = temporary;
    }

    /** @throws IOException when the temporary folder cannot be written */
    public static SampleFiles unpack() throws IOException {
        Path temporary = Files.createTempDirectory("weekwright-sample");
        URL found = SampleFiles.class.getClassLoader().getResource(NAME + "/project.toml");
        if (found == null) {
            throw new IllegalStateException("the sample is not packed with the program");
        }
        try {
            URI uri = found.toURI();
            if (uri.getScheme().equals("jar")) {
                try (FileSystem jar = FileSystems.newFileSystem(uri, Map.of())) {
                    copy(jar.getPath("/" + NAME), temporary.resolve(NAME));
                }
            } else {
                copy(Path.of(uri).getParent(), temporary.resolve(NAME));
            }
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
        return new SampleFiles(temporary);
    }

    private static void copy(Path from, Path to) throws IOException {
        List<Path> all;
        try (Stream<Path> walked = Files.walk(from)) {
            all = walked.toList();
        }
        for (Path one : all) {
            Path target = to.resolve(from.relativize(one).toString());
            if (Files.isDirectory(one)) {
                Files.createDirectories(target);
            } else {
                Files.copy(one, target);
            }
        }
    }

    /** The folder of plain files. */
    public Path folder() {
        return temporary.resolve(NAME);
    }

    @Override
    public void close() throws IOException {
        List<Path> deepestFirst;
        try (Stream<Path> walked = Files.walk(temporary)) {
            deepestFirst = walked.sorted(Comparator.reverseOrder()).toList();
        }
        for (Path one : deepestFirst) {
            Files.delete(one);
        }
    }
}
