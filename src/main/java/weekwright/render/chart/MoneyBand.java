package weekwright.render.chart;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.function.ToDoubleFunction;
import weekwright.render.chart.AheadPicture.Balance;
import weekwright.render.chart.AheadPicture.Cash;
import weekwright.render.chart.AheadPicture.Fan;
import weekwright.render.chart.AheadPicture.Purchase;

/**
 * Money over the days of a sheet: what was, the fan of what comes if nothing more were bought, and the stair of what
 * must be bought, laid on the drawing by a plane. Values are minor units, days count from the sheet's first.
 */
final class MoneyBand {
    /** Where a day and an amount lie on the drawing. */
    interface Plane {
        double x(double day, double minor);

        double y(double day, double minor);
    }

    /** A step of the stair: from the level before to the level after the purchase. */
    record Step(int purchase, double day, double before, double after) {}

    private static final double ABOVE_HIGHEST = 0.06;
    /** The band begins a tenth of its span under the reserve. */
    private static final double UNDER_RESERVE = 1 / 9.0;

    private final Cash cash;
    private final LocalDate first;
    private final double today;
    private final double days;
    private final double start;
    private final double base;
    private final List<Step> steps = new ArrayList<>();
    private final double low;
    private final double high;

    MoneyBand(Cash cash, LocalDate first, LocalDate today, int days) {
        this.cash = cash;
        this.first = first;
        this.today = day(today);
        this.days = days;
        this.start = Math.max(0, this.today);
        double bought = 0;
        double level = cash.reserve();
        for (int i = 0; i < cash.purchases().size(); i++) {
            Purchase purchase = cash.purchases().get(i);
            double at = Math.max(this.today, day(purchase.orderBy()));
            if (at < 0) {
                bought += purchase.amount();
                level += purchase.amount();
            } else if (at <= days) {
                steps.add(new Step(i, at, level, level + purchase.amount()));
                level += purchase.amount();
            }
        }
        this.base = cash.reserve() + bought;
        double most = Math.max(level, cash.now());
        double least = cash.now();
        for (Fan fan : cash.fan()) {
            if (day(fan.day()) <= days && day(fan.day()) >= 0) {
                most = Math.max(most, fan.p90());
                least = Math.min(least, fan.p10());
            }
        }
        for (Balance past : cash.past()) {
            if (day(past.day()) >= 0) {
                most = Math.max(most, past.minor());
                least = Math.min(least, past.minor());
            }
        }
        double span = Math.max(most - cash.reserve(), Math.max(1, Math.abs(cash.reserve()) * 0.1));
        this.high = cash.reserve() + span * (1 + ABOVE_HIGHEST);
        double under = cash.reserve() - (high - cash.reserve()) * UNDER_RESERVE;
        this.low = least < under ? least - (high - least) * 0.03 : under;
    }

    double low() {
        return low;
    }

    double high() {
        return high;
    }

    List<Step> steps() {
        return steps;
    }

    boolean hasFan() {
        return start < days
                && cash.fan().stream().filter(f -> day(f.day()) <= days).count() > 1;
    }

    private double day(LocalDate date) {
        return ChronoUnit.DAYS.between(first, date);
    }

    /** The level that the stair has after this day's purchases. */
    double stairAt(double day) {
        double level = base;
        for (Step step : steps) {
            if (step.day <= day) {
                level = step.after;
            }
        }
        return level;
    }

    /** A percentile of the fan on any day, straight between the days given. */
    double fanAt(double day, ToDoubleFunction<Fan> of) {
        List<Fan> fan = cash.fan();
        if (fan.isEmpty()) {
            return cash.now();
        }
        if (day <= day(fan.get(0).day())) {
            return of.applyAsDouble(fan.get(0));
        }
        for (int i = 1; i < fan.size(); i++) {
            double from = day(fan.get(i - 1).day());
            double to = day(fan.get(i).day());
            if (day <= to) {
                double share = to == from ? 1 : (day - from) / (to - from);
                return of.applyAsDouble(fan.get(i - 1)) * (1 - share) + of.applyAsDouble(fan.get(i)) * share;
            }
        }
        return of.applyAsDouble(fan.get(fan.size() - 1));
    }

    /** The days at which the fan bends inside the sheet, its two ends among them. */
    private List<Double> bends() {
        List<Double> list = new ArrayList<>(List.of(start));
        for (Fan fan : cash.fan()) {
            double at = day(fan.day());
            if (at > start && at < days) {
                list.add(at);
            }
        }
        double end = cash.fan().isEmpty()
                ? start
                : Math.min(days, day(cash.fan().get(cash.fan().size() - 1).day()));
        if (end > list.get(list.size() - 1)) {
            list.add(end);
        }
        return list;
    }

