package weekwright.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.forecast.SmallProject.TODAY;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.build.CrewHoursStore;
import weekwright.build.CrewMemberStore;
import weekwright.build.DaysOffStore;
import weekwright.build.EquipmentStore;
import weekwright.build.GatheringStore;
import weekwright.build.HazardCodes;
import weekwright.build.HoursEntryStore;
import weekwright.build.LinkStore;
import weekwright.build.StageStore;
import weekwright.build.TaskStore;
import weekwright.build.WeekLineStore;
import weekwright.engine.Inputs;
import weekwright.episodes.EpisodeStore;
import weekwright.episodes.ShotStore;
import weekwright.episodes.TellStore;
import weekwright.funds.LedgerEntryStore;

class InputsBuilderTest {
    private static final int NOW = (int) TODAY.toEpochDay();

    @TempDir
    Path folder;

    private SmallProject project;

    @BeforeEach
    void start() throws Exception {
        project = SmallProject.withOneTask(folder);
    }

    @AfterEach
    void close() {
        project.close();
    }

    private static int day(String iso) {
        return (int) LocalDate.parse(iso).toEpochDay();
    }

    private Inputs inputs() {
        return project.basis().inputs();
    }

    private Inputs.Task task(String id) {
        return inputs().tasks().stream()
                .filter(task -> task.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void the_defaults_of_a_bare_task_are_resolved() {
        Inputs.Task task = task("pit.1");
        assertThat(task.estimate()).isEqualTo(new Inputs.Range(360, 480, 840));
        assertThat(task.pieces()).isEqualTo(1);
        assertThat(task.learningPercent()).isEqualTo(100);
        assertThat(task.hands()).isEqualTo(1);
        assertThat(task.leastHands()).isEqualTo(1);
        assertThat(task.company()).isEqualTo(Inputs.Company.ALONE);
        assertThat(task.camera()).isEqualTo(Inputs.Camera.NONE);
        assertThat(task.withoutPercent()).isNegative();
        assertThat(task.cameraExtraPercent()).isNegative();
        assertThat(task.leftMinutes()).isNegative();
        assertThat(task.rebookDays()).isEqualTo(Inputs.Range.EMPTY);
        assertThat(List.of(task.notBefore(), task.booked(), task.started(), task.done(), task.dropped()))
                .containsOnly(Inputs.NONE);
        assertThat(inputs().stages()).containsExactly(new Inputs.Stage("pit", 1, 1, false, Inputs.Range.EMPTY));
    }

    @Test
    void rule_1_facts_dated_after_the_day_are_ignored_and_those_of_the_day_itself_are_known() {
        project.add(
                TaskStore.TABLE,
                "id=pit.2",
                "stage=pit",
                "title=Wall",
                "kind=work",
                "likely=10",
                "started=2026-11-25",
                "done=2026-11-26",
                "dropped=2026-12-01",
                "left=3",
                "left_on=2026-11-26");
        project.add(HoursEntryStore.TABLE, "id=h1", "date=2026-11-25", "crew=ilse", "task=pit.2", "hours=2");
        project.add(HoursEntryStore.TABLE, "id=h2", "date=2026-11-26", "crew=ilse", "task=pit.2", "hours=3");
        Inputs.Task now = task("pit.2");
        assertThat(now.started()).isEqualTo(NOW);
        assertThat(now.done()).isEqualTo(Inputs.NONE);
        assertThat(now.dropped()).isEqualTo(Inputs.NONE);
        assertThat(now.leftMinutes()).isNegative();
        assertThat(now.log()).extracting(Inputs.Worked::minutes).containsExactly(120);
        Inputs later = project.basis(LocalDate.of(2026, 12, 1)).inputs();
        assertThat(later.tasks().get(1).done()).isEqualTo(day("2026-11-26"));
        assertThat(later.tasks().get(1).dropped()).isEqualTo(day("2026-12-01"));
        assertThat(later.tasks().get(1).leftMinutes()).isEqualTo(180);
        assertThat(later.tasks().get(1).log()).hasSize(2);
    }

    @Test
    void rule_3_weekday_hours_seasons_and_days_off_are_handed_over_in_the_order_of_the_file() {
        project.add(CrewHoursStore.TABLE, "crew=ilse", "from=2026-12-01", "to=2026-12-31", "mon=4");
        project.add(DaysOffStore.TABLE, "crew=ilse", "from=2026-12-24", "to=2026-12-26");
        project.add(DaysOffStore.TABLE, "from=2026-12-31", "to=2026-12-31", "hours=2.5");
        Inputs inputs = inputs();
        assertThat(inputs.crew().get(0).weekdayMinutes()).containsExactly(480, 480, 480, 480, 480, 240, 0);
        assertThat(inputs.crewHours())
                .containsExactly(new Inputs.CrewHours(
                        "ilse", day("2026-12-01"), day("2026-12-31"), List.of(240, 0, 0, 0, 0, 0, 0)));
        assertThat(inputs.daysOff())
                .containsExactly(
                        new Inputs.DaysOff("ilse", day("2026-12-24"), day("2026-12-26"), 0),
                        new Inputs.DaysOff("", day("2026-12-31"), day("2026-12-31"), 150));
    }

    @Test
    void rule_1_the_hours_of_today_are_less_by_what_a_person_logged_today_on_anything() {
        project.add(CrewMemberStore.TABLE, "id=tomas", "name=Tomas", "wed=6");
        project.add(
                HoursEntryStore.TABLE, "id=h1", "date=2026-11-25", "crew=ilse", "task=pit.1", "hours=2", "people=3");
        project.add(HoursEntryStore.TABLE, "id=h2", "date=2026-11-25", "crew=ilse", "as=shop", "hours=0.5");
        project.add(HoursEntryStore.TABLE, "id=h3", "date=2026-11-24", "crew=tomas", "task=pit.1", "hours=5");
        assertThat(inputs().workedToday()).containsExactly(new Inputs.WorkedToday("ilse", 150, 120));
        assertThat(task("pit.1").log()).extracting(Inputs.Worked::minutes).containsExactly(300, 360);
    }

    @Test
    void rule_88_wages_that_the_ledger_shows_for_today_are_not_booked_again() {
        project.add(HoursEntryStore.TABLE, "id=h1", "date=2026-11-25", "crew=ilse", "task=pit.1", "hours=2");
        project.add(LedgerEntryStore.TABLE, "id=l1", "date=2026-11-24", "amount=-200", "kind=wages");
        assertThat(inputs().workedToday()).containsExactly(new Inputs.WorkedToday("ilse", 120, 120));
        project.add(LedgerEntryStore.TABLE, "id=l2", "date=2026-11-25", "amount=-40", "kind=wages");
        assertThat(inputs().workedToday()).containsExactly(new Inputs.WorkedToday("ilse", 120, 0));
    }

    @Test
    void rule_16_hours_carry_as_what_they_were_logged_and_shop_hours_belong_to_no_task() {
        project.add(
                HoursEntryStore.TABLE, "id=h1", "date=2026-11-20", "crew=ilse", "task=pit.1", "hours=2", "as=camera");
        project.add(
                HoursEntryStore.TABLE, "id=h2", "date=2026-11-19", "crew=ilse", "task=pit.1", "hours=1", "pieces=2");
        project.add(HoursEntryStore.TABLE, "id=h3", "date=2026-11-20", "crew=ilse", "task=pit.1", "hours=1", "as=shop");
        project.add(
                HoursEntryStore.TABLE,
                "id=h4",
                "date=2026-11-21",
                "crew=ilse",
                "task=pit.1",
                "hours=1",
                "footage_minutes=4");
        project.add(ShotStore.TABLE, "id=s1", "task=pit.1", "what=Spade", "captured=2026-11-22");
        project.add(ShotStore.TABLE, "id=s2", "task=pit.1", "what=Bucket", "captured=2026-11-30");
        Inputs.Task task = task("pit.1");
        assertThat(task.log())
                .containsExactly(
                        new Inputs.Worked(day("2026-11-19"), "ilse", Inputs.As.HANDS, 60, 2, false),
                        new Inputs.Worked(day("2026-11-20"), "ilse", Inputs.As.CAMERA, 120, 0, false),
                        new Inputs.Worked(day("2026-11-21"), "ilse", Inputs.As.HANDS, 60, 0, true));
        assertThat(task.shotDays()).containsExactly(day("2026-11-22"));
        assertThat(task.started()).isEqualTo(day("2026-11-19"));
    }

    @Test
    void rule_16_hours_with_the_camera_alone_are_not_the_beginning_of_a_task() {
        project.add(
                HoursEntryStore.TABLE, "id=h1", "date=2026-11-20", "crew=ilse", "task=pit.1", "hours=2", "as=camera");
        assertThat(task("pit.1").started()).isEqualTo(Inputs.NONE);
    }

    @Test
    void rule_16_office_hours_belong_to_no_task_and_are_no_editing() {
        project.add(EpisodeStore.TABLE, "id=E1", "title=One", "slot=2026-12-04");
        project.add(
                HoursEntryStore.TABLE, "id=h1", "date=2026-11-20", "crew=ilse", "task=pit.1", "hours=2", "as=office");
        project.add(
                HoursEntryStore.TABLE, "id=h2", "date=2026-11-20", "crew=ilse", "episode=E1", "hours=2", "as=office");
        project.add(
                HoursEntryStore.TABLE, "id=h3", "date=2026-11-20", "crew=ilse", "episode=E1", "hours=2", "as=camera");
        assertThat(task("pit.1").log()).isEmpty();
        assertThat(inputs().episodes().get(0).editedMinutes()).isZero();
    }

    @Test
    void rule_21_an_empty_low_is_three_quarters_and_an_empty_high_seven_quarters_of_likely_for_hours_alone() {
        project.add(TaskStore.TABLE, "id=pit.2", "stage=pit", "title=Wall", "kind=work", "likely=10");
        project.add(TaskStore.TABLE, "id=pit.3", "stage=pit", "title=Cure", "kind=wait", "likely=7");
        project.add(TaskStore.TABLE, "id=pit.4", "stage=pit", "title=Gate", "kind=work");
        project.add(LinkStore.TABLE, "task=pit.3", "after=pit.2", "wait_likely=3", "wait_high=5");
        assertThat(task("pit.2").estimate()).isEqualTo(new Inputs.Range(450, 600, 1050));
        assertThat(task("pit.3").estimate()).isEqualTo(Inputs.Range.of(7));
        assertThat(task("pit.4").estimate()).isEqualTo(Inputs.Range.EMPTY);
        assertThat(inputs().links()).containsExactly(new Inputs.Link("pit.3", "pit.2", 1, new Inputs.Range(3, 3, 5)));
    }

    @Test
    void rule_113_a_wait_is_under_way_by_its_own_day_and_never_by_hours() {
        project.add(TaskStore.TABLE, "id=pit.2", "stage=pit", "title=Cure", "kind=wait", "likely=7");
        project.add(HoursEntryStore.TABLE, "id=h1", "date=2026-11-20", "crew=ilse", "task=pit.2", "hours=1");
        assertThat(task("pit.2").started()).isEqualTo(Inputs.NONE);
        project.add(
                TaskStore.TABLE, "id=pit.3", "stage=pit", "title=Dry", "kind=wait", "likely=7", "started=2026-11-21");
        assertThat(task("pit.3").started()).isEqualTo(day("2026-11-21"));
    }

    @Test
    void rule_119_and_125_a_task_inherits_the_hazards_of_its_equipment_and_takes_its_company_from_them() {
        project.add(EquipmentStore.TABLE, "id=hoist", "name=Hoist", "hazards=lift");
        project.add(EquipmentStore.TABLE, "id=trestle", "name=Trestle", "quantity=4", "kept=yes", "hazards=hand");
        project.add(
                TaskStore.TABLE,
                "id=pit.2",
                "stage=pit",
                "title=Lift",
                "kind=work",
                "likely=10",
                "hazards=dust",
                "equipment=hoist trestle:2");
        project.add(TaskStore.TABLE, "id=pit.3", "stage=pit", "title=Sand", "kind=work", "likely=10", "hazards=dust");
        project.add(
                TaskStore.TABLE,
                "id=pit.4",
                "stage=pit",
                "title=Rig",
                "kind=work",
                "likely=10",
                "hazards=lift",
                "company=call",
                "company_reason=rigger on the line");
        Inputs.Task lift = task("pit.2");
        assertThat(lift.hazards()).containsExactly("dust", "lift", "hand");
        assertThat(lift.company()).isEqualTo(Inputs.Company.BY);
        assertThat(lift.equipment()).containsExactly(new Inputs.Need("hoist", 1), new Inputs.Need("trestle", 2));
        assertThat(task("pit.3").company()).isEqualTo(Inputs.Company.CALL);
        assertThat(task("pit.4").company()).isEqualTo(Inputs.Company.CALL);
    }

    @Test
    void rule_125_a_helper_is_kept_from_every_hazard_until_some_are_struck_out() {
        project.add(EquipmentStore.TABLE, "id=hoist", "name=Hoist", "hazards=lift");
        project.add(
                TaskStore.TABLE, "id=pit.2", "stage=pit", "title=Sand", "kind=work", "likely=10", "hazards=dust lime");
        project.add(CrewMemberStore.TABLE, "id=wren", "name=Wren", "access=helper");
        project.add(CrewMemberStore.TABLE, "id=nils", "name=Nils", "access=helper", "not_for=lift");
        assertThat(inputs().crew())
                .extracting(Inputs.Crew::notFor)
                .containsExactly(List.of(), HazardCodes.all(), List.of("lift"));
    }

    @Test
    void rule_111_an_id_means_the_same_thing_whatever_its_case() {
        project.add(TaskStore.TABLE, "id=Pit.2", "stage=PIT", "title=Wall", "kind=work", "likely=10");
        project.add(LinkStore.TABLE, "task=pit.2", "after=PIT.1");
        project.add(HoursEntryStore.TABLE, "id=h1", "date=2026-11-20", "crew=ILSE", "task=PIT.2", "hours=1");
        assertThat(task("Pit.2").stage()).isEqualTo("pit");
        assertThat(task("Pit.2").log()).extracting(Inputs.Worked::crew).containsExactly("ilse");
        assertThat(inputs().links()).extracting(Inputs.Link::task).containsExactly("Pit.2");
        assertThat(inputs().links()).extracting(Inputs.Link::after).containsExactly("pit.1");
    }

    @Test
    void rule_43_the_crews_own_lines_from_today_on_reserve_hours_unless_they_are_done() {
        project.add(EpisodeStore.TABLE, "id=E1", "title=Digging", "slot=2026-12-04");
        project.add(WeekLineStore.TABLE, "id=w1", "date=2026-11-24", "crew=ilse", "task=pit.1", "hours=4");
        project.add(WeekLineStore.TABLE, "id=w2", "date=2026-11-25", "crew=ilse", "task=pit.1", "hours=4", "done=yes");
        project.add(
                WeekLineStore.TABLE, "id=w3", "date=2026-11-26", "crew=ilse", "episode=E1", "from=09:00", "to=11:30");
        project.add(WeekLineStore.TABLE, "id=w4", "date=2026-11-27", "crew=ilse", "kind=rest");
        project.add(WeekLineStore.TABLE, "id=w5", "date=2026-11-27", "text=Sweep");
        assertThat(inputs().ownLines())
                .containsExactly(
                        new Inputs.OwnLine(day("2026-11-26"), "ilse", "", "E1", Inputs.LineKind.EDIT, 150),
                        new Inputs.OwnLine(day("2026-11-27"), "ilse", "", "", Inputs.LineKind.REST, 1440));
    }

    @Test
    void rule_67_published_implies_cut_and_cut_implies_footage_complete() {
        project.add(EpisodeStore.TABLE, "id=E1", "title=One", "slot=2026-11-20", "published=2026-11-20");
        project.add(EpisodeStore.TABLE, "id=E2", "title=Two", "slot=2026-11-27", "cut=2026-11-24", "editor=ilse");
        project.add(EpisodeStore.TABLE, "id=E3", "title=Three", "slot=2026-12-04", "footage_complete=2026-12-01");
        project.add(EpisodeStore.TABLE, "id=E4", "title=Yard", "kind=standby", "edit_likely=10");
        project.add(HoursEntryStore.TABLE, "id=h1", "date=2026-11-20", "crew=ilse", "episode=E3", "hours=3", "as=edit");
        project.add(HoursEntryStore.TABLE, "id=h2", "date=2026-11-27", "crew=ilse", "episode=E3", "hours=3", "as=edit");
        List<Inputs.Episode> episodes = inputs().episodes();
        int published = day("2026-11-20");
        assertThat(episodes.get(0).cut()).isEqualTo(published);
        assertThat(episodes.get(0).footageComplete()).isEqualTo(published);
        assertThat(episodes.get(1).footageComplete()).isEqualTo(day("2026-11-24"));
        assertThat(episodes.get(1).editor()).isEqualTo("ilse");
        assertThat(episodes.get(2).footageComplete()).isEqualTo(Inputs.NONE);
        assertThat(episodes.get(2).editedMinutes()).isEqualTo(180);
        assertThat(episodes.get(3).slot()).isEqualTo(Inputs.NONE);
        assertThat(episodes.get(3).editMinutes()).isEqualTo(new Inputs.Range(450, 600, 1050));
    }

    @Test
    void rule_34_an_episode_does_not_tell_a_dropped_task() {
        project.add(EpisodeStore.TABLE, "id=E1", "title=One", "slot=2026-12-04");
        project.add(
                TaskStore.TABLE, "id=pit.2", "stage=pit", "title=Gate", "kind=work", "likely=1", "dropped=2026-11-01");
        project.add(TellStore.TABLE, "episode=E1", "task=pit.2");
        project.add(TellStore.TABLE, "episode=E1", "task=pit.1", "share=0.5");
        assertThat(inputs().episodes().get(0).tells()).containsExactly(new Inputs.Tell("pit.1", 0.5));
    }

    @Test
    void a_gathering_to_come_adds_hands_and_one_of_the_past_does_not() {
        project.add(GatheringStore.TABLE, "id=g1", "date=2026-11-24", "hands=5", "hours=6");
        project.add(
                GatheringStore.TABLE, "id=g2", "date=2026-12-05", "hands=5", "hours=6", "come_share=0.8", "cost=40");
        assertThat(inputs().gatherings())
                .containsExactly(new Inputs.Gathering("g2", day("2026-12-05"), 5, 360, 0.8, 4000));
    }

    @Test
    void rule_121_rough_hours_of_a_stage_are_handed_over_in_minutes() {
        project.add(StageStore.TABLE, "id=roof", "name=Roof", "order=7", "weight=2", "side=yes", "rough_likely=100");
        assertThat(inputs().stages().get(1))
                .isEqualTo(new Inputs.Stage("roof", 7, 2, true, new Inputs.Range(4500, 6000, 10500)));
    }

    @Test
    void rule_99_the_settings_that_nobody_set_have_their_defaults() {
        Inputs inputs = inputs();
        assertThat(inputs.horizonMonths()).isEqualTo(36);
        assertThat(inputs.publishing())
                .isEqualTo(new Inputs.Publishing(
                        5,
                        day("2026-01-09"),
                        1,
                        20,
                        1,
                        14,
                        new Inputs.Range(960, 1440, 2160),
                        Inputs.NO_LIMIT,
                        1,
                        List.of(),
                        List.of(),
                        3,
                        0));
        assertThat(inputs.model()).isEqualTo(new Inputs.Model(1.15, 18, 6, -1, true, 15, 30, -1, -1));
        assertThat(inputs.orders()).isEqualTo(new Inputs.Orders(14, 5000));
        assertThat(inputs.weather().spellDays()).isEqualTo(2);
        assertThat(inputs.weather().lost()).hasSize(12).containsOnly(0.0);
        assertThat(inputs.kept()).isEqualTo(Inputs.Kept.NONE);
    }

    @Test
    void rule_137_the_settings_switch_off_that_deliveries_are_late_together() throws Exception {
        try (SmallProject off = new SmallProject(folder.resolve("off"), "model.late_together", "no")) {
            assertThat(off.basis().inputs().model())
                    .isEqualTo(new Inputs.Model(1.15, 18, 6, -1, true, 15, 30, -1, -1).leadsApart(true));
        }
    }

    @Test
    void the_inputs_come_back_equal_from_their_compressed_json() {
        project.add(TaskStore.TABLE, "id=pit.2", "stage=pit", "title=Gate", "kind=work");
        project.add(LinkStore.TABLE, "task=pit.2", "after=pit.1", "share=0.5");
        Inputs inputs = inputs();
        assertThat(ForecastJson.unpacked(ForecastJson.packed(inputs))).isEqualTo(inputs);
    }

    @Test
    void the_basis_carries_names_currency_and_version() {
        Basis basis = project.basis();
        assertThat(basis.names().task("pit.1")).isEqualTo("Dig");
        assertThat(basis.names().stage("pit")).isEqualTo("Pit");
        assertThat(basis.names().person("nobody")).isEqualTo("nobody");
        assertThat(basis.currency()).isEqualTo("EUR");
        assertThat(basis.moneyDigits()).isEqualTo(2);
        assertThat(basis.version()).isEqualTo(project.db().version());
        assertThat(basis.asOf()).isEqualTo(TODAY);
    }
}
