package weekwright.web.funds;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import weekwright.build.HoursEntry;
import weekwright.build.HoursEntryStore;
import weekwright.db.Write;
import weekwright.episodes.Episode;
import weekwright.episodes.EpisodeStore;
import weekwright.funds.ClosedMonthStore;
import weekwright.funds.LedgerEntry;
import weekwright.funds.LedgerEntryStore;
import weekwright.funds.Material;
import weekwright.funds.MaterialStore;
import weekwright.funds.PledgeLevel;
import weekwright.funds.PledgeLevelStore;
import weekwright.funds.SupporterMonth;
import weekwright.funds.SupporterMonthStore;
import weekwright.testkit.Requirement;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SmallProject;
import weekwright.testkit.Visitor;

class FundsMonthPageTest {
    private final ServerFixture server = ServerFixture.of(db -> {
        SmallProject.fill(db);
        db.write("test", write -> {
            entry(write, "a1", "2026-10-07", "100.01", "payout", "fee", "9.99", "gross", "110.00");
            entry(write, "a2", "2026-10-09", "-123.45", "material", "stage", "gate", "payee", "Sawmill");
            entry(write, "a3", "2026-10-10", "-40", "material", "payee", "Nails");
            entry(write, "a4", "2026-10-12", "3.45", "refund", "stage", "gate");
            entry(write, "a5", "2026-10-13", "-200", "drawings");
            entry(write, "a6", "2026-10-14", "20", "other-income", "payee", "=1+1");
            entry(write, "a7", "2026-10-20", "4068.61", "counted");
            PledgeLevelStore.TABLE.insert(
                    write,
                    SmallProject.of(
                            PledgeLevel.class, "id", "beam", "name", "Beam", "amount", "3", "charged", "episode"));
            SupporterMonthStore.TABLE.insert(
                    write, SmallProject.of(SupporterMonth.class, "month", "2026-10", "level", "beam", "start", "55"));
            HoursEntryStore.TABLE.deleteAll(write);
            HoursEntryStore.TABLE.insert(
                    write,
                    SmallProject.of(
                            HoursEntry.class,
                            "id",
                            "x1",
                            "date",
                            "2026-10-05",
                            "crew",
                            "ilse",
                            "task",
                            "gate.1",
                            "people",
                            "2",
                            "hours",
                            "3"));
            HoursEntryStore.TABLE.insert(
                    write,
                    SmallProject.of(
                            HoursEntry.class,
                            "id",
                            "x2",
                            "date",
                            "2026-10-05",
                            "crew",
                            "bram",
                            "as",
                            "office",
                            "hours",
                            "2"));
            EpisodeStore.TABLE.insert(
                    write, SmallProject.of(Episode.class, "id", "out1", "title", "Out", "published", "2026-10-09"));
            EpisodeStore.TABLE.insert(
                    write, SmallProject.of(Episode.class, "id", "out2", "title", "Out too", "published", "2026-10-16"));
            return null;
        });
    });
    private final Visitor ilse = server.as("ilse");

    @AfterEach
    void close() {
        server.close();
    }

    private static void entry(Write write, String id, String date, String amount, String kind, String... more) {
        String[] pairs = new String[8 + more.length];
        System.arraycopy(new String[] {"id", id, "date", date, "amount", amount, "kind", kind}, 0, pairs, 0, 8);
        System.arraycopy(more, 0, pairs, 8, more.length);
        LedgerEntryStore.TABLE.insert(write, SmallProject.of(LedgerEntry.class, pairs));
    }

    private static List<String> rows(Visitor.Reply page) {
        return page.page().select(".statement tr:has(th[scope=row])").stream()
                .map(Element::text)
                .toList();
    }

