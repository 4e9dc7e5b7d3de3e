package weekwright.funds;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static weekwright.testkit.OakMill.TODAY;
import static weekwright.testkit.OakMill.addLedger;
import static weekwright.testkit.OakMill.addLevel;
import static weekwright.testkit.OakMill.addMaterial;
import static weekwright.testkit.OakMill.find;
import static weekwright.testkit.OakMill.row;
import static weekwright.testkit.OakMill.shown;
import static weekwright.testkit.OakMill.texts;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.base.Money;
import weekwright.base.Quantity;
import weekwright.build.SettingsStore;
import weekwright.build.Shown;
import weekwright.db.Db;
import weekwright.db.FolderRefused;
import weekwright.db.Read;
import weekwright.history.UndoChange;
import weekwright.testkit.OakMill;

class FundsVerbsTest {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 20);

    @TempDir
    Path folder;

    private Db db;

    @BeforeEach
    void open() throws FolderRefused {
        db = OakMill.create(folder);
        addMaterial(
                db,
                "id",
                "oak.1",
                "task",
                "shaft.3",
                "item",
                "Hoop iron",
                "quantity",
                "6",
                "unit",
                "bars",
                "price_likely",
                "40",
                "supplier",
                "Brook forge",
                "deposit",
                "30",
                "lead_likely",
                "21");
    }

    @AfterEach
    void close() {
        db.close();
    }

    private Shown oak() {
        return shown(db, MaterialStore.TABLE, "oak.1");
    }

    private Money balance() {
        return db.read(read -> Balance.on(TODAY, SettingsStore.get(read), LedgerEntryStore.TABLE.values(read)));
    }

    @Test
    void an_order_with_its_deposit_paid_leaves_the_account() throws Exception {
        db.write(
                "ilse",
                write -> OrderMaterial.order(
                        write, oak(), DAY, Optional.of(DAY.plusDays(21)), Optional.of(new Money(7200)), TODAY));
        Material line = find(db, MaterialStore.TABLE, "oak.1").value();
        assertThat(line.ordered()).contains(DAY);
        assertThat(line.promised()).contains(LocalDate.of(2026, 12, 11));
        LedgerEntry paid = db.read(LedgerEntryStore.TABLE::values).get(0);
        assertThat(paid.amount()).isEqualTo(new Money(-7200));
        assertThat(paid.kind()).isEqualTo(LedgerEntry.Kind.MATERIAL);
        assertThat(paid.material().map(Object::toString)).contains("oak.1");
        assertThat(paid.payee()).isEqualTo("Brook forge");
        assertThat(balance()).isEqualTo(new Money(492800));
    }

    /** Six bars at 40.00 with 30 % deposit: 72.00 paid, 20.00 back, 52.00 lost; the books keep all of it with the task. */
    @Test
    void an_order_called_off_is_to_be_ordered_again_and_its_lost_deposit_counts_no_more_towards_it() throws Exception {
        db.write(
                "ilse",
                write -> OrderMaterial.order(
                        write, oak(), DAY, Optional.of(DAY.plusDays(21)), Optional.of(new Money(7200)), TODAY));
        CancelMaterial.Cancelled done = db.write(
                "ilse", write -> CancelMaterial.cancel(write, oak(), TODAY, Optional.of(new Money(2000)), TODAY));
        assertThat(done.lost()).isEqualTo(new Money(5200));
        Material line = find(db, MaterialStore.TABLE, "oak.1").value();
        assertThat(line.ordered()).isEmpty();
        assertThat(line.promised()).isEmpty();
        List<LedgerEntry> books = db.read(LedgerEntryStore.TABLE::values);
        assertThat(books).extracting(LedgerEntry::amount).containsExactly(new Money(-7200), new Money(2000));
        assertThat(books).allSatisfy(entry -> {
            assertThat(entry.material()).isEmpty();
            assertThat(entry.task().map(Object::toString)).contains("shaft.3");
            assertThat(entry.note()).isEqualTo("Order of Hoop iron called off on 25 November 2026.");
        });
        assertThat(balance()).isEqualTo(new Money(494800));
    }

    @Test
    void only_an_order_that_is_out_is_called_off_and_no_more_comes_back_than_was_paid() throws Exception {
        assertThatThrownBy(() -> db.write(
                        "ilse",
                        write -> CancelMaterial.cancel(
                                write, oak(), TODAY.plusDays(1), Optional.of(new Money(1)), TODAY)))
                .hasMessage("cancelled: \"Hoop iron\" is not ordered; there is nothing to call off\n"
                        + "cancelled: \"26 November 2026\" is after today, 25 November 2026; write the day it"
                        + " happened\n"
                        + "back: more came back than the books have as paid for this line; enter the missing"
                        + " payment first, or write a smaller amount");
        db.write("ilse", write -> OrderMaterial.order(write, oak(), DAY, Optional.empty(), Optional.empty(), TODAY));
        assertThatThrownBy(() -> db.write(
                        "ilse",
                        write -> CancelMaterial.cancel(write, oak(), DAY.minusDays(1), Optional.of(Money.ZERO), TODAY)))
                .hasMessage(
                        "cancelled: \"19 November 2026\" is before it was ordered on 20 November 2026; write a later"
                                + " day\n"
                                + "back: what came back is nothing or less; write the amount, or leave it empty");
    }

    @Test
    void nothing_is_ordered_twice_nor_promised_before_it_is_ordered() throws Exception {
        assertThatThrownBy(() -> db.write("ilse", write -> PromiseMaterial.promise(write, oak(), TODAY)))
                .hasMessage("promised: \"Hoop iron\" is not ordered yet; say first when it was ordered");
        db.write("ilse", write -> OrderMaterial.order(write, oak(), DAY, Optional.empty(), Optional.empty(), TODAY));
        assertThatThrownBy(() -> db.write(
                        "ilse",
                        write -> OrderMaterial.order(
                                write, oak(), TODAY.plusDays(1), Optional.of(DAY), Optional.of(Money.ZERO), TODAY)))
                .hasMessage("ordered: \"Hoop iron\" was ordered on 20 November 2026; nothing is to be ordered twice\n"
                        + "ordered: \"26 November 2026\" is after today, 25 November 2026; write the day it happened\n"
                        + "promised: \"20 November 2026\" is before it was ordered on 26 November 2026; write a later"
                        + " day\n"
                        + "paid: what was paid is nothing or less; write the amount, or leave it empty");
        assertThatThrownBy(() -> db.write("ilse", write -> PromiseMaterial.promise(write, oak(), DAY.minusDays(1))))
                .hasMessage("promised: \"19 November 2026\" is before it was ordered on 20 November 2026; write a later"
                        + " day");
    }

    @Test
    void a_part_delivery_splits_the_line_and_both_have_the_lot() throws Exception {
        db.write("ilse", write -> OrderMaterial.order(write, oak(), DAY, Optional.empty(), Optional.empty(), TODAY));
        ReceiveMaterial.Received received = db.write(
                "ilse",
                write -> ReceiveMaterial.receive(
                        write, oak(), TODAY, Optional.of(Quantity.of(4)), Optional.of(new Money(16000)), TODAY));
        Material came = find(db, MaterialStore.TABLE, "oak.1").value();
        assertThat(came.received()).contains(TODAY);
        assertThat(came.quantity()).contains(Quantity.of(4));
        assertThat(came.lot()).isEqualTo("oak.1");
        Material rest = received.rest().orElseThrow().value();
        assertThat(rest.id().value()).isEqualTo("oak.2");
        assertThat(rest.quantity()).contains(Quantity.of(2));
        assertThat(rest.lot()).isEqualTo("oak.1");
        assertThat(rest.ordered()).contains(DAY);
        assertThat(rest.received()).isEmpty();
        assertThat(balance()).isEqualTo(new Money(484000));
    }

    @Test
    void a_deposit_is_split_with_its_line_and_no_cent_is_lost_or_doubled() throws Exception {
        // six bars, 70.01 paid: four came. 7001 * 4/6 = 4667.33, so 46.67 stay and 23.34 go with the two still to come
        db.write(
                "ilse",
                write -> OrderMaterial.order(write, oak(), DAY, Optional.empty(), Optional.of(new Money(7001)), TODAY));
        assertThat(balance()).isEqualTo(new Money(492999));
        ReceiveMaterial.Received received = db.write(
                "ilse",
                write -> ReceiveMaterial.receive(
                        write, oak(), TODAY, Optional.of(Quantity.of(4)), Optional.of(new Money(11333)), TODAY));
        // of the four at 40.00 all is paid: 46.67 and 113.33; the two at 40.00 are left with 80.00 - 23.34
        assertThat(paid("oak.1")).isEqualTo(new Money(16000));
        assertThat(paid("oak.2")).isEqualTo(new Money(2334));
        assertThat(balance()).isEqualTo(new Money(481666));
        StageCosts costs = db.read(StageCosts::all).get("shaft");
        assertThat(costs.committed()).isEqualTo(new Money(5666));
        // a second part of what is left: 2334 * 1/2 each
        Shown rest = shown(db, MaterialStore.TABLE, "oak.2");
        assertThat(rest.row()).isEqualTo(received.rest().orElseThrow().row());
        db.write(
                "ilse",
                write -> ReceiveMaterial.receive(
                        write, rest, TODAY, Optional.of(Quantity.of(1)), Optional.empty(), TODAY));
        assertThat(paid("oak.2")).isEqualTo(new Money(1167));
        assertThat(paid("oak.3")).isEqualTo(new Money(1167));
        CancelMaterial.Cancelled off = db.write(
                "ilse",
                write -> CancelMaterial.cancel(
                        write, shown(db, MaterialStore.TABLE, "oak.3"), TODAY, Optional.empty(), TODAY));
        assertThat(off.lost()).isEqualTo(new Money(1167));
        assertThat(balance()).isEqualTo(new Money(481666));
    }

    @Test
    void a_part_delivery_taken_back_leaves_the_deposit_with_the_whole_line() throws Exception {
        db.write(
                "ilse",
                write -> OrderMaterial.order(write, oak(), DAY, Optional.empty(), Optional.of(new Money(7001)), TODAY));
        db.write(
                "ilse",
                write -> ReceiveMaterial.receive(
                        write, oak(), TODAY, Optional.of(Quantity.of(4)), Optional.empty(), TODAY));
        assertThat(paid("oak.1")).isEqualTo(new Money(4667));
        assertThat(paid("oak.2")).isEqualTo(new Money(2334));
        long split = db.read(Read::projectVersion);
        db.write("ilse", write -> UndoChange.undo(write, split, TODAY));
        assertThat(paid("oak.1")).isEqualTo(new Money(7001));
        assertThat(find(db, MaterialStore.TABLE, "oak.1").value().quantity()).contains(Quantity.of(6));
        assertThat(db.read(MaterialStore.TABLE::count)).isEqualTo(1);
        assertThat(balance()).isEqualTo(new Money(492999));
    }

    @Test
    void the_share_of_a_deposit_is_no_row_of_the_bank() throws Exception {
        db.write(
                "ilse",
                write -> OrderMaterial.order(write, oak(), DAY, Optional.empty(), Optional.of(new Money(7200)), TODAY));
        db.write(
                "ilse",
                write -> ReceiveMaterial.receive(
                        write, oak(), TODAY, Optional.of(Quantity.of(3)), Optional.empty(), TODAY));
        List<LedgerEntry> books = db.read(LedgerEntryStore.TABLE::values);
        List<BankRow> rows = List.of(bank(DAY, -7200), bank(TODAY, -3600));
        List<Optional<BankBooks.Twin>> twins = BankBooks.twins(rows, books, "");
        assertThat(twins.get(0)).isPresent();
        assertThat(twins.get(1)).isEmpty();
    }

    private static BankRow bank(LocalDate date, long minor) {
        return new BankRow(
                1, date, new Money(minor), "Brook forge", "", Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** What the books have for a line, its row found by its own id. */
    private Money paid(String line) {
        return db.read(read -> LedgerEntryStore.TABLE.where(read, "material", line).stream()
                .map(entry -> entry.value().amount().negated())
                .reduce(Money.ZERO, Money::plus));
    }

    @Test
    void more_than_the_line_before_its_order_or_after_its_arrival_cannot_come() throws Exception {
        db.write("ilse", write -> OrderMaterial.order(write, oak(), DAY, Optional.empty(), Optional.empty(), TODAY));
        assertThatThrownBy(() -> db.write(
                        "ilse",
                        write -> ReceiveMaterial.receive(
                                write, oak(), DAY.minusDays(1), Optional.of(Quantity.of(7)), Optional.empty(), TODAY)))
                .hasMessage("received: \"19 November 2026\" is before it was ordered on 20 November 2026; write a later"
                        + " day\n"
                        + "part: \"7\" is not a part of the 6 bars of this line; write how much came, or leave it empty"
                        + " when all did");
        db.write(
                "ilse",
                write -> ReceiveMaterial.receive(
                        write, oak(), TODAY, Optional.of(Quantity.of(6)), Optional.empty(), TODAY));
        assertThat(db.read(MaterialStore.TABLE::count)).isEqualTo(1);
        assertThatThrownBy(() -> db.write(
                        "ilse",
                        write -> ReceiveMaterial.receive(
                                write, oak(), TODAY, Optional.empty(), Optional.empty(), TODAY)))
                .hasMessage("\"Hoop iron\" was received on 25 November 2026; nothing more is to come of it");
    }

    @Test
    void a_cost_goes_into_the_books_and_income_is_none() throws Exception {
        db.write(
                "ilse",
                write -> SpendMoney.spend(
                        write,
                        row(
                                LedgerEntry.class,
                                "id",
                                LedgerEntryStore.nextId(write).value(),
                                "date",
                                "2026-11-24",
                                "amount",
                                "-34.50",
                                "kind",
                                "other-cost",
                                "payee",
                                "Saw doctor"),
                        TODAY));
        assertThat(balance()).isEqualTo(new Money(496550));
        assertThatThrownBy(() -> db.write(
                        "ilse",
                        write -> SpendMoney.spend(
                                write,
                                row(
                                        LedgerEntry.class,
                                        "id",
                                        "x",
                                        "date",
                                        "2026-11-26",
                                        "amount",
                                        "5",
                                        "kind",
                                        "payout",
                                        "stage",
                                        "roof"),
                                TODAY)))
                .hasMessage("amount: \"-5.00\" is no cost; write what was paid, more than nothing\n"
                        + "kind: \"payout\" is no kind of cost; choose one of the list\n"
                        + "date: \"26 November 2026\" is after today, 25 November 2026; enter it once it is paid\n"
                        + "stage: \"roof\" is no stage of this project; choose one of the list");
    }

    @Test
    void nothing_comes_tomorrow_or_is_paid_with_nothing_and_what_came_is_not_called_off() throws Exception {
        db.write("ilse", write -> OrderMaterial.order(write, oak(), DAY, Optional.empty(), Optional.empty(), TODAY));
        assertThatThrownBy(() -> db.write(
                        "ilse",
                        write -> ReceiveMaterial.receive(
                                write, oak(), TODAY.plusDays(1), Optional.empty(), Optional.of(Money.ZERO), TODAY)))
                .hasMessage(
                        "received: \"26 November 2026\" is after today, 25 November 2026; write the day it happened\n"
                                + "paid: what was paid is nothing or less; write the amount, or leave it empty");
        db.write(
                "ilse",
                write -> ReceiveMaterial.receive(write, oak(), TODAY, Optional.empty(), Optional.empty(), TODAY));
        assertThatThrownBy(() ->
                        db.write("ilse", write -> CancelMaterial.cancel(write, oak(), TODAY, Optional.empty(), TODAY)))
                .hasMessage("\"Hoop iron\" was received on 25 November 2026; nothing more is to come of it");
    }

    @Test
    void the_share_of_a_deposit_stands_in_the_account_that_paid_last_whatever_came_back_elsewhere() throws Exception {
        db.write("ilse", write -> OrderMaterial.order(write, oak(), DAY, Optional.empty(), Optional.empty(), TODAY));
        pay("a", "-72.00", "shop");
        pay("b", "-12.00", "till");
        pay("c", "24.00", "bank");
        db.write(
                "ilse",
                write -> ReceiveMaterial.receive(
                        write, oak(), TODAY, Optional.of(Quantity.of(4)), Optional.empty(), TODAY));
        // 60.00 were paid; a third of it, for two bars of six, goes with the rest
        assertThat(db.read(LedgerEntryStore.TABLE::values).subList(3, 5))
                .allSatisfy(entry -> assertThat(entry.account()).isEqualTo("till"))
                .extracting(LedgerEntry::amount)
                .containsExactly(new Money(2000), new Money(-2000));
    }

    private void pay(String id, String amount, String account) {
        addLedger(
                db,
                "id",
                id,
                "date",
                "2026-11-21",
                "amount",
                amount,
                "kind",
                "material",
                "material",
                "oak.1",
                "account",
                account);
    }

    @Test
    void a_cost_in_another_currency_says_how_much_of_which() {
        assertThatThrownBy(() -> db.write(
                        "ilse",
                        write -> SpendMoney.spend(
                                write,
                                row(
                                        LedgerEntry.class,
                                        "id",
                                        "x",
                                        "date",
                                        "2026-11-24",
                                        "amount",
                                        "-5",
                                        "kind",
                                        "other-cost",
                                        "foreign_currency",
                                        "EUR"),
                                TODAY)))
                .hasMessage(
                        "foreign_amount: is missing beside the foreign currency; write what was paid in it, or leave"
                                + " out the rest of it\n"
                                + "foreign_currency: \"EUR\" is the project's own currency; leave out what was paid in"
                                + " another");
    }

    @Test
    void rule_85_of_two_counts_the_later_day_holds_in_whatever_order_they_stand() {
        addLedger(db, "id", "a", "date", "2026-11-10", "amount", "100", "kind", "counted");
        addLedger(db, "id", "b", "date", "2026-11-05", "amount", "50", "kind", "counted");
        assertThat(balance()).isEqualTo(new Money(10000));
    }

    @Test
    void a_counted_balance_says_by_how_much_the_books_were_off_and_holds_from_then_on() throws Exception {
        addLedger(db, "id", "a", "date", "2026-11-02", "amount", "-120", "kind", "regular");
        CountBalance.Counted counted =
                db.write("ilse", write -> CountBalance.count(write, "", DAY, new Money(490000), TODAY));
        assertThat(counted.books()).isEqualTo(new Money(488000));
        assertThat(counted.difference()).isEqualTo(new Money(2000));
        addLedger(db, "id", "b", "date", "2026-11-20", "amount", "-10", "kind", "regular");
        addLedger(db, "id", "c", "date", "2026-11-21", "amount", "-30", "kind", "regular");
        assertThat(balance()).isEqualTo(new Money(487000));
        assertThatThrownBy(() -> db.write("ilse", write -> CountBalance.count(write, "", DAY, new Money(1), TODAY)))
                .hasMessage("date: \"20 November 2026\" has a counted balance already; write another day");
        assertThatThrownBy(() -> db.write(
                        "ilse", write -> CountBalance.count(write, "", LocalDate.of(2026, 2, 1), new Money(1), TODAY)))
                .hasMessage("date: \"1 February 2026\" is before the books open; write a day from 1 March 2026 on");
    }

    @Test
    void rule_85_each_account_has_its_last_count_and_transfers_cancel_out() {
        addLedger(db, "id", "a", "date", "2026-04-01", "amount", "-1000", "kind", "transfer", "account", "");
        addLedger(db, "id", "b", "date", "2026-04-01", "amount", "1000", "kind", "transfer", "account", "savings");
        assertThat(balance()).isEqualTo(new Money(500000));
        addLedger(db, "id", "c", "date", "2026-05-01", "amount", "1010", "kind", "counted", "account", "savings");
        assertThat(balance()).isEqualTo(new Money(501000));
    }

    @Test
    void rule_85_a_later_row_that_names_no_account_brings_no_second_opening_cash() {
        addLedger(db, "id", "a", "date", "2026-04-01", "amount", "5200", "kind", "counted", "account", "bank");
        addLedger(db, "id", "b", "date", "2026-04-02", "amount", "-200", "kind", "other-cost", "account", "bank");
        assertThat(balance()).isEqualTo(new Money(500000));
        addLedger(db, "id", "c", "date", "2026-11-03", "amount", "-40", "kind", "other-cost");
        assertThat(balance()).isEqualTo(new Money(496000));
    }

    @Test
    void a_month_of_supporters_is_set_level_by_level_and_changed_again() throws Exception {
        addLevel(db, "id", "plank", "name", "Plank", "amount", "3", "charged", "month");
        YearMonth november = YearMonth.of(2026, 11);
        db.write(
                "ilse",
                write -> SetSupporters.set(
                        write,
                        List.of(row(
                                SupporterMonth.class,
                                "month",
                                "2026-10",
                                "level",
                                "plank",
                                "start",
                                "180",
                                "joined",
                                "12",
                                "left",
                                "4")),
                        november));
        var remarks = db.write(
                "ilse",
                write -> SetSupporters.set(
                        write,
                        List.of(row(
                                SupporterMonth.class,
                                "month",
                                "2026-11",
                                "level",
                                "plank",
                                "start",
                                "190",
                                "joined",
                                "9")),
                        november));
        assertThat(texts(remarks))
                .containsExactly("start.plank: \"190\" is not the 188 with whom the month before ended");
        db.write(
                "ilse",
                write -> SetSupporters.set(
                        write,
                        List.of(row(
                                SupporterMonth.class,
                                "month",
                                "2026-11",
                                "level",
                                "plank",
                                "start",
                                "188",
                                "joined",
                                "9")),
                        november));
        assertThat(db.read(read -> SupporterMonthStore.of(read, november))
                        .get(0)
                        .value()
                        .start())
                .isEqualTo(188);
        assertThat(db.read(SupporterMonthStore.TABLE::count)).isEqualTo(2);
    }

    @Test
    void no_more_leave_than_were_there_and_no_month_is_counted_ahead() {
        addLevel(db, "id", "plank", "name", "Plank", "amount", "3", "charged", "month");
        assertThatThrownBy(() -> db.write(
                        "ilse",
                        write -> SetSupporters.set(
                                write,
                                List.of(row(
                                        SupporterMonth.class,
                                        "month",
                                        "2026-12",
                                        "level",
                                        "plank",
                                        "start",
                                        "5",
                                        "joined",
                                        "2",
                                        "left",
                                        "8")),
                                YearMonth.of(2026, 11))))
                .hasMessage("month: \"December 2026\" has not begun; count a month up to November 2026\n"
                        + "left.plank: \"8\" is more than the 7 who were there or joined; write 7 or less");
    }
}
