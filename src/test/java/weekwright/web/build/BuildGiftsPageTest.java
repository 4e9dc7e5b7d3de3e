package weekwright.web.build;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class BuildGiftsPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void thanks_are_owed_until_a_day_is_kept_and_the_register_goes_into_a_spreadsheet() {
        Visitor ilse = SERVER.as("ilse");
        assertThat(ilse.get("/build/gifts").page().select(".empty-sheet h2").text())
                .isEqualTo("Nothing was given yet");
        Visitor.Reply page = ilse.follow(ilse.form(ilse.get("/build/gifts/new"))
                .with("item", "=Apple wood")
                .with("from", "the orchard")
                .with("value", "260")
                .with("since", "2026-11-20")
                .send());
        assertThat(page.page().select("select[name=gift] option").eachText())
                .containsExactly("=Apple wood: the orchard");
        Visitor.Reply early = ilse.form(page, "form:has(button[value=thank])")
                .with("thanked", "2026-11-19")
                .press("thank");
        assertThat(early.troubles())
                .containsExactly("\"19 November 2026\" is before it was given on 20 November 2026; write a later day");
        Visitor.Reply thanked = ilse.follow(ilse.form(early, "form:has(button[value=thank])")
                .with("thanked", "2026-11-21")
                .press("thank"));
        assertThat(thanked.page().select(".flash p").text())
                .isEqualTo("The orchard was thanked for =Apple wood on 21 November.");
        assertThat(thanked.page().select("#owed-head")).isEmpty();
        assertThat(ilse.get("/build/gifts.csv").body())
                .isEqualTo("\uFEFFdate,what,quantity,unit,from,value,currency,credit,thanked,entered as\r\n"
                        + "2026-11-20,'=Apple wood,,,the orchard,260.00,EUR,,2026-11-21,stock yard.1\r\n");
        Visitor.Reply back = ilse.follow(ilse.form(thanked, ".flash form").send());
        assertThat(back.page().select("select[name=gift] option").eachText())
                .containsExactly("=Apple wood: the orchard");
        assertThat(back.page().select("td[data-label=Thanked]").eachText()).containsExactly("not yet");
    }
}
