package weekwright.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.testkit.ProjectInputs.project;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ProjectInputs;
import weekwright.testkit.Run;

/** Rules 93 to 95: starts, landings, held by. */
class OutputRulesTest {
    @Test
    void rule_93_a_start_is_the_first_hour_worked_or_the_first_day_of_a_wait() {
        ProjectInputs project = project().person("ana").chain("a", "cure");
        project.task("a")
                .exactly(20)
                .logged("2027-02-24", "ana", 4)
                .task("cure")
                .days(5);
        Run run = Run.of(project);
        assertThat(run.start("a")).isEqualTo("2027-02-24");
        assertThat(run.landing("a")).isEqualTo("2027-03-02");
        assertThat(run.start("cure")).isEqualTo("2027-03-02");
    }

    @Test
    void rule_94_a_stage_whose_tasks_are_all_done_has_that_past_date() {
        ProjectInputs project = project();
        project.task("a").stage("pit").hours(1, 2, 3).done("2027-01-20");
        project.task("b").stage("pit").hours(1, 2, 3).done("2027-01-28");
        Run run = Run.of(project, 5);
        for (int trial = 0; trial < 5; trial++) {
            assertThat(Run.text(run.outcome().held.stageLanding[0][trial])).isEqualTo("2027-01-28");
            assertThat(Run.text(run.outcome().workFirst.stageLanding[0][trial])).isEqualTo("2027-01-28");
        }
        assertThat(Outcome.beyond(run.outcome().held.stageLanding[0])).isZero();
    }

    @Test
    void rule_94_a_stage_that_took_more_than_its_rough_hours_has_its_past_date() {
        ProjectInputs project =
                project().person("ana").stage(new Inputs.Stage("pit", 1, 1, false, Inputs.Range.of(600)));
        project.task("a")
                .stage("pit")
                .hours(20, 20, 20)
                .logged("2027-02-01", "ana", 20)
                .done("2027-02-10");
        project.task("b").exactly(4);
        Run run = Run.of(project);
        assertThat(run.stageLanding("pit")).isEqualTo("2027-02-10");
        assertThat(Run.text(run.outcome().workFirst.stageLanding[0][0])).isEqualTo("2027-02-10");
    }

    @Test
    void a_stage_lands_with_its_last_task() {
        ProjectInputs project = project();
        project.task("a")
                .stage("pit")
                .days(3)
                .task("b")
                .stage("pit")
                .days(9)
                .task("c")
                .stage("pit")
                .hours(1, 2, 3)
                .done("2027-01-20");
        assertThat(Run.of(project).stageLanding("pit")).isEqualTo("2027-03-10");
    }

    @Test
    void rule_95_days_worked_belong_to_the_person_with_the_most_hours() {
        ProjectInputs project = project().person("ana", 8, 8, 8, 8, 8, 8, 8);
        project.task("a").stage("pit").exactly(40);
        assertThat(heldBy(project)).containsOnlyKeys("PERSON ana");
    }

    @Test
    void rule_95_waits_link_waits_and_deliveries_have_their_days() {
        ProjectInputs project = project().person("ana", 8, 8, 8, 8, 8, 8, 8).cash(100_000, 0);
        project.task("a").stage("pit").exactly(8).task("cure").stage("pit").days(10);
        project.chain("a", "cure");
        Map<String, Long> held = heldBy(project);
        // one day of ana's, ten of the wait
        assertThat(held.get("PERSON ana")).isEqualTo(1);
        assertThat(share(held, "WAIT")).isGreaterThan(0.85);
        ProjectInputs material = project().person("ana", 8, 8, 8, 8, 8, 8, 8).cash(100_000, 0);
        material.task("a").stage("pit").exactly(8);
        material.material("oak", "a", 1000, 20);
        Map<String, Long> waited = heldBy(material);
        assertThat(share(waited, "MATERIAL")).isGreaterThan(0.9);
    }

