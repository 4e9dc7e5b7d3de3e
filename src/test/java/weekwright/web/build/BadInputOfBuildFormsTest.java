package weekwright.web.build;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.testkit.BadInput.CUT;
import static weekwright.testkit.BadInput.FAR;

import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

/** What people and broken programs send to the forms of Build, and what they are told. */
class BadInputOfBuildFormsTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    private static List<String> troubles(String address, String field, String text) {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply refused = ilse.form(ilse.get(address)).with(field, text).send();
        assertThat(refused.status()).as("%s %s", field, text).isEqualTo(422);
        assertThat(ilse.form(refused).value(field)).isEqualTo(text);
        return refused.troubles();
    }

    @Test
    void titles_that_are_nothing_too_long_or_of_several_lines() {
        String edit = "/build/tasks/gate.1/edit";
        assertThat(troubles(edit, "title", ""))
                .containsExactly("is missing; write what is done, such as Raise the wheel shaft");
        assertThat(troubles(edit, "title", "a".repeat(201)))
                .containsExactly(CUT + " is too long; write at most 200 characters");
    }

    @Test
    void numbers_that_are_none() {
        String edit = "/build/tasks/gate.1/edit";
        assertThat(troubles(edit, "likely", "Infinity"))
                .containsExactly("\"Infinity\" is not a number; write 12 or 2.5");
        assertThat(troubles(edit, "likely", "1E+2147483647"))
                .containsExactly("\"1E+2147483647\" is not a number; write 12 or 2.5");
        assertThat(troubles(edit, "likely", "١٢")).containsExactly("\"١٢\" is not a number; write 12 or 2.5");
        assertThat(troubles(edit, "likely", "9".repeat(200)))
                .containsExactly("\"" + "9".repeat(59) + "…\" is too large; write at most twelve digits");
        assertThat(troubles(edit, "likely", "-1")).containsExactly("\"-1\" is under 0; write 0 to 100000");
        assertThat(troubles(edit, "likely", "0"))
                .containsExactly("\"0\" is no work; write the hours, or leave it empty if nobody knows yet");
        assertThat(troubles(edit, "low", "13")).containsExactly("\"13\" is over the likely 12; write 12 or less");
        assertThat(troubles(edit, "hands", "0")).containsExactly("\"0\" is under 1; write 1 to 100");
        assertThat(troubles(edit, "least_hands", "2")).containsExactly("\"2\" is over the 1 of hands; write 1 or less");
    }

    @Test
    void days_and_seasons_that_are_none() {
        String edit = "/build/tasks/gate.1/edit";
        assertThat(troubles(edit, "not_before", "2026-02-29"))
                .hasSize(1)
                .first()
                .asString()
                .startsWith("\"2026-02-29\" is not a day of the calendar");
        assertThat(troubles(edit, "not_before", "1066-10-14")).containsExactly("\"14 October 1066\"" + FAR);
        assertThat(troubles(edit, "season_from", "04-01"))
                .containsExactly("is missing beside the other end of the season; write both, or neither");
    }

    @Test
    void a_field_sent_twice_or_that_nobody_asked_for() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply twice = ilse.form(ilse.get("/build/equipment/new"))
                .with("name", "One", "Two")
                .send();
        assertThat(twice.troubles()).containsExactly("was sent twice; send it once");
        Visitor.Reply stranger = ilse.form(ilse.get("/build/stock/new"))
                .with("item", "Oak")
                .with("colour", "brown")
                .send();
        assertThat(stranger.troubles())
                .containsExactly("\"colour\" is not a field of this form; load the page again and fill it in");
    }

    @Test
    void things_that_are_not_there_or_were_changed_or_removed_meanwhile() {
        Visitor ilse = SERVER.as("ilse");
        for (String address : List.of(
                "/build/tasks/1%20OR%201/split",
                "/build/stock/9223372036854775808/edit",
                "/build/equipment/none/edit",
                "/build/materials/none/edit",
                "/build/stages/none/tasks/edit",
                "/build/stages/none/remove")) {
            assertThat(ilse.get(address).status()).as(address).isEqualTo(404);
        }
        ilse.follow(ilse.form(ilse.get("/build/stock/new"))
                .with("item", "Ash poles")
                .send());
        Visitor.Reply page = ilse.get("/build/stock/yard.1/edit");
        ilse.follow(ilse.form(ilse.get("/build/stock/yard.1/edit"), "form.form:not(.one)")
                .with("place", "barn")
                .send());
        assertThat(ilse.form(page, "form.form:not(.one)")
                        .with("place", "loft")
                        .send()
                        .status())
                .isEqualTo(409);
        ilse.follow(ilse.form(ilse.get("/build/stock/yard.1/edit"), "form:has(button[value=remove])")
                .press("remove"));
        Visitor.Reply lost =
                ilse.form(page, "form.form:not(.one)").with("place", "loft").send();
        assertThat(lost.status()).isEqualTo(410);
        assertThat(lost.page().select(".facts dt").eachText()).containsExactly("Item", "Place", "Dry months");
    }

    @Test
    void text_of_any_script_and_text_that_looks_like_a_programme_is_kept_as_it_is() {
        Visitor ilse = SERVER.as("ilse");
        for (String title : List.of(
                "<script>alert(1)</script>", "{{ 7 * 7 }}", "'; DROP TABLE tasks; --", "קורה 木 🪵", "50 %n%n")) {
            Visitor.Reply saved = ilse.follow(ilse.form(ilse.get("/build/tasks/gate.3/edit"))
                    .with("title", title)
                    .send());
            assertThat(saved.page().select("h1").text()).isEqualTo(title);
        }
    }

    @Test
    void a_form_sent_twice_adds_one() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Form form = ilse.form(ilse.get("/build/equipment/new")).with("name", "Capstan");
        Visitor.Reply first = form.send();
        Visitor.Reply second = form.send();
        assertThat(second.to()).isEqualTo(first.to());
        assertThat(ilse.get("/build/equipment").page().select("tbody th").eachText())
                .filteredOn("Capstan"::equals)
                .hasSize(1);
    }
}
