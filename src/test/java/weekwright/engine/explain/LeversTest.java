package weekwright.engine.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.testkit.ProjectInputs.day;
import static weekwright.testkit.ProjectInputs.project;
import static weekwright.testkit.ProjectInputs.range;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import weekwright.engine.Inputs;
import weekwright.engine.Outcome;
import weekwright.engine.plan.Planner;
import weekwright.engine.simulate.Progress;
import weekwright.engine.simulate.Simulation;
import weekwright.testkit.ProjectInputs;
import weekwright.testkit.Run;

/** Levers on cases worked by hand; the as-of day is Monday 2027-03-01. */
class LeversTest {
    private static final Levers NONE = Levers.NONE;

    private static Levers hours(Map<String, Integer> weekMinutes) {
        return new Levers(weekMinutes, Levers.Helper.NOBODY, 0, 0, Set.of(), Map.of(), 0, NONE.grant(), 100, false, 0);
    }

    private static Levers money(int supporters, int prices, Levers.Grant grant, boolean onDeposit) {
        return new Levers(
                Map.of(), Levers.Helper.NOBODY, supporters, prices, Set.of(), Map.of(), 0, grant, 100, onDeposit, 0);
    }

    private static Levers films(int everyWeeks, int percent) {
        return new Levers(
                Map.of(), Levers.Helper.NOBODY, 0, 0, Set.of(), Map.of(), everyWeeks, NONE.grant(), percent, false, 0);
    }

    private static Levers tasks(Set<String> dropped, Map<String, Integer> postponed) {
        return new Levers(Map.of(), Levers.Helper.NOBODY, 0, 0, dropped, postponed, 0, NONE.grant(), 100, false, 0);
    }

    private static Outcome run(Inputs inputs) {
        return Simulation.run(inputs, Planner.plan(inputs, 1, 0), 1, 1, 1, Progress.NONE);
    }

    private static String landing(Levers levers, ProjectInputs project, int task) {
        return Run.text(run(levers.over(project.inputs())).taskLanding[task][0]);
    }

    @Test
    void without_a_lever_the_inputs_are_the_same() {
        Inputs inputs = project().person("ana").inputs();
        assertThat(NONE.over(inputs)).isSameAs(inputs);
        assertThat(NONE.none()).isTrue();
        assertThat(NONE.reorders()).isFalse();
    }

    private static List<Outcome.Slot> slots(Inputs inputs) {
        Outcome outcome = run(inputs);
        return IntStream.range(0, 4)
                .mapToObj(s -> Outcome.Slot.values()[outcome.slot[s][0]])
                .toList();
    }

    private static Inputs.Episode cut(String id, Inputs.EpisodeKind kind, int slot) {
        return new Inputs.Episode(
                id, kind, slot, Inputs.Range.of(240), "", 0, Inputs.NONE, day("2027-02-20"), Inputs.NONE, List.of());
    }

    /** An episode for the first Friday and a standby are ready: they fill two; with two left empty they fill the next two. */
    @Test
    void slots_that_are_left_empty_keep_what_is_ready_for_the_next_ones() {
        Inputs inputs = project()
                .person("ana")
                .fridays("2027-03-05")
                .episode(cut("e1", Inputs.EpisodeKind.BUILD, day("2027-03-05")))
                .episode(cut("s1", Inputs.EpisodeKind.STANDBY, Inputs.NONE))
                .inputs();
        Levers two =
                new Levers(Map.of(), Levers.Helper.NOBODY, 0, 0, Set.of(), Map.of(), 0, NONE.grant(), 100, false, 2);
        assertThat(slots(inputs))
                .containsExactly(Outcome.Slot.OWN, Outcome.Slot.STANDBY, Outcome.Slot.EMPTY, Outcome.Slot.EMPTY);
        assertThat(slots(two.over(inputs)))
                .containsExactly(Outcome.Slot.EMPTY, Outcome.Slot.EMPTY, Outcome.Slot.OTHER, Outcome.Slot.STANDBY);
        assertThat(two.reorders()).isFalse();
        assertThat(two.none()).isFalse();
    }

    @Test
    void hours_of_a_week_go_up_and_down_in_the_proportion_of_the_days() {
        assertThat(Levers.moved(List.of(480, 480, 480, 480, 480, 0, 0), 240))
                .containsExactly(528, 528, 528, 528, 528, 0, 0);
        assertThat(Levers.moved(List.of(480, 0, 240, 0, 0, 0, 0), -360)).containsExactly(240, 0, 120, 0, 0, 0, 0);
        assertThat(Levers.moved(List.of(480, 0, 0, 0, 0, 0, 0), -600)).containsExactly(0, 0, 0, 0, 0, 0, 0);
        assertThat(Levers.moved(List.of(0, 0, 0, 0, 0, 0, 0), 301)).containsExactly(60, 60, 60, 60, 61, 0, 0);
    }

