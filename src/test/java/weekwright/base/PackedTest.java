package weekwright.base;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PackedTest {
    private static final List<String> FILES =
            List.of("words/b.txt", "words/far/c.txt", "words/a.txt", "wordsmith/d.txt", "e.txt");

    @TempDir
    Path temp;

    @Test
    void a_jar_tells_the_files_of_a_folder_that_has_no_entry_of_its_own() throws IOException {
        Path jar = temp.resolve("program.jar");
        try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(jar))) {
            for (String file : FILES) {
                out.putNextEntry(new JarEntry(file));
                out.closeEntry();
            }
        }
        assertThat(Packed.files(jar, "words")).containsExactly("a.txt", "b.txt", "far/c.txt");
        assertThat(Packed.files(jar, "nothing")).isEmpty();
    }

    @Test
    void a_folder_of_classes_tells_the_same() throws IOException {
        for (String file : FILES) {
            Files.createDirectories(temp.resolve(file).getParent());
            Files.writeString(temp.resolve(file), "");
        }
        assertThat(Packed.files(temp, "words")).containsExactly("a.txt", "b.txt", "far/c.txt");
        assertThat(Packed.files(temp, "nothing")).isEmpty();
    }

    @Test
    void the_program_s_own_are_found() {
        assertThat(Packed.files("sample-project")).contains("project.toml", "tasks.csv");
    }
}
