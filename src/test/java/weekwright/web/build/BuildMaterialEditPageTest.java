package weekwright.web.build;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class BuildMaterialEditPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void every_column_of_a_line_is_changed_and_days_are_checked() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply page = ilse.get("/build/materials/mat.1/edit");
        assertThat(ilse.form(page).value("supplier")).isEqualTo("Sawmill upstream");
        Visitor.Reply refused = ilse.form(page)
                .with("ordered", "2026-11-26")
                .with("received", "2026-11-20")
                .with("task", "gate.2")
                .send();
        assertThat(refused.troubles())
                .containsExactly(
                        "\"20 November 2026\" is before ordered 26 November 2026; write 26 November 2026 or later,"
                                + " or change ordered",
                        "\"26 November 2026\" is after today, 25 November 2026; write the day it happened");
        assertThat(refused.page().select("details[open] summary").eachText())
                .contains("Part of the task, days, value, credit, lot");
        Visitor.Reply saved = ilse.follow(ilse.form(refused)
                .with("ordered", "2026-11-02")
                .with("received", "")
                .with("waste", "0.1")
                .send());
        assertThat(saved.page().select(".flash p").text())
                .isEqualTo("The line is saved. \"0.1\" is read as 0.1 %; if a share was meant, write 10.");
        assertThat(saved.page().select(".above a").text()).isEqualTo("Hang the gate");
    }

    @Test
    void a_line_is_removed_unless_money_was_paid_for_it() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor ilse = server.as("ilse");
            ilse.follow(ilse.form(ilse.get("/build/materials/mat.1"), "form:has(button[value=order])")
                    .with("paid", "90")
                    .press("order"));
            Visitor.Reply refused = ilse.form(ilse.get("/build/materials/mat.1/edit"), "form:has(button[value=remove])")
                    .press("remove");
            assertThat(refused.troubles())
                    .containsExactly("\"Oak boards\" has 1 payment in the books; take these out of the books first, or"
                            + " keep the line");
            Visitor.Reply gone =
                    ilse.follow(ilse.form(ilse.get("/build/materials/mat.2/edit"), "form:has(button[value=remove])")
                            .press("remove"));
            assertThat(gone.page().select(".flash p").text()).isEqualTo("Flat iron is off the list.");
            assertThat(ilse.get("/build/materials/mat.2").status()).isEqualTo(404);
        }
    }
}
