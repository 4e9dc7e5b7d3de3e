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

    @Test
    void an_episode_that_tells_a_dropped_task_is_a_remark() {
        PlainProject dropped = small().add(
                        "tasks.csv", "deck.8,deck,Carve the rail,work,4,6,9" + ",".repeat(35) + "2026-11-02")
                .add("tells.csv", "e2,deck.8,");
        assertThat(dropped.faults()).isEmpty();
        assertThat(dropped.remarks())
                .containsExactly(
                        "tells.csv line 4, column task: \"deck.8\" is dropped, so there is nothing to tell of it;"
                                + " take it out, or tell another task");
    }

    @Test
    void an_episode_of_no_minutes_and_a_part_of_none_are_faults() {
        assertThat(small().change("episodes.csv", "Stone by stone,build,12,", "Stone by stone,build,0,")
                        .change("segments.csv", "The first board,4.5", "The first board,0")
                        .faults())
                .containsExactly(
                        "episodes.csv line 2, column minutes: \"0\" is no length; write its length in minutes, or"
                                + " leave it empty",
                        "segments.csv line 2, column minutes: \"0\" is no length; write minutes, or minutes and"
                                + " seconds as 4:30, or leave it empty");
    }

    @Test
    void parts_have_places_of_their_own_and_a_step_one_person() {
        assertThat(small().change("segments.csv", "e1,2,", "e1,1,")
                        .add("steps.csv", "e1,cut,ann")
                        .faults())
                .containsExactly(
                        "segments.csv line 3, column place: \"1\" is the place of line 2 already; number the parts of"
                                + " an episode 1, 2, 3 and so on",
                        "steps.csv line 3, column step: \"cut\" has its person in line 2 already; keep one of the two");
    }

    @Test
    void a_person_of_a_step_that_is_not_marked_and_a_consent_of_tomorrow_are_remarks() {
        PlainProject odd = small().add("steps.csv", "e2,sound,ann").add("releases.csv", "e2,The ford,2026-11-26,");
        assertThat(odd.faults()).isEmpty();
        assertThat(odd.remarks())
                .containsExactlyInAnyOrder(
                        "steps.csv line 3, column step: \"sound\" is not marked in e2, so nobody has done it yet;"
                                + " write its day in episodes.csv, or take the row out",
                        "releases.csv line 4, column got: \"2026-11-26\" is after today, 2026-11-25; leave it empty"
                                + " until you have it");
    }
}
