package weekwright.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import weekwright.base.Packed;

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
        Path folder = temporary.resolve(NAME);
        for (String file : Packed.files(NAME)) {
            Path target = folder.resolve(file);
            Files.createDirectories(target.getParent());
            try (InputStream in = SampleFiles.class.getResourceAsStream("/" + NAME + "/" + file)) {
                Files.copy(in, target);
            }
        }
        return new SampleFiles(temporary);
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
