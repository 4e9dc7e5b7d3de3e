package weekwright.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static weekwright.testkit.ProjectInputs.day;
import static weekwright.testkit.ProjectInputs.project;

import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import weekwright.engine.explain.Levers;
import weekwright.engine.plan.Planner;
import weekwright.engine.simulate.Progress;
import weekwright.engine.simulate.Setup;
import weekwright.engine.simulate.Simulation;
import weekwright.testkit.ProjectInputs;
import weekwright.testkit.Run;

/** Rules 121 and 125 to 131: how such work really goes. */
class ReallyRulesTest {
    /** A line that is needed when half of task a is done and is nine days on the way. */
    private static final Inputs.Material OIL_AT_HALF = new Inputs.Material(
            "oil",
            "a",
            "",
            1,
            0,
            Inputs.Range.of(100),
            Inputs.Source.BOUGHT,
            0.5,
            Inputs.Range.of(9),
            0,
            Inputs.NONE,
            Inputs.NONE,
            Inputs.NONE,
            0,
            "");

    @Test
    void rule_121_rough_hours_beyond_the_listed_tasks_are_worked_after_the_stages_last_task() {
        ProjectInputs project = project().person("ana", 8, 8, 8, 8, 8, 8, 8);
        project.stage(new Inputs.Stage("stones", 0, 1, false, ProjectInputs.range(4800, 4800, 4800)));
        project.task("a")
                .stage("stones")
                .hours(10, 20, 30)
                .logged("2027-02-20", "ana", 16)
                .done("2027-02-20");
        project.task("b").stage("stones").days(3);
        Run run = Run.of(project, 500);
        // about eighty hours in all, of which sixteen are done: eight days from the end of the wait on 4 March
        int middle = Outcome.quantile(run.outcome().held.stageLanding[run.stage("stones")], 0.5);
        assertThat(middle - day("2027-03-04")).isBetween(6, 8);
        assertThat(Outcome.quantile(run.outcome().held.stageLanding[run.stage("stones")], 0.01))
                .isGreaterThan(day("2027-03-04"));
    }

    @Test
    void rule_121_rough_hours_under_the_listed_ones_add_nothing() {
        ProjectInputs project = project().person("ana", 8, 8, 8, 8, 8, 8, 8);
        project.stage(new Inputs.Stage("stones", 0, 1, false, ProjectInputs.range(60, 60, 60)));
        project.task("a").stage("stones").exactly(160);
        Run run = Run.of(project, 20);
        assertThat(run.outcome().held.stageLanding[run.stage("stones")]).containsOnly(day("2027-03-20"));
    }

    @Test
    void rule_121_what_is_dropped_does_not_come_back_as_rough_hours() {
        ProjectInputs project = project().person("ana", 8, 8, 8, 8, 8, 8, 8);
        project.stage(new Inputs.Stage("stones", 0, 1, false, ProjectInputs.range(9600, 9600, 9600)));
        project.task("a")
                .stage("stones")
                .hours(40, 40, 40)
                .task("b")
                .stage("stones")
                .hours(72, 80, 88);
        Inputs dropped = new Levers(
                        Map.of(),
                        Levers.Helper.NOBODY,
                        0,
                        0,
                        Set.of("b"),
                        Map.of(),
                        0,
                        new Levers.Grant(0, 0),
                        100,
                        false,
                        0)
                .over(project.inputs());
        // about 160 hours, eight a day; without b some 80, give or take what rough hours and b each vary by
        assertThat(middle(project.inputs()) - project.inputs().asOf()).isBetween(18, 21);
        assertThat(middle(dropped) - project.inputs().asOf()).isBetween(8, 11);
    }

    private static int middle(Inputs inputs) {
        Setup setup = new Setup(inputs);
        Outcome outcome = Simulation.run(setup, Planner.plan(setup, 1, 10), 300, 1, 1, Progress.NONE);
        return Outcome.quantile(outcome.held.stageLanding[0], 0.5);
    }

