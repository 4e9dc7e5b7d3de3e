package weekwright.forecast;

import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Money;
import weekwright.base.Quantity;
import weekwright.build.Settings;
import weekwright.engine.Inputs;
import weekwright.funds.Balance;
import weekwright.funds.LedgerEntry;
import weekwright.funds.Material;
import weekwright.funds.PledgeLevel;
import weekwright.funds.StockItem;
import weekwright.funds.Supplier;

/** Materials, cash, pledges and regular items as the engine takes them. Pure. */
final class FundsInputs {
    /** Rule 86: the last so many whole months of other income and costs are drawn from. */
    private static final int MOST_MONTHS = 24;

    private final Facts facts;
    private final List<LedgerEntry> ledger;
    private final Map<String, StockItem> stock = new HashMap<>();

    FundsInputs(Facts facts) {
        this.facts = facts;
        this.ledger =
                facts.ledger().stream().filter(row -> facts.known(row.date())).toList();
        facts.stock().forEach(item -> stock.put(item.id().folded(), item));
    }

    List<Inputs.Material> materials() {
        Map<String, Long> paid = new HashMap<>();
        for (LedgerEntry row : ledger) {
            row.material()
                    .ifPresent(id ->
                            paid.merge(facts.id("material", id), -row.amount().minor(), Long::sum));
        }
        return facts.materials().stream()
                .map(row -> material(row, Math.max(0, paid.getOrDefault(row.id().value(), 0L))))
                .toList();
    }

    private Inputs.Material material(Material row, long paid) {
        Optional<StockItem> item = row.stock().map(id -> stock.get(id.folded()));
        Inputs.Range price = Facts.range(
                row.priceLow().map(this::inMinor),
                row.priceLikely().map(this::inMinor),
                row.priceHigh().map(this::inMinor),
                Facts.Defaults.SAME,
                1);
        Inputs.Range lead = Facts.range(row.leadLow(), row.leadLikely(), row.leadHigh(), Facts.Defaults.SAME, 1);
        int ordered = facts.fact(row.ordered());
        int received = facts.fact(row.received());
        Inputs.Source source = Inputs.Source.valueOf(row.sourceOrDefault().name());
        if (item.isPresent()) {
            Lying lying = lying(item.get());
            price = Inputs.Range.ZERO;
            lead = lying.ready;
            ordered = lying.since;
            received = received == Inputs.NONE ? lying.there : received;
            source = Inputs.Source.OWN;
        }
        return new Inputs.Material(
                row.id().value(),
                facts.id("task", row.task()),
                row.lot(),
                Facts.number(row.quantity(), 1),
                Facts.number(row.waste(), 0),
                price.given() ? price : Inputs.Range.ZERO,
                source,
                Facts.number(row.atShare(), 0),
                lead.given() ? lead : Inputs.Range.ZERO,
                Facts.number(row.deposit(), 0),
                ordered,
                ordered == Inputs.NONE || item.isPresent() ? Inputs.NONE : Facts.day(row.promised()),
                received,
                paid,
                item.isPresent() ? "" : Supplier.folded(row.supplier()));
    }

    /** Major units with four places are minor units with two, in any currency with two digits. */
    private Quantity inMinor(Quantity major) {
        return new Quantity(major.value().movePointRight(facts.settings().moneyDigits()));
    }

    /**
     * What lies in the yard is there from the start, or, while it dries, comes as an order sent the day it was laid down
     * (rule 136); its line costs nothing more.
     */
    private record Lying(Inputs.Range ready, int since, int there) {}

    private Lying lying(StockItem item) {
        Inputs.Range ready = Facts.range(item.readyLow(), item.readyLikely(), item.readyHigh(), Facts.Defaults.SAME, 1);
        int asOf = Facts.day(facts.asOf());
        int since = item.since().map(Facts::day).orElse(asOf);
        if (!ready.given() || since + Math.round(ready.high()) <= asOf) {
            return new Lying(Inputs.Range.ZERO, Math.min(since, asOf), Math.min(since, asOf));
        }
        return new Lying(ready, Math.min(since, asOf), Inputs.NONE);
    }

    Inputs.Money money() {
        return new Inputs.Money(cash(), facts.settings().reserve().minor(), otherMonths(), putBy());
    }

    private Inputs.PutBy putBy() {
        Settings settings = facts.settings();
        return new Inputs.PutBy(
                Balance.putBy(facts.asOf(), settings, facts.ledger()).minor(),
                settings.putByPercent().value().doubleValue(),
                settings.money().taxMonth().orElse(0));
    }