    /**
     * Worked by hand. Pay-outs: 303.60 without gross and 100.01 of 110.00 gross, none of a level, so split by what was pledged:
     * 66 x 5.00 = 330.00 and 55 x 3.00 x 2 episodes = 330.00, half each; 151.80 + 50.00 (5000.5 cents go to the even 5000) and
     * 151.80 + 50.01. Hours: 2 x 3 + 2 = 8; costs 123.45 + 40.00 - 3.45 = 160.00, so 20.00 an hour. Income 423.61 by two films
     * is 211.805: half to even 211.80. Start 4000.00, moved 423.61 - 160.00 - 200.00 = 63.61, so 4063.61 by the books on the
     * 20th, 5.00 less than counted.
     */
    @Test
    void a_month_is_told_by_level_kind_and_stage_with_its_hours_and_closed_as_it_is_only_by_choice() {
        Visitor.Reply page = ilse.get("/funds/months/2026-10");
        assertThat(rows(page))
                .containsExactly(
                        "Plank €201.80",
                        "Beam €201.81",
                        "Other income €20.00",
                        "All income €423.61",
                        "Material €163.45",
                        "Refund −€3.45",
                        "All costs €160.00",
                        "Sluice gate €120.00",
                        "No stage €40.00",
                        "All costs €160.00",
                        "Drawings −€200.00",
                        "At the start €4,000.00",
                        "Counted differently €5.00",
                        "At the end €4,068.61",
                        "Hands 6 hours",
                        "Office 2 hours",
                        "All hours 8 hours",
                        "Cost of an hour worked €20.00",
                        "Episodes published 2",
                        "Income of a published episode €211.80");
        assertThat(page.page().select(".missing li").eachText())
                .containsExactly(
                        "The balance was not counted on 31 October 2026 or since",
                        "The pay-out of an entry on 6 October 2026 has no gross and fee",
                        "Material from “Nails” on 10 October 2026 belongs to no stage, task or line",
                        "3 costs have no receipt");
        assertThat(page.page().select(".missing a").eachAttr("href"))
                .startsWith("/funds/balance", "/funds/entries/1/edit")
                .endsWith("/funds/ledger?receipt=none&month=2026-10");
        assertThat(page.text()).contains("ask a licensed accountant or your tax office");
        Visitor.Reply refused = ilse.form(page, "main form.act").press("close");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly(
                        "4 things are missing; mend what is missing, or tick that the month is closed as it is");
        Visitor.Reply closed = ilse.follow(
                ilse.form(refused, "main form.act").with("anyway", "yes").press("close"));
        assertThat(closed.page().select(".flash p").text()).isEqualTo("October 2026 is closed.");
        assertThat(closed.text())
                .contains("Closed on 25 November 2026 by Ilse. The statement stands as it was said then.")
                .contains("What was missing when it was closed");
        assertThat(rows(closed)).isEqualTo(rows(page));
        assertThat(closed.page().select(".missing a")).isEmpty();
        assertThat(closed.text()).doesNotContain("otherwise now");
    }

    @Test
    void what_is_entered_later_changes_no_closed_statement_and_is_told_beside_it() {
        Visitor.Reply closed = closed();
        List<String> before = rows(closed);
        server.db().write("test", write -> {
            entry(write, "late", "2026-10-15", "-40", "material", "stage", "weir");
            return null;
        });
        Visitor.Reply later = ilse.get("/funds/months/2026-10");
        assertThat(rows(later)).isEqualTo(before);
        assertThat(later.page().select("section[aria-labelledby=since-head] li").eachText())
                .containsExactly(
                        "Material: €163.45 then, €203.45 now",
                        "Weir: nothing then, €40.00 now",
                        "Counted differently: €5.00 then, €45.00 now",
                        "Cost of an hour worked: €20.00 then, €25.00 now");
    }

    @Test
    void the_costs_without_a_receipt_are_listed_and_an_entry_of_a_closed_month_is_told() {
        Visitor.Reply page = closed();
        assertThat(page.page().select(".missing li").eachText()).endsWith("3 costs have no receipt");
        assertThat(ilse.get("/funds/ledger?receipt=none&month=2026-10")
                        .page()
                        .select("tbody th")
                        .eachText())
                .containsExactly("refund", "Nails", "Sawmill");
        Visitor.Reply saved = ilse.follow(ilse.form(ilse.get("/funds/entries/new"))
                .with("way", "out")
                .with("amount", "7")
                .with("date", "2026-10-30")
                .with("kind", "other-cost")
                .send());
        assertThat(saved.page().select(".flash p").text())
                .isEqualTo(
                        "It is in the books. \"30 October 2026\" is in a month that was closed on 25 November 2026; its"
                                + " statement stays as it was; open the month again and close it to have it in.");
    }