    @Test
    void rule_121_hours_of_a_dropped_task_go_off_the_rough_ones_once() {
        ProjectInputs project = project().person("ana", 8, 8, 8, 8, 8, 8, 8);
        project.stage(new Inputs.Stage("stones", 0, 1, false, ProjectInputs.range(9600, 9600, 9600)));
        project.task("a")
                .stage("stones")
                .hours(40, 40, 40)
                .task("b")
                .stage("stones")
                .hours(72, 80, 88);
        project.task("c")
                .stage("stones")
                .hours(20, 20, 20)
                .logged("2027-02-20", "ana", 16)
                .dropped("2027-02-21");
        // 160 less the twenty of c, of which four were never worked: 140 hours
        assertThat(middle(project.inputs()) - project.inputs().asOf()).isBetween(16, 18);
    }

    @Test
    void rule_125_company_by_uses_the_hours_of_another_person_beside() {
        ProjectInputs alone = project().person("ana", "mason");
        alone.task("a").exactly(4).trades("mason").company(Inputs.Company.BY);
        assertThat(Run.of(alone).landing("a")).isEqualTo("later");
        ProjectInputs two =
                project().person("ana", "mason").person("ben", "smith").ranks("a", "b");
        two.task("a")
                .exactly(4)
                .trades("mason")
                .company(Inputs.Company.BY)
                .task("b")
                .exactly(5)
                .trades("smith");
        Run run = Run.of(two);
        assertThat(run.landing("a")).isEqualTo("2027-03-01");
        assertThat(run.landing("b")).isEqualTo("2027-03-02");
    }

    @Test
    void rule_125_company_by_ends_with_the_other_persons_hours() {
        ProjectInputs project = project().person("ana", "mason").person("ben", 3, 3, 3, 3, 3, 0, 0, "smith");
        project.task("a").exactly(6).trades("mason").company(Inputs.Company.BY);
        assertThat(Run.of(project).landing("a")).isEqualTo("2027-03-02");
    }

    @Test
    void rule_88_and_125_company_is_not_paid_as_work() {
        ProjectInputs project = project()
                .cash(1_000_000, 0)
                .person("ana", "mason")
                .paid(100)
                .person("ben", "smith")
                .paid(100_000);
        project.task("a").exactly(4).trades("mason").company(Inputs.Company.BY);
        assertThat(Run.of(project).cash("2027-03-07")).isEqualTo(1_000_000 - 400);
    }

    @Test
    void rule_125_two_hands_are_each_others_company() {
        ProjectInputs project = project().person("ana", "mason").person("ben", "mason");
        project.task("a").exactly(16).hands(2, 1).trades("mason").company(Inputs.Company.BY);
        assertThat(Run.of(project).landing("a")).isEqualTo("2027-03-01");
    }

    @Test
    void rule_125_company_call_needs_another_person_at_work_that_day_but_not_their_hours() {
        ProjectInputs project = project()
                .person("ana", "mason")
                .person("ben", 0, 0, 8, 0, 0, 0, 0, "smith")
                .ranks("a", "b");
        project.task("a")
                .exactly(8)
                .trades("mason")
                .company(Inputs.Company.CALL)
                .task("b")
                .exactly(8)
                .trades("smith");
        Run run = Run.of(project);
        assertThat(run.start("a")).isEqualTo("2027-03-03");
        assertThat(run.landing("b")).isEqualTo("2027-03-03");
    }

    @Test
    void rule_125_whoever_holds_the_camera_is_never_the_company() {
        ProjectInputs two = project().person("ana", "mason").person("ben", "camera");
        two.task("a").exactly(4).trades("mason").company(Inputs.Company.BY).camera(Inputs.Camera.ONCE, -1);
        assertThat(Run.of(two).landing("a")).isEqualTo("later");
        ProjectInputs three =
                project().person("ana", "mason").person("ben", "camera").person("cleo", 0, 0, 8, 0, 0, 0, 0, "smith");
        three.task("a").exactly(4).trades("mason").company(Inputs.Company.BY).camera(Inputs.Camera.ONCE, -1);
        assertThat(Run.of(three).landing("a")).isEqualTo("2027-03-03");
    }

