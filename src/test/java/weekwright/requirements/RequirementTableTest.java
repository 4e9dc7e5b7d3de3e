package weekwright.requirements;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.Requirement;

class RequirementTableTest {
    private static RequirementTable table;

    @BeforeAll
    static void read() throws Exception {
        table = RequirementTable.read();
    }

    @Test
    void every_requirement_has_a_test_that_names_it_or_a_reason() {
        assertThat(table.faults()).isEmpty();
    }

    /** Else: {@code mvn -q test-compile exec:java … -Dexec.mainClass=weekwright.requirements.RequirementTable}. */
    @Test
    void the_table_in_the_guide_is_what_the_tests_say() throws Exception {
        String guide = Files.readString(RequirementTable.GUIDE);
        assertThat(RequirementTable.inGuide(guide)).isEqualTo(table.markdown());
    }

    @Test
    @Requirement({"11.4.1"})
    void no_hash_is_weaker_than_sha_256() throws Exception {
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            List<String> hashes = files.filter(file -> file.toString().endsWith(".java"))
                    .flatMap(file -> lines(file).stream())
                    .filter(line -> line.contains("MessageDigest.getInstance(") || line.contains("Mac.getInstance("))
                    .toList();
            assertThat(hashes).isNotEmpty().allMatch(line -> line.contains("SHA-256") || line.contains("HmacSHA256"));
        }
    }

    private static List<String> lines(Path file) {
        try {
            return Files.readAllLines(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