    /** By hand: 10 % of 303.60 and 100.01, net pay-outs since the books opened, are 40.361, so 40.36; 4068.61 less that. */
    @Test
    void what_is_put_by_for_tax_stands_below_the_balance_and_a_statement_from_before_is_not_called_wrong() {
        Visitor.Reply closed = closed();
        assertThat(rows(closed)).noneMatch(row -> row.contains("put by"));
        ilse.form(ilse.get("/crew/settings"), "form:has(button[value=money])")
                .with("put_by_percent", "10")
                .press("money");
        assertThat(ilse.get("/funds/months/2026-10").text()).doesNotContain("otherwise now");
        ilse.form(ilse.get("/funds/months/2026-10"), "main form.act").press("reopen");
        Visitor.Reply page = ilse.get("/funds/months/2026-10");
        assertThat(rows(page))
                .containsSubsequence(
                        "At the end €4,068.61", "Of it put by for tax €40.36", "Without what is put by €4,028.25");
        assertThat(page.text()).contains("counts as no cover");
        assertThat(ilse.get("/funds/months/2026-10/statement.csv").body())
                .contains("2026-10,balance,of it put by for tax,40.36,,,,,");
    }

    /** Each thing that can be missing, and nothing else: a refund without a place, a delivery past its promise or its lead. */
    @Test
    void what_is_missing_is_told_thing_by_thing() {
        server.db().write("test", write -> {
            entry(write, "b1", "2026-09-20", "7", "refund", "payee", "Nails");
            ordered(write, "late1", "Hinges", "promised", "2026-09-25");
            ordered(write, "late2", "Bolts", "lead_likely", "10.5");
            ordered(write, "later", "Glass", "promised", "2026-10-02");
            ordered(write, "open", "Lime");
            return null;
        });
        assertThat(ilse.get("/funds/months/2026-09")
                        .page()
                        .select(".missing li")
                        .eachText())
                .containsExactly(
                        "The refund of “Nails” on 20 September 2026 belongs to no stage, task or line",
                        "1 cost has no receipt",
                        "Hinges: promised for 25 September 2026, and nobody has said that it came",
                        "Bolts: likely to come by 21 September 2026, and nobody has said that it came",
                        "The supporters of Beam were not counted");
    }

    private static void ordered(Write write, String id, String item, String... more) {
        String[] pairs = new String[8 + more.length];
        System.arraycopy(
                new String[] {"id", id, "task", "gate.1", "item", item, "ordered", "2026-09-10"}, 0, pairs, 0, 8);
        System.arraycopy(more, 0, pairs, 8, more.length);
        MaterialStore.TABLE.insert(write, SmallProject.of(Material.class, pairs));
    }

    /** Where the books or the log of the sample change, its two statements are to be made anew: open the months, close, export. */
    @Test
    void the_closed_months_of_the_sample_say_what_its_books_and_its_log_say() {
        try (ServerFixture sample = ServerFixture.sample()) {
            for (String month : List.of("2026-08", "2026-09")) {
                Visitor.Reply page = sample.as("ilse").get("/funds/months/" + month);
                assertThat(page.text()).contains(" by Ilse. The statement stands as it was said then.");
                assertThat(page.page()
                                .select("section[aria-labelledby=since-head] li")
                                .eachText())
                        .isEmpty();
            }
        }
    }