    /** The even chance of every day, as points. */
    double[] median(Plane plane) {
        return line(plane, bends(), Fan::p50);
    }

    /** The band between two percentiles, as corners. */
    double[] band(Plane plane, ToDoubleFunction<Fan> lower, ToDoubleFunction<Fan> upper) {
        List<Double> there = bends();
        List<Double> back = new ArrayList<>(there);
        Collections.reverse(back);
        double[] out = line(plane, there, upper);
        double[] home = line(plane, back, lower);
        double[] all = Arrays.copyOf(out, out.length + home.length);
        System.arraycopy(home, 0, all, out.length, home.length);
        return all;
    }

    private double[] line(Plane plane, List<Double> at, ToDoubleFunction<Fan> of) {
        double[] points = new double[at.size() * 2];
        for (int i = 0; i < at.size(); i++) {
            double value = fanAt(at.get(i), of);
            points[2 * i] = plane.x(at.get(i), value);
            points[2 * i + 1] = plane.y(at.get(i), value);
        }
        return points;
    }

    /** The balance as it was, up to today. */
    double[] past(Plane plane) {
        List<double[]> points = new ArrayList<>();
        double[] before = null;
        for (Balance balance : cash.past()) {
            double at = day(balance.day());
            if (at >= Math.min(today, days)) {
                break;
            }
            if (at >= 0) {
                if (points.isEmpty() && before != null && at > 0) {
                    double share = -before[0] / (at - before[0]);
                    points.add(new double[] {0, before[1] * (1 - share) + balance.minor() * share});
                }
                points.add(new double[] {at, balance.minor()});
            }
            before = new double[] {at, balance.minor()};
        }
        if (today < 0) {
            return new double[0];
        }
        if (today < days) {
            points.add(new double[] {today, cash.now()});
        }
        double[] flat = new double[points.size() * 2];
        for (int i = 0; i < points.size(); i++) {
            flat[2 * i] = plane.x(points.get(i)[0], points.get(i)[1]);
            flat[2 * i + 1] = plane.y(points.get(i)[0], points.get(i)[1]);
        }
        return flat;
    }

    /** The stair from today to the end of the sheet. */
    double[] stair(Plane plane) {
        if (start >= days) {
            return new double[0];
        }
        List<double[]> points = new ArrayList<>(List.of(new double[] {start, base}));
        double level = base;
        for (Step step : steps) {
            points.add(new double[] {step.day, step.before});
            points.add(new double[] {step.day, step.after});
            level = step.after;
        }
        points.add(new double[] {days, level});
        double[] flat = new double[points.size() * 2];
        for (int i = 0; i < points.size(); i++) {
            flat[2 * i] = plane.x(points.get(i)[0], points.get(i)[1]);
            flat[2 * i + 1] = plane.y(points.get(i)[0], points.get(i)[1]);
        }
        return flat;
    }

    /** Every stretch of days on which the even chance lies under the stair, as a closed shape. */
    List<double[]> shortFields(Plane plane) {
        List<Double> cuts = new ArrayList<>(bends());
        steps.forEach(s -> cuts.add(s.day));
        cuts.sort(null);
        double end = bends().get(bends().size() - 1);
        List<double[]> fields = new ArrayList<>();
        for (int i = 0; i + 1 < cuts.size(); i++) {
            double from = cuts.get(i);
            double to = Math.min(end, cuts.get(i + 1));
            double level = stairAt(from);
            double missingFrom = level - fanAt(from, Fan::p50);
            double missingTo = level - fanAt(to, Fan::p50);
            if (to <= from || missingFrom <= 0 && missingTo <= 0) {
                continue;
            }
            double left = missingFrom > 0 ? from : from + (to - from) * -missingFrom / (missingTo - missingFrom);
            double right = missingTo > 0 ? to : from + (to - from) * missingFrom / (missingFrom - missingTo);
            fields.add(new double[] {
                plane.x(left, level), plane.y(left, level),
                plane.x(right, level), plane.y(right, level),
                plane.x(right, fanAt(right, Fan::p50)), plane.y(right, fanAt(right, Fan::p50)),
                plane.x(left, fanAt(left, Fan::p50)), plane.y(left, fanAt(left, Fan::p50))
            });
        }
        return fields;
    }

    /** Two to four round amounts inside the band, in minor units, for its own axis. */
    static List<Double> roundAmounts(double low, double high) {
        double rough = (high - low) / 3.2;
        double power = Math.pow(10, Math.floor(Math.log10(Math.max(1, rough))));
        double step = power;
        for (double factor : new double[] {1, 2, 2.5, 5, 10}) {
            step = power * factor;
            if (step >= rough) {
                break;
            }
        }
        List<Double> list = new ArrayList<>();
        for (double value = Math.ceil(low / step) * step; value < high; value += step) {
            list.add(value);
        }
        return list;
    }
}
