package weekwright.build;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.MonthDay;
import java.time.ZoneId;
import java.time.temporal.TemporalAdjusters;
import java.util.Collections;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import weekwright.base.Hours;
import weekwright.base.Money;
import weekwright.base.Quantity;
import weekwright.base.Reading;

/**
 * All settings of a project as they stand, and what holds where nothing stands: the defaults of rule 99 live here and
 * nowhere else. The parts are the tables of {@code project.toml}.
 */
public record Settings(
        Project project,
        Publishing publishing,
        Weather weather,
        OrderSettings orders,
        MoneySettings money,
        Emergency emergency,
        ModelSettings model,
        BuildLog buildLog) {
    private static final long SMALL_ORDER_UNITS = 50;

    /** With the build log all off. */
    public Settings(
            Project project,
            Publishing publishing,
            Weather weather,
            OrderSettings orders,
            MoneySettings money,
            Emergency emergency,
            ModelSettings model) {
        this(project, publishing, weather, orders, money, emergency, model, BuildLog.OFF);
    }

    public ZoneId zone() {
        return ZoneId.of(project.zone());
    }

    /** Digits of the project's currency: 2 for EUR. */
    public int moneyDigits() {
        return Currency.getInstance(project.currency()).getDefaultFractionDigits();
    }

    /** How a form's texts are read in this project. */
    public Reading typed() {
        return Reading.form(moneyDigits());
    }

    public Project.Units units() {
        return project.units().orElse(Project.Units.METRIC);
    }

    public Project.Quotes quotes() {
        return project.quotes().orElse(Project.Quotes.AS_TYPED);
    }

    public Money reserve() {
        return project.reserve().orElse(Money.ZERO);
    }

    public LocalDate openingDate() {
        return project.openingDate().orElse(project.started());
    }

    public Money openingCash() {
        return project.openingCash().orElse(Money.ZERO);
    }

    public int horizonMonths() {
        return project.horizonMonths().orElse(36);
    }

    public DayOfWeek weekday() {
        return publishing.weekday().isEmpty()
                ? DayOfWeek.FRIDAY
                : DayOfWeek.valueOf(publishing.weekday().toUpperCase(Locale.ROOT));
    }

    public LocalTime publishingTime() {
        return publishing.time().orElse(LocalTime.of(17, 0));
    }

    /** The first slot: as set, moved on to the weekday where it is not on it; else the first such day after the start. */
    public LocalDate firstSlot() {
        return publishing
                .first()
                .map(day -> day.with(TemporalAdjusters.nextOrSame(weekday())))
                .orElseGet(() -> project.started().with(TemporalAdjusters.next(weekday())));
    }

    public int everyWeeks() {
        return publishing.everyWeeks().orElse(1);
    }

    public Quantity targetMinutes() {
        return publishing.targetMinutes().orElse(Quantity.of(20));
    }

    public int earlyDays() {
        return publishing.earlyDays().orElse(1);
    }

    public int editWindowDays() {
        return publishing.editWindowDays().orElse(14);
    }

    /** Weekdays on which editing is done; all seven where none is set. */
    public List<DayOfWeek> editDays() {
        return publishing.editDays().isEmpty()
                ? List.of(DayOfWeek.values())
                : publishing.editDays().list().stream()
                        .map(day -> DayOfWeek.valueOf(day.toUpperCase(Locale.ROOT)))
                        .toList();
    }

    /** Weeks of story in the bank under which a warning is due. */
    public Quantity bankFloor() {
        return publishing.bankFloor().orElse(Quantity.of(3));
    }

    public Hours editLow() {
        return publishing.editLow().orElse(new Hours(16 * 60));
    }

    public Hours editLikely() {
        return publishing.editLikely().orElse(new Hours(24 * 60));
    }

    public Hours editHigh() {
        return publishing.editHigh().orElse(new Hours(36 * 60));
    }

    /** Factor on leaving for each empty slot of a month; 1 is no effect. */
    public Quantity emptyLeaving() {
        return publishing.emptyLeaving().orElse(Quantity.ONE);
    }

    /** Dates of slots without an episode. */
    public List<LocalDate> skip() {
        return publishing.skip().list().stream().map(LocalDate::parse).toList();
    }

    /** Twelve shares of days lost outdoors, January first. */
    public List<Quantity> weatherLost() {
        return weather.lost().isEmpty()
                ? Collections.nCopies(12, Quantity.ZERO)
                : weather.lost().list().stream()
                        .map(share -> new Quantity(new BigDecimal(share)))
                        .toList();
    }

    public Quantity spellDays() {
        return weather.spellDays().orElse(Quantity.of(2));
    }

    public int marginDays() {
        return orders.marginDays().orElse(14);
    }

    /** Orders up to this may pass one that waits for money: as set, else the larger of 2 % of the reserve and 50 units. */
    public Money smallOrder() {
        return orders.small().orElseGet(() -> {
            long fifty = BigDecimal.valueOf(SMALL_ORDER_UNITS)
                    .movePointRight(moneyDigits())
                    .longValueExact();
            return new Money(Math.max(reserve().minor() / 50, fifty));
        });
    }

    public Quantity putByPercent() {
        return money.putByPercent().orElse(Quantity.ZERO);
    }

    public MonthDay yearStarts() {
        return money.yearStarts().orElse(MonthDay.of(1, 1));
    }

    public Quantity priorRatio() {
        return model.priorRatio().orElse(new Quantity(new BigDecimal("1.15")));
    }

    /** In months; 0 is none. */
    public Quantity effortHalfLife() {
        return model.effortHalfLife().orElse(Quantity.of(18));
    }

    /** In months; 0 is none. */
    public Quantity supportersHalfLife() {
        return model.supportersHalfLife().orElse(Quantity.of(6));
    }

    public boolean editingFirst() {
        return model.editingFirst().orElse(true);
    }

    /** Percent that a fixed camera adds. */
    public Quantity cameraFixed() {
        return model.cameraFixed().orElse(Quantity.of(15));
    }

    /** Percent of the clock hours that an operator is there. */
    public Quantity cameraOperator() {
        return model.cameraOperator().orElse(Quantity.of(30));
    }

    /** Whether it is learned of deliveries that are late together (rule 137). */
    public boolean lateTogether() {
        return model.lateTogether().orElse(true);
    }
}
