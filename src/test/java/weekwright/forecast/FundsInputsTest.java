package weekwright.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.forecast.SmallProject.TODAY;

import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.engine.Inputs;
import weekwright.funds.LedgerEntryStore;
import weekwright.funds.MaterialStore;
import weekwright.funds.PledgeLevelStore;
import weekwright.funds.RegularItemStore;
import weekwright.funds.StockItemStore;
import weekwright.funds.SupporterMonthStore;

class FundsInputsTest {
    private static final int NOW = (int) TODAY.toEpochDay();

    @TempDir
    Path folder;

    private SmallProject project;

    @BeforeEach
    void start() throws Exception {
        project = SmallProject.withOneTask(
                folder,
                "opening_cash",
                "1000",
                "opening_date",
                "2026-01-05",
                "reserve",
                "5000",
                "money.put_by_percent",
                "12.5",
                "money.tax_month",
                "5");
    }

    @AfterEach
    void close() {
        project.close();
    }

    private Inputs inputs() {
        return project.basis().inputs();
    }

    private void ledger(String... cells) {
        project.add(LedgerEntryStore.TABLE, cells);
    }

    private static int day(String iso) {
        return (int) LocalDate.parse(iso).toEpochDay();
    }

    @Test
    void rule_85_cash_without_a_count_is_the_opening_cash_and_the_rows_from_the_opening_date_to_the_day() {
        ledger("id=1", "date=2026-01-04", "amount=77", "kind=payout");
        ledger("id=2", "date=2026-01-05", "amount=100", "kind=payout");
        ledger("id=3", "date=2026-11-25", "amount=-30.50", "kind=material");
        ledger("id=4", "date=2026-11-26", "amount=900", "kind=payout");
        assertThat(inputs().money().cashMinor()).isEqualTo(106_950);
        assertThat(inputs().money().reserveMinor()).isEqualTo(500_000);
    }

    @Test
    void rule_85_a_counted_balance_holds_at_that_days_end_for_its_account_alone() {
        ledger("id=1", "date=2026-02-01", "amount=100", "kind=payout");
        ledger("id=2", "date=2026-03-01", "amount=2000", "kind=counted");
        ledger("id=3", "date=2026-03-01", "amount=55", "kind=payout");
        ledger("id=4", "date=2026-03-02", "amount=10", "kind=payout");
        ledger("id=5", "date=2026-04-01", "amount=-5", "kind=other-cost", "account=tin");
        ledger("id=6", "date=2026-12-01", "amount=1", "kind=counted");
        assertThat(inputs().money().cashMinor()).isEqualTo(201_000 - 500);
    }

    @Test
    void rule_85_where_every_row_names_an_account_the_opening_cash_is_that_of_the_first() {
        ledger("id=1", "date=2026-02-01", "amount=100", "kind=transfer", "account=tin");
        ledger("id=2", "date=2026-02-01", "amount=-100", "kind=transfer", "account=bank");
        assertThat(inputs().money().cashMinor()).isEqualTo(100_000);
        ledger("id=3", "date=2026-03-01", "amount=300", "kind=counted", "account=tin");
        assertThat(inputs().money().cashMinor()).isEqualTo(30_000 - 10_000);
        // a later row that names no account brings no second opening cash
        ledger("id=4", "date=2026-03-02", "amount=-20", "kind=other-cost");
        assertThat(inputs().money().cashMinor()).isEqualTo(30_000 - 10_000 - 2_000);
    }

    @Test
    void rule_86_other_income_and_costs_are_totals_of_whole_months_without_rows_marked_once() {
        ledger("id=1", "date=2026-07-15", "amount=5", "kind=other-income");
        ledger("id=2", "date=2026-08-03", "amount=70", "kind=other-income");
        ledger("id=3", "date=2026-08-31", "amount=-20", "kind=other-cost");
        ledger("id=4", "date=2026-10-01", "amount=999", "kind=other-income", "once=yes");
        ledger("id=5", "date=2026-10-02", "amount=-40", "kind=regular");
        ledger("id=6", "date=2026-11-02", "amount=80", "kind=other-income");
        assertThat(inputs().money().otherMonths()).containsExactly(5_000L, 0L, 0L);
    }

