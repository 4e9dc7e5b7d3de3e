package weekwright.web.ahead;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.testkit.ProjectInputs.day;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import weekwright.engine.Inputs;
import weekwright.engine.simulate.Found;
import weekwright.engine.simulate.LateTogether;
import weekwright.engine.simulate.Learned;
import weekwright.engine.simulate.Purchases;
import weekwright.forecast.Lessons;
import weekwright.forecast.PurchaseLessons;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SmallProject;
import weekwright.testkit.Visitor;
import weekwright.web.parts.PurchaseWords;

/** What was learned, in sentences, with what it is learned from. */
class AheadLearnedPageTest {
    @Test
    void the_sample_says_how_long_its_work_takes_and_how_much_of_its_hours_is_there() {
        try (ServerFixture server = ServerFixture.sample()) {
            Visitor.Reply page = server.as("ilse").get("/ahead/learned");
            assertThat(page.status()).isEqualTo(200);
            assertThat(page.page().select(".lead").text())
                    .isEqualTo("Your work takes 1.18 times its estimate, four chances in five between 1.16 and 1.20,"
                            + " from 36 finished tasks.");
            assertThat(page.text())
                    .contains("Of Ilse’s 40 hours a week, 30 reach the build, from 47 weeks of log.")
                    .contains("Beside the listed hours of an open stage about 11 in a hundred more turn up, from one"
                            + " finished stage and what is usual. Found since May 2026: 21 hours in two jobs.")
                    .contains("Of two finished tasks that might have failed, one was done again; by the chances written"
                            + " at them it would be about 0.3.")
                    .contains("From 32 orders that came, it is not likely that deliveries are late or early together.")
                    .contains(
                            "Forge and weld six hoops: one in ten that it fails, and then 60 in a hundred of it is done"
                                    + " again.")
                    .contains("How many usually join wanders by about 10 in a hundred from month to month, as the"
                            + " settings say.")
                    .contains("One film in 43 brings a surge of supporters, about 2.6 months’ worth of usual joining,"
                            + " from one month that a film drove, of 45 films.");
            assertThat(page.text())
                    .contains("Things cost 1.02 times the likely price, four chances in five between 1.00 and 1.04,"
                            + " from 29 lines received and paid. The lime kiln takes 1.57 times the likely lead, four"
                            + " chances in five between 1.30 and 1.88, from five orders. The steel yard takes 1.41");
            assertThat(page.page().select("section:has(#purchases) a[href=/build/materials/m.05]"))
                    .hasSize(2);
            assertThat(page.page().select("section:has(#tasks) tbody tr")).hasSize(36);
            assertThat(page.page().select("section:has(#editing) > p").text())
                    .isEqualTo("Editing takes 1.00 times its estimate, four chances in five between 0.96 and 1.05,"
                            + " ¾ hour for each finished minute, from 46 episodes.");
            assertThat(page.page().select("section:has(#editing) tbody tr")).hasSize(46);
            assertThat(server.as("ilse")
                            .get("/ahead")
                            .page()
                            .select("a[href=/ahead/learned]")
                            .text())
                    .isEqualTo("What was learned from your records");
        }
    }

    @Test
    void an_empty_project_says_what_is_taken_instead() {
        try (ServerFixture server = ServerFixture.of(SmallProject::fillWithOnePerson)) {
            Visitor.Reply page = server.as("ilse").get("/ahead/learned");
            assertThat(page.page().select(".lead").text())
                    .isEqualTo("No task with an estimate is finished yet. Until then work is taken to last 1.15 times"
                            + " its estimate, as it usually does, four chances in five between 0.81 and 1.64.");
            assertThat(page.text())
                    .contains(
                            "Of Ilse’s 36 hours a week, 29 reach the build, four fifths, as fewer than eight weeks are"
                                    + " logged.")
                    .contains(
                            "Beside the listed hours of an open stage about 15 in a hundred more turn up, as is usual,"
                                    + " for no finished stage says yet what was found in it.")
                    .contains("A finished task with an estimate and hours stands here");
        }
    }

    @Test
    void what_was_paid_and_how_long_it_took_is_said_with_the_lines_behind_it() {
        assertThat(plain(AheadLearnedPage.unpaid(List.of("Oak", "Lime"))))
                .isEqualTo(
                        "Left out, as what the books hold for them is under two thirds of the least it was to cost or"
                                + " over twice the most: Oak and Lime.");
        assertThat(plain(PurchaseWords.lead(new PurchaseLessons.Lead(
                        "the sawmill",
                        new Lessons.Ratio(1.1, 1.25, 1.4, 1),
                        List.of(new PurchaseLessons.Came("m", "Oak", LocalDate.of(2026, 5, 1), 8, 10))))))
                .isEqualTo("The sawmill takes 1.25 times the likely lead, four chances in five between 1.10 and 1.40,"
                        + " from one order.");
    }