    @Test
    void it_is_opened_again_and_that_is_taken_back_with_the_statement_as_it_was() {
        Visitor.Reply closed = closed();
        List<String> before = rows(closed);
        Visitor.Reply open = ilse.follow(ilse.form(closed, "main form.act").press("reopen"));
        assertThat(open.page().select(".flash p").text())
                .isEqualTo("October 2026 is open again; its statement is gone.");
        assertThat(open.text()).contains("Not closed yet: below is what its statement would say.");
        assertThat(server.db().read(ClosedMonthStore.LINES::values)).isEmpty();
        Visitor.Reply back = ilse.follow(ilse.form(open, ".flash form").send());
        assertThat(back.text()).contains("Closed on 25 November 2026 by Ilse.");
        assertThat(rows(back)).isEqualTo(before);
        Visitor.Reply twice = ilse.form(closed, "main form.act").press("reopen");
        assertThat(twice.status()).isEqualTo(303);
        assertThat(ilse.get("/funds/months/2026-10").text()).contains("Closed on 25 November");
        ilse.form(closed, "main form.act").with("answer", "a-new-key-of-a-form").press("reopen");
        assertThat(ilse.form(closed, "main form.act")
                        .with("answer", "another-key-of-a-form")
                        .press("reopen")
                        .troubles())
                .containsExactly("\"October 2026\" is not closed; look at it as it stands now");
    }

    private Visitor.Reply closed() {
        return ilse.follow(ilse.form(ilse.get("/funds/months/2026-10"), "main form.act")
                .with("anyway", "yes")
                .press("close"));
    }

    @Test
    void a_month_that_is_not_over_is_shown_and_not_closed() {
        Visitor.Reply page = ilse.get("/funds/months/2026-11");
        assertThat(page.text()).contains("It is not over; close it from 1 December 2026 on.");
        assertThat(page.page().select("main form")).isEmpty();
        Visitor.Form october = ilse.form(ilse.get("/funds/months/2026-10"), "main form.act");
        assertThat(ilse.post(
                                "/funds/months/2026-11",
                                october.with("do", "close").body(),
                                "Content-Type",
                                "application/x-www-form-urlencoded",
                                "Origin",
                                ilse.origin())
                        .troubles())
                .containsExactly("\"November 2026\" is not over; close it from 1 December 2026 on");
        assertThat(server.db().read(ClosedMonthStore.TABLE::values)).isEmpty();
        assertThat(ilse.get("/funds/months/2026-12").status()).isEqualTo(404);
        assertThat(ilse.get("/funds/months/2026-08").text())
                .contains("The books are open from September 2026 to November 2026.");
        assertThat(ilse.get("/funds/months/2026-13").status()).isEqualTo(404);
        assertThat(server.as("noor").get("/funds/months/2026-10").status()).isEqualTo(403);
    }

    /** What starts a formula has a quote mark before it (ASVS 5.0.0, 1.2.10; OWASP's list of first signs); figures stay figures. */
    @Test
    @Requirement({"1.2.10"})
    void the_sheet_runs_no_formula_and_names_its_source() throws Exception {
        server.db().write("test", write -> {
            var level = PledgeLevelStore.TABLE.list(write).get(1);
            return PledgeLevelStore.TABLE.update(
                    write,
                    level.row(),
                    level.version(),
                    PledgeLevelStore.TABLE.shape().with(level.value(), "name", "@SUM(A1), \"Beam\""));
        });
        Visitor.Reply sheet = ilse.get("/funds/months/2026-10/statement.csv");
        assertThat(sheet.header("content-disposition")).isEqualTo("attachment; filename=\"statement-2026-10.csv\"");
        String source = ",\"The weir, statement of October 2026, not closed, as of 25 November 2026, amounts in EUR\"";
        assertThat(sheet.body().lines())
                .startsWith(
                        "\uFEFFmonth,part,what,amount,gross,fee,hours,count,source",
                        "2026-10,income,Plank,201.80,,,," + source,
                        "2026-10,income,\"'@SUM(A1), \"\"Beam\"\"\",201.81,,,," + source)
                .contains(
                        "2026-10,cost,material,-163.45,,,," + source,
                        "2026-10,hours,hands,,,,6," + source,
                        "2026-10,figure,episodes published,,,,,2" + source);
        assertThat(server.as("noor").get("/funds/months/2026-10/statement.csv").status())
                .isEqualTo(403);
    }
}
