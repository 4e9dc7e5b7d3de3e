package weekwright.web.funds;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import weekwright.base.Money;
import weekwright.build.Settings;
import weekwright.db.Read;
import weekwright.forecast.Forecast;
import weekwright.forecast.Forecasts;
import weekwright.funds.Balance;
import weekwright.funds.LedgerEntry;
import weekwright.funds.LedgerEntryStore;
import weekwright.funds.PledgeLevel;
import weekwright.funds.PledgeLevelStore;
import weekwright.funds.SupporterMonth;
import weekwright.funds.SupporterMonthStore;
import weekwright.render.Formats;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.parts.Outlook;

/** Whether the pledges carry what has to be bought: the state of the money as a sentence, the ladder, the months, the pledges. */
public final class FundsPage implements Page {
    private static final int MONTHS = 3;
    private static final int LAST_ENTRIES = 10;

    /**
     * @param said the state of the money as one sentence
     * @param runway how long the money lasts, in words; empty without a forecast
     */
    public record View(
            String head,
            String lead,
            String said,
            String runway,
            List<FundsLadder.Rung> ladder,
            boolean forecast,
            List<FundsMonths.Month> months,
            List<FundsMonths.Row> rows,
            List<Level> levels,
            long people,
            Optional<Money> together,
            List<Entry> entries,
            List<FundsStagesPage.Line> stages,
            String reserve) {}

    /** A pledge level: who pays it, and what that is together. */
    public record Level(String name, Money amount, String charged, long people, Money together) {}

    /** A row of the books. */
    public record Entry(LocalDate date, Money amount, String kind, String what) {}

    @Override
    public View show(Request request) {
        Settings settings = request.settings();
        LocalDate today = request.today();
        Formats formats = request.formats();
        Optional<Forecasts.Shown> shown = Outlook.shown(request);
        Optional<Forecast> forecast = shown.map(Forecasts.Shown::forecast);
        return request.read(read -> {
            List<LedgerEntry> ledger = LedgerEntryStore.TABLE.values(read);
            List<SupporterMonth> supporters = SupporterMonthStore.TABLE.values(read);
            List<Level> levels = levels(read, YearMonth.from(today));
            long people = levels.stream().mapToLong(Level::people).sum();
            Money now = Balance.on(today, settings, ledger);
            List<FundsLadder.Rung> ladder = shown.map(s -> FundsLadder.rungs(s.forecast(), s.names(), formats))
                    .orElse(List.of());
            List<FundsMonths.Month> months = FundsMonths.of(today, MONTHS, settings, ledger, supporters);
            List<FundsStagesPage.Line> stages = FundsStagesPage.open(read, formats);
            Money onOrder = stages.stream().map(FundsStagesPage.Line::committed).reduce(Money.ZERO, Money::plus);
            return new View(
                    head(ledger, forecast, ladder, onOrder),
                    lead(ladder, forecast, onOrder, formats),
                    said(now, settings, people, levels, formats),
                    runway(forecast, formats),
                    ladder,
                    forecast.isPresent(),
                    months,
                    FundsMonths.rows(months, formats),
                    levels,
                    people,
                    together(levels),
                    entries(ledger, PledgeLevelStore.TABLE.values(read)),
                    stages,
                    formats.money(settings.reserve().minor()));
        });
    }

    private static String head(
            List<LedgerEntry> ledger, Optional<Forecast> forecast, List<FundsLadder.Rung> ladder, Money onOrder) {
        if (ledger.isEmpty()) {
            return "Nothing is in the books yet";
        }
        if (forecast.isEmpty()) {
            return "The money as it is booked";
        }
        return ladder.stream()
                .filter(FundsLadder.Rung::isShort)
                .findFirst()
                .map(rung -> Formats.sentence(rung.what()) + ": " + rung.shortSaid() + " short"
                        + (rung.late() ? ", to be ordered by " : " on ") + rung.orderBySaid())
                .orElse(
                        !ladder.isEmpty()
                                ? "Every order is covered on its day"
                                : onOrder.minor() > 0 ? "Nothing more has to be bought" : "Nothing has to be bought");
    }