    @Test
    void each_sentence_says_what_it_is_learned_from() {
        assertThat(plain(AheadLearnedPage.trades(
                        List.of(new Lessons.TradeRatio("smith", 1.32, 7), new Lessons.TradeRatio("joiner", 1.08, 20)))))
                .isEqualTo("By trade, the longest first: smith 1.32 (7 tasks) and joiner 1.08 (20 tasks).");
        assertThat(plain(AheadLearnedPage.turnout(new Lessons.Turnout("Ilse", 2400, 1, 0, true))))
                .isEqualTo("All of Ilse’s 40 hours a week count: the settings say so.");
        assertThat(plain(AheadLearnedPage.turnout(new Lessons.Turnout("Ilse", 2400, 0.5, 0, true))))
                .isEqualTo("Of Ilse’s 40 hours a week, 20 count: the settings say so.");
        assertThat(plain(AheadLearnedPage.turnout(new Lessons.Turnout("Wren", 60, 1, 9, false))))
                .isEqualTo("Of Wren’s 1 hour a week, 1 reaches the build, from nine weeks of log.");
        assertThat(plain(AheadLearnedPage.fails(new Lessons.Failing("t", "Cast the bearing", 0.15, 1))))
                .isEqualTo("Cast the bearing: one in ten that it fails, and then all of it is done again.");
        assertThat(plain(AheadLearnedPage.fails(new Lessons.Failing("t", "Glue up the rim", 0.1, 0.3))))
                .isEqualTo("Glue up the rim: one in ten that it fails, and then 30 in a hundred of it is done again.");
        assertThat(plain(AheadLearnedPage.surges(new Learned.Surging(1 / 60.0 * 2, 4.2, 1, 20))))
                .isEqualTo("One film in 30 brings a surge of supporters, about 4.2 months’ worth of usual joining, from"
                        + " one month that a film drove, of 20 films.");
        assertThat(plain(AheadLearnedPage.guessed(new Learned.Guessing(1, 0))))
                .isEqualTo("One open task has no hours: taken as 12 hours, give or take a factor of two and a half,"
                        + " until a"
                        + " task is finished.");
        assertThat(plain(AheadLearnedPage.guessed(new Learned.Guessing(3, 36))))
                .isEqualTo("Three open tasks have no hours: drawn as the hours of a finished task of the same stage, or"
                        + " of any of your 36 finished tasks where it has none.");
        assertThat(plain(AheadLearnedPage.redone(new Lessons.Redone(0, 0, 0), true)))
                .isEqualTo("The chances are those written at the tasks: none that might have failed is finished yet.");
        assertThat(plain(AheadLearnedPage.redone(new Lessons.Redone(1, 0.1, 0), true)))
                .isEqualTo("Of one finished task that might have failed, none was done again; by the chances written at"
                        + " them it would be about 0.1.");
        assertThat(plain(AheadLearnedPage.wandering(new Learned.Wandering(0.1, 0, false))))
                .isEqualTo(
                        "How many usually join wanders by about 10 in a hundred from month to month, as is usual, for"
                                + " fewer than four months are counted.");
        assertThat(plain(AheadLearnedPage.wandering(new Learned.Wandering(0.347, 18, false))))
                .isEqualTo("How many usually join wanders by about 35 in a hundred from month to month, from 18 months"
                        + " counted.");
        assertThat(new Found(List.of(), 0).any()).isFalse();
    }

    @Test
    void deliveries_that_are_late_together_are_said_with_the_orders_behind_it() {
        assertThat(late("2026-05-04", "2026-05-04")).isEmpty();
        assertThat(late("2026-05-04", "2026-05-19", "2026-05-05", "2026-05-20", "2026-05-06", "2026-05-21"))
                .isEqualTo("Deliveries are late or early together: what is ordered now takes 1.48 times what line and"
                        + " supplier say, from three orders that came; half of that is forgotten in three months.");
        assertThat(late("2026-05-04", "2026-05-19", "2026-05-05", "2026-05-20", "2026-05-06", ""))
                .startsWith("Deliveries are late or early together: ")
                .contains(", from two orders that came and one order that is out; half");
    }

    /** What is said on 28 May 2026 of orders of ten days each, by day of order and of delivery. */
    private static String late(String... days) {
        List<Inputs.Material> lines = new ArrayList<>();
        for (int i = 0; i < days.length; i += 2) {
            lines.add(new Inputs.Material(
                    "m" + i,
                    "wheel",
                    "",
                    1,
                    0,
                    Inputs.Range.ZERO,
                    Inputs.Source.BOUGHT,
                    0,
                    Inputs.Range.of(10),
                    0,
                    day(days[i]),
                    Inputs.NONE,
                    day(days[i + 1]),
                    0,
                    ""));
        }
        int today = day("2026-05-28");
        return plain(AheadLearnedPage.late(new LateTogether(lines, today, new Purchases(lines, today, 18), false)));
    }

    private static String plain(String text) {
        return text.replace('\u00a0', ' ');
    }
}
