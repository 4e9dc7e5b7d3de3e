package weekwright.web.funds;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.base.Id;
import weekwright.build.CrewMemberStore;
import weekwright.funds.SupporterMonth;
import weekwright.render.Formats;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class FundsSupportersPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void a_month_is_counted() {
        Visitor ilse = SERVER.as("ilse");
        Visitor.Reply page = ilse.get("/funds/supporters?month=2026-11");
        assertThat(page.page().select("h1").text()).isEqualTo("Supporters of November 2026");
        assertThat(ilse.form(page).value("start.plank")).isEqualTo("69");
        Visitor.Reply refused = ilse.form(page).with("left.plank", "99").send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly("\"99\" is more than the 74 who were there or joined; write 74 or less");
        assertThat(ilse.form(refused).value("left.plank")).isEqualTo("99");
        Visitor.Reply saved = ilse.follow(ilse.form(refused)
                .with("start.plank", "70")
                .with("left.plank", "2")
                .send());
        assertThat(saved.page().select(".flash p").text())
                .isEqualTo("Supporters of November 2026 are counted. \"70\" is not the 69 with whom the month"
                        + " before ended.");
    }

    @Test
    void months_go_back_to_the_first_of_the_project_and_on_to_this_one() {
        Visitor ilse = SERVER.as("ilse");
        assertThat(ilse.get("/funds/supporters?month=2026-09")
                        .page()
                        .select(".above a")
                        .eachText())
                .containsExactly("Funds", "the month after");
        assertThat(ilse.get("/funds/supporters?month=2026-10")
                        .page()
                        .select(".above a")
                        .eachText())
                .containsExactly("Funds", "the month before", "the month after");
        assertThat(ilse.get("/funds/supporters").page().select(".above a").eachText())
                .containsExactly("Funds", "the month before");
        Visitor.Reply early = ilse.get("/funds/supporters?month=1066-10");
        assertThat(early.status()).isEqualTo(404);
        assertThat(early.text())
                .contains("\"October 1066\" is before the first month, September 2026; count that month or a later"
                        + " one.");
        Visitor.Reply late = ilse.get("/funds/supporters?month=2026-12");
        assertThat(late.status()).isEqualTo(404);
        assertThat(late.text()).contains("\"December 2026\" has not begun; count a month up to November 2026.");
    }

    @Test
    void a_month_that_has_not_begun_is_told_once_however_many_levels_there_are() {
        try (ServerFixture two = ServerFixture.sample()) {
            Visitor person = two.as(two.db()
                    .read(read -> CrewMemberStore.TABLE.values(read).get(0).id().value()));
            Visitor.Reply refused = person.form(person.get("/funds/supporters"))
                    .with("month", "2026-12")
                    .send();
            assertThat(refused.page().select("fieldset.level").size()).isGreaterThan(1);
            assertThat(refused.troubles())
                    .containsExactly("\"December 2026\" has not begun; count a month up to November 2026");
        }
    }

    @Test
    void the_year_behind_and_the_year_ahead_are_drawn_with_the_same_figures_as_table_and_sheet() {
        try (ServerFixture server = ServerFixture.small().drawn()) {
            Visitor ilse = server.as("ilse");
            Element section = ilse.get("/funds/supporters").page().selectFirst("section[aria-labelledby=ahead-head]");
            assertThat(section.select(".remark").text()).isEqualTo("400 futures drawn from 25 November, seed 1.");
            assertThat(section.select("svg.wide > title").eachText())
                    .containsExactly(
                            "Supporters on the first of each month, with the range of eight in ten",
                            "Paid out in each month, with the range of eight in ten");
            List<List<String>> rows = section.select("tbody tr").stream()
                    .map(row -> row.children().eachText())
                    .toList();
            assertThat(rows).hasSize(12);
            assertThat(rows.get(0).get(0)).isEqualTo("December 2026");
            assertThat(rows.get(11).get(0)).isEqualTo("November 2027");
            assertThat(rows)
                    .allSatisfy(row -> assertThat(row.subList(1, 4).stream()
                                    .map(Integer::valueOf)
                                    .toList())
                            .isSorted());
            String[] sheet = ilse.get("/funds/supporters.csv").body().split("\r\n");
            assertThat(sheet[0])
                    .endsWith("month,supporters,joined,left,surge,paid_out,supporters_low,supporters_middle,"
                            + "supporters_high,paid_out_low,paid_out_middle,paid_out_high,source");
            assertThat(sheet[3])
                    .isEqualTo(
                            "2026-11,69,5,1,,317.40,,,,,,,\"counted and booked by 25 November 2026, amounts in EUR\"");
            assertThat(sheet[4])
                    .startsWith("2026-12,,,,,," + String.join(",", rows.get(0).subList(1, 4)) + ",")
                    .endsWith(
                            ",\"forecast of 25 November 2026, 400 futures, seed 1, from one in ten below to one in ten"
                                    + " above, amounts in EUR\"");
        }
    }

    /** A single month, and one value only: a line without a height. */
    @Test
    void without_a_forecast_the_year_behind_stands_alone() {
        LocalDate today = LocalDate.of(2026, 11, 25);
        SupportersAhead ahead = SupportersAhead.of(
                today,
                Optional.empty(),
                List.of(new SupporterMonth(
                        YearMonth.of(2026, 11), new Id("plank"), 69, Optional.empty(), Optional.empty(), false)),
                List.of(),
                new Formats("EUR", today));
        assertThat(ahead.drawings()).singleElement().asString().contains(">69<");
        assertThat(ahead.tables()).isEmpty();
        assertThat(ahead.remark()).isEmpty();
    }

    @Test
    void a_helper_counts_none() {
        assertThat(SERVER.as("noor").get("/funds/supporters").status()).isEqualTo(403);
    }

    /** 66 and 69 supporters pledge 5.00, 8 % are kept, paid out on the 6th: 303.60 and 317.40, worked by hand. */
    @Test
    void income_expected_stands_beside_what_was_received() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor.Reply page = server.as("ilse").get("/funds/supporters");
            assertThat(page.page().select(".income tbody tr").eachText())
                    .containsExactly(
                            "November 2026 so far 69 5 1 €317.40 €317.40 €0",
                            "October 2026 66 6 3 €303.60 €303.60 €0",
                            "September 2026 60 8 2 €276 €0 −€276");
            assertThat(page.page().select(".tax").text())
                    .isEqualTo("Tax. Pledges are usually taxable income, and a gift in return may change that. These"
                            + " pages keep no accounts for an office: ask a licensed accountant or your tax office.");
        }
    }

    /** By hand: 88 left of 2,549 counted in 18 months; 229 × 89 / 2,569 = 7.93, so 8, and 235 − 229 + 8 = 14. */
    @Test
    void a_count_alone_is_split_by_the_usual_rate_and_only_filled_in() {
        try (ServerFixture server = ServerFixture.sample()) {
            Visitor ilse = server.as("ilse");
            String address = "/funds/supporters?month=2026-07";
            assertThat(ilse.get(address).page().select(".usual")).isEmpty();
            ilse.follow(ilse.form(ilse.get(address), "form.supporters")
                    .with("joined.peg", "")
                    .with("left.peg", "")
                    .send());
            Visitor.Reply alone = ilse.get(address);
            assertThat(alone.page().select(".usual p, .usual li").eachText())
                    .containsExactly(
                            "Who left can be taken from the usual rate: one more than all who left in the whole months"
                                    + " that say it, of twenty more than all who were there at their start. Who joined"
                                    + " follows from the next month’s count.",
                            "Peg: 88 left of 2,549 counted in 18 months, which makes 8 of these 229; with 235 on the"
                                    + " first of August 2026, 14 joined.",
                            "Fill in the usual rate It only fills in Joined and Left above; Keep the counts keeps"
                                    + " them.");
            Visitor.Reply filled = ilse.form(alone, "form.supporters").press("usual");
            assertThat(filled.status()).isEqualTo(200);
            assertThat(filled.page().select(".flash p").text())
                    .isEqualTo("Joined and left stand in the form now, by the usual rate; nothing is saved yet.");
            assertThat(ilse.form(filled, "form.supporters").value("joined.peg")).isEqualTo("14");
            assertThat(ilse.form(filled, "form.supporters").value("left.peg")).isEqualTo("8");
            assertThat(ilse.form(filled, "form.supporters").value("joined.beam"))
                    .isEqualTo("5");
            assertThat(filled.page().select(".usual")).isEmpty();
            assertThat(ilse.form(ilse.get(address), "form.supporters").value("left.peg"))
                    .isEmpty();
            Visitor.Reply saved =
                    ilse.follow(ilse.form(filled, "form.supporters").send());
            assertThat(saved.page().select(".flash p").text()).isEqualTo("Supporters of July 2026 are counted.");
            assertThat(ilse.form(ilse.get(address), "form.supporters").value("left.peg"))
                    .isEqualTo("8");
        }
    }

    /** By hand: the middle of the 18 unmarked months is 24, so 48 it takes; with March unmarked it is the tenth of 19, 24 again. */
    @Test
    void a_month_that_stands_out_is_suggested_and_marked_by_a_button() {
        try (ServerFixture server = ServerFixture.sample()) {
            Visitor ilse = server.as("ilse");
            assertThat(ilse.get("/funds/supporters")
                            .page()
                            .select(".surges li, .surges p")
                            .eachText())
                    .containsExactly("March 2026: 81 joined, and it is marked.", rule(18));
            String march = "/funds/supporters?month=2026-03";
            ilse.follow(ilse.form(ilse.get(march), "form.supporters")
                    .without("surge.peg")
                    .without("surge.beam")
                    .without("surge.bucket")
                    .send());
            Visitor.Reply page = ilse.get("/funds/supporters");
            assertThat(page.page().select(".surges li, .surges p").eachText())
                    .containsExactly("March 2026: 81 joined. Did one film bring them? Mark it: March 2026", rule(19));
            Visitor.Reply open = ilse.get("/funds/supporters");
            Visitor.Reply marked = ilse.follow(ilse.form(page, ".surges form").press("surge"));
            assertThat(marked.page().select("h1").text()).isEqualTo("Supporters of March 2026");
            assertThat(marked.page().select(".flash p").text())
                    .isEqualTo("March 2026 is marked as filled by one film.");
            assertThat(ilse.form(marked, "form.supporters").value("surge.peg")).isEqualTo("yes");
            assertThat(ilse.form(marked, "form.supporters").value("surge.bucket"))
                    .isEqualTo("yes");
            assertThat(marked.page().select(".surges li").text()).isEqualTo("March 2026: 81 joined, and it is marked.");
            Visitor.Reply refused =
                    ilse.form(open, ".surges form").with("month", "2025-01").press("surge");
            assertThat(refused.status()).isEqualTo(422);
            assertThat(refused.troubles())
                    .containsExactly("\"January 2025\" has no counts to mark; count its supporters first");
        }
    }

    private static String rule(int months) {
        return "A month is suggested in which at least twice as many joined as in the middle one of the months that are"
                + " not marked, and at least three times the square root of that middle more. The middle of " + months
                + " months is 24 joined, so it takes 48. By hand: tick “One film brought them” at each level of a month"
                + " and keep the counts. A marked month says nothing of how many usually join.";
    }

    @Test
    void two_whole_months_are_too_few_to_stand_out_of() {
        assertThat(SERVER.as("ilse").get("/funds/supporters").page().select(".surges"))
                .isEmpty();
    }

    /** 71 supporters more pledge 5.00, 8 % are kept: 326.60 of a charge whose pay-out was due on the 6th. */
    @Test
    void the_month_that_runs_is_not_called_off_by_what_is_not_in_yet() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor ilse = server.as("ilse");
            ilse.form(ilse.get("/funds/supporters")).with("start.plank", "140").send();
            assertThat(ilse.get("/funds/supporters")
                            .page()
                            .select(".income tbody tr")
                            .first()
                            .text())
                    .isEqualTo("November 2026 so far 140 5 1 €644 €317.40 €326.60 not in yet");
        }
    }
}