    @Test
    void rule_125_who_is_kept_off_the_hazards_does_not_hold_the_camera_there() {
        ProjectInputs operator =
                project().person("ana", "mason").person("ben", "camera").notFor("melt");
        operator.task("a")
                .exactly(4)
                .trades("mason")
                .camera(Inputs.Camera.OPERATOR, 30)
                .hazards("melt")
                .story(10);
        assertThat(Run.of(operator).landing("a")).isEqualTo("2027-03-01");
        assertThat(Run.of(operator).bank("2027-03-07")).isZero();
        ProjectInputs once =
                project().person("ana", "mason").person("ben", "camera").notFor("melt");
        once.task("a").exactly(4).trades("mason").camera(Inputs.Camera.ONCE, -1).hazards("melt");
        assertThat(Run.of(once).landing("a")).isEqualTo("later");
    }

    @Test
    void rule_125_not_for_keeps_a_person_off_tasks_with_those_hazards() {
        ProjectInputs project = project().person("ana").notFor("saw", "pour");
        project.task("a").exactly(4).hazards("saw").task("b").exactly(4).hazards("dust");
        Run run = Run.of(project);
        assertThat(run.landing("a")).isEqualTo("later");
        assertThat(run.landing("b")).isEqualTo("2027-03-01");
    }

    @Test
    void rule_127_in_one_go_starts_only_when_its_whole_length_is_left() {
        ProjectInputs project = project().person("ana").workedToday("ana", 3);
        project.task("a").exactly(6).oneGo();
        assertThat(Run.of(project).start("a")).isEqualTo("2027-03-02");
        ProjectInputs fits = project().person("ana").workedToday("ana", 2);
        fits.task("a").exactly(6).oneGo();
        assertThat(Run.of(fits).landing("a")).isEqualTo("2027-03-01");
    }

    @Test
    void rule_127_in_one_go_needs_its_company_and_operator_for_all_of_it() {
        ProjectInputs company = project().person("ana", "mason").person("ben", 4, 4, 8, 4, 4, 0, 0, "smith");
        company.task("a").exactly(6).trades("mason").company(Inputs.Company.BY).oneGo();
        assertThat(Run.of(company).start("a")).isEqualTo("2027-03-03");
        assertThat(Run.of(company).landing("a")).isEqualTo("2027-03-03");
        ProjectInputs operator = project().person("ana", "mason").person("ben", 4, 4, 8, 4, 4, 0, 0, "camera");
        operator.task("a")
                .exactly(6)
                .trades("mason")
                .camera(Inputs.Camera.ONCE, -1)
                .oneGo();
        assertThat(Run.of(operator).start("a")).isEqualTo("2027-03-03");
    }

    @Test
    void rule_127_in_one_go_is_not_split() {
        for (double hours : new double[] {2, 5, 7.5}) {
            ProjectInputs project = project().person("ana").ranks("other", "a");
            project.task("other").exactly(5).task("a").exactly(hours).oneGo();
            Run run = Run.of(project);
            assertThat(run.landing("a")).isEqualTo(run.start("a"));
        }
    }

    @Test
    void rule_127_and_131_in_one_go_waits_for_a_line_that_is_needed_halfway() {
        ProjectInputs project = project().person("ana", 8, 8, 8, 8, 8, 8, 8).cash(10_000, 0);
        project.task("a").exactly(6).oneGo();
        project.material(OIL_AT_HALF);
        Run run = Run.of(project);
        assertThat(run.start("a")).isEqualTo("2027-03-10");
        assertThat(run.landing("a")).isEqualTo("2027-03-10");
    }