    @Test
    void twenty_hours_more_a_week_land_forty_hours_a_day_sooner() {
        ProjectInputs project = project().person("ana", 8, 8, 8, 8, 8, 0, 0);
        project.task("a").exactly(40);
        assertThat(landing(NONE, project, 0)).isEqualTo("2027-03-05");
        // 12 hours a day: 36 of them by Wednesday
        assertThat(landing(hours(Map.of("ana", 20 * 60)), project, 0)).isEqualTo("2027-03-04");
    }

    @Test
    void a_season_moves_by_the_same_share() {
        ProjectInputs project =
                project().person("ana", 8, 8, 8, 8, 8, 0, 0).season("ana", "2027-03-01", "2027-03-31", 4);
        Inputs then = hours(Map.of("ana", -20 * 60)).over(project.inputs());
        assertThat(then.crewHours().get(0).weekdayMinutes().stream()
                        .mapToInt(Integer::intValue)
                        .sum())
                .isEqualTo(7 * 4 * 60 / 2);
        assertThat(then.crew().get(0).weekdayMinutes()).containsExactly(240, 240, 240, 240, 240, 0, 0);
    }

    @Test
    void a_helper_halves_the_time_of_work_for_two_but_keeps_off_hazards() {
        ProjectInputs project = project().person("ana", 8, 8, 8, 8, 8, 0, 0);
        project.task("a").exactly(32);
        project.task("b").exactly(32);
        Levers helper = new Levers(
                Map.of(),
                new Levers.Helper(40 * 60, "", Inputs.NONE),
                0,
                0,
                Set.of(),
                Map.of(),
                0,
                NONE.grant(),
                100,
                false,
                0);
        assertThat(landing(NONE, project, 1)).isEqualTo("2027-03-10");
        assertThat(landing(helper, project, 1)).isEqualTo("2027-03-04");
        assertThat(helper.reorders()).isTrue();
        ProjectInputs hot = project().person("ana", 8, 8, 8, 8, 8, 0, 0);
        hot.task("a").exactly(32);
        hot.task("b").hazards("hot").exactly(32);
        assertThat(helper.over(hot.inputs()).crew().get(1).notFor()).containsExactly("hot");
    }

    @Test
    void a_dropped_task_is_waited_for_by_nobody_and_a_postponed_one_begins_on_its_day() {
        ProjectInputs project = project().person("ana", 8, 8, 8, 8, 8, 0, 0).chain("a", "b");
        project.task("a").exactly(40).task("b").exactly(8);
        assertThat(landing(NONE, project, 1)).isEqualTo("2027-03-08");
        assertThat(landing(tasks(Set.of("a"), Map.of()), project, 1)).isEqualTo("2027-03-01");
        assertThat(landing(tasks(Set.of(), Map.of("a", day("2027-03-15"))), project, 1))
                .isEqualTo("2027-03-22");
    }

    @Test
    void a_sum_paid_in_lets_an_order_go_out_on_its_day() {
        ProjectInputs project = project().person("ana", 8, 8, 8, 8, 8, 0, 0).cash(0, 0);
        project.task("a").exactly(8);
        project.material("oak", "a", 2000, 0);
        assertThat(landing(NONE, project, 0)).isEqualTo("later");
        Levers grant = money(0, 0, new Levers.Grant(2000, day("2027-03-15")), false);
        assertThat(landing(grant, project, 0)).isEqualTo("2027-03-15");
        Levers small = money(0, 0, new Levers.Grant(1999, day("2027-03-15")), false);
        assertThat(landing(small, project, 0)).isEqualTo("later");
    }

    @Test
    void dearer_material_is_waited_for_and_what_is_ordered_keeps_its_price() {
        ProjectInputs project = project().person("ana", 8, 8, 8, 8, 8, 0, 0).cash(2500, 0);
        project.task("a").exactly(8);
        project.material("oak", "a", 2000, 0);
        assertThat(landing(NONE, project, 0)).isEqualTo("2027-03-01");
        assertThat(landing(money(0, 25, NONE.grant(), false), project, 0)).isEqualTo("2027-03-01");
        assertThat(landing(money(0, 26, NONE.grant(), false), project, 0)).isEqualTo("later");
        Inputs.Material out = new Inputs.Material(
                "iron",
                "a",
                "",
                1,
                0,
                range(900, 1000, 1100),
                Inputs.Source.BOUGHT,
                0,
                Inputs.Range.of(3),
                0,
                day("2027-02-26"),
                Inputs.NONE,
                Inputs.NONE,
                0,
                "");
        Inputs then =
                money(0, 26, NONE.grant(), false).over(project.material(out).inputs());
        assertThat(then.materials().get(0).priceMinor()).isEqualTo(Inputs.Range.of(2520));
        assertThat(then.materials().get(1)).isEqualTo(out);
    }

