package weekwright.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.build.CrewMemberStore;
import weekwright.build.DaysOffStore;
import weekwright.build.HoursEntryStore;
import weekwright.build.StoppedStore;
import weekwright.engine.Inputs;
import weekwright.episodes.EpisodeStore;

/** Rule 120: what the past weeks say of turning out. Today is Wednesday 25 November 2026; Ilse has stated 44 hours a week. */
class TurnoutInputsTest {
    @TempDir
    Path folder;

    private SmallProject project;

    @BeforeEach
    void start() throws Exception {
        project = SmallProject.withOneTask(folder);
        project.add(CrewMemberStore.TABLE, "id=tomas", "name=Tomas", "trades=edit", "mon=8", "tue=8");
        project.add(EpisodeStore.TABLE, "id=E1", "title=Digging");
    }

    @AfterEach
    void close() {
        project.close();
    }

    private void hours(String id, String date, String crew, String of, String hours) {
        project.add(HoursEntryStore.TABLE, "id=" + id, "date=" + date, "crew=" + crew, of, "hours=" + hours);
    }

    private List<Inputs.Turnout> turnout() {
        return project.basis().inputs().turnout();
    }

    @Test
    void rule_120_hours_on_tasks_and_episodes_divided_by_stated_hours_of_whole_weeks() {
        hours("h1", "2026-11-09", "ilse", "task=pit.1", "11");
        hours("h2", "2026-11-14", "ilse", "task=pit.1", "11");
        hours("h3", "2026-11-10", "tomas", "episode=E1", "4");
        // shop hours belong to neither, this week is not whole
        hours("h4", "2026-11-16", "ilse", "as=shop", "8");
        hours("h5", "2026-11-24", "ilse", "task=pit.1", "8");
        assertThat(turnout())
                .containsExactly(
                        new Inputs.Turnout("ilse", List.of(0.5, 0.0)), new Inputs.Turnout("tomas", List.of(0.25, 0.0)));
    }

    @Test
    void rule_120_weeks_in_which_nobody_logged_anything_are_not_counted() {
        hours("h1", "2026-10-05", "ilse", "task=pit.1", "22");
        hours("h2", "2026-11-09", "ilse", "task=pit.1", "11");
        assertThat(turnout()).containsExactly(new Inputs.Turnout("ilse", List.of(0.5, 0.25)));
    }

    @Test
    void rule_120_days_off_are_left_out_and_what_the_simulation_loses_itself_is_added_back() {
        hours("h1", "2026-11-09", "ilse", "task=pit.1", "20");
        project.add(DaysOffStore.TABLE, "id=o1", "crew=ilse", "from=2026-11-13", "to=2026-11-14", "hours=0");
        // 44 less 12 of Friday and Saturday; eight of weather and four of material back; a cold is hers
        project.add(StoppedStore.TABLE, "id=s1", "date=2026-11-10", "crew=ilse", "reason=weather");
        project.add(StoppedStore.TABLE, "id=s2", "date=2026-11-11", "hours=4", "reason=material");
        project.add(StoppedStore.TABLE, "id=s3", "date=2026-11-12", "crew=ilse", "hours=8", "reason=ill");
        assertThat(turnout()).containsExactly(new Inputs.Turnout("ilse", List.of(1.0)));
    }

    @Test
    void rule_120_more_than_a_year_ago_and_more_than_half_as_much_again_do_not_count() {
        hours("h1", "2025-11-17", "ilse", "task=pit.1", "22");
        hours("h2", "2025-11-24", "ilse", "task=pit.1", "24");
        hours("h3", "2025-11-25", "ilse", "task=pit.1", "24");
        hours("h4", "2025-11-26", "ilse", "task=pit.1", "24");
        assertThat(turnout()).containsExactly(new Inputs.Turnout("ilse", List.of(1.5)));
    }
}