    @Test
    void rule_128_without_its_machine_a_task_takes_so_many_percent_more() {
        ProjectInputs fits = down().person("ana");
        fits.task("a").exactly(5).needs("saw", 1).without(60);
        assertThat(Run.of(fits).landing("a")).isEqualTo("2027-03-01");
        ProjectInputs over = down().person("ana");
        over.task("a").exactly(5.25).needs("saw", 1).without(60);
        // 8.4 hours
        assertThat(Run.of(over).landing("a")).isEqualTo("2027-03-02");
        ProjectInputs cannot = down().person("ana");
        cannot.task("a").exactly(5).needs("saw", 1);
        assertThat(Run.of(cannot).landing("a")).isEqualTo("later");
    }

    @Test
    void rule_129_a_booked_task_starts_only_on_its_date() {
        ProjectInputs project = project().person("ana");
        project.task("a").exactly(12).booked("2027-03-10", 14);
        Run run = Run.of(project);
        assertThat(run.start("a")).isEqualTo("2027-03-10");
        assertThat(run.landing("a")).isEqualTo("2027-03-11");
    }

    @Test
    void rule_129_a_missed_date_is_followed_by_the_next_turn() {
        ProjectInputs project = project().person("ana").off("ana", "2027-03-10", "2027-03-10", 0);
        project.task("a").exactly(8).booked("2027-03-10", 14);
        assertThat(Run.of(project).start("a")).isEqualTo("2027-03-24");
        ProjectInputs link = project().person("ana").chain("cure", "a");
        link.task("cure").days(20).task("a").exactly(8).booked("2027-03-10", 14);
        assertThat(Run.of(link).start("a")).isEqualTo("2027-03-24");
    }

    @Test
    void rule_129_a_turn_that_comes_round_to_today_is_taken_today() {
        ProjectInputs daily = project().person("ana");
        daily.task("a").exactly(8).booked("2027-03-06", 1);
        assertThat(Run.of(daily).start("a")).isEqualTo("2027-03-08");
        ProjectInputs unsaid = project().person("ana").cash(1000, 0).material("oak", "a", 1, 10);
        unsaid.task("a").exactly(8).booked("2027-03-08", -1);
        assertThat(Run.of(unsaid).start("a")).isEqualTo("2027-03-11");
    }

    @Test
    void rule_129_a_gathering_adds_unnamed_hands_on_its_date() {
        ProjectInputs project = project().person("ana").gathering("2027-03-06", 3, 6, 1);
        project.task("raise").exactly(18).hands(3, 3).trades("joiner");
        Run run = Run.of(project);
        assertThat(run.start("raise")).isEqualTo("2027-03-06");
        assertThat(run.landing("raise")).isEqualTo("2027-03-06");
    }

    @Test
    void rule_129_unnamed_hands_are_kept_off_hazards_and_come_by_their_share() {
        ProjectInputs hazard = project().gathering("2027-03-06", 3, 6, 1);
        hazard.task("raise").exactly(18).hands(3, 3).hazards("lift");
        assertThat(Run.of(hazard).start("raise")).isEqualTo("later");
        ProjectInputs share = project().gathering("2027-03-06", 1, 6, 0.4);
        share.task("a").exactly(4);
        int trials = 4000;
        int[] starts = Run.of(share, trials).outcome().taskStart[0];
        double came =
                Arrays.stream(starts).filter(each -> each == day("2027-03-06")).count() / (double) trials;
        assertThat(came).isCloseTo(0.4, within(4 * Math.sqrt(0.24 / trials)));
    }

