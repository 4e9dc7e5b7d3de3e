package weekwright.web.episodes;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.testkit.BadInput.CUT;
import static weekwright.testkit.BadInput.FAR;
import static weekwright.testkit.BadInput.day;
import static weekwright.testkit.BadInput.forged;
import static weekwright.testkit.BadInput.hours;
import static weekwright.testkit.BadInput.number;
import static weekwright.testkit.BadInput.text;
import static weekwright.testkit.BadInput.typed;
import static weekwright.testkit.BadInput.whole;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.BadInput;
import weekwright.testkit.ServerFixture;

/** Every field of the forms of episodes and shots against what people and machines send, and each with all faults at once. */
class EpisodesBadInputTest {
    private static final ServerFixture SERVER = ServerFixture.small();
    private static final BadInput FORMS = new BadInput(SERVER.as("ilse"), "main form.form[method=post]");

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void an_episode() {
        FORMS.refused(
                SERVER,
                "/episodes/new",
                Map.of("title", "The gate"),
                text("title"),
                List.of(
                        typed("title", "", "is missing; write what it is called"),
                        typed("title", "\u200B", "is missing; write what it is called"),
                        typed(
                                "number",
                                "12",
                                "\"12\" is the number of \"Boards for the gate\" already; choose another number"),
                        typed("number", "-1", "\"-1\" is under 0; write 0 to 100000"),
                        typed(
                                "slot",
                                "2026-12-04",
                                "\"4 December 2026\" is the slot of \"Boards for the gate\" already; choose another"
                                        + " date"),
                        typed("slot", "1066-10-14", "\"14 October 1066\"" + FAR),
                        typed(
                                "slot",
                                "2026-11-13",
                                "\"13 November 2026\" is past, and the episode is not published; choose a day from 25"
                                        + " November 2026 on; for a film that is out leave it empty, and mark then when"
                                        + " it came out"),
                        typed("minutes", "0", "\"0\" is no length; write its length in minutes, or leave it empty"),
                        typed("minutes", "-1", "\"-1\" is under 0; write 0 to 1000"),
                        typed("minutes", "1001", "\"1001\" is over 1000; write 0 to 1000"),
                        typed("kind", "film", "\"film\" is not a known word here; write one of build, side, standby"),
                        typed("editor", "wil", "\"wil\" is nobody of the crew; choose one of the list")),
                whole("number"),
                day("slot"),
                number("minutes"),
                hours("edit_low"),
                hours("edit_likely"),
                hours("edit_high"),
                List.of(
                        forged("task.0", "roof.1", "", "\"roof.1\" is no task of this project; choose one of the list"),
                        typed("share.0", "0.5", "is missing beside its share; choose the task, or empty the row")));
        assertThat(FORMS.atOnce(
                        "/episodes/new",
                        Map.of(
                                "title",
                                "",
                                "number",
                                "x",
                                "slot",
                                "2026-12-04",
                                "minutes",
                                "1001",
                                "edit_low",
                                "9",
                                "edit_likely",
                                "4")))
                .containsExactly(
                        "\"x\" is not a whole number; write digits only, such as 3",
                        "\"1001\" is over 1000; write 0 to 1000",
                        "is missing; write what it is called",
                        "\"9\" is over the likely 4; write 4 or less",
                        "\"4 December 2026\" is the slot of \"Boards for the gate\" already; choose another date");
    }

    @Test
    void a_shot() {
        FORMS.refused(
                SERVER,
                "/week/shots/new",
                Map.of("what", "The gate drops home", "task", "gate.2"),
                List.of(
                        typed("what", "", "is missing; write what the picture shows"),
                        typed("what", "a".repeat(501), CUT + " is too long; write at most 500 characters"),
                        typed("what", "a\nb", "\"a b\" has a line break or tab at character 2; write it on one line"),
                        typed("task", "roof.1", "\"roof.1\" is no task of this project; choose one of the list"),
                        typed(
                                "size",
                                "huge",
                                "\"huge\" is not a known word here; write one of wide, medium, close, insert,"
                                        + " time-lapse"),
                        forged("must", "maybe", "", "\"maybe\" is neither yes nor empty; write yes, or leave it empty"),
                        forged(
                                "once",
                                "maybe",
                                "",
                                "\"maybe\" is neither yes nor empty; write yes, or leave it empty")));
        assertThat(FORMS.atOnce("/week/shots/new", Map.of("what", "a".repeat(501), "task", "a b")))
                .containsExactly(
                        CUT + " is too long; write at most 500 characters",
                        "\"a b\" is not an id; use at most 40 letters, digits, - _ and . only");
    }
}
