package weekwright.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.base.Problem;
import weekwright.testkit.PlainProject;
import weekwright.testkit.Requirement;

/** What people get wrong in the files' contents: each fault and remark with its whole sentence. */
class BadInputTest {
    @TempDir
    Path temp;

    private PlainProject small() {
        return PlainProject.in(temp.resolve("files"));
    }

    private static void fault(PlainProject project, String... texts) {
        assertThat(project.faults()).containsExactly(texts);
        assertThat(project.read().data()).isEmpty();
    }

    private static void remark(PlainProject project, String... texts) {
        assertThat(project.read().faults()).isEmpty();
        assertThat(project.remarks()).containsExactly(texts);
        assertThat(project.read().data()).isPresent();
    }

    @Test
    @Requirement({"2.1.2", "2.1.3", "2.2.1", "2.2.3", "2.3.2"})
    void five_faults_in_three_files_are_all_told_at_once_in_the_order_of_the_files() {
        fault(
                small().change("tasks.csv", ",20,30,50,", ",20,3x,50,")
                        .change("tasks.csv", "12,2026-11-20", "12,2026-11-31")
                        .add("links.csv", "deck.3,deck.9,,,,")
                        .change("ledger.csv", "-126.00", "\"-126,00\"")
                        .change("ledger.csv", ",92.00,", ",92.005,"),
                "tasks.csv line 2, column likely: \"3x\" is not a number; write 12 or 2.5",
                "tasks.csv line 4, column left_on: \"2026-11-31\" is not a day of the calendar; write a day that"
                        + " exists, such as 2026-02-28",
                "links.csv line 6, column after: \"deck.9\" is not an id in tasks.csv; write one of deck.1, deck.2,"
                        + " deck.3",
                "ledger.csv line 2, column amount: \"92.005\" has more decimal places than the currency; write at most"
                        + " 2 places",
                "ledger.csv line 3, column amount: \"-126,00\" has a decimal comma; write -126.00");
    }

    @Test
    void a_supplier_twice_and_numbers_that_are_none_are_told() {
        fault(
                small().add("suppliers.csv", "s.2,SAWYER,12,yard,"),
                "suppliers.csv line 4, column telephone: \"12\" is not a telephone number; write at least three digits,"
                        + " with spaces, +, ( ), - and / alone between them",
                "suppliers.csv line 4, column email: \"yard\" is not an address for mail; write one such as"
                        + " yard@mill.example");
        fault(
                small().add("suppliers.csv", "s.2,SAWYER,,,"),
                "suppliers.csv line 4, column name: \"SAWYER\" stands twice, first in line 2; keep one of the two");
    }

    @Test
    void without_suppliers_csv_there_are_no_suppliers() {
        assertThat(small().remove("suppliers.csv").read().faults()).isEmpty();
    }

    @Test
    void rule_36_a_ring_of_links_is_written_out() {
        fault(
                small().add("links.csv", "deck.1,deck.3,,,,"),
                "links.csv line 4, column after: \"deck.1\" closes a ring in which tasks wait for each other: deck.1 →"
                        + " deck.2 → deck.3 → deck.1; take one of its links out");
    }

    @Test
    void rule_36_two_tasks_after_each_other_are_a_ring() {
        fault(
                small().file("links.csv", "task,after", "deck.1,deck.2", "deck.2,deck.1"),
                "links.csv line 2, column after: \"deck.2\" closes a ring in which tasks wait for each other: deck.2 →"
                        + " deck.1 → deck.2; take one of its links out");
    }

    @Test
    void rule_36_a_task_after_itself_is_a_fault() {
        fault(
                small().add("links.csv", "deck.3,deck.3,,,,"),
                "links.csv line 6, column after: \"deck.3\" is the task itself; name the task that comes before it");
    }

