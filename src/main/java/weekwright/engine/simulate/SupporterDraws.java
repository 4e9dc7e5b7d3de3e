package weekwright.engine.simulate;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import weekwright.engine.Inputs;
import weekwright.engine.simulate.Streams.Purpose;

/**
 * Supporters of all pledge levels (rules 76 to 84). Immutable, made once for a forecast, shared by threads; a thread runs its trials in
 * a {@link State} of its own. Levels are positions in {@link Inputs#levels}; months are year × 12 + month − 1.
 *
 * <p>On the 1st of a month first {@link State#turn} with the empty slots of the month gone, then the monthly charges. Nobody pays in the
 * month of joining; a publication charges the number of the 1st.
 */
public final class SupporterDraws {
    /** A charge made before the as-of day that is paid out after it (rule 84). */
    public record Pending(int level, int payoutDay, long netMinor) {}

    private final int levels;
    private final int asOfMonth;
    private final double joiningDrift;
    private final double emptyLeaving;
    private final LevelHistory[] history;
    private final Charge[] charge;
    private final int[] start;
    private final int[] joined;
    private final int[] left;
    private final double[] restOfMonth;
    private final long[] rateKeys;
    private final long[] shareKeys;
    private final long[] joinedKeys;
    private final long[] leftKeys;
    private final long driftKey = Streams.key(Purpose.JOIN_DRIFT, "");
    private final List<Pending> pending;
    private final int publishedThisMonth;

    private SupporterDraws(Inputs inputs) {
        levels = inputs.levels().size();
        LocalDate today = LocalDate.ofEpochDay(inputs.asOf());
        asOfMonth = month(today);
        joiningDrift = inputs.model().joiningDrift();
        emptyLeaving = inputs.publishing().emptyLeaving();
        history = new LevelHistory[levels];
        charge = new Charge[levels];
        start = new int[levels];
        joined = new int[levels];
        left = new int[levels];
        restOfMonth = new double[levels];
        rateKeys = new long[levels];
        shareKeys = new long[levels];
        joinedKeys = new long[levels];
        leftKeys = new long[levels];
        double daysLeft = today.lengthOfMonth() - today.getDayOfMonth() + 1.0;
        for (int i = 0; i < levels; i++) {
            Inputs.PledgeLevel level = inputs.levels().get(i);
            List<Inputs.SupporterMonth> rows = rows(inputs, level.id());
            history[i] = learn(inputs, rows);
            charge[i] =
                    Charge.of(level.amountMinor(), level.feePercent(), level.feeFixedMinor(), level.declinedPercent());
            start[i] = startOf(rows, asOfMonth);
            restOfMonth[i] = 1;
            for (Inputs.SupporterMonth row : rows) {
                if (row.month() == asOfMonth) {
                    joined[i] = row.joined();
                    left[i] = row.left();
                    restOfMonth[i] = daysLeft / today.lengthOfMonth();
                }
            }
            rateKeys[i] = Streams.key(Purpose.JOIN_RATE, level.id());
            shareKeys[i] = Streams.key(Purpose.LEAVE_SHARE, level.id());
            joinedKeys[i] = Streams.key(Purpose.JOINED, level.id());
            leftKeys[i] = Streams.key(Purpose.LEFT, level.id());
        }
        List<Integer> published = published(inputs);
        publishedThisMonth = (int)
                published.stream().filter(day -> monthOf(day) == asOfMonth).count();
        pending = pending(inputs, published);
    }

    public static SupporterDraws of(Inputs inputs) {
        return new SupporterDraws(inputs);
    }

    private static int month(LocalDate day) {
        return day.getYear() * 12 + day.getMonthValue() - 1;
    }

    private static int monthOf(int day) {
        return month(LocalDate.ofEpochDay(day));
    }

    private static LocalDate firstOf(int month) {
        return LocalDate.of(Math.floorDiv(month, 12), Math.floorMod(month, 12) + 1, 1);
    }

    private static List<Inputs.SupporterMonth> rows(Inputs inputs, String level) {
        return inputs.supporters().stream()
                .filter(row -> row.level().equals(level))
                .toList();
    }

    /** Only months before the as-of month are whole. */
    private LevelHistory learn(Inputs inputs, List<Inputs.SupporterMonth> rows) {
        if (rows.isEmpty()) {
            return LevelHistory.NONE;
        }
        List<Inputs.SupporterMonth> whole =
                rows.stream().filter(row -> row.month() < asOfMonth).toList();
        return LevelHistory.learn(
                whole.stream().mapToInt(Inputs.SupporterMonth::start).toArray(),
                whole.stream().mapToInt(Inputs.SupporterMonth::joined).toArray(),
                whole.stream().mapToInt(Inputs.SupporterMonth::left).toArray(),
                whole.stream()
                        .mapToDouble(row -> EffortRatio.ageWeight(
                                inputs.asOf() - middleOf(row.month()),
                                inputs.model().supportersHalfLife()))
                        .toArray());
    }