    @Test
    void rule_95_a_line_whose_order_waited_for_money_is_funds() {
        ProjectInputs project = project().person("ana", 8, 8, 8, 8, 8, 8, 8).cash(0, 0);
        project.task("a").stage("pit").exactly(8);
        project.material("oak", "a", 1000, 2);
        project.regular("gift", 5000, Inputs.Every.YEAR, "2027-04-01", "");
        assertThat(share(heldBy(project), "FUNDS")).isGreaterThan(0.9);
    }

    @Test
    void rule_95_weather_season_equipment_and_operator_are_named() {
        ProjectInputs season = everyDay();
        season.task("a").stage("pit").exactly(8).season(501, 930);
        assertThat(share(heldBy(season), "SEASON")).isGreaterThan(0.9);
        ProjectInputs weather =
                everyDay().weather(new Inputs.Weather(List.of(0., 0., 1., 1., 0., 0., 0., 0., 0., 0., 0., 0.), 2));
        weather.task("a").stage("pit").exactly(8).outdoors();
        assertThat(share(heldBy(weather), "WEATHER")).isGreaterThan(0.9);
        ProjectInputs equipment = everyDay().equipment("press", 1);
        equipment.task("cure").days(30).needs("press", 1);
        equipment.task("a").stage("pit").exactly(8).needs("press", 1).notBefore("2027-03-02");
        assertThat(heldBy(equipment)).containsKey("EQUIPMENT press");
        ProjectInputs operator = project()
                .person("ana", 8, 8, 8, 8, 8, 8, 8, "mason")
                .person("ben", "camera")
                .between("2027-04-05", "");
        operator.task("a").stage("pit").exactly(8).trades("mason").camera(Inputs.Camera.ONCE, -1);
        assertThat(share(heldBy(operator), "CAMERA")).isGreaterThan(0.9);
    }

    @Test
    void rule_95_a_person_who_was_taken_by_work_of_higher_rank_is_named() {
        ProjectInputs project = everyDay().ranks("other", "a");
        project.task("other")
                .stage("leat")
                .hours(160, 160, 160)
                .task("a")
                .stage("pit")
                .exactly(8);
        Map<String, Long> held = heldBy(project);
        assertThat(held).containsOnlyKeys("PERSON ana");
        assertThat(held.get("PERSON ana")).isGreaterThan(9);
    }

    @Test
    void rule_95_the_chain_goes_on_to_the_task_whose_link_was_satisfied_last() {
        ProjectInputs project =
                everyDay().link("c", "a", 1, 0).link("c", "b", 1, 0).person("ben", 8, 8, 8, 8, 8, 8, 8, "smith");
        project.task("a")
                .stage("pit")
                .exactly(8)
                .trades("smith")
                .task("b")
                .stage("pit2")
                .days(20)
                .task("c")
                .stage("leat")
                .exactly(8);
        Run run = Run.of(project);
        assertThat(run.outcome().critical[run.task("b")]).isEqualTo(1);
        assertThat(run.outcome().critical[run.task("c")]).isEqualTo(1);
        Map<String, Long> held = held(run, "leat");
        assertThat(share(held, "WAIT")).isGreaterThan(0.9);
    }

    private static ProjectInputs everyDay() {
        return project().person("ana", 8, 8, 8, 8, 8, 8, 8);
    }

    private static Map<String, Long> heldBy(ProjectInputs project) {
        return held(Run.of(project), "pit");
    }

    private static Map<String, Long> held(Run run, String stage) {
        Map<String, Long> days = new LinkedHashMap<>();
        int s = run.stage(stage);
        for (int i = 0; i < run.outcome().reasons.size(); i++) {
            Outcome.Reason reason = run.outcome().reasons.get(i);
            if (run.outcome().heldBy[s][i] > 0) {
                days.put((reason.kind() + " " + reason.what()).trim(), run.outcome().heldBy[s][i]);
            }
        }
        return days;
    }

    private static double share(Map<String, Long> held, String kind) {
        double all = held.values().stream().mapToLong(Long::longValue).sum();
        return held.entrySet().stream()
                        .filter(entry -> entry.getKey().startsWith(kind))
                        .mapToLong(Map.Entry::getValue)
                        .sum()
                / all;
    }
}
