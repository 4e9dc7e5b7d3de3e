package weekwright.web.ahead;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import weekwright.base.Words;
import weekwright.forecast.KeptLevers;
import weekwright.forecast.KeptLeversStore;
import weekwright.funds.LedgerEntry;
import weekwright.funds.LedgerEntryStore;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SmallProject;
import weekwright.testkit.Visitor;

/** Levers on the sample, whose day is 25 November 2026. */
class AheadLeversPageTest {
    private static ServerFixture server;

    @BeforeAll
    static void open() {
        server = ServerFixture.sample();
    }

    @AfterAll
    static void close() {
        server.close();
    }

    private static Visitor.Reply levers(String words) {
        return server.as("ilse").get("/ahead/levers" + words);
    }

    private static List<String> errors(Document page) {
        return page.select(".error").eachText();
    }

    @Test
    void without_a_lever_it_says_what_to_do_and_draws_nothing() {
        Visitor.Reply page = levers("");
        assertThat(page.status()).isEqualTo(200);
        assertThat(page.page().select("h1").text()).isEqualTo("Change something and see what the forecast makes of it");
        assertThat(page.page().select("[data-answer] table")).isEmpty();
        assertThat(page.page().select("[data-answer]").attr("data-settling")).isEqualTo("false");
        assertThat(page.page().select(".kept-levers a").eachText())
                .containsExactly(
                        "A third of the supporters leave", "Wren comes two days more", "A film every second week");
        assertThat(page.page().select(".kept-levers a").eachAttr("href"))
                .containsExactly(
                        "/ahead/levers?supporters=-33", "/ahead/levers?hours.wren=16", "/ahead/levers?every=2");
        assertThat(page.page().select(".kept-levers small").eachText())
                .containsExactly(
                        "33 in a hundred fewer supporters", "Wren 16 hours a week more", "An episode every two weeks");
    }

    @Test
    void what_a_kept_lever_names_and_is_done_since_is_told() {
        try (ServerFixture own = ServerFixture.of(SmallProject::fillWithOnePerson)) {
            own.db().write("ilse", write -> {
                KeptLeversStore.TABLE.insert(
                        write, new KeptLevers("Both", new Words(List.of("prices=10", "drop=gone.1"))));
                KeptLeversStore.TABLE.insert(write, new KeptLevers("One", new Words(List.of("drop=gone.1"))));
                return null;
            });
            assertThat(own.as("ilse")
                            .get("/ahead/levers")
                            .page()
                            .select(".kept-levers small")
                            .eachText())
                    .containsExactly(
                            "Prices 10 in a hundred higher; the rest cannot be tried any more",
                            "Nothing of it can be tried any more");
        }
    }

    @Test
    void several_at_once_are_said_in_words_and_answered_stage_by_stage() {
        Document page = levers("?hours.ilse=-10&supporters=-33&prices=20&every=2&films=75&deposit=yes"
                        + "&grant=5000&grant_on=2027-02-01&helper=16&helper_trade=mason&helper_from=2027-01-04")
                .page();
        assertThat(page.select(".lead").text())
                .isEqualTo("With Ilse ten hours a week less, a helper who is a mason for 16 hours a week from 4 January"
                        + " 2027 on, 33 in a hundred fewer supporters, prices 20 in a hundred higher, an episode every"
                        + " two weeks, €5,000 paid in on 1 February 2027, films of 75 in a hundred of their length"
                        + " and orders sent as soon as the deposit is there.");
        assertThat(page.select("table caption").eachText()).containsExactly("When stages land", "Slots and money");
        assertThat(page.select("table").get(0).select("tbody tr").get(0).select("td"))
                .hasSize(4);
        assertThat(page.select(".caption").text())
                .startsWith("1,000 futures of each, in pairs with the same luck (seed 1). More are being drawn.");
        assertThat(page.select("[data-answer]").attr("data-settling")).isEqualTo("true");
        assertThat(page.select("[data-answer]").attr("data-address"))
                .isEqualTo("hours.ilse=-10&helper=16&helper_trade=mason&helper_from=2027-01-04&supporters=-33"
                        + "&prices=20&every=2&grant=5000.00&grant_on=2027-02-01&films=75&deposit=yes");
    }

    @Test
    void what_three_empty_slots_cost_is_said_in_money_and_days() {
        assertThat(server.as("ilse")
                        .get("/funds")
                        .page()
                        .select("a[href='/ahead/levers?empty=3']")
                        .text())
                .isEqualTo("What three empty slots would cost");
        Document page = levers("?empty=3").page();
        assertThat(page.select(".lead").text()).isEqualTo("With the next three slots left empty.");
        assertThat(page.select("table").get(1).select("tbody tr").first().text())
                .matches("Slots of the next twelve that stay empty, in the mean 0\\.\\d 3\\.\\d 3\\.\\d more");
        assertThat(page.select("table").get(1).select("tbody tr").last().text())
                .matches("Paid out by the end of November 2027, in the mean €[0-9,]+ €[0-9,]+ €[0-9,]+ less");
        assertThat(errors(levers("?empty=13").page()))
                .containsExactly("\"13\" is not between 0 and 12; write a whole number of these");
    }