    @Test
    void rule_86_at_most_the_last_twenty_four_months_are_drawn_from() {
        ledger("id=1", "date=2023-01-01", "amount=5", "kind=other-income");
        ledger("id=2", "date=2024-11-10", "amount=6", "kind=other-income");
        assertThat(inputs().money().otherMonths()).hasSize(24).startsWith(600L).doesNotContain(500L);
    }

    @Test
    void rule_62_what_was_paid_for_a_material_is_what_the_ledger_shows_up_to_the_day() {
        project.add(
                MaterialStore.TABLE,
                "id=m1",
                "task=pit.1",
                "item=Oak",
                "quantity=4",
                "unit=m",
                "waste=10",
                "price_likely=12.3456",
                "lead_likely=30",
                "lead_high=60",
                "deposit=25",
                "ordered=2026-11-01",
                "promised=2026-12-10",
                "received=2026-12-01");
        ledger("id=1", "date=2026-11-01", "amount=-50", "kind=material", "material=M1");
        ledger("id=2", "date=2026-11-20", "amount=10", "kind=refund", "material=m1");
        ledger("id=3", "date=2026-11-26", "amount=-7", "kind=material", "material=m1");
        Inputs.Material line = inputs().materials().get(0);
        assertThat(line)
                .isEqualTo(new Inputs.Material(
                        "m1",
                        "pit.1",
                        "",
                        4,
                        10,
                        Inputs.Range.of(1234.56),
                        Inputs.Source.BOUGHT,
                        0,
                        new Inputs.Range(30, 30, 60),
                        25,
                        day("2026-11-01"),
                        day("2026-12-10"),
                        Inputs.NONE,
                        4000,
                        ""));
    }

    @Test
    void an_order_of_a_later_day_is_not_known_and_neither_is_its_promise() {
        project.add(
                MaterialStore.TABLE,
                "id=m1",
                "task=pit.1",
                "item=Oak",
                "ordered=2026-11-26",
                "promised=2026-12-10",
                "at_share=0.5");
        Inputs.Material line = inputs().materials().get(0);
        assertThat(line.ordered()).isEqualTo(Inputs.NONE);
        assertThat(line.promised()).isEqualTo(Inputs.NONE);
        assertThat(line.quantity()).isEqualTo(1);
        assertThat(line.priceMinor()).isEqualTo(Inputs.Range.ZERO);
        assertThat(line.leadDays()).isEqualTo(Inputs.Range.ZERO);
        assertThat(line.atShare()).isEqualTo(0.5);
    }

    @Test
    void rule_135_the_percent_of_the_pay_outs_since_the_last_tax_payment_is_put_by() {
        ledger("id=1", "date=2026-03-01", "amount=4000", "kind=payout");
        ledger("id=2", "date=2026-05-20", "amount=-500", "kind=tax");
        ledger("id=3", "date=2026-05-20", "amount=1000", "kind=payout");
        ledger("id=4", "date=2026-05-21", "amount=100.05", "kind=payout");
        ledger("id=5", "date=2026-06-01", "amount=30", "kind=tax");
        ledger("id=6", "date=2026-06-02", "amount=70", "kind=other-income");
        ledger("id=7", "date=2026-12-01", "amount=900", "kind=payout");
        // 12.5 % of 100.05 is 12.50625: neither a tax that came back, nor other income, nor what is not paid out yet
        // counts
        assertThat(inputs().money().putBy()).isEqualTo(new Inputs.PutBy(1251, 12.5, 5));
        assertThat(inputs().money().availableMinor())
                .isEqualTo(100_000 + 400_000 - 50_000 + 100_000 + 10_005 + 3_000 + 7_000 - 1_251);
    }

