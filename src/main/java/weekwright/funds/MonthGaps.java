package weekwright.funds;

import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import weekwright.build.Said;
import weekwright.build.Settings;
import weekwright.build.SettingsStore;
import weekwright.db.Read;
import weekwright.db.Stored;

/** What is missing before a month's statement says all: found in the books, in the orders and among what waits. */
public final class MonthGaps {
    /** What is missing, and so where it is mended. */
    public enum Kind {
        BALANCE,
        ENTRY,
        RECEIPTS,
        DELIVERY,
        SUPPORTERS,
        FILE
    }

    /**
     * One thing.
     *
     * @param of the row number of an entry, the id of a material line, the key of a file; else empty
     */
    public record Gap(Kind kind, String text, String of) {}

    private MonthGaps() {}

    /** @param waiting files that are not entered yet */
    public static List<Gap> of(Read read, YearMonth month, LocalDate today, List<WaitingFile> waiting) {
        Settings settings = SettingsStore.get(read);
        List<Stored<LedgerEntry>> ledger = LedgerEntryStore.TABLE.list(read);
        List<Gap> gaps = new ArrayList<>();
        balances(month, settings, ledger, gaps);
        entries(month, settings, ledger, gaps);
        deliveries(read, month, today, gaps);
        supporters(read, month, gaps);
        waiting.forEach(
                file -> gaps.add(new Gap(Kind.FILE, "The file “" + file.name() + "” waits to be entered", file.key())));
        return gaps;
    }

    /** An account that was in use by then and was not counted on the month's last day or after it. */
    private static void balances(YearMonth month, Settings settings, List<Stored<LedgerEntry>> ledger, List<Gap> gaps) {
        List<LedgerEntry> values = ledger.stream().map(Stored::value).toList();
        LocalDate end = month.atEndOfMonth();
        Set<String> accounts =
                new TreeSet<>(Balance.accounts(end, settings, values).keySet());
        for (String account : accounts) {
            boolean counted = values.stream()
                    .anyMatch(entry -> entry.kind() == LedgerEntry.Kind.COUNTED
                            && entry.account().equals(account)
                            && !entry.date().isBefore(end));
            if (!counted) {
                gaps.add(new Gap(
                        Kind.BALANCE,
                        (account.isEmpty() ? "The balance" : "The balance of " + account) + " was not counted on "
                                + Said.day(end) + " or since",
                        account));
            }
        }
    }

    private static void entries(YearMonth month, Settings settings, List<Stored<LedgerEntry>> ledger, List<Gap> gaps) {
        int without = 0;
        for (Stored<LedgerEntry> stored : ledger) {
            LedgerEntry entry = stored.value();
            if (!MonthStatement.moves(entry, settings, month)) {
                continue;
            }
            String what = (entry.payee().isEmpty() ? "an entry" : "“" + entry.payee() + "”") + " on "
                    + Said.day(entry.date());
            boolean loose = entry.stage().isEmpty()
                    && entry.task().isEmpty()
                    && entry.material().isEmpty();
            boolean refund = entry.kind() == LedgerEntry.Kind.REFUND;
            if ((entry.kind() == LedgerEntry.Kind.MATERIAL || refund) && loose) {
                gaps.add(new Gap(
                        Kind.ENTRY,
                        (refund ? "The refund of " : "Material from ") + what + " belongs to no stage, task or line",
                        String.valueOf(stored.row())));
            }
            if (entry.kind() == LedgerEntry.Kind.PAYOUT
                    && (entry.gross().isEmpty() || entry.fee().isEmpty())) {
                gaps.add(new Gap(
                        Kind.ENTRY, "The pay-out of " + what + " has no gross and fee", String.valueOf(stored.row())));
            }
            without += entry.isCost() && entry.receipt().isEmpty() ? 1 : 0;
        }
        if (without > 0) {
            gaps.add(new Gap(
                    Kind.RECEIPTS, Said.count(without, "cost has", "costs have") + " no receipt", month.toString()));
        }
    }

    private static void deliveries(Read read, YearMonth month, LocalDate today, List<Gap> gaps) {
        LocalDate end = month.atEndOfMonth();
        for (Material line : MaterialStore.TABLE.values(read)) {
            if (line.ordered().isEmpty() || line.received().isPresent()) {
                continue;
            }
            Optional<LocalDate> due = line.promised().or(() -> likely(line));
            if (due.filter(day -> !day.isAfter(end) && !day.isAfter(today)).isPresent()) {
                gaps.add(new Gap(
                        Kind.DELIVERY,
                        line.item() + (line.promised().isPresent() ? ": promised for " : ": likely to come by ")
                                + Said.day(due.get()) + ", and nobody has said that it came",
                        line.id().value()));
            }
        }
    }

    /** When what was ordered and not promised for a day should have come. */
    private static Optional<LocalDate> likely(Material line) {
        return line.leadLikely()
                .flatMap(days -> line.ordered()
                        .map(day -> day.plusDays(
                                days.value().setScale(0, RoundingMode.CEILING).longValue())));
    }

    private static void supporters(Read read, YearMonth month, List<Gap> gaps) {
        Set<String> counted = new TreeSet<>();
        SupporterMonthStore.of(read, month)
                .forEach(row -> counted.add(row.value().level().folded()));
        List<String> names = PledgeLevelStore.TABLE.values(read).stream()
                .filter(level -> !counted.contains(level.id().folded()))
                .map(PledgeLevel::name)
                .toList();
        if (!names.isEmpty()) {
            gaps.add(new Gap(
                    Kind.SUPPORTERS, "The supporters of " + Said.list(names) + " were not counted", month.toString()));
        }
    }
}