    private static double middleOf(int month) {
        LocalDate first = firstOf(month);
        return first.toEpochDay() + first.lengthOfMonth() / 2.0;
    }

    /** How many there were on the 1st: the month's row, else what the last row before it comes to, else 0. */
    private static int startOf(List<Inputs.SupporterMonth> rows, int month) {
        Inputs.SupporterMonth last = null;
        for (Inputs.SupporterMonth row : rows) {
            if (row.month() == month) {
                return row.start();
            }
            if (row.month() < month && (last == null || row.month() > last.month())) {
                last = row;
            }
        }
        return last == null ? 0 : Math.max(0, last.start() + last.joined() - last.left());
    }

    private static List<Integer> published(Inputs inputs) {
        return inputs.episodes().stream()
                .map(Inputs.Episode::published)
                .filter(day -> day != Inputs.NONE && day <= inputs.asOf())
                .sorted()
                .toList();
    }

    private List<Pending> pending(Inputs inputs, List<Integer> published) {
        List<Pending> charges = new ArrayList<>();
        for (int i = 0; i < levels; i++) {
            Inputs.PledgeLevel level = inputs.levels().get(i);
            List<Inputs.SupporterMonth> rows = rows(inputs, level.id());
            for (int day : level.perEpisode() ? charged(inputs, published) : firsts(inputs, level.payoutDays())) {
                if (day + level.payoutDays() > inputs.asOf()) {
                    charges.add(new Pending(i, day + level.payoutDays(), charge[i].net(startOf(rows, monthOf(day)))));
                }
            }
        }
        return List.copyOf(charges);
    }

    /** The publications that charge: the first {@code chargesAMonth} of each month. */
    private static List<Integer> charged(Inputs inputs, List<Integer> published) {
        List<Integer> charged = new ArrayList<>();
        int month = Inputs.NONE;
        int count = 0;
        for (int day : published) {
            count = monthOf(day) == month ? count + 1 : 1;
            month = monthOf(day);
            if (count <= inputs.publishing().chargesAMonth()) {
                charged.add(day);
            }
        }
        return charged;
    }

    /** The firsts of months before the as-of day whose pay-out may still be out. */
    private static List<Integer> firsts(Inputs inputs, int payoutDays) {
        List<Integer> firsts = new ArrayList<>();
        LocalDate first = LocalDate.ofEpochDay(inputs.asOf()).withDayOfMonth(1);
        for (; first.toEpochDay() + payoutDays > inputs.asOf(); first = first.minusMonths(1)) {
            if (first.toEpochDay() < inputs.asOf()) {
                firsts.add((int) first.toEpochDay());
            }
        }
        return firsts;
    }

    /** Charges before the as-of day that come in after it. */
    public List<Pending> pending() {
        return pending;
    }

    /** Episodes published in the as-of month up to the as-of day: they count towards the charges of that month (rule 82). */
    public int publishedThisMonth() {
        return publishedThisMonth;
    }

    /** The posterior of a level. */
    public LevelHistory history(int level) {
        return history[level];
    }

    /** A state for the trials of one thread. */
    public State newState() {
        return new State();
    }

    /** The supporters of one trial; {@link #begin} before each. */
    public final class State {
        private final int[] n = new int[levels];
        private final double[] lambda = new double[levels];
        private final double[] c = new double[levels];
        private int month;
        private long trialKey;

        private State() {}

        /** The as-of month of a trial. */
        public void begin(long trial) {
            trialKey = trial;
            month = asOfMonth;
            for (int i = 0; i < levels; i++) {
                n[i] = start[i];
                lambda[i] = history[i].joinRate(Streams.uniform(trialKey, rateKeys[i], 0));
                c[i] = history[i].leaveShare(Streams.uniform(trialKey, shareKeys[i], 0));
            }
        }

        /**
         * The 1st of the next month: who came and went in the month gone, n ← n + joined − left, and the drift of λ, which is one
         * factor for all levels.
         *
         * @param emptySlots of the month gone (rule 81)
         */
        public void turn(int emptySlots) {
            boolean partial = month == asOfMonth;
            double drift = LevelHistory.drift(joiningDrift, Streams.uniform(trialKey, driftKey, month + 1));
            for (int i = 0; i < levels; i++) {
                int before = partial ? left[i] : 0;
                double share = partial ? restOfMonth[i] : 1;
                int came = LevelHistory.joined(lambda[i], share, Streams.uniform(trialKey, joinedKeys[i], month));
                int went = LevelHistory.left(
                        Math.max(0, n[i] - before),
                        LevelHistory.leaveShare(c[i], emptyLeaving, emptySlots),
                        share,
                        Streams.uniform(trialKey, leftKeys[i], month));
                n[i] = Math.max(0, n[i] - before - went) + came + (partial ? joined[i] : 0);
                lambda[i] *= drift;
            }
            month++;
        }

        /** How many there were on the 1st of this month. */
        public int count(int level) {
            return n[level];
        }

        /** Net of one charge of a level now, in minor units. */
        public long charge(int level) {
            return charge[level].net(n[level]);
        }
    }
}
