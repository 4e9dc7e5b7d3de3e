package weekwright.web.start;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import weekwright.base.Id;
import weekwright.base.Money;
import weekwright.base.Problems;
import weekwright.base.Quantity;
import weekwright.base.Rejected;
import weekwright.base.Words;
import weekwright.build.Ids;
import weekwright.build.MoneySettings;
import weekwright.build.SaveSettings;
import weekwright.build.SettingsStore;
import weekwright.build.Weather;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;
import weekwright.funds.PledgeLevel;
import weekwright.funds.PledgeLevelStore;
import weekwright.funds.SavePledgeLevel;
import weekwright.funds.SetSupporters;
import weekwright.funds.SupporterMonth;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** The third step of the guided start: what supporters pledge, what is put by for tax, how wet the place is. */
public final class StartMoneyPage implements Page {
    static final List<Integer> LEVELS = List.of(1, 2, 3);
    private static final int DAYS_OF_MONTH = 30;

    /**
     * @param levels numbers of the lines for pledge levels
     * @param there levels entered before
     * @param currency its mark
     */
    public record View(Form form, List<Integer> levels, List<String> there, String currency) {}

    private record Row(String name, Money amount, int supporters, String field) {}

    @Override
    public View show(Request request) {
        return request.read(read -> {
            String tax = SettingsStore.get(read)
                    .money()
                    .putByPercent()
                    .map(Quantity::text)
                    .orElse("");
            Formats formats = request.formats();
            List<String> lost = SettingsStore.get(read).weather().lost().list();
            Map<String, String> values =
                    Map.of("charged", "month", "put_by", tax, "winter", days(lost, 0), "summer", days(lost, 6));
            return new View(
                    request.form("", values),
                    LEVELS,
                    PledgeLevelStore.TABLE.values(read).stream()
                            .map(level -> level.name() + ", "
                                    + formats.moneyExact(level.amount().minor()))
                            .toList(),
                    formats.currencyMark());
        });
    }

    private static String days(List<String> lost, int month) {
        return lost.isEmpty()
                ? ""
                : new BigDecimal(lost.get(month))
                        .multiply(BigDecimal.valueOf(DAYS_OF_MONTH))
                        .setScale(0, RoundingMode.HALF_UP)
                        .toString();
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        List<Row> rows = rows(form);
        Optional<PledgeLevel.Charged> charged = form.read("charged", PledgeLevel.Charged.class);
        Optional<Quantity> tax = form.read("put_by", Quantity.class);
        tax.filter(q -> q.doubleValue() < 0 || q.doubleValue() > 100)
                .ifPresent(q -> form.fault("put_by", form.text("put_by"), "is not 0 to 100", "write a percent"));
        Optional<Integer> winter = wet(form, "winter");
        Optional<Integer> summer = wet(form, "summer");
        return request.save(write -> {
            Problems problems = new Problems();
            List<SupporterMonth> counts = new ArrayList<>();
            LocalDate today = request.today();
            for (Row row : rows) {
                StartBuildPage.told(problems, row.field(), () -> {
                    Id id = Ids.word(row.name(), PledgeLevelStore.TABLE.ids(write));
                    SavePledgeLevel.save(
                            write, Optional.empty(), level(id, row, charged.orElse(PledgeLevel.Charged.MONTH)));
                    counts.add(new SupporterMonth(
                            YearMonth.from(today), id, row.supporters(), Optional.empty(), Optional.empty(), false));
                });
            }
            Rejected.ifFaults(problems);
            SetSupporters.set(write, counts, YearMonth.from(today));
            settings(write, tax, winter, summer);
            return Saved.to("/ahead").saying("That is enough for a first forecast. The rest can come as it comes.");
        });
    }

    private static PledgeLevel level(Id id, Row row, PledgeLevel.Charged charged) {
        return new PledgeLevel(
                id,
                row.name(),
                row.amount(),
                charged,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }

    private static List<Row> rows(FormReader form) {
        List<Row> rows = new ArrayList<>();
        for (int number : LEVELS) {
            String field = "level" + number;
            boolean named = !form.text(field).isEmpty();
            String name = form.text(field, PledgeLevel.class, "name");
            Optional<Money> amount = form.text(field + "_amount").isEmpty()
                    ? Optional.empty()
                    : form.column(field + "_amount", PledgeLevel.class, "amount")
                            .map(Money.class::cast);
            Optional<Integer> supporters = form.text(field + "_supporters").isEmpty()
                    ? Optional.empty()
                    : form.whole(field + "_supporters", SupporterMonth.class, "start");
            boolean typed = !form.text(field + "_amount").isEmpty()
                    || !form.text(field + "_supporters").isEmpty();
            if (!named && typed) {
                form.fault(field, "", "has no name", "write what the level is called");
            } else if (named && form.text(field + "_amount").isEmpty()) {
                form.fault(field + "_amount", "", "is missing", "write what a supporter of this level pays");
            } else if (!name.isEmpty()) {
                amount.ifPresent(money -> rows.add(new Row(name, money, supporters.orElse(0), field)));
            }
        }
        return rows;
    }

    private static Optional<Integer> wet(FormReader form, String name) {
        Optional<Integer> days = form.read(name, Integer.class);
        days.filter(d -> d < 0 || d > DAYS_OF_MONTH)
                .ifPresent(d -> form.fault(name, form.text(name), "is not 0 to 30", "write days of a month"));
        return days;
    }

    /** October to March are winter, April to September summer; days of thirty make the shares. */
    private static void settings(
            Write write, Optional<Quantity> tax, Optional<Integer> winter, Optional<Integer> summer)
            throws Rejected, Stale {
        Stored<MoneySettings> money = SettingsStore.one(write, SettingsStore.MONEY);
        MoneySettings kept =
                new MoneySettings(tax, money.value().taxMonth(), money.value().yearStarts());
        if (!kept.equals(money.value())) {
            SaveSettings.save(write, SettingsStore.MONEY, money.version(), kept);
        }
        if (winter.isEmpty() && summer.isEmpty()) {
            return;
        }
        Stored<Weather> weather = SettingsStore.one(write, SettingsStore.WEATHER);
        List<String> lost = weather.value().lost().list();
        boolean asShown = winter.map(String::valueOf).orElse("").equals(days(lost, 0))
                && summer.map(String::valueOf).orElse("").equals(days(lost, 6));
        if (asShown) {
            return; // twelve shares of the crew's own are not made two
        }
        String[] shares = IntStream.rangeClosed(1, 12)
                .mapToObj(month -> (month >= 4 && month <= 9 ? summer : winter).orElse(0))
                .map(days -> BigDecimal.valueOf(days)
                        .divide(BigDecimal.valueOf(DAYS_OF_MONTH), 2, RoundingMode.HALF_UP)
                        .stripTrailingZeros()
                        .toPlainString())
                .toArray(String[]::new);
        Weather changed = new Weather(Words.of(shares), weather.value().spellDays());
        if (!changed.equals(weather.value())) {
            SaveSettings.save(write, SettingsStore.WEATHER, weather.version(), changed);
        }
    }
}