    @Test
    void rule_36_a_ring_of_1500_tasks_is_told_and_nothing_overflows() {
        List<String> tasks = new ArrayList<>(List.of("id,stage,title,kind"));
        List<String> links = new ArrayList<>(List.of("task,after"));
        for (int i = 0; i < 1500; i++) {
            tasks.add("t" + i + ",deck,Task " + i + ",work");
            links.add("t" + (i + 1) % 1500 + ",t" + i);
        }
        PlainProject small = bare().file("tasks.csv", tasks.toArray(String[]::new));
        List<String> faults =
                small.file("links.csv", links.toArray(String[]::new)).faults();
        assertThat(faults).hasSize(1);
        assertThat(faults.get(0))
                .startsWith("links.csv line 2, column after: \"t0\" closes a ring in which tasks wait for each other:"
                        + " t0 → t1 → t2 → ")
                .endsWith(" → t1498 → t1499 → t0; take one of its links out");
    }

    /** project.toml, crew, stages and one task: all that such a project needs and no more. */
    private PlainProject bare() {
        PlainProject small = small();
        small.only("project.toml", "crew.csv", "stages.csv");
        return small.file("tasks.csv", "id,stage,title,kind,likely", "deck.1,deck,Hew the beams,work,40");
    }

    @Test
    void a_project_with_one_task_is_accepted() {
        remark(bare());
    }

    @Test
    void an_empty_project_is_accepted() {
        remark(small().only("project.toml"));
    }

    @Test
    void a_project_without_cash_is_accepted() {
        remark(small().change("project.toml", "opening_cash = \"2000.00\"\n", "")
                .change("project.toml", "500.00", "0.00"));
    }

    @Test
    void a_shot_that_happens_once_is_not_lost_in_silence_when_its_task_is_done() {
        remark(
                small().change(
                                "shots.csv",
                                "sh1,e2,deck.1,Chips fly from the axe,close,yes,,",
                                "sh1,e2,piers.1,Chips fly from the axe,close,yes,yes,"),
                "shots.csv line 2, column captured: is missing for a must-have shot that happens once, and its task is"
                        + " done; write when it was captured, or what became of it in missed");
        remark(small().change(
                        "shots.csv",
                        "sh1,e2,deck.1,Chips fly from the axe,close,yes,,,,,,,",
                        "sh1,e2,piers.1,Chips fly from the axe,close,yes,yes,,,,,,the battery was flat"));
    }

    @Test
    void rule_48_a_task_whose_trade_nobody_has_is_a_remark() {
        remark(
                small().change("tasks.csv", ",16,24,12,,,,joiner,", ",16,24,12,,,,smith,"),
                "tasks.csv line 6, column trades: \"smith\" is no trade of anybody in the crew; add it to somebody's"
                        + " trades");
    }

    @Test
    void rule_48_more_hands_than_people_is_a_remark() {
        remark(
                small().remove("gatherings.csv").change("tasks.csv", ",16,24,12,,,,joiner,", ",16,24,12,,4,,joiner,"),
                "tasks.csv line 6, column hands: \"4\" people are needed, and no day of the next 12 months has more"
                        + " than 3 who can do it; ask for fewer hands, or add people, hours or trades");
    }

    @Test
    void rule_48_a_task_is_a_remark_when_everyone_is_away_for_a_year() {
        remark(
                small().file("days-off.csv", "crew,from,to,hours,reason", ",2026-11-25,2027-12-31,,winter")
                        .remove("week.csv")
                        .remove("gatherings.csv")
                        .file("tasks.csv", "id,stage,title,kind,likely", "deck.1,deck,Hew the beams,work,40")
                        .remove("links.csv")
                        .remove("hours.csv")
                        .remove("materials.csv")
                        .remove("tells.csv")
                        .remove("day-words.csv")
                        .remove("shots.csv")
                        .remove("clips.csv")
                        .remove("ledger.csv")
                        .change("notes/2026-05-29-the-last-stone.md", "tasks: piers.1\n", ""),
                "tasks.csv line 2, column hands: \"1\" person is needed, and no day of the next 12 months has anybody"
                        + " who can do it; ask for fewer hands, or add people, hours or trades");
    }

