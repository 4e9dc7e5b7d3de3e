package weekwright.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Each reference marked seen was looked for in the pages listed in {@code hazard-references-seen.txt}, which names for each
 * what the page says it is about, the address and the day.
 */
class HazardReferencesTest {
    private static final String CFR = "29 CFR ";

    @Test
    void every_hazard_has_a_caution_for_hands_and_camera_of_at_most_30_words_and_says_where_its_rules_stand() {
        assertThat(HazardCodes.all()).hasSize(31).allSatisfy(code -> {
            for (Caution.Whom whom : Caution.Whom.values()) {
                String caution = UsualCautions.of(code, whom).orElseThrow();
                assertThat(caution.split(" ")).hasSizeLessThanOrEqualTo(30);
                assertThat(caution.toLowerCase(Locale.ROOT)).doesNotContain("is safe");
            }
            assertThat(HazardReferences.seen(code).size()
                            + HazardReferences.fromMemory(code).size())
                    .isPositive();
        });
    }

    @Test
    void each_reference_stands_with_its_hazard() {
        assertThat(HazardReferences.seen("fell"))
                .containsExactly("29 CFR 1910.266; HSE INDG317 (2013);"
                        + " ILO code of practice, forestry work, 1998 (revised since)");
        assertThat(HazardReferences.fromMemory("fell")).isEmpty();
        assertThat(HazardReferences.seen("no-such")).isEmpty();
    }

    @Test
    void what_is_told_from_memory_has_no_number_and_each_line_is_of_a_hazard_and_says_how_it_is_known()
            throws IOException {
        assertThat(faults(lines("/words/hazard-references.txt"))).isEmpty();
        assertThat(faults(List.of(
                        "water\t29 CFR 1926.106\tmemory",
                        "water\tUK lifting regulations\tmemory",
                        "rain\tUK weather regulations\tmemory",
                        "water\t29 CFR 1926.106\theard")))
                .containsExactly(
                        "a number from memory: water\t29 CFR 1926.106\tmemory",
                        "no such hazard: rain\tUK weather regulations\tmemory",
                        "neither seen nor memory: water\t29 CFR 1926.106\theard");
    }

    @Test
    void each_reference_marked_seen_has_a_page_on_which_it_was_seen_and_no_page_is_left_over() throws IOException {
        Set<String> pages = new TreeSet<>();
        for (String line : lines("/hazard-references-seen.txt")) {
            String[] cells = line.split("\t");
            assertThat(cells).as(line).hasSize(4).doesNotContain("");
            assertThat(cells[2]).matches("https?://[^ /]+/[^ ]*");
            assertThat(LocalDate.parse(cells[3])).isAfterOrEqualTo(LocalDate.of(2026, 11, 26));
            pages.add(cells[0]);
        }
        Set<String> seen = new TreeSet<>();
        HazardCodes.all().forEach(code -> HazardReferences.seen(code).forEach(text -> seen.addAll(parts(text))));
        assertThat(parts("29 CFR 1926.62, 1910.1025; EU 2024/869"))
                .containsExactly("29 CFR 1926.62", "29 CFR 1910.1025", "EU 2024/869");
        assertThat(pages).containsExactlyElementsOf(seen);
    }

    /** References of a line; sections of 29 CFR each for itself. */
    private static List<String> parts(String text) {
        return Stream.of(text.split("; "))
                .flatMap(part -> part.startsWith(CFR)
                        ? Stream.of(part.substring(CFR.length()).split(", ")).map(section -> CFR + section)
                        : Stream.of(part))
                .toList();
    }

    private static List<String> faults(List<String> lines) {
        List<String> faults = new ArrayList<>();
        for (String line : lines) {
            String[] cells = line.split("\t");
            if (!HazardCodes.isKnown(cells[0])) {
                faults.add("no such hazard: " + line);
            }
            if (!Set.of("seen", "memory").contains(cells[2])) {
                faults.add("neither seen nor memory: " + line);
            }
            if (cells[2].equals("memory") && cells[1].matches(".*\\d.*")) {
                faults.add("a number from memory: " + line);
            }
        }
        return faults;
    }

    private static List<String> lines(String resource) throws IOException {
        try (InputStream in = HazardReferencesTest.class.getResourceAsStream(resource)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .toList();
        }
    }
}