    /**
     * Rule 85: of each account the last counted balance and the rows after that day, else its opening cash and the rows
     * from the opening date on. The opening cash is that of the account of the earliest row.
     */
    long cash() {
        Map<String, LedgerEntry> counted = new LinkedHashMap<>();
        Map<String, Long> balances = new LinkedHashMap<>();
        for (LedgerEntry row : ledger) {
            balances.putIfAbsent(row.account(), 0L);
            if (row.kind() == LedgerEntry.Kind.COUNTED) {
                counted.merge(row.account(), row, (old, one) -> one.date().isBefore(old.date()) ? old : one);
            }
        }
        balances.put(Balance.opened(ledger), facts.settings().openingCash().minor());
        counted.forEach((account, row) -> balances.put(account, row.amount().minor()));
        LocalDate opening = facts.settings().openingDate();
        for (LedgerEntry row : ledger) {
            LedgerEntry last = counted.get(row.account());
            boolean counts =
                    last == null ? !row.date().isBefore(opening) : row.date().isAfter(last.date());
            if (counts && row.kind() != LedgerEntry.Kind.COUNTED) {
                balances.merge(row.account(), row.amount().minor(), Math::addExact);
            }
        }
        return balances.values().stream().mapToLong(Long::longValue).sum();
    }

    /** Rule 86: whole months from the first row of the ledger to the month before the as-of day's. */
    List<Long> otherMonths() {
        Optional<LocalDate> first = ledger.stream().map(LedgerEntry::date).min(LocalDate::compareTo);
        if (first.isEmpty()) {
            return List.of();
        }
        YearMonth from = YearMonth.from(first.get());
        YearMonth firstWhole = first.get().getDayOfMonth() == 1 ? from : from.plusMonths(1);
        YearMonth now = YearMonth.from(facts.asOf());
        long whole = Math.max(0, ChronoUnit.MONTHS.between(firstWhole, now));
        YearMonth start = now.minusMonths(Math.min(MOST_MONTHS, whole));
        Long[] months = new Long[(int) ChronoUnit.MONTHS.between(start, now)];
        Arrays.fill(months, 0L);
        for (LedgerEntry row : ledger) {
            boolean other = row.kind() == LedgerEntry.Kind.OTHER_INCOME || row.kind() == LedgerEntry.Kind.OTHER_COST;
            int month = (int) ChronoUnit.MONTHS.between(start, YearMonth.from(row.date()));
            if (other && !row.once() && month >= 0 && month < months.length) {
                months[month] += row.amount().minor();
            }
        }
        return List.of(months);
    }

    List<Inputs.PledgeLevel> levels() {
        List<Inputs.PledgeLevel> levels = new ArrayList<>();
        for (PledgeLevel level : facts.levels()) {
            levels.add(new Inputs.PledgeLevel(
                    level.id().value(),
                    level.amount().minor(),
                    level.charged() == PledgeLevel.Charged.EPISODE,
                    Facts.number(level.feePercent(), 0),
                    level.feeFixed().map(Money::minor).orElse(0L),
                    Facts.number(level.declined(), 0),
                    level.payoutDays().orElse(0),
                    paidToday(level)));
        }
        return levels;
    }

    private boolean paidToday(PledgeLevel level) {
        return ledger.stream()
                .anyMatch(row -> row.kind() == LedgerEntry.Kind.PAYOUT
                        && row.date().equals(facts.asOf())
                        && row.payee().equalsIgnoreCase(level.id().value()));
    }

    /** Months up to the as-of day's, that one as far as it has gone (rule 77). */
    List<Inputs.SupporterMonth> supporters() {
        YearMonth now = YearMonth.from(facts.asOf());
        return facts.supporters().stream()
                .filter(row -> !row.month().isAfter(now))
                .map(row -> new Inputs.SupporterMonth(
                        12 * row.month().getYear() + row.month().getMonthValue() - 1,
                        facts.id("level", row.level()),
                        row.start(),
                        row.joined().orElse(0),
                        row.left().orElse(0),
                        row.surge()))
                .toList();
    }

    List<Inputs.Regular> regular() {
        return facts.regular().stream()
                .map(row -> new Inputs.Regular(
                        row.id().value(),
                        row.amount().minor(),
                        Facts.number(row.spread(), 0),
                        Inputs.Every.valueOf(row.every().name()),
                        Facts.day(row.from()),
                        Facts.day(row.to())))
                .toList();
    }
}
