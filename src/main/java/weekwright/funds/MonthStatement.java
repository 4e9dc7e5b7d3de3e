package weekwright.funds;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Codec;
import weekwright.base.Hours;
import weekwright.base.Money;
import weekwright.base.Shares;
import weekwright.build.HoursEntry;
import weekwright.build.HoursEntryStore;
import weekwright.build.Settings;
import weekwright.build.SettingsStore;
import weekwright.build.StageStore;
import weekwright.db.Read;
import weekwright.funds.StatementLine.Part;

/**
 * What a month brought and cost, as the books and the log have it now: income by level, costs by kind and by stage, what is
 * neither, balances with what is put by, hours, the cost of an hour worked and the income of a published episode.
 *
 * <p>A pay-out that names no level is split over the levels by what each pledged in that month, by {@link Shares}. A refund
 * makes costs less. Costs stand as they are in the books: minus is money that went out.
 */
public final class MonthStatement {
    /** The balance of all accounts together. */
    public static final String END = "at the end";

    /** What is put by for tax of the money in the bank, and what is left of it (rule 135). */
    public static final String PUT_BY = "of it put by for tax";

    public static final String WITHOUT_PUT_BY = "without what is put by";

    private final Read read;
    private final YearMonth month;
    private final int published;
    private final Settings settings;
    private final List<LedgerEntry> ledger;
    private final List<LedgerEntry> entries;
    private final List<StatementLine> lines = new ArrayList<>();

    private MonthStatement(Read read, YearMonth month, int published) {
        this.read = read;
        this.month = month;
        this.published = published;
        this.settings = SettingsStore.get(read);
        this.ledger = LedgerEntryStore.TABLE.values(read);
        this.entries = movements(ledger, settings, month);
    }

    /**
     * The lines, without those of what is missing.
     *
     * @param published how many episodes were in that month
     */
    public static List<StatementLine> of(Read read, YearMonth month, int published) {
        return new MonthStatement(read, month, published).lines();
    }

    /** The rows of the books in a month that move money. */
    static List<LedgerEntry> movements(List<LedgerEntry> ledger, Settings settings, YearMonth month) {
        return ledger.stream().filter(entry -> moves(entry, settings, month)).toList();
    }

    static boolean moves(LedgerEntry entry, Settings settings, YearMonth month) {
        return entry.kind() != LedgerEntry.Kind.COUNTED
                && YearMonth.from(entry.date()).equals(month)
                && !entry.date().isBefore(settings.openingDate());
    }

    /** {@code other income}, as the statement has it. */
    static String words(LedgerEntry.Kind kind) {
        return kind == LedgerEntry.Kind.REGULAR
                ? "what comes again"
                : Codec.word(kind).replace('-', ' ');
    }

    private List<StatementLine> lines() {
        payouts();
        byKind(
                Part.INCOME,
                entries.stream()
                        .filter(entry -> entry.isIncome() && entry.kind() != LedgerEntry.Kind.PAYOUT)
                        .toList());
        List<LedgerEntry> costs = entries.stream().filter(LedgerEntry::isCost).toList();
        byKind(Part.COST, costs);
        byStage(costs);
        byKind(Part.APART, entries.stream().filter(LedgerEntry::isApart).toList());
        balances();
        Money income = sum(entries.stream().filter(LedgerEntry::isIncome).toList());
        long minutes = hours();
        figures(income, sum(costs).negated(), minutes);
        return lines;
    }

    private static Money sum(List<LedgerEntry> entries) {
        return entries.stream().map(LedgerEntry::amount).reduce(Money.ZERO, Money::plus);
    }

    /** Net and gross of one level; gross is told where every pay-out of it has one. */
    private static final class Level {
        private Money net = Money.ZERO;
        private Money gross = Money.ZERO;
        private boolean told = true;

        private void add(Money more, Optional<Money> before) {
            net = net.plus(more);
            gross = gross.plus(before.orElse(Money.ZERO));
            told &= before.isPresent();
        }
    }

    private void payouts() {
        List<PledgeLevel> levels = PledgeLevelStore.TABLE.values(read);
        Map<String, Level> sums = new LinkedHashMap<>();
        levels.forEach(level -> sums.put(level.id().folded(), new Level()));
        List<Long> weights = levels.stream().map(this::pledged).toList();
        boolean split = weights.stream().anyMatch(weight -> weight > 0);
        Level unknown = new Level();
        for (LedgerEntry entry : entries) {
            if (entry.kind() != LedgerEntry.Kind.PAYOUT) {
                continue;
            }
            Optional<Money> gross =
                    entry.gross().or(() -> entry.fee().map(fee -> entry.amount().plus(fee)));
            Level own = sums.get(entry.payee().toLowerCase(Locale.ROOT));
            if (own != null || !split) {
                (own == null ? unknown : own).add(entry.amount(), gross);
                continue;
            }
            List<Money> nets = Shares.split(entry.amount(), weights);
            Optional<List<Money>> grosses = gross.map(money -> Shares.split(money, weights));
            for (int i = 0; i < levels.size(); i++) {
                int at = i;
                sums.get(levels.get(i).id().folded()).add(nets.get(i), grosses.map(parts -> parts.get(at)));
            }
        }
        levels.forEach(level -> payout(level.name(), sums.get(level.id().folded())));
        payout("pay-outs without a level", unknown);
    }

