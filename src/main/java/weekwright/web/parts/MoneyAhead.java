package weekwright.web.parts;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import weekwright.build.Settings;
import weekwright.forecast.Forecast;
import weekwright.forecast.Names;
import weekwright.funds.Balance;
import weekwright.funds.LedgerEntry;
import weekwright.render.chart.AheadPicture;

/** The money of a forecast as it is drawn on the sheet ahead and in Funds. Pure. */
public final class MoneyAhead {
    private static final int TOGETHER_DAYS = 21;

    private final Forecast forecast;
    private final Names names;
    private final LocalDate today;

    public MoneyAhead(Forecast forecast, Names names) {
        this.forecast = forecast;
        this.names = names;
        this.today = forecast.asOf();
    }

    /** Purchases that cost money and have a day, those of three weeks together, so that their names find room. */
    public List<List<Forecast.Order>> groups() {
        List<List<Forecast.Order>> groups = new ArrayList<>();
        LocalDate until = LocalDate.MIN;
        for (Forecast.Order order : forecast.orders()) {
            if (order.orderBy().isEmpty() || order.amount().minor() <= 0) {
                continue;
            }
            LocalDate day = later(order.orderBy().get());
            if (!day.isBefore(until)) {
                groups.add(new ArrayList<>());
                until = day.plusDays(TOGETHER_DAYS);
            }
            groups.get(groups.size() - 1).add(order);
        }
        return groups;
    }

    /** The order that gives a group its day and its name. */
    public static Forecast.Order largest(List<Forecast.Order> group) {
        return group.stream()
                .max(Comparator.comparing(order -> order.amount().minor()))
                .orElseThrow();
    }

    /** Drawn on the day and under the name of its largest order. */
    private AheadPicture.Purchase purchase(List<Forecast.Order> group) {
        Forecast.Order largest = largest(group);
        String name =
                names.material(largest.material()).replaceFirst("[,(:].*", "").strip();
        return new AheadPicture.Purchase(
                group.size() == 1 ? name : name + " and " + (group.size() - 1) + " more",
                later(largest.orderBy().orElseThrow()),
                group.stream().mapToLong(order -> order.amount().minor()).sum(),
                group.stream()
                        .mapToLong(order -> order.shortBy().p50().minor())
                        .max()
                        .orElse(0));
    }

    /** What was theirs, what will be if nothing more were bought, and what must be bought: what is put by for tax is in none of it. */
    public AheadPicture.Cash cash(Settings settings, List<LedgerEntry> ledger, int weeksBack) {
        List<AheadPicture.Balance> past = new ArrayList<>();
        for (int week = weeksBack; week >= 0; week--) {
            LocalDate day = today.minusWeeks(week);
            if (!day.isBefore(settings.openingDate())) {
                past.add(new AheadPicture.Balance(
                        day, Balance.available(day, settings, ledger).minor()));
            }
        }
        long now = forecast.cash().available().minor();
        List<AheadPicture.Fan> fan = new ArrayList<>();
        fan.add(new AheadPicture.Fan(today, now, now, now, now, now));
        forecast.cash().weeksUnspent().stream()
                .filter(week -> week.date().isAfter(today))
                .forEach(week -> fan.add(new AheadPicture.Fan(
                        week.date(),
                        week.p10().minor(),
                        week.p25().minor(),
                        week.p50().minor(),
                        week.p75().minor(),
                        week.p90().minor())));
        return new AheadPicture.Cash(
                now,
                settings.reserve().minor(),
                past,
                fan,
                groups().stream().map(this::purchase).toList());
    }

    /** What should have been ordered already is drawn today. */
    private LocalDate later(LocalDate day) {
        return day.isBefore(today) ? today : day;
    }
}