    @Test
    void on_the_deposit_an_order_goes_out_with_half_of_its_cost_there() {
        ProjectInputs project = project().person("ana", 8, 8, 8, 8, 8, 0, 0).cash(1000, 0);
        project.task("a").exactly(8);
        project.material(ProjectInputs.line("oak", "a", 2000, 7, 50));
        assertThat(landing(NONE, project, 0)).isEqualTo("later");
        Levers onDeposit = money(0, 0, NONE.grant(), true);
        assertThat(landing(onDeposit, project, 0)).isEqualTo("2027-03-08");
        // the balance falls due on money that is not there: a week later the cash is under nothing
        Outcome outcome = run(onDeposit.over(project.inputs()));
        assertThat(outcome.held.cash[1][0]).isEqualTo(-1000);
        // one unit less than the deposit, and it is not sent
        ProjectInputs poorer = project().person("ana", 8, 8, 8, 8, 8, 0, 0).cash(999, 0);
        poorer.task("a").exactly(8);
        poorer.material(ProjectInputs.line("oak", "a", 2000, 7, 50));
        assertThat(landing(onDeposit, poorer, 0)).isEqualTo("later");
    }

    @Test
    void without_a_lead_the_balance_is_due_at_once_so_the_whole_has_to_be_there() {
        ProjectInputs project = project().person("ana", 8, 8, 8, 8, 8, 0, 0).cash(1000, 0);
        project.task("a").exactly(8);
        project.material(ProjectInputs.line("oak", "a", 2000, 0, 50));
        assertThat(landing(money(0, 0, NONE.grant(), true), project, 0)).isEqualTo("later");
    }

    @Test
    void a_third_of_the_supporters_leaves_at_once_and_the_rates_are_learned_as_before() {
        ProjectInputs project = project()
                .level("bench", 500, false)
                .level("wheel", 900, false)
                .supporters("2027-02", "bench", 80, 12, 2)
                .supporters("2027-03", "bench", 90, 3, 1)
                .supporters("2027-02", "wheel", 30, 4, 1);
        Inputs now = project.inputs();
        Inputs then = money(-33, 0, NONE.grant(), false).over(now);
        assertThat(then.supporters())
                .containsExactly(
                        now.supporters().get(0),
                        // 92 are there: 30 of them go
                        new Inputs.SupporterMonth(ProjectInputs.month("2027-03"), "bench", 90, 3, 31, false),
                        now.supporters().get(2),
                        // 33 were there at the end of February: 11 go
                        new Inputs.SupporterMonth(ProjectInputs.month("2027-03"), "wheel", 33, 0, 11, false));
        assertThat(money(10, 0, NONE.grant(), false).over(now).supporters().get(1))
                .isEqualTo(new Inputs.SupporterMonth(ProjectInputs.month("2027-03"), "bench", 90, 12, 1, false));
    }

    @Test
    void a_slot_every_second_week_begins_at_the_next_one() {
        ProjectInputs project = project().person("ana").fridays("2027-02-26");
        assertThat(run(project.inputs()).slots).startsWith(day("2027-03-05"), day("2027-03-12"));
        assertThat(run(films(2, 100).over(project.inputs())).slots)
                .startsWith(day("2027-03-05"), day("2027-03-19"), day("2027-04-02"));
        ProjectInputs wednesday = project().person("ana").fridays("2027-03-10");
        assertThat(run(films(3, 100).over(wednesday.inputs())).slots).startsWith(day("2027-03-12"), day("2027-04-02"));
    }

    @Test
    void films_of_half_the_length_take_half_the_hours_to_edit() {
        ProjectInputs project = project().person("ana", "edit").fridays("2027-02-26");
        project.episode("ep", "2027-03-12", 20);
        Inputs then = films(0, 50).over(project.inputs());
        assertThat(then.episodes().get(0).editMinutes()).isEqualTo(Inputs.Range.of(600));
        assertThat(then.publishing().targetMinutes())
                .isEqualTo(project.inputs().publishing().targetMinutes() / 2);
        assertThat(then.publishing().editMinutes()).isEqualTo(range(8 * 60, 12 * 60, 18 * 60));
    }
}