    @Test
    void rule_48_a_task_filmed_once_needs_an_operator_besides_the_hands() {
        remark(
                small().change("crew.csv", "mason joiner camera edit", "mason joiner edit")
                        .change("crew.csv", "ben,Ben,joiner camera,", "ben,Ben,joiner,"),
                "tasks.csv line 5, column camera: \"once\" needs somebody with the trade camera besides the hands, and"
                        + " no day of the next 12 months has one; give somebody the trade, or film it otherwise");
    }

    @Test
    void rule_48_and_125_who_is_kept_off_its_hazards_is_no_operator() {
        remark(
                small().change("crew.csv", "mason joiner camera edit", "mason joiner edit")
                        .change("crew.csv", "4,4,4,4,4,4,,,,,,,", "4,4,4,4,4,4,,,,,,lift,"),
                "tasks.csv line 5, column camera: \"once\" needs somebody with the trade camera besides the hands, and"
                        + " no day of the next 12 months has one; give somebody the trade, or film it otherwise");
    }

    @Test
    void rule_44_more_equipment_than_there_is_is_a_remark() {
        remark(
                small().change("tasks.csv", "hoist trestle:4", "hoist trestle:5"),
                "tasks.csv line 5, column equipment: \"trestle:5\" is more than the 4 there are, so the task never"
                        + " starts; change one of the two");
    }

    @Test
    void an_unknown_id_is_a_fault_that_offers_the_nearest() {
        fault(
                small().change("tasks.csv", "deck.3,deck,", "deck.3,dek,"),
                "tasks.csv line 6, column stage: \"dek\" is not an id in stages.csv; write deck");
    }

    @Test
    void unknown_ids_inside_lists_are_faults_too() {
        fault(
                small().change("tasks.csv", "hoist trestle:4", "hoist tressle:4")
                        .change("notes/2026-05-29-the-last-stone.md", "tasks: piers.1", "tasks: piers.1 piers.7"),
                "tasks.csv line 5, column equipment: \"tressle\" is not an id in equipment.csv; write trestle",
                "notes/2026-05-29-the-last-stone.md line 8, column tasks: \"piers.7\" is not an id in tasks.csv; write"
                        + " one of piers.1, piers.2");
    }

    @Test
    void rule_111_an_id_twice_is_a_fault_whatever_its_case() {
        fault(
                small().add("stages.csv", "Deck,The same again,,,,,,,,"),
                "stages.csv line 5, column id: \"Deck\" is the id of line 4 already; choose another one");
    }

    @Test
    void rule_111_an_id_has_letters_digits_and_three_signs_only() {
        fault(
                small().change("stages.csv", "deck,Oak deck", "deck/2,Oak deck"),
                "stages.csv line 4, column id: \"deck/2\" is not an id; use at most 40 letters, digits, - _ and . only",
                "tasks.csv line 4, column stage: \"deck\" is not an id in stages.csv; write deck/2",
                "tasks.csv line 5, column stage: \"deck\" is not an id in stages.csv; write deck/2",
                "tasks.csv line 6, column stage: \"deck\" is not an id in stages.csv; write deck/2");
    }

    @Test
    void more_than_24_hours_of_one_person_on_one_day_are_a_fault_that_names_the_entries() {
        fault(
                small().add("hours.csv", "h5,2026-05-04,ann,,piers.1,,,10,,,,,", "h6,2026-05-04,ann,,,,shop,6.5,,,,,"),
                "hours.csv line 7, column hours: \"6.5\" makes 24.5 hours of ann on 2026-05-04 (h1 8, h5 10, h6 6.5),"
                        + " and a day has 24; correct one of them");
    }

