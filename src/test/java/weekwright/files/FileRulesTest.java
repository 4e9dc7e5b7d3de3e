package weekwright.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import weekwright.testkit.PlainProject;

/** Rules 102, 103, 112 and 114: words of the columns and of the settings, episodes and their slots. */
class FileRulesTest {
    @TempDir
    Path temp;

    private PlainProject small() {
        return PlainProject.in(temp.resolve("files"));
    }

    @ParameterizedTest
    @CsvSource({
        "regular.csv, ',,month,2026', ',,week,2026'",
        "regular.csv, ',,month,2026', ',,year,2026'",
        "regular.csv, ',,month,2026', ',,episode,2026'",
        "pledge-levels.csv, ',month,8', ',episode,8'",
        "materials.csv, ',given,rope,', ',salvaged,,'",
        "materials.csv, ',given,rope,', ',own,,'",
        "episodes.csv, 'Stone by stone,build', 'Stone by stone,side'",
        "tasks.csv, ',fixed,,8,', ',once,,8,'"
    })
    void rule_102_the_words_of_the_columns_are_read(String file, String from, String to) {
        assertThat(small().change(file, from, to).faults()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "regular.csv, ',,month,2026', ',,monthly,2026'",
        "pledge-levels.csv, ',month,8', ',week,8'",
        "materials.csv, ',given,rope,', ',own stock,rope,'",
        "episodes.csv, 'Stone by stone,build', 'Stone by stone,side story'",
        "tasks.csv, ',fixed,,8,', ',drone,,8,'",
        "tasks.csv, 'Let the lime cure,wait', 'Let the lime cure,elapse'",
        "supporters.csv, 2026-09, 09/2026",
        "tasks.csv, ',04-01,10-31,', ',1 April,10-31,'"
    })
    void rule_102_other_words_are_faults_at_their_place(String file, String from, String to) {
        assertThat(small().change(file, from, to).faults())
                .singleElement()
                .asString()
                .startsWith(file + " line ");
    }

    @Test
    void a_month_is_closed_once_and_only_a_closed_one_has_a_statement() {
        assertThat(small().change(
                                "closed-months.csv",
                                "2026-05,2026-06-02,Ann",
                                "2026-05,2026-06-02,Ann\r\n2026-05,2026-06-03,")
                        .faults())
                .containsExactly("closed-months.csv line 3, column month: \"2026-05\" is closed twice, first in line 2;"
                        + " keep one of the two");
        assertThat(small().change("statements.csv", "2026-05,hours", "2026-04,hours")
                        .faults())
                .containsExactly(
                        "statements.csv line 3, column month: \"2026-04\" has a statement and is not closed; add"
                                + " it to closed-months.csv, or take its statement out");
    }

    @Test
    void rule_103_a_standby_has_neither_slot_nor_number_until_it_is_published() {
        assertThat(small().faults()).isEmpty();
        assertThat(small().text("episodes.csv")).contains("\r\nsb,,,Round the tool chest,standby,");
        assertThat(small().change(
                                "episodes.csv",
                                "2026-10-01,,,,2026-10-08,,,,",
                                "2026-10-01,,,,2026-10-08,2026-10-09,,,")
                        .faults())
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"friday, Friday", "friday, FRIDAY", "friday, fRiDaY"})
    void rule_112_words_of_the_settings_are_read_in_any_case(String from, String to) {
        assertThat(small().change("project.toml", "\"" + from + "\"", "\"" + to + "\"")
                        .faults())
                .isEmpty();
    }

    @Test
    void rule_112_five_keys_are_enough() {
        PlainProject project = small().file(
                        "project.toml",
                        "format = 1",
                        "name = \"The oak footbridge\"",
                        "started = \"2026-01-05\"",
                        "currency = \"EUR\"",
                        "zone = \"Europe/Berlin\"");
        assertThat(project.faults()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "format = 1",
        "name = \"The oak footbridge\"",
        "started = \"2026-01-05\"",
        "currency = \"EUR\"",
        "zone = \"Europe/Berlin\""
    })
    void rule_112_each_of_the_five_is_needed(String line) {
        assertThat(small().change("project.toml", line + "\n", "").faults())
                .singleElement()
                .asString()
                .startsWith("project.toml")
                .contains(line.substring(0, line.indexOf(' ')));
    }

    @Test
    void rule_114_two_episodes_never_share_a_slot() {
        assertThat(small().change("episodes.csv", "e1,1,2026-06-05", "e1,1,2026-12-04")
                        .faults())
                .containsExactly(
                        "episodes.csv line 3, column slot: \"2026-12-04\" is the slot of e1 already; choose another"
                                + " date");
    }
}
