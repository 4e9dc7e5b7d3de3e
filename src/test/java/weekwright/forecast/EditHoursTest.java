package weekwright.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.build.CrewMemberStore;
import weekwright.build.HoursEntryStore;
import weekwright.engine.Inputs;
import weekwright.episodes.EpisodeStore;

/** Hours of editing learned from the log. The settings say 16, 24 and 36 hours for 20 minutes. */
class EditHoursTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private SmallProject project;

    @TempDir
    private Path folder;

    @BeforeEach
    void open() throws Exception {
        project = SmallProject.withOneTask(folder);
        project.add(CrewMemberStore.TABLE, "id=ann", "name=Ann", "trades=edit");
    }

    @AfterEach
    void close() {
        project.close();
    }

    private void episode(String id, String minutes, String cut, String... hours) {
        project.add(
                EpisodeStore.TABLE,
                "id=" + id,
                "title=Film " + id,
                "minutes=" + minutes,
                "cut=" + cut,
                "edit_likely=" + String.join("", hours));
    }

    private void logged(String episode, String date, String hours) {
        project.add(
                HoursEntryStore.TABLE,
                "id=h." + episode,
                "date=" + date,
                "crew=ann",
                "episode=" + episode,
                "as=edit",
                "hours=" + hours);
    }

    private Inputs inputs() {
        return project.basis(TODAY).inputs();
    }

    private Inputs.Range edit(String id) {
        return inputs().episodes().stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow()
                .editMinutes();
    }

    @Test
    void while_nothing_is_ready_all_is_as_it_was_written_down() {
        episode("a", "10", "");
        episode("b", "10", "", "8");
        logged("a", "2026-11-20", "9");
        assertThat(edit("a")).isEqualTo(Inputs.Range.EMPTY);
        assertThat(edit("b").likely()).isEqualTo(8 * 60);
        assertThat(inputs().publishing().editMinutes()).isEqualTo(new Inputs.Range(16 * 60, 24 * 60, 36 * 60));
    }

    /**
     * Conjugate normal model (Gelman et al., Bayesian Data Analysis, section 3.3), by hand: an episode of 10 minutes is
     * estimated at 8, 12 and 18 hours, mean 12 1/3, deviation 5/3, v = ln(1 + (5/37)²) = 0.018098; made ready today with 12
     * hours, r = ln 12 − (ln 12.3333 − v / 2) = −0.018350. k0 = 11.1111, w = 1 / v = 55.2547, β = w r / (k0 + w) = −0.015278,
     * and e^β = 0.984838.
     */
    @Test
    void one_ready_episode_moves_the_estimate_of_the_next_as_worked_by_hand() {
        episode("a", "10", "2026-11-25");
        episode("b", "20", "");
        episode("c", "15", "", "10");
        logged("a", "2026-11-24", "12");
        double ratio = 0.984838;
        assertThat(edit("b").low()).isCloseTo(16 * 60 * ratio, offset(0.01));
        assertThat(edit("b").likely()).isCloseTo(24 * 60 * ratio, offset(0.01));
        assertThat(edit("b").high()).isCloseTo(36 * 60 * ratio, offset(0.01));
        assertThat(edit("c").likely()).isCloseTo(10 * 60 * ratio, offset(0.01));
        assertThat(inputs().publishing().editMinutes().likely()).isCloseTo(24 * 60 * ratio, offset(0.01));
    }

    @Test
    void a_ratio_that_a_log_was_made_from_is_found_again() {
        for (int i = 0; i < 40; i++) {
            String id = "e" + i;
            String day = LocalDate.of(2026, 1, 2).plusWeeks(i).toString();
            episode(id, "10", day);
            // 1.5 times the mean of 12 1/3 hours
            logged(id, day, "18.5");
        }
        episode("next", "10", "");
        Lessons.Editing editing = project.db().read(read -> Lessons.editing(read, TODAY));
        assertThat(editing.ratio().finished()).isEqualTo(40);
        assertThat(editing.ratio().p50()).isCloseTo(1.5, offset(0.03));
        assertThat(editing.perFinished()).isCloseTo(18.5 * 60 / 10, offset(1e-9));
        assertThat(edit("next").likely()).isCloseTo(12 * 60 * 1.5, offset(25.0));
    }

    @Test
    void hours_under_a_tenth_of_the_least_were_not_logged_and_teach_nothing() {
        episode("a", "20", "2026-11-25");
        logged("a", "2026-11-24", "1.5");
        episode("b", "20", "");
        assertThat(edit("b")).isEqualTo(Inputs.Range.EMPTY);
    }
}