    @Test
    void rule_136_a_line_from_stock_costs_nothing_and_is_there_when_the_stock_is_ready() {
        project.add(StockItemStore.TABLE, "id=oak", "item=Oak boards", "since=2026-06-01");
        project.add(
                StockItemStore.TABLE,
                "id=elm",
                "item=Elm",
                "since=2026-06-01",
                "ready_low=150",
                "ready_likely=200",
                "ready_high=300");
        project.add(
                StockItemStore.TABLE,
                "id=ash",
                "item=Ash",
                "since=2024-06-01",
                "ready_low=150",
                "ready_likely=200",
                "ready_high=300");
        project.add(MaterialStore.TABLE, "id=m1", "task=pit.1", "item=Oak", "stock=oak", "price_likely=9");
        project.add(MaterialStore.TABLE, "id=m2", "task=pit.1", "item=Elm", "stock=ELM");
        project.add(MaterialStore.TABLE, "id=m3", "task=pit.1", "item=Ash", "stock=ash");
        Inputs inputs = inputs();
        assertThat(inputs.materials()).allSatisfy(line -> {
            assertThat(line.priceMinor()).isEqualTo(Inputs.Range.ZERO);
            assertThat(line.source()).isEqualTo(Inputs.Source.OWN);
        });
        assertThat(inputs.materials().get(0).received()).isEqualTo(day("2026-06-01"));
        assertThat(inputs.materials().get(1).received()).isEqualTo(Inputs.NONE);
        assertThat(inputs.materials().get(1).ordered()).isEqualTo(day("2026-06-01"));
        assertThat(inputs.materials().get(1).leadDays()).isEqualTo(new Inputs.Range(150, 200, 300));
        assertThat(inputs.materials().get(2).received()).isEqualTo(day("2024-06-01"));
    }

    @Test
    void rule_1_a_level_whose_pay_out_of_today_is_in_the_ledger_is_not_charged_again() {
        project.add(PledgeLevelStore.TABLE, "id=friend", "name=Friend", "amount=6", "charged=month");
        project.add(
                PledgeLevelStore.TABLE,
                "id=beam",
                "name=Beam",
                "amount=4.50",
                "charged=episode",
                "fee_percent=8",
                "fee_fixed=0.30",
                "declined=3",
                "payout_days=5");
        ledger("id=1", "date=2026-11-25", "amount=600", "kind=payout", "payee=Friend");
        ledger("id=2", "date=2026-11-24", "amount=600", "kind=payout", "payee=beam");
        assertThat(inputs().levels())
                .containsExactly(
                        new Inputs.PledgeLevel("friend", 600, false, 0, 0, 0, 0, true),
                        new Inputs.PledgeLevel("beam", 450, true, 8, 30, 3, 5, false));
    }

    @Test
    void rule_77_the_months_row_of_today_counts_as_far_as_it_has_gone_and_later_months_do_not() {
        project.add(PledgeLevelStore.TABLE, "id=friend", "name=Friend", "amount=6", "charged=month");
        project.add(SupporterMonthStore.TABLE, "month=2026-10", "level=Friend", "start=40", "joined=5", "left=2");
        project.add(SupporterMonthStore.TABLE, "month=2026-11", "level=friend", "start=43", "joined=3");
        project.add(SupporterMonthStore.TABLE, "month=2026-12", "level=friend", "start=50");
        int november = 12 * 2026 + 10;
        assertThat(inputs().supporters())
                .containsExactly(
                        new Inputs.SupporterMonth(november - 1, "friend", 40, 5, 2, false),
                        new Inputs.SupporterMonth(november, "friend", 43, 3, 0, false));
    }

    @Test
    void rule_87_regular_items_keep_their_sign_and_their_days() {
        project.add(RegularItemStore.TABLE, "id=rent", "name=Rent", "amount=-250", "every=month", "from=2026-01-31");
        project.add(RegularItemStore.TABLE, "id=power", "name=Power", "amount=-60", "spread=20", "every=episode");
        assertThat(inputs().regular())
                .containsExactly(
                        new Inputs.Regular("rent", -25_000, 0, Inputs.Every.MONTH, day("2026-01-31"), Inputs.NONE),
                        new Inputs.Regular("power", -6_000, 20, Inputs.Every.EPISODE, Inputs.NONE, Inputs.NONE));
        assertThat(inputs().asOf()).isEqualTo(NOW);
    }
}
