package weekwright.requirements;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;
import weekwright.testkit.Requirement;

/** The list of libraries that the jar carries against {@code pom.xml}. */
class LibrariesTest {
    private static final Set<String> LICENCES = Set.of(
            "Apache-2.0",
            "MIT",
            "BSD",
            "BSD-2-Clause",
            "BSD-3-Clause",
            "EPL-2.0 or Apache-2.0",
            "EPL-2.0 or GPL-2.0-with-classpath-exception");

    private static List<CSVRecord> listed() throws IOException {
        try (CSVParser parser = CSVParser.parse(
                Path.of("src/main/resources/META-INF/libraries.csv"),
                StandardCharsets.UTF_8,
                CSVFormat.DEFAULT
                        .builder()
                        .setHeader()
                        .setSkipHeaderRecord(true)
                        .get())) {
            return parser.getRecords();
        }
    }

    @Test
    @Requirement({"15.1.1", "15.1.2", "15.2.1"})
    void every_library_that_is_shipped_is_listed_with_the_version_of_the_build() throws Exception {
        Map<String, String> versions = new TreeMap<>();
        listed().forEach(one -> versions.put(one.get("group") + ":" + one.get("name"), one.get("version")));
        Document pom = Jsoup.parse(Files.readString(Path.of("pom.xml")), "", Parser.xmlParser());
        Map<String, String> wanted = new TreeMap<>();
        for (Element dependency : pom.select("project > dependencies > dependency")) {
            if (!dependency.select("> scope").text().equals("test")) {
                String version = dependency.select("> version").text();
                String name = dependency.select("> groupId").text() + ":"
                        + dependency.select("> artifactId").text();
                wanted.put(
                        name,
                        version.isEmpty()
                                ? pom.select("dependencyManagement"
                                                + " dependency:has(groupId:contains(com.fasterxml.jackson)) >"
                                                + " version")
                                        .text()
                                : version.startsWith("${")
                                        ? pom.select("properties > *").stream()
                                                .filter(one -> version.equals("${" + one.tagName() + "}"))
                                                .findFirst()
                                                .orElseThrow()
                                                .text()
                                        : version);
            }
        }
        assertThat(wanted).isNotEmpty();
        assertThat(versions).containsAllEntriesOf(wanted);
    }

    @Test
    void every_licence_lets_the_jar_be_given_on() throws Exception {
        assertThat(listed())
                .isNotEmpty()
                .allSatisfy(one ->
                        assertThat(one.get("licence")).as(one.get("name")).isIn(LICENCES));
    }

    /** SQLite before 3.51.3 could damage a database when two connections wrote and tidied at once (its release notes). */
    @Test
    void the_store_is_no_older_than_the_version_that_mended_its_log() throws Exception {
        String version = listed().stream()
                .filter(one -> one.get("name").equals("sqlite-jdbc"))
                .findFirst()
                .orElseThrow()
                .get("version");
        int[] numbers =
                Arrays.stream(version.split("\\.")).mapToInt(Integer::parseInt).toArray();
        assertThat(numbers[0] * 1_000_000 + numbers[1] * 1_000 + numbers[2]).isGreaterThanOrEqualTo(3_051_003);
    }
}
