package weekwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.base.Id;
import weekwright.db.Db;
import weekwright.db.Folder;
import weekwright.episodes.Roll;
import weekwright.episodes.RollStore;
import weekwright.testkit.PlainProject;

/** The supporters' names that are pasted to an episode: no command writes them out, but a backup has them. */
class RollOfSupportersTest {
    private static final String NAME = "Quillwort Ninefinger";

    @TempDir
    Path temp;

    private String run(String... arguments) {
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        PrintStream both = new PrintStream(said, true, StandardCharsets.UTF_8);
        int status = CommandLines.run(
                new Terminal(both, both, false, PlainProject.CLOCK, 2, new Terminal.Secrets() {
                    @Override
                    public Optional<String> line(String question) {
                        return Optional.empty();
                    }

                    @Override
                    public boolean typed() {
                        return false;
                    }
                }),
                arguments);
        String text = said.toString(StandardCharsets.UTF_8);
        assertThat(status).as(Arrays.toString(arguments) + " " + text).isZero();
        return text;
    }

    private static List<Path> holding(Path folder, String text) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile)
                    .filter(file -> {
                        try {
                            return new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1).contains(text);
                        } catch (IOException e) {
                            throw new UncheckedIOException(e);
                        }
                    })
                    .toList();
        }
    }

    @Test
    void no_command_but_backup_writes_a_roll() throws Exception {
        Path project = temp.resolve("project");
        String folder = project.toString();
        run("import", "sample-project", folder);
        try (Db db = new Folder(project).open(PlainProject.CLOCK)) {
            db.write("ilse", write -> {
                RollStore.TABLE.insert(write, new Roll(new Id("e46"), NAME));
                return null;
            });
        }
        assertThat(holding(project, NAME)).as("the store has it").isNotEmpty();
        for (String command : List.of("forecast", "week")) {
            String out = run(command, folder, "--today", "2026-11-25", "--json");
            assertThat(out).as(command).startsWith("{").doesNotContain("Quillwort");
        }
        run("export", folder, temp.resolve("files").toString());
        run("publish", folder, temp.resolve("site").toString(), "--today", "2026-11-25");
        assertThat(holding(temp.resolve("files"), "Quillwort")).isEmpty();
        assertThat(holding(temp.resolve("site"), "Quillwort")).isEmpty();
        run("backup", folder, temp.resolve("kept.zip").toString());
        run("restore", temp.resolve("kept.zip").toString(), temp.resolve("back").toString());
        try (Db db = new Folder(temp.resolve("back")).open(PlainProject.CLOCK)) {
            assertThat(db.read(RollStore.TABLE::values)).containsExactly(new Roll(new Id("e46"), NAME));
        }
    }
}
