package weekwright.worlds;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import weekwright.engine.simulate.LevelHistory;
import weekwright.worlds.Kind.Trait;

/**
 * The supporters of a world, as rules 76 to 80 and 123 have them: month by month some join and some leave, a film of a Friday may set off a
 * surge, and all are charged on the 1st. How the build goes does not matter to them, so that all months are drawn at once.
 */
final class Pledges {
    /** What a month costs, by level. */
    static final int[] AMOUNT = {200, 600};

    static final int PAYOUT_DAYS = 30;

    private static final int MONTHS = 66;
    private static final int NEW_MONTHS = 3;
    private static final double NEWCOMERS_LEAVE = 2.5;
    private static final double HALVING_DAYS = 21;
    /** Usual drift of joining a month, and that of a world in waves, as standard deviations of the logarithm. */
    private static final double DRIFT = 0.1;

    private static final double WAVES = 0.35;

    /** A month: how many were there on the 1st, joined and left in it; whether the crew takes it for one that a film drove. */
    record Month(LocalDate first, int level, int start, int joined, int left, boolean surge) {
        boolean over(LocalDate day) {
            return !first.plusMonths(1).isAfter(day);
        }

        boolean under(LocalDate day) {
            return !first.isAfter(day) && !over(day);
        }
    }

    /** What comes in. */
    record Payout(int day, long amount) {}

    final List<Month> months = new ArrayList<>();
    final List<Payout> payouts = new ArrayList<>();

    private final World world;
    private final int[] there = new int[AMOUNT.length];
    private final double[] rate = new double[AMOUNT.length];
    private final double[] leaving = new double[AMOUNT.length];
    private final int[][] newcomers = new int[AMOUNT.length][NEW_MONTHS];
    private final double chance;
    /** Months' worth of usual joining that surges still bring. */
    private double coming;

    private double wave = 1;

    /** @param income a month at first */
    Pledges(World world, int income) {
        this.world = world;
        for (int i = 0; i < AMOUNT.length; i++) {
            there[i] = Math.max(3, income / 2 / AMOUNT[i]);
            leaving[i] = 0.03 + 0.04 * world.chance("leaving", i, 0);
            rate[i] = leaving[i] * there[i] * (0.6 + 0.9 * world.chance("joining", i, 0));
        }
        // what rule 123 expects before anything is counted, Beta(1, 39)
        chance = 1 - Math.pow(1 - world.chance("surges", 0, 0), 1 / 39.0);
        LocalDate first = World.START.withDayOfMonth(1);
        for (int m = 0; m < MONTHS; m++) {
            month(first.plusMonths(m));
        }
    }

    private double u(String what, int i, LocalDate month) {
        return world.chance(what, i, month.getYear() * 12 + month.getMonthValue());
    }

    private void month(LocalDate first) {
        long charged = 0;
        double surge = surge(first);
        for (int i = 0; i < AMOUNT.length; i++) {
            charged += (long) there[i] * AMOUNT[i];
            int joined = LevelHistory.joined(rate[i] * wave, 1, u("joined", i, first));
            int fresh = LevelHistory.joined(rate[i] * wave, surge, u("surge joined", i, first));
            int old = there[i];
            for (int n : newcomers[i]) {
                old -= n;
            }
            int left = LevelHistory.left(old, leaving[i], 1, u("left", i, first));
            for (int age = NEW_MONTHS - 1; age >= 0; age--) {
                int gone = LevelHistory.left(
                        newcomers[i][age],
                        Math.min(1, NEWCOMERS_LEAVE * leaving[i]),
                        1,
                        u("new left " + age, i, first));
                left += gone;
                if (age + 1 < NEW_MONTHS) {
                    newcomers[i][age + 1] = newcomers[i][age] - gone;
                }
            }
            newcomers[i][0] = fresh;
            // the crew marks a month in which three times as many joined as usual
            months.add(new Month(first, i, there[i], joined + fresh, left, surge > 2));
            there[i] += joined + fresh - left;
        }
        payouts.add(new Payout((int) first.toEpochDay() + PAYOUT_DAYS, charged));
        wave *= LevelHistory.drift(world.kind.is(Trait.WAVES) ? WAVES : DRIFT, u("wave", 0, first));
    }

    /** What surges bring in a month, in months of usual joining. */
    private double surge(LocalDate first) {
        if (!world.kind.is(Trait.SURGES)) {
            return 0;
        }
        LocalDate end = first.plusMonths(1);
        double now = coming * (1 - Math.pow(2, -first.lengthOfMonth() / HALVING_DAYS));
        coming -= now;
        for (LocalDate friday = first.with(TemporalAdjusters.nextOrSame(DayOfWeek.FRIDAY));
                friday.isBefore(end);
                friday = friday.plusWeeks(1)) {
            int day = (int) friday.toEpochDay();
            if (world.chance("surge", day, 0) < chance) {
                double size = 3 * LevelHistory.drift(0.6, world.chance("size", day, 0));
                double rest = Math.pow(2, -(ChronoUnit.DAYS.between(friday, end) - 1) / HALVING_DAYS);
                now += size * (1 - rest);
                coming += size * rest;
            }
        }
        return now;
    }

    /** A month under way as it is counted up to a day: a share of those who join and leave in it. */
    Month counted(Month month, LocalDate day) {
        double share = ChronoUnit.DAYS.between(month.first(), day)
                / (double) month.first().lengthOfMonth();
        return new Month(
                month.first(),
                month.level(),
                month.start(),
                LevelHistory.left(month.joined(), share, 1, u("counted joined", month.level(), month.first())),
                LevelHistory.left(month.left(), share, 1, u("counted left", month.level(), month.first())),
                false);
    }
}
