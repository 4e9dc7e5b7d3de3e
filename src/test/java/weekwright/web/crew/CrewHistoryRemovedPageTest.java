package weekwright.web.crew;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import weekwright.build.LinkStore;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class CrewHistoryRemovedPageTest {
    private ServerFixture server;
    private Visitor ilse;

    @BeforeEach
    void open() {
        server = ServerFixture.small();
        ilse = server.as("ilse");
    }

    @AfterEach
    void close() {
        server.close();
    }

    private void remove(String task) {
        Visitor.Reply page = ilse.get("/build/tasks/" + task + "/remove");
        assertThat(ilse.form(page).press("remove").status()).isEqualTo(303);
    }

    @Test
    void a_removed_task_comes_back_with_all_that_went_with_it() {
        var before = server.db().read(LinkStore.TABLE::values);
        remove("gate.3");
        assertThat(ilse.get("/build/tasks/gate.3").status()).isEqualTo(404);
        Visitor.Reply page = ilse.get("/crew/history/removed");
        assertThat(page.page().select("table.changes tbody tr").eachText())
                .containsExactly("25 Nov 2026, 09:00 Ilse Task “Forge the straps” with 1 link and 1 material Bring it"
                        + " back: Task “Forge the straps”");
        Visitor.Reply back = ilse.follow(ilse.form(page, "table.changes form").press("back"));
        assertThat(back.page().select(".flash p").text()).isEqualTo("It is back, with all that went with it.");
        assertThat(back.text()).endsWith("Nothing is gone.");
        assertThat(ilse.get("/build/tasks/gate.3").status()).isEqualTo(200);
        assertThat(server.db().read(LinkStore.TABLE::values)).isEqualTo(before);
    }

    @Test
    void what_was_brought_back_already_is_told_from_a_page_that_still_lists_it() {
        ilse.form(ilse.get("/log/entries/5/edit"), "form.apart-form").press("delete");
        remove("gate.1");
        Visitor.Reply page = ilse.get("/crew/history/removed");
        assertThat(page.page().select("table.changes tbody tr")).hasSize(2);
        assertThat(ilse.form(page, "table.changes tr:eq(1) form").press("back").status())
                .isEqualTo(303);
        Visitor.Form again = ilse.form(page, "table.changes tr:eq(1) form").with("answer", "another-key-of-this-form");
        assertThat(again.press("back").troubles())
                .containsExactly("Nothing of it is missing any more; it was brought back before");
    }

    @Test
    void nothing_removed_is_told() {
        assertThat(ilse.get("/crew/history/removed").text()).endsWith("Nothing is gone.");
        assertThat(server.as("noor").get("/crew/history/removed").status()).isEqualTo(403);
    }
}