    private void payout(String name, Level level) {
        Optional<Money> gross = Optional.of(level.gross).filter(money -> level.told && !money.isNegative());
        if (!level.net.equals(Money.ZERO) || !level.gross.equals(Money.ZERO)) {
            lines.add(new StatementLine(
                    month,
                    Part.INCOME,
                    name,
                    Optional.of(level.net),
                    gross,
                    gross.map(money -> money.minus(level.net)).filter(money -> !money.isNegative()),
                    Optional.empty(),
                    Optional.empty()));
        }
    }

    /** What a level pledged in the month before fees: those at its start, once or for each episode charged. */
    private long pledged(PledgeLevel level) {
        long people = SupporterMonthStore.of(read, month).stream()
                .filter(row -> row.value().level().same(level.id()))
                .mapToLong(row -> row.value().start())
                .findFirst()
                .orElse(0);
        long most =
                settings.publishing().chargesAMonth().map(Integer::longValue).orElse(Long.MAX_VALUE);
        long charges = level.charged() == PledgeLevel.Charged.MONTH ? 1 : Math.min(most, published);
        return Math.multiplyExact(Math.multiplyExact(level.amount().minor(), people), charges);
    }

    private void byKind(Part part, List<LedgerEntry> some) {
        Map<LedgerEntry.Kind, Money> sums = new EnumMap<>(LedgerEntry.Kind.class);
        some.forEach(entry -> sums.merge(entry.kind(), entry.amount(), Money::plus));
        // a transfer and its other side cancel out
        sums.remove(LedgerEntry.Kind.TRANSFER, Money.ZERO);
        sums.forEach((kind, sum) -> lines.add(StatementLine.money(month, part, words(kind), sum)));
    }

    private void byStage(List<LedgerEntry> costs) {
        EntryStages stages = new EntryStages(read);
        Map<String, Money> sums = new HashMap<>();
        costs.forEach(entry -> sums.merge(stages.of(entry).orElse(""), entry.amount(), Money::plus));
        StageStore.inOrder(read).stream()
                .map(stored -> stored.value())
                .filter(stage -> sums.containsKey(stage.id().folded()))
                .forEach(stage -> lines.add(StatementLine.money(
                        month, Part.STAGE, stage.name(), sums.get(stage.id().folded()))));
        Optional.ofNullable(sums.get(""))
                .ifPresent(sum -> lines.add(StatementLine.money(month, Part.STAGE, "no stage", sum)));
    }

    private void balances() {
        LocalDate before = month.atDay(1).minusDays(1);
        boolean opens = before.isBefore(settings.openingDate());
        Money opening = opens ? settings.openingCash() : Balance.on(before, settings, ledger);
        Map<String, Money> closing = Balance.accounts(month.atEndOfMonth(), settings, ledger);
        Money end = closing.values().stream().reduce(Money.ZERO, Money::plus);
        lines.add(StatementLine.money(month, Part.BALANCE, "at the start", opening));
        Money moved = sum(entries);
        Money off = end.minus(opening).minus(moved);
        if (!off.equals(Money.ZERO)) {
            lines.add(StatementLine.money(month, Part.BALANCE, "counted differently", off));
        }
        if (closing.size() > 1) {
            closing.forEach((account, sum) -> lines.add(StatementLine.money(
                    month,
                    Part.BALANCE,
                    "at the end, " + (account.isEmpty() ? "the account without a name" : account),
                    sum)));
        }
        lines.add(StatementLine.money(month, Part.BALANCE, END, end));
        if (settings.putByPercent().value().signum() > 0) {
            Money putBy = Balance.putBy(month.atEndOfMonth(), settings, ledger);
            lines.add(StatementLine.money(month, Part.BALANCE, PUT_BY, putBy));
            lines.add(StatementLine.money(month, Part.BALANCE, WITHOUT_PUT_BY, end.minus(putBy)));
        }
    }

    private long hours() {
        Map<HoursEntry.As, Integer> sums = new EnumMap<>(HoursEntry.As.class);
        HoursEntryStore.TABLE.values(read).stream()
                .filter(entry -> YearMonth.from(entry.date()).equals(month))
                .forEach(entry -> sums.merge(
                        entry.asOrDefault(), entry.hours().minutes() * entry.peopleOrDefault(), Math::addExact));
        sums.forEach((as, minutes) -> lines.add(StatementLine.words(
                month, Part.HOURS, Codec.word(as), Optional.of(new Hours(minutes)), Optional.empty())));
        return sums.values().stream().mapToLong(Integer::longValue).sum();
    }

    private void figures(Money income, Money cost, long minutes) {
        if (minutes > 0) {
            lines.add(
                    StatementLine.money(month, Part.FIGURE, "cost of an hour worked", Shares.part(cost, 60, minutes)));
        }
        lines.add(StatementLine.words(
                month, Part.FIGURE, "episodes published", Optional.empty(), Optional.of(published)));
        if (published > 0) {
            lines.add(StatementLine.money(
                    month, Part.FIGURE, "income of a published episode", Shares.part(income, 1, published)));
        }
    }
}
