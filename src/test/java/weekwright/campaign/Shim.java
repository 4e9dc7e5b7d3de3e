package weekwright.campaign;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;

/** The library {@code src/test/c/synced.c}, compiled with the C compiler of this machine. */
final class Shim {
    /** What to do where there is none. */
    static final String HOW =
            "power cuts need Linux and a C compiler: install one (on Debian: apt-get install gcc libc6-dev) and run it"
                    + " again";

    private static final Path SOURCE = Path.of("src/test/c/synced.c");

    private final Path library;

    private Shim(Path library) {
        this.library = library;
    }

    /** Whether it can be made here. */
    static boolean possible() {
        return System.getProperty("os.name").equals("Linux")
                && Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
                        .anyMatch(folder -> Files.isExecutable(Path.of(folder, "cc")));
    }

    /** Compiles it into a folder. */
    static Shim in(Path folder) throws IOException, InterruptedException {
        Path library = folder.resolve("libsynced.so");
        Process compiler = new ProcessBuilder(
                        "cc",
                        "-shared",
                        "-fPIC",
                        "-O2",
                        "-o",
                        library.toString(),
                        SOURCE.toString(),
                        "-ldl",
                        "-lpthread")
                .redirectErrorStream(true)
                .start();
        String said = new String(compiler.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        if (compiler.waitFor() != 0) {
            throw new IOException("the C compiler says: " + said);
        }
        return new Shim(library);
    }

    /** The environment in which a server leaves in a folder what it synced of a project. */
    Map<String, String> environment(Path project, Path synced) {
        return Map.of(
                "LD_PRELOAD", library.toString(), "SYNCED_OF", project.toString(), "SYNCED_TO", synced.toString());
    }
}
