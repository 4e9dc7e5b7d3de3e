package weekwright;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import weekwright.testkit.Requirement;

class ArchitectureTest {
    private static final JavaClasses PROGRAM = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("weekwright");
    private static final JavaClasses PLANTED = new ClassFileImporter().importPackages("weekwright.engine.planted");
    private static final Path SOURCES = Path.of("src/main/java/weekwright");

    @Test
    void the_classes_of_the_program_are_found() {
        assertThat(PROGRAM.contain("weekwright.db.Db")).isTrue();
        assertThat(PROGRAM.contain("weekwright.engine.planted.PlantedBreach")).isFalse();
    }

    @Test
    void nothing_imports_what_comes_later_in_the_order_of_packages() {
        assertThat(Architecture.importOrder(PROGRAM)).isEmpty();
    }

    @Test
    @Requirement({"1.2.4"})
    void each_library_is_used_in_its_home_alone() {
        assertThat(Architecture.libraryHomes(PROGRAM)).isEmpty();
    }

    @Test
    @Requirement({"1.2.5", "1.3.2", "1.3.6", "1.3.7", "1.5.2"})
    void no_process_no_network_out_no_scripts_no_serialisation() {
        assertThat(Architecture.forbiddenUses(PROGRAM)).isEmpty();
    }

    @Test
    void only_the_command_line_and_the_app_read_the_wall_clock_and_the_environment() {
        assertThat(Architecture.wallClock(PROGRAM)).isEmpty();
    }

    @Test
    void the_planted_breach_is_caught_by_every_rule() {
        String planted = "weekwright.engine.planted.PlantedBreach";
        assertThat(Architecture.importOrder(PLANTED))
                .containsExactly(planted + " imports weekwright.db.Db, and engine may not import db");
        assertThat(Architecture.libraryHomes(PLANTED))
                .containsExactly(planted + " uses org.jdbi.v3.core.Handle outside the home of that library");
        assertThat(Architecture.forbiddenUses(PLANTED))
                .containsExactly(
                        planted + " uses java.lang.ProcessBuilder#<init>, which nobody may",
                        planted + " uses java.lang.ProcessBuilder#start, which nobody may");
        assertThat(Architecture.wallClock(PLANTED))
                .containsExactly(planted + " calls java.time.LocalDate#now and is not given a Clock");
    }

    /** Closing any other descriptor of the file drops SQLite's locks (howtocorrupt.html, section 2.2). */
    @Test
    void only_the_db_package_names_the_database_file() throws IOException {
        try (Stream<Path> files = Files.walk(SOURCES)) {
            List<String> breaches = files.filter(file -> file.toString().endsWith(".java"))
                    .filter(file -> !file.startsWith(SOURCES.resolve("db")))
                    .filter(ArchitectureTest::namesTheDatabase)
                    .map(Path::toString)
                    .toList();
            assertThat(breaches).isEmpty();
        }
    }

    private static boolean namesTheDatabase(Path file) {
        try {
            String text = Files.readString(file);
            return text.contains("Folder.DATABASE") || text.contains("\"build.db\"");
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