    @Test
    void rule_130_kept_equipment_is_held_from_a_tasks_first_hour_to_its_end() {
        ProjectInputs project = project()
                .person("ana", "mason")
                .off("ana", "2027-03-02", "2027-03-04", 0)
                .person("ben", "smith")
                .ranks("a", "b");
        project.equipment(new Inputs.Equipment("trestle", 1, true, "", Inputs.NONE, Inputs.Range.EMPTY));
        project.task("a")
                .exactly(9)
                .trades("mason")
                .needs("trestle", 1)
                .task("b")
                .exactly(2)
                .trades("smith")
                .needs("trestle", 1);
        Run run = Run.of(project);
        // a begins on Monday and ends in the first hour of Friday
        assertThat(run.landing("a")).isEqualTo("2027-03-05");
        assertThat(run.start("b")).isEqualTo("2027-03-05");
    }

    @Test
    void rule_130_a_machine_is_ready_after_its_task() {
        ProjectInputs project = project().person("ana").ranks("a", "restore");
        project.equipment(new Inputs.Equipment("lathe", 1, false, "restore", Inputs.NONE, Inputs.Range.EMPTY));
        project.task("restore").exactly(16).task("a").exactly(4).needs("lathe", 1);
        Run run = Run.of(project);
        assertThat(run.landing("restore")).isEqualTo("2027-03-02");
        assertThat(run.start("a")).isEqualTo("2027-03-03");
    }

    @Test
    void rule_130_a_machine_that_is_down_comes_back_after_its_days() {
        ProjectInputs project = project().person("ana", 8, 8, 8, 8, 8, 8, 8);
        project.equipment(new Inputs.Equipment("saw", 1, false, "", day("2027-03-02"), Inputs.Range.of(5)));
        project.task("a").exactly(12).needs("saw", 1);
        Run run = Run.of(project);
        assertThat(run.start("a")).isEqualTo("2027-03-01");
        assertThat(run.landing("a")).isEqualTo("2027-03-07");
    }

    @Test
    void rule_131_a_line_at_a_share_is_needed_when_that_share_is_done() {
        ProjectInputs project =
                project().person("ana", 8, 8, 8, 8, 8, 8, 8).cash(10_000, 0).orders(0, 0);
        project.task("a").exactly(16);
        project.material(OIL_AT_HALF);
        Run run = Run.of(project);
        assertThat(run.start("a")).isEqualTo("2027-03-01");
        assertThat(run.landing("a")).isEqualTo("2027-03-10");
    }

    @Test
    void rule_131_a_lot_delivered_in_part_lets_so_many_pieces_be_worked() {
        ProjectInputs project = project().person("ana", 8, 8, 8, 8, 8, 8, 8).cash(10_000, 0);
        project.task("cogs").hours(2, 2, 2).pieces(10, 100);
        project.material(part("p1", 5, "2027-02-20", "2027-02-25", 5));
        project.material(part("p2", 5, "2027-02-20", "", 40));
        Run run = Run.of(project);
        assertThat(run.start("cogs")).isEqualTo("2027-03-01");
        // the second part comes on 1 April; about twenty hours of work, half of them before it
        assertThat(run.landing("cogs")).isBetween("2027-04-01", "2027-04-05");
        ProjectInputs none = project().person("ana", 8, 8, 8, 8, 8, 8, 8).cash(10_000, 0);
        none.task("cogs").hours(2, 2, 2).pieces(10, 100);
        none.material(part("p1", 10, "2027-02-20", "", 40));
        assertThat(Run.of(none).start("cogs")).isEqualTo("2027-04-01");
    }

    private static Inputs.Material part(String id, double quantity, String ordered, String received, double lead) {
        return new Inputs.Material(
                id,
                "cogs",
                "beech",
                quantity,
                0,
                Inputs.Range.of(10),
                Inputs.Source.BOUGHT,
                0,
                Inputs.Range.of(lead),
                0,
                day(ordered),
                Inputs.NONE,
                day(received),
                0,
                "");
    }

    private static ProjectInputs down() {
        return project().equipment(new Inputs.Equipment("saw", 1, false, "", day("2027-02-01"), Inputs.Range.EMPTY));
    }
}
