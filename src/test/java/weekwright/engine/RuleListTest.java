package weekwright.engine;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Every rule in force has a test whose name holds its number, like {@code rule_37_…}, {@code rule_11_and_13_…} or {@code …_rule_117},
 * or a reason.
 */
class RuleListTest {
    private static final Pattern RULE = Pattern.compile("void (?:\\w+_)?rule_(\\d+(?:_and_\\d+)*)(?:_[a-z]|\\()");

    /** Rules that no test names, and why. */
    private static final Map<Integer, String> REASONS = Map.of(
            104, "publishing a film made from the story bank comes with the work on episodes",
            108, "how a forecast is named and kept is a convention, seen in the tests of kept forecasts",
            116, "a wording of the sentences, asserted whole where the page of the forecast is tested");

    private static Stream<Integer> inForce() {
        return IntStream.rangeClosed(1, 137).boxed();
    }

    @Test
    void every_rule_in_force_has_a_test_or_a_written_reason() throws IOException {
        Set<Integer> tested = testedRules(Path.of("src/test/java"));
        List<Integer> missing = inForce()
                .filter(rule -> !tested.contains(rule) && !REASONS.containsKey(rule))
                .toList();
        assertThat(missing).as("rules without a test and without a reason").isEmpty();
    }

    @Test
    void reasons_are_given_for_rules_in_force_only() {
        assertThat(inForce().toList()).containsAll(REASONS.keySet());
        assertThat(REASONS.values()).allMatch(reason -> reason.length() > 20);
    }

    @Test
    void names_of_several_rules_count_for_each_of_them() {
        assertThat(rulesIn(
                        "void rule_83_and_84_net_is_rounded() {} void rule_7_a() {} void rule_x() {} int rule_9_a() {} "
                                + "void a_rule_8() {}"))
                .containsExactly(7, 8, 83, 84);
    }

    private static Set<Integer> testedRules(Path tests) throws IOException {
        Set<Integer> rules = new TreeSet<>();
        try (Stream<Path> files = Files.walk(tests)) {
            for (Path file : files.filter(each -> each.toString().endsWith("Test.java"))
                    .filter(each -> !each.endsWith("RuleListTest.java"))
                    .toList()) {
                rules.addAll(rulesIn(read(file)));
            }
        }
        return rules;
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static Set<Integer> rulesIn(String source) {
        Set<Integer> rules = new TreeSet<>();
        Matcher names = RULE.matcher(source);
        while (names.find()) {
            List<String> numbers = new ArrayList<>(List.of(names.group(1).split("_and_")));
            numbers.forEach(number -> rules.add(Integer.valueOf(number)));
        }
        return rules;
    }
}