    @Test
    void a_chosen_task_becomes_a_box_that_takes_it_out_again() {
        Document page =
                levers("?drop=wheel.5&postpone=wheel.6&until=2027-06-01").page();
        assertThat(page.select("[data-chosen] label").eachText())
                .containsExactly(
                        "“Saw out sixteen rim pieces” dropped",
                        "“Scarf and peg the rims on the floor” not before 1 June 2027");
        assertThat(page.select("select[name=drop] option[selected]")).isEmpty();
        assertThat(page.select("[data-chosen] input").eachAttr("value"))
                .containsExactly("wheel.5", "wheel.6:2027-06-01");
    }

    @Test
    void everything_that_cannot_be_is_said_at_once_and_kept_as_typed() {
        Document page = levers(
                        "?hours.ilse=90&helper=x&supporters=-101&prices=600&every=0.5&films=5&grant=-3"
                                + "&helper_trade=sailmaker&drop=none&postpone=wheel.6&postponed=wheel.6:2020-01-01&deposit=perhaps")
                .page();
        assertThat(errors(page))
                .contains(
                        "\"90\" is not between -80 and 80; write a whole number of these",
                        "\"x\" is not a whole number; write digits only, such as 3",
                        "\"sailmaker\" is no trade of this project; choose one of the list",
                        "\"-101\" is not between -100 and 500; write a whole number of these",
                        "\"600\" is not between -90 and 500; write a whole number of these",
                        "\"0.5\" is not a whole number; write digits only, such as 3",
                        "\"-3\" is under nothing; write what comes in",
                        "\"5\" is not between 10 and 300; write a whole number of these",
                        "\"none\" is no task that is still to be done; choose one of the list",
                        "is missing; say from which day on it may start",
                        "\"perhaps\" is neither yes nor empty; tick it, or leave it");
        assertThat(page.select("[data-answer] .trouble .head").text()).isEqualTo("Nothing is drawn yet.");
        assertThat(page.select("[data-answer] .trouble li").eachText())
                .contains("\"1 January 2020\" is not after today; write a later day");
        assertThat(page.select("[data-answer] table")).isEmpty();
        assertThat(page.select("#supporters").attr("value")).isEqualTo("-101");
        assertThat(page.select("#helper").attr("value")).isEqualTo("x");
    }

    @Test
    void levers_are_kept_under_a_name_tried_again_and_removed() throws Exception {
        try (ServerFixture own = ServerFixture.of(SmallProject::fillWithOnePerson)) {
            keepTryRemove(own.as("ilse"));
        }
    }

    private static void keepTryRemove(Visitor ilse) throws Exception {
        Visitor.Reply page = ilse.get("/ahead/levers?supporters=-33");
        Visitor.Reply kept = ilse.follow(ilse.form(page, "form[data-keep-levers]")
                .with("name", "A third leave")
                .send());
        assertThat(kept.page().select(".flash p").text()).isEqualTo("“A third leave” is kept.");
        assertThat(kept.page().select(".lead").text()).isEqualTo("With 33 in a hundred fewer supporters.");
        assertThat(kept.page().select(".kept-levers a").attr("href")).isEqualTo("/ahead/levers?supporters=-33");
        Visitor.Reply twice = ilse.form(ilse.get("/ahead/levers?prices=5"), "form[data-keep-levers]")
                .with("name", "a THIRD leave")
                .send();
        assertThat(twice.status()).isEqualTo(422);
        assertThat(twice.page().select(".error").text())
                .isEqualTo("\"a THIRD leave\" is there already; give it another name, or remove the other first");
        Visitor.Reply nothing = ilse.form(ilse.get("/ahead/levers"), "form[data-keep-levers]")
                .with("name", "")
                .send();
        assertThat(nothing.page().select("form[data-keep-levers] .trouble li").eachText())
                .containsExactly("is missing; give it a name", "is missing; pull a lever first");
        Visitor.Reply gone = ilse.follow(
                ilse.form(ilse.get("/ahead/levers"), ".kept-levers form").press("remove"));
        assertThat(gone.page().select(".flash p").text()).isEqualTo("These levers are no longer kept.");
        assertThat(gone.page().select(".kept-levers")).isEmpty();
    }

    @Test
    void an_empty_project_has_the_page_too_and_a_helper_has_not() {
        try (ServerFixture small = ServerFixture.of(SmallProject::fillWithOnePerson)) {
            Visitor.Reply page = small.as("ilse").get("/ahead/levers?supporters=50");
            assertThat(page.status()).isEqualTo(200);
            assertThat(page.text())
                    .contains("Levers that you keep stand here, to be tried again as the project goes on.");
            assertThat(page.page().select(".lead").text()).isEqualTo("With 50 in a hundred more supporters.");
        }
    }

    @Test
    void money_that_is_gone_is_said_to_be_and_not_to_hold_until_yesterday() {
        try (ServerFixture own = ServerFixture.of(db -> {
            SmallProject.fill(db);
            db.write("ilse", write -> {
                LedgerEntryStore.TABLE.insert(
                        write,
                        SmallProject.of(
                                LedgerEntry.class,
                                "id",
                                "ledger.99",
                                "date",
                                "2026-11-20",
                                "amount",
                                "-9000.00",
                                "kind",
                                "other-cost"));
                return null;
            });
        })) {
            Document page =
                    own.drawn().as("ilse").get("/ahead/levers?prices=20").page();
            assertThat(page.select("table:has(caption:contains(money)) tbody tr")
                            .eachText())
                    .contains(
                            "The cash holds until, in four of five futures under zero today under zero today the same",
                            "If pledges stopped today, until under the reserve today under the reserve today the same");
        }
    }
}