    @Test
    void one_entry_of_more_than_24_hours_is_a_fault() {
        fault(
                small().change("hours.csv", "h1,2026-05-04,ann,,piers.1,,,8,", "h1,2026-05-04,ann,,piers.1,,,24.01,"),
                "hours.csv line 2, column hours: \"24.01\" is over 24; write 0.01 to 24");
    }

    @Test
    void rule_105_hours_over_the_stated_hours_of_the_day_are_a_remark() {
        remark(
                small().add("hours.csv", "h5,2026-05-04,ann,,piers.1,,,1,,,,,"),
                "hours.csv line 6, column hours: \"1\" makes 9 hours of ann on 2026-05-04, whose stated hours that day"
                        + " are 8");
    }

    @Test
    void rule_113_an_entry_of_no_time_is_a_fault() {
        fault(
                small().change("hours.csv", "h1,2026-05-04,ann,,piers.1,,,8,", "h1,2026-05-04,ann,,piers.1,,,0,"),
                "hours.csv line 2, column hours: \"0\" is under 0.01; write 0.01 to 24");
    }

    @Test
    void negative_numbers_and_words_that_only_machines_take_for_numbers_are_faults() {
        fault(
                small().change("materials.csv", ",1.2,m3,", ",-1.2,m3,")
                        .change("materials.csv", ",180,210,260,", ",NaN,210,1e5,")
                        .change("hours.csv", ",6.33,", ",Infinity,")
                        .change("episodes.csv", ",5,8,12,", ",-5,8,12,"),
                "hours.csv line 3, column hours: \"Infinity\" is not hours; write 3.5",
                "materials.csv line 2, column price_low: \"NaN\" is not a number; write 12 or 2.5",
                "materials.csv line 2, column price_high: \"1e5\" is not a number; write 12 or 2.5",
                "materials.csv line 3, column quantity: \"-1.2\" is under 0.0001; write 0.0001 or more",
                "episodes.csv line 3, column edit_low: \"-5\" is less than nothing; write hours from 0 up");
    }

    @Test
    void decimal_commas_are_faults_also_between_semicolons() {
        fault(
                small().file("tells.csv", "episode;task;share", "e1;piers.1;", "e2;deck.1;0,5"),
                "tells.csv line 3, column share: \"0,5\" has a decimal comma; write 0.5");
    }

    @Test
    void dates_that_do_not_exist_or_are_written_otherwise_are_faults() {
        fault(
                small().change("stopped.csv", "2026-03-02", "2026-02-29")
                        .change("week.csv", "2026-11-26", "26.11.2026")
                        .change("incidents.csv", "2026-05-12", "2026-5-12")
                        .change("clips.csv", "2026-11-02", "+10000-01-01"),
                "stopped.csv line 2, column date: \"2026-02-29\" is not a day of the calendar; write a day that exists,"
                        + " such as 2026-02-28",
                "week.csv line 2, column date: \"26.11.2026\" is not a date; write year-month-day, such as 2026-03-05",
                "clips.csv line 2, column date: \"+10000-01-01\" is not a date; write year-month-day, such as"
                        + " 2026-03-05",
                "incidents.csv line 2, column date: \"2026-5-12\" is not a date; write year-month-day, such as"
                        + " 2026-03-05");
    }

    @Test
    void a_date_far_from_the_start_of_the_project_is_a_fault() {
        fault(
                small().change("ledger.csv", "2026-03-05", "1066-10-14")
                        .change("tasks.csv", "2026-11-02", "2126-11-02"),
                "tasks.csv line 4, column started: \"2126-11-02\" is too far from the start of the project, 2026-01-05;"
                        + " write a day from 1976-01-05 to 2086-01-05",
                "ledger.csv line 2, column date: \"1066-10-14\" is too far from the start of the project, 2026-01-05;"
                        + " write a day from 1976-01-05 to 2086-01-05");
    }

