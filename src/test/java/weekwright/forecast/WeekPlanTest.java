package weekwright.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.forecast.SmallProject.TODAY;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.base.Hours;
import weekwright.build.CrewMemberStore;
import weekwright.build.StageStore;
import weekwright.build.TaskStore;
import weekwright.build.WeekLineStore;
import weekwright.engine.simulate.Progress;
import weekwright.episodes.EpisodeStore;
import weekwright.episodes.ShotStore;
import weekwright.funds.MaterialStore;

class WeekPlanTest {
    private static final int MONDAY = 0;
    private static final int WEDNESDAY = 2;
    private static final int THURSDAY = 3;
    private static final int FRIDAY = 4;

    @TempDir
    Path folder;

    private SmallProject project;

    @BeforeEach
    void start() throws Exception {
        project = new SmallProject(folder, "model.prior_ratio", "1");
        project.add(CrewMemberStore.TABLE, "id=ilse name=Ilse trades=joiner mon=8 tue=8 wed=8 thu=8 fri=8".split(" "));
        project.add(StageStore.TABLE, "id=pit name=Pit".split(" "));
        project.add(
                TaskStore.TABLE,
                "id=pit.1 stage=pit title=Dig kind=work low=100 likely=100 high=100 outdoors=yes hazards=stump company=alone priority=5"
                        .split(" "));
        project.add(TaskStore.TABLE, "id=pit.2 stage=pit title=Pegs kind=work low=50 likely=50 high=50".split(" "));
    }

    @AfterEach
    void close() {
        project.close();
    }

    private WeekPlan week() {
        Basis basis = project.basis();
        ForecastRun.Planned planned = new ForecastRun.Planned(basis, 1);
        Forecast forecast = planned.run(20, 1, Progress.NONE).forecast();
        return project.db().read(read -> WeekPlan.of(read, basis, planned, Optional.of(forecast)));
    }

    private List<WeekPlan.Line> lines(int day) {
        return week().days().get(day).people().stream()
                .flatMap(person -> person.lines().stream())
                .toList();
    }

    private static WeekPlan.Line proposal(String task, int minutes) {
        return new WeekPlan.Line(
                "work", Optional.of(task), Optional.empty(), new Hours(minutes), "", false, Optional.empty());
    }

    @Test
    void the_days_before_today_have_no_proposals_and_those_from_today_on_do() {
        WeekPlan week = week();
        assertThat(week.week()).isEqualTo("2026-W48");
        assertThat(week.days()).hasSize(7);
        assertThat(week.days().get(MONDAY).date()).isEqualTo(TODAY.minusDays(2));
        assertThat(lines(MONDAY)).isEmpty();
        assertThat(lines(WEDNESDAY)).containsExactly(proposal("pit.1", 480));
        assertThat(lines(5)).isEmpty();
    }

    @Test
    void rule_43_own_lines_stand_as_written_and_only_the_hours_left_are_proposed() {
        project.add(
                WeekLineStore.TABLE, "id=w1", "date=2026-11-26", "crew=ilse", "kind=errand", "hours=3", "text=Bank");
        project.add(WeekLineStore.TABLE, "id=w2", "date=2026-11-24", "crew=ilse", "task=pit.2", "hours=2", "done=yes");
        assertThat(lines(THURSDAY))
                .containsExactly(
                        new WeekPlan.Line(
                                "errand",
                                Optional.empty(),
                                Optional.empty(),
                                new Hours(180),
                                "Bank",
                                true,
                                Optional.of(1L)),
                        proposal("pit.1", 300));
        assertThat(lines(1)).extracting(WeekPlan.Line::own).containsExactly(true);
    }

    @Test
    void an_own_line_of_the_same_work_is_not_proposed_again() {
        project.add(WeekLineStore.TABLE, "id=w1", "date=2026-11-26", "crew=ilse", "task=pit.2", "hours=8");
        assertThat(lines(THURSDAY)).extracting(WeekPlan.Line::own).containsExactly(true);
    }

    @Test
    void rule_134_a_day_outdoors_says_what_is_done_instead_if_it_rains() {
        WeekPlan week = week();
        assertThat(week.days().get(WEDNESDAY).rain()).containsExactly(new WeekPlan.Rain("ilse", "pit.2"));
        assertThat(week.days().get(MONDAY).rain()).isEmpty();
        assertThat(week.days().get(WEDNESDAY).hazards()).containsExactly("stump");
    }

    @Test
    void shots_deliveries_and_the_slot_stand_on_their_day_and_what_is_overdue_on_today() {
        project.add(EpisodeStore.TABLE, "id=E1", "title=Digging", "slot=2026-11-27");
        project.add(ShotStore.TABLE, "id=s1", "task=pit.1", "what=Spade");
        project.add(ShotStore.TABLE, "id=s2", "task=pit.1", "what=Done", "captured=2026-11-20");
        project.add(ShotStore.TABLE, "id=s3", "task=pit.1", "what=Edge", "called_off=yes");
        project.add(ShotStore.TABLE, "id=s4", "task=pit.2", "what=Knife");
        project.add(
                MaterialStore.TABLE, "id=m1", "task=pit.2", "item=Ash", "ordered=2026-11-01", "promised=2026-11-27");
        project.add(
                MaterialStore.TABLE, "id=m2", "task=pit.2", "item=Oil", "ordered=2026-11-01", "promised=2026-11-20");
        project.add(
                MaterialStore.TABLE,
                "id=m3",
                "task=pit.2",
                "item=Tar",
                "ordered=2026-11-01",
                "promised=2026-11-20",
                "received=2026-11-21");
        WeekPlan week = week();
        assertThat(week.days().get(WEDNESDAY).shots()).containsExactly("s1");
        assertThat(week.days().get(FRIDAY).episode()).contains("E1");
        assertThat(week.days().get(THURSDAY).episode()).isEmpty();
        assertThat(week.days().get(FRIDAY).deliveries()).containsExactly("m1");
        assertThat(week.days().get(WEDNESDAY).deliveries()).containsExactly("m2");
    }

    @Test
    void the_json_has_exactly_the_fields_of_the_format() {
        project.add(WeekLineStore.TABLE, "id=w1", "date=2026-11-29", "crew=ilse", "kind=rest", "text=Walk");
        String json = new ForecastJson(2).text(week());
        assertThat(json)
                .startsWith(
                        "{\"week\":\"2026-W48\",\"days\":[{\"date\":\"2026-11-23\",\"people\":[],\"rain\":[],\"shots\":[],"
                                + "\"hazards\":[],\"deliveries\":[],\"orders\":[],\"episode\":null},")
                .endsWith(
                        "{\"date\":\"2026-11-29\",\"people\":[{\"crew\":\"ilse\",\"lines\":[{\"kind\":\"rest\",\"task\":null,"
                                + "\"episode\":null,\"hours\":0,\"text\":\"Walk\",\"own\":true}]}],\"rain\":[],\"shots\":[],"
                                + "\"hazards\":[],\"deliveries\":[],\"orders\":[],\"episode\":null}]}");
    }
}
