package weekwright.web.funds;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.base.Hours;
import weekwright.base.Money;
import weekwright.forecast.Forecast;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class FundsLadderPageTest {
    private static final ServerFixture SERVER = ServerFixture.small().drawn();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void each_coming_stage_stands_with_need_days_chance_and_what_waiting_costs() {
        Visitor.Reply page = SERVER.as("ilse").get("/funds/ladder");
        assertThat(page.status()).isEqualTo(200);
        assertThat(page.page().select(".stage-rungs thead th").eachText())
                .containsExactly(
                        "Stage",
                        "Needs",
                        "Needed by",
                        "Order by",
                        "Covered",
                        "Short, middle",
                        "Short, bad luck",
                        "Four in five from",
                        "Waiting costs");
        List<String> labels = page.page().select(".stage-rungs tbody tr").get(0).select("td").stream()
                .map(cell -> cell.attr("data-label"))
                .toList();
        assertThat(labels)
                .isEqualTo(
                        page.page().select(".stage-rungs thead th").eachText().subList(1, 9));
        assertThat(page.page()
                        .select("section[aria-labelledby=rungs-head] .remark")
                        .text())
                .isEqualTo("400 futures drawn from 25 November, seed 1.");
    }

    @Test
    void both_in_the_same_futures_is_never_more_than_either() {
        Visitor.Reply page = SERVER.as("ilse").get("/funds/ladder");
        List<Element> rows = page.page().select("section[aria-labelledby=joint-head] tbody tr");
        assertThat(rows).isNotEmpty().allSatisfy(row -> {
            List<Integer> shares = row.select("td").stream()
                    .map(cell -> Integer.valueOf(cell.text().replaceAll("[^0-9]", "")))
                    .toList();
            assertThat(shares).hasSize(6);
            assertThat(shares.get(2)).isLessThanOrEqualTo(Math.min(shares.get(0), shares.get(1)));
            assertThat(shares.get(5)).isLessThanOrEqualTo(Math.min(shares.get(3), shares.get(4)));
        });
    }

    @Test
    void how_long_the_money_lasts_is_told_both_ways_and_drawn_with_its_figures() {
        Visitor.Reply page = SERVER.as("ilse").get("/funds/ladder");
        List<String> said =
                page.page().select("section[aria-labelledby=lasts-head] > p").eachText();
        assertThat(said.get(0)).startsWith("As things go, orders on their day, it lasts ");
        assertThat(said.get(1)).startsWith("If pledges stopped today and nothing more were ordered, it stays above ");
        assertThat(page.page().select("section[aria-labelledby=lasts-head] svg .fan-middle"))
                .isNotEmpty();
        assertThat(page.page().select("section[aria-labelledby=lasts-head] table tbody tr"))
                .hasSize(13);
        assertThat(page.page().select(".tax").text())
                .isEqualTo("Tax. Pledges are usually taxable income, and a gift in return may change that. These pages"
                        + " keep no accounts for an office: ask a licensed accountant or your tax office.");
    }

    @Test
    void what_waiting_costs_is_told_in_weeks() {
        LocalDate day = LocalDate.of(2027, 3, 1);
        assertThat(FundsLadderPage.waits(stage(Optional.of(day), Optional.of(day))))
                .isEqualTo("nothing");
        assertThat(FundsLadderPage.waits(stage(Optional.of(day.plusDays(3)), Optional.of(day))))
                .isEqualTo("under a week");
        assertThat(FundsLadderPage.waits(stage(Optional.of(day.plusDays(4)), Optional.of(day))))
                .isEqualTo("1\u00a0week");
        assertThat(FundsLadderPage.waits(stage(Optional.of(day.plusDays(24)), Optional.of(day))))
                .isEqualTo("3\u00a0weeks");
        assertThat(FundsLadderPage.waits(stage(Optional.empty(), Optional.of(day))))
                .isEqualTo("more than is drawn");
        assertThat(FundsLadderPage.waits(stage(Optional.empty(), Optional.empty())))
                .isEqualTo("too far to say");
    }

    private static Forecast.Stage stage(Optional<LocalDate> held, Optional<LocalDate> workFirst) {
        return new Forecast.Stage(
                "gate",
                "The gate",
                Forecast.Days.NONE,
                new Forecast.Days(held, held, held, held, held.isPresent() ? 0 : 1),
                new Forecast.Days(workFirst, workFirst, workFirst, workFirst, workFirst.isPresent() ? 0 : 1),
                List.of(),
                new Forecast.Rough(0, new Hours(0)),
                new Forecast.Materials(
                        Money.ZERO,
                        Optional.empty(),
                        Optional.empty(),
                        1,
                        new Forecast.Shortfall(Money.ZERO, Money.ZERO),
                        Optional.empty()),
                List.of());
    }
}
