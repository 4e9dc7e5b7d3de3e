package weekwright.db;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.history.Things;

class SchemaTest {
    @TempDir
    Path folder;

    @Test
    void migrations_run_in_the_order_of_their_numbers_and_none_is_missing_or_there_twice() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("src/main/resources/migrations"))) {
            assertThat(files.map(file -> file.getFileName().toString()).sorted())
                    .as("migrations as they lie in the sources and as they are found in target/classes; mvn clean"
                            + " takes out old ones")
                    .containsExactlyElementsOf(Migrations.FILES);
        }
        assertThatThrownBy(() -> Migrations.numbered(List.of("0001_start.sql", "0003_search.sql")))
                .hasMessage("migrations/0003_search.sql stands where 0002_… belongs");
        assertThatThrownBy(() -> Migrations.numbered(List.of("0001_search.sql", "0001_start.sql")))
                .hasMessage("migrations/0001_start.sql stands where 0002_… belongs");
    }

    /** Row and version come first in these, and in no other table. */
    @Test
    void every_table_of_things_with_versions_is_one_of_the_history() throws Exception {
        try (Db db = new Folder(folder).create(Clock.systemUTC())) {
            List<String> tables = db.read(r -> r.handle()
                    .createQuery("SELECT name FROM sqlite_schema s WHERE type = 'table' AND (SELECT"
                            + " group_concat(name) FROM pragma_table_info(s.name)) LIKE 'row,version,%'")
                    .mapTo(String.class)
                    .list());
            assertThat(tables)
                    .containsExactlyInAnyOrderElementsOf(Things.all().stream()
                            .map(thing -> thing.table().name())
                            .toList());
        }
    }

    @Test
    void each_table_has_the_columns_of_its_record_in_their_order_and_is_strict() throws Exception {
        try (Db db = new Folder(folder).create(Clock.systemUTC())) {
            Things.all().forEach(thing -> {
                Table<?> table = thing.table();
                List<String> columns = db.read(r -> r.handle()
                        .createQuery("SELECT name FROM pragma_table_info(:t)")
                        .bind("t", table.name())
                        .mapTo(String.class)
                        .list());
                assertThat(columns.subList(0, 2)).as(table.name()).containsExactly("row", "version");
                assertThat(columns.subList(2, columns.size()))
                        .as(table.name())
                        .isEqualTo(table.shape().names());
            });
            List<String> loose = db.read(r -> r.handle()
                    .createQuery("SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%'"
                            + " AND name NOT LIKE 'search%' AND sql NOT LIKE '%STRICT'")
                    .mapTo(String.class)
                    .list());
            assertThat(loose).isEmpty();
        }
    }
}