    @Test
    void rule_4_days_that_end_before_they_begin_and_days_off_for_centuries_are_faults() {
        fault(
                small().file(
                                "days-off.csv",
                                "crew,from,to,hours,reason",
                                "ann,2026-03-05,2026-03-04,,",
                                "ann,2026-03-05,2076-03-04,,"),
                "days-off.csv line 2, column to: \"2026-03-04\" is before from 2026-03-05; write 2026-03-05 or later,"
                        + " or change from",
                "days-off.csv line 3, column to: \"2076-03-04\" is over five years after from 2026-03-05; write it in"
                        + " parts");
    }

    @Test
    void rule_5_a_season_may_run_over_new_year_and_29_february_but_not_30_february() {
        remark(small().change("tasks.csv", "04-01,10-31", "11-15,02-29"));
        fault(
                small().change("tasks.csv", "04-01,10-31", "11-15,02-30"),
                "tasks.csv line 2, column season_to: \"02-30\" is not a day of the year; write month-day, such as"
                        + " 04-15");
    }

    @Test
    void half_a_season_is_a_fault() {
        fault(
                small().change("tasks.csv", "04-01,10-31", "04-01,"),
                "tasks.csv line 2, column season_to: is missing beside the other end of the season; write both, or"
                        + " neither");
    }

    @Test
    void utf_16_and_other_encodings_are_faults_with_line_and_byte() {
        PlainProject small = small();
        byte[] sixteen = small.text("tells.csv").getBytes(StandardCharsets.UTF_16);
        byte[] littleUnmarked = small.text("shots.csv").getBytes(StandardCharsets.UTF_16LE);
        byte[] windows = "id,name\r\ndeck,Gel\u00e4nder\r\n".getBytes(StandardCharsets.ISO_8859_1);
        small.bytes("tells.csv", sixteen).bytes("shots.csv", littleUnmarked).bytes("stages.csv", windows);
        fault(
                small,
                "stages.csv line 2: is not UTF-8 at byte 9 of this line; save it as CSV UTF-8 or plain UTF-8 text",
                "tells.csv line 1: is UTF-16, not UTF-8; save it as CSV UTF-8 or plain UTF-8 text",
                "shots.csv line 1: is UTF-16, not UTF-8; save it as CSV UTF-8 or plain UTF-8 text");
    }

    @Test
    void a_picture_in_the_place_of_a_file_is_a_fault() {
        PlainProject small = small();
        byte[] zip = new byte[200];
        System.arraycopy("PK\u0003\u0004 a b c".getBytes(StandardCharsets.US_ASCII), 0, zip, 0, 10);
        fault(
                small.bytes("tells.csv", zip),
                "tells.csv line 1: is not text at byte 11 of this line; save it as CSV UTF-8 or plain UTF-8 text");
    }

    @Test
    void control_characters_and_line_breaks_in_a_title_are_faults_with_their_position() {
        fault(
                small().change("stages.csv", "Oak deck", "Oak\u0007deck")
                        .change("shots.csv", "Chips fly from the axe", "\"Chips\nfly from the axe\""),
                "stages.csv line 4, column name: \"Oak\u0007deck\" has a character that is no text at character 4; take it"
                        + " out",
                "shots.csv line 2, column what: \"Chips\n"
                        + "fly from the axe\" has a line break or tab at character 6; write it on one line");
    }

    @Test
    void a_title_of_nothing_that_can_be_seen_is_missing() {
        fault(
                small().change("stages.csv", "Oak deck", "\u200b \ufeff"),
                "stages.csv line 4, column name: is missing; write what the stage is called");
    }

    @Test
    void a_first_day_to_come_is_a_remark_that_says_what_follows() {
        assertThat(small().change("project.toml", "started = \"2026-01-05\"", "started = \"2026-12-01\"")
                        .read()
                        .problems())
                .filteredOn(problem -> problem.file().equals("project.toml"))
                .extracting(Problem::text)
                .containsExactly(
                        "project.toml, key started: \"2026-12-01\" is after today, 2026-11-25; hours can be logged"
                                + " from that day on; write the day it began if it has");
    }
}
