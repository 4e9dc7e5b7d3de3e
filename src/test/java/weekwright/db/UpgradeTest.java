package weekwright.db;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.stream.IntStream;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class UpgradeTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T08:00:00Z"), ZoneOffset.UTC);

    @TempDir
    Path folder;

    static IntStream older() {
        return IntStream.range(1, Migrations.newest());
    }

    @ParameterizedTest
    @MethodSource("older")
    void an_older_project_is_copied_as_it_was_before_it_is_brought_to_the_newest_schema(int schema) throws Exception {
        try (Handle handle =
                Jdbi.create("jdbc:sqlite:" + folder.resolve("build.db")).open()) {
            Migrations.run(handle, 0, schema);
        }
        new Folder(folder).open(CLOCK).close();
        Path copy = folder.resolve("backups/before-schema-" + Migrations.newest() + "-2026-11-25-080000/build.db");
        assertThat(DatabaseCopy.at(copy).check()).isEqualTo(new DatabaseCopy.Facts(schema, 1));
        assertThat(DatabaseCopy.at(folder.resolve("build.db")).check())
                .isEqualTo(new DatabaseCopy.Facts(Migrations.newest(), 1));
        Files.delete(copy);
        new Folder(folder).open(CLOCK).close();
        assertThat(copy).doesNotExist();
    }
}
