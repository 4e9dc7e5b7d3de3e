package weekwright.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.testkit.PlainProject;

/** What people get wrong in the shape of the files, with whole sentences; the CSV grammar is that of RFC 4180. */
class FileStructureTest {
    @TempDir
    Path temp;

    private PlainProject small() {
        return PlainProject.in(temp.resolve("files"));
    }

    @Test
    void a_missing_column_that_is_needed_is_told_once_at_the_header() {
        assertThat(small().file("cautions.csv", "for,text", "hands,Wash at once", "camera,Stand back")
                        .faults())
                .containsExactly("cautions.csv line 1: \"hazard\" is missing in the header; add the column");
    }

    @Test
    void an_unknown_column_is_told_with_the_nearest_known_one() {
        assertThat(small().file("links.csv", "task,after,shere", "deck.2,deck.1,0.5")
                        .faults())
                .containsExactly("links.csv line 1: \"shere\" is not a column of links.csv; write share");
    }

    @Test
    void a_column_that_stands_twice_is_told() {
        assertThat(small().file("links.csv", "task,after,task", "deck.2,deck.1,deck.2")
                        .faults())
                .containsExactly("links.csv line 1: \"task\" stands twice in the header; keep one of the columns");
    }

    @Test
    void a_row_with_too_few_and_one_with_too_many_fields_are_told_with_both_counts() {
        assertThat(small().file("links.csv", "task,after,share", "deck.2,deck.1", "deck.3,deck.2,1,9")
                        .faults())
                .containsExactly(
                        "links.csv line 2: has 2 cells, the header has 3; write as many as the header",
                        "links.csv line 3: has 4 cells, the header has 3; write as many as the header");
    }

    @Test
    void a_quote_that_is_not_closed_is_told_where_it_opens() {
        assertThat(small().file("links.csv", "task,after", "deck.2,\"deck.1", "deck.3,deck.2")
                        .faults())
                .containsExactly("links.csv line 2: opens a quote that is never closed; close it");
    }

    @Test
    void an_empty_file_has_no_header() {
        assertThat(small().bytes("links.csv", new byte[0]).faults())
                .containsExactly("links.csv: has no header; write the columns' names into the first line");
    }

    @Test
    void a_byte_order_mark_semicolons_and_line_feeds_are_read() {
        assertThat(small().bytes("links.csv", "\uFEFFtask;after\ndeck.2;deck.1\n".getBytes(StandardCharsets.UTF_8))
                        .faults())
                .isEmpty();
    }

    @Test
    void utf_16_is_no_utf_8() {
        assertThat(small().bytes("links.csv", "task,after\r\n".getBytes(StandardCharsets.UTF_16))
                        .faults())
                .containsExactly("links.csv line 1: is UTF-16, not UTF-8; save it as CSV UTF-8 or plain UTF-8 text");
    }

    @Test
    void a_newer_format_is_refused_by_its_number() {
        assertThat(small().change("project.toml", "format = 1", "format = 2").faults())
                .containsExactly(
                        "project.toml line 1, key format: \"2\" is newer than this program, which knows format 1; use a newer weekwright");
    }

    @Test
    void a_missing_project_toml_is_told() {
        assertThat(small().remove("project.toml").faults())
                .containsExactly(
                        "project.toml: is missing; write one with at least format, name, started, currency and zone");
    }

    @Test
    void a_quote_in_the_middle_of_a_field_is_told() {
        assertThat(small().file("links.csv", "task,after", "deck.2,de\"ck.1", "deck.3,deck.2")
                        .faults())
                .containsExactly(
                        "links.csv line 2: has a quote in a cell without quotes around it; put quotes around the whole cell and write the inner one twice");
    }

    @Test
    void text_after_a_closing_quote_is_told() {
        assertThat(small().file("links.csv", "task,after", "deck.3,deck.2", "deck.2,\"deck\".1")
                        .faults())
                .containsExactly("links.csv line 3: has text after a closing quote; write a quote inside quotes twice");
    }

    @Test
    void a_toml_value_of_a_wrong_type_is_told_at_its_key() {
        assertThat(small().change("project.toml", "name = \"The oak footbridge\"", "name = 7")
                        .change("project.toml", "started = \"2026-01-05\"", "started = [2026]")
                        .faults())
                .containsExactly(
                        "project.toml line 2, key name: \"7\" is not text; write it between quotes",
                        "project.toml line 3, key started: is a list or table, where one value belongs; write one value");
    }

    @Test
    void toml_that_is_no_toml_is_told_at_its_line() {
        assertThat(small().change("project.toml", "currency = \"EUR\"", "currency = EUR")
                        .faults())
                .containsExactly(
                        "project.toml line 4: cannot be read: Unexpected 'E', expected ', \", ''', \"\"\", a number, a boolean, a date/time, an array, or a table; write key = value lines");
    }

    @Test
    void a_note_without_a_header_and_one_whose_header_never_ends_are_told() {
        assertThat(small().file("notes/2026-05-29-the-last-stone.md", "The last stone stands.")
                        .faults())
                .containsExactly(
                        "notes/2026-05-29-the-last-stone.md line 1: has no lines between two lines ---; begin the note with them");
        assertThat(small().file("notes/2026-05-29-the-last-stone.md", "---", "id: n1", "title: The last stone")
                        .faults())
                .containsExactly(
                        "notes/2026-05-29-the-last-stone.md line 1: opens a header that is never closed; write a line --- after it");
    }

    @Test
    void all_faults_of_a_notes_header_are_told_at_once_with_the_date_in_its_name() {
        assertThat(small().file(
                                "notes/2026-05-29-the-last-stone.md",
                                "---",
                                "id: n1",
                                "date: 2026-05-28",
                                "titel: The last stone",
                                "public: perhaps",
                                "id: n2",
                                "a word",
                                "---")
                        .faults())
                .containsExactly(
                        "notes/2026-05-29-the-last-stone.md line 1, column title: is missing; write what it is about",
                        "notes/2026-05-29-the-last-stone.md line 3, column date: \"2026-05-28\" is not the date in the file's name, 2026-05-29; change one of the two",
                        "notes/2026-05-29-the-last-stone.md line 4: \"titel\" is not a key of a build note; write title",
                        "notes/2026-05-29-the-last-stone.md line 5: \"public\" is not a key of a build note; write one of id, title, date, author, stage, episode, tasks, visible, visible_from, photo",
                        "notes/2026-05-29-the-last-stone.md line 6, column id: \"n2\" stands twice; keep one of the lines",
                        "notes/2026-05-29-the-last-stone.md line 7: \"a word\" is no line key: value; write one of id, title, date, author, stage, episode, tasks, visible, visible_from, photo");
    }

    @Test
    void a_note_whose_file_has_no_date_is_told_the_name_it_should_have() {
        PlainProject small = small();
        String text = small.text("notes/2026-05-29-the-last-stone.md");
        assertThat(small.remove("notes/2026-05-29-the-last-stone.md")
                        .bytes("notes/stone.md", text.getBytes(StandardCharsets.UTF_8))
                        .faults())
                .containsExactly(
                        "notes/stone.md line 1: \"stone.md\" is not named DATE-slug.md; name it 2026-05-29-the-last-stone.md");
    }
}