    private static String lead(
            List<FundsLadder.Rung> ladder, Optional<Forecast> forecast, Money onOrder, Formats formats) {
        if (forecast.isEmpty()) {
            return FundsLadder.NOT_SAID;
        }
        if (ladder.isEmpty() && onOrder.minor() > 0) {
            return formats.money(onOrder.minor()) + " is still to be paid for what is on order.";
        }
        long more = ladder.stream().filter(FundsLadder.Rung::isShort).count();
        return more > 1
                ? "With it, " + Formats.counted(more, "order is", "orders are")
                        + " short on their day, after those before them are paid."
                : "";
    }

    static String said(Money now, Settings settings, long people, List<Level> levels, Formats formats) {
        long under = settings.reserve().minor() - now.minor();
        String reserve = settings.reserve().minor() == 0
                ? ""
                : under > 0
                        ? ", " + formats.money(under) + " under the reserve"
                        : ", " + formats.money(settings.reserve().minor()) + " of it reserve";
        return "There is " + formats.money(now.minor()) + " in the bank" + reserve + "."
                + (people == 0
                        ? " Nobody pledges yet."
                        : " " + Formats.count(people, "supporter") + (people == 1 ? " pledges " : " pledge ")
                                + Formats.list(pledged(levels, formats)) + " before fees.");
    }

    /** {@code €365 a month}, {@code €40 an episode}: what each kind of charge brings, where anybody pays it. */
    private static List<String> pledged(List<Level> levels, Formats formats) {
        Map<String, Long> sums = new TreeMap<>();
        levels.stream()
                .filter(level -> level.people() > 0)
                .forEach(level -> sums.merge(level.charged(), level.together().minor(), Math::addExact));
        return sums.entrySet().stream()
                .map(sum -> formats.money(sum.getValue()) + " " + sum.getKey())
                .toList();
    }

    /** All levels together; empty where some are charged by the month and some by the episode. */
    private static Optional<Money> together(List<Level> levels) {
        return levels.stream().map(Level::charged).distinct().count() > 1
                ? Optional.empty()
                : Optional.of(levels.stream().map(Level::together).reduce(Money.ZERO, Money::plus));
    }

    private static String runway(Optional<Forecast> forecast, Formats formats) {
        return forecast.map(f -> {
                    String far = "as far as is drawn, to " + formats.dateLong(f.horizon());
                    String without = f.cash()
                            .runwayWithoutPledges()
                            .map(day -> day.isBefore(f.asOf())
                                    ? "it stands under the reserve today"
                                    : "it stays above the reserve until " + formats.dateLong(day)
                                            + ", four chances in five")
                            .orElse("it stays above the reserve as far as is drawn, four chances in five");
                    return (f.cash().runway().filter(f.asOf()::isAfter).isPresent()
                                    ? "As things go, the account stands under zero today"
                                    : "As things go, the money lasts "
                                            + f.cash()
                                                    .runway()
                                                    .map(day -> "until " + formats.dateLong(day))
                                                    .orElse(far))
                            + "; if pledges stopped today and nothing more were ordered, " + without + ".";
                })
                .orElse("");
    }

    private static List<Level> levels(Read read, YearMonth month) {
        List<SupporterMonth> rows = SupporterMonthStore.TABLE.values(read);
        List<Level> levels = new ArrayList<>();
        for (PledgeLevel level : PledgeLevelStore.TABLE.values(read)) {
            long people = rows.stream()
                    .filter(row -> row.level().same(level.id()) && !row.month().isAfter(month))
                    .reduce((a, b) -> a.month().isAfter(b.month()) ? a : b)
                    .map(SupporterMonth::end)
                    .orElse(0L);
            levels.add(new Level(
                    level.name(),
                    level.amount(),
                    LevelFields.charged(level),
                    people,
                    new Money(Math.multiplyExact(level.amount().minor(), people))));
        }
        return levels;
    }

    private static List<Entry> entries(List<LedgerEntry> ledger, List<PledgeLevel> levels) {
        List<LedgerEntry> latestFirst = new ArrayList<>(ledger);
        // of one day too the one entered last is first, else a day with many would hide it
        Collections.reverse(latestFirst);
        return latestFirst.stream()
                .sorted(Comparator.comparing(LedgerEntry::date).reversed())
                .limit(LAST_ENTRIES)
                .map(entry -> new Entry(
                        entry.date(),
                        entry.amount(),
                        LedgerFields.word(entry.kind()),
                        LedgerFields.what(entry, levels)))
                .toList();
    }
}
