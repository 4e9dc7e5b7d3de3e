package weekwright.funds;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.testkit.OakMill.row;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import weekwright.base.Id;
import weekwright.base.Money;

class BankBooksTest {
    private static BankRow bank(int day, long minor, String payee, String reference) {
        return new BankRow(
                day,
                LocalDate.of(2026, 11, day),
                new Money(minor),
                payee,
                reference,
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private static LedgerEntry entry(String id, int day, String amount, String payee, String note) {
        return row(
                LedgerEntry.class,
                "id",
                id,
                "date",
                LocalDate.of(2026, 11, day).toString(),
                "amount",
                amount,
                "kind",
                "material",
                "stage",
                "roof",
                "payee",
                payee,
                "note",
                note);
    }

    @Test
    void an_entry_answers_for_one_row_and_first_for_the_one_with_its_name() {
        List<LedgerEntry> ledger = List.of(entry("a", 3, "-5", "nails  and oil", ""), entry("b", 4, "-7", "Oak", ""));
        List<Optional<BankBooks.Twin>> twins = BankBooks.twins(
                List.of(
                        bank(3, -500, "Somebody", ""),
                        bank(3, -500, "Nails and oil", ""),
                        bank(4, -700, "Sawmill", ""),
                        bank(4, 700, "Oak", ""),
                        bank(5, -700, "Oak", "")),
                ledger,
                "");
        assertThat(twins)
                .containsExactly(
                        Optional.empty(),
                        Optional.of(new BankBooks.Twin(ledger.get(0), true)),
                        Optional.of(new BankBooks.Twin(ledger.get(1), false)),
                        Optional.empty(),
                        Optional.empty());
    }

    @Test
    void another_account_and_a_counted_balance_are_no_twins() {
        LedgerEntry counted =
                LedgerEntryStore.TABLE.shape().with(entry("a", 3, "5", "", ""), "kind", LedgerEntry.Kind.COUNTED);
        assertThat(BankBooks.twins(List.of(bank(3, 500, "", "")), List.of(counted), ""))
                .containsExactly(Optional.empty());
        assertThat(BankBooks.twins(List.of(bank(3, -500, "x", "")), List.of(entry("a", 3, "-5", "x", "")), "tin"))
                .containsExactly(Optional.empty());
    }

    @Test
    void a_renamed_row_is_known_by_the_name_in_the_file_and_by_its_reference() {
        BankRow row = bank(3, -500, "SAWMILL 0231", "bill 7");
        assertThat(BankBooks.note(row, LedgerEntry.Kind.MATERIAL, "Sawmill upstream"))
                .isEqualTo("bill 7\nIn the file: SAWMILL 0231");
        assertThat(BankBooks.note(row, LedgerEntry.Kind.MATERIAL, "SAWMILL 0231"))
                .isEqualTo("bill 7");
        assertThat(BankBooks.note(bank(3, -500, "X", ""), LedgerEntry.Kind.MATERIAL, "Y"))
                .isEqualTo("In the file: X");
        assertThat(BankBooks.note(row, LedgerEntry.Kind.PAYOUT, "plank")).isEmpty();
        LedgerEntry renamed = entry("a", 3, "-5", "Sawmill upstream", "In the file: SAWMILL 0231");
        assertThat(BankBooks.twins(List.of(row), List.of(renamed), "")
                        .get(0)
                        .orElseThrow()
                        .sure())
                .isTrue();
        assertThat(new BankBooks.Names(List.of(renamed)).suggestion("SAWMILL 0231", false))
                .contains(new BankBooks.Suggestion(
                        LedgerEntry.Kind.MATERIAL, Optional.of(new Id("roof")), "Sawmill upstream"));
        assertThat(new BankBooks.Names(List.of(renamed)).suggestion("SAWMILL 0231", true))
                .isEmpty();
        assertThat(new BankBooks.Names(List.of(renamed)).suggestion("", false)).isEmpty();
        LedgerEntry byReference = entry("a", 3, "-5", "Other", "paid bill 7");
        assertThat(BankBooks.twins(List.of(row), List.of(byReference), "")
                        .get(0)
                        .orElseThrow()
                        .sure())
                .isTrue();
    }

    @Test
    void of_several_entries_with_a_name_the_newest_counts_and_of_one_day_the_last_in_the_books() {
        LedgerEntry newest = entry("a", 9, "-5", "Sawmill", "");
        LedgerEntry older = entry("b", 8, "-6", "Oak", "In the file: Sawmill");
        LedgerEntry sameDay = entry("c", 9, "-7", "Third", "bill 8\nIn the file: Sawmill");
        assertThat(new BankBooks.Names(List.of(newest, older)).suggestion("sawmill", false))
                .map(BankBooks.Suggestion::payee)
                .contains("Sawmill");
        assertThat(new BankBooks.Names(List.of(newest, older, sameDay)).suggestion("Sawmill", false))
                .map(BankBooks.Suggestion::payee)
                .contains("Third");
        assertThat(new BankBooks.Names(List.of(sameDay, newest)).suggestion("Sawmill", false))
                .map(BankBooks.Suggestion::payee)
                .contains("Sawmill");
    }

    @Test
    void the_last_balance_is_that_of_the_latest_day_whichever_way_the_file_runs() {
        BankRow early = new BankRow(
                1,
                LocalDate.of(2026, 11, 1),
                new Money(1),
                "",
                "",
                Optional.of(new Money(10)),
                Optional.empty(),
                Optional.empty());
        BankRow late = new BankRow(
                2,
                LocalDate.of(2026, 11, 9),
                new Money(1),
                "",
                "",
                Optional.of(new Money(20)),
                Optional.empty(),
                Optional.empty());
        assertThat(BankBooks.last(List.of(early, late))).contains(late);
        assertThat(BankBooks.last(List.of(late, early))).contains(late);
        assertThat(BankBooks.last(List.of(bank(1, 1, "", "")))).isEmpty();
    }
}
