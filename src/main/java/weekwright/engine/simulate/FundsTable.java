package weekwright.engine.simulate;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import weekwright.engine.Inputs;
import weekwright.engine.Inputs.Every;
import weekwright.engine.Inputs.PledgeLevel;
import weekwright.engine.Inputs.SupporterMonth;

/** Pledge levels, what their history teaches, charges on the way, regular items and other income, ready for the trials. */
final class FundsTable {
    final int levels;
    final Charge[] charge;
    final boolean[] perEpisode;
    final int[] payoutDays;
    final boolean[] paidToday;
    /** Supporters at the start of the as-of month. */
    final int[] atStart;
    /** Supporters on the as-of day. */
    final int[] now;
    /** Of those at the start, not gone yet. */
    final int[] stillThere;
    /** Quantiles of people joining a month; null for a level without history. */
    final QuantileTable[] joinRate;

    final QuantileTable[] leaveShare;
    final Surges surges;
    final JoiningDrift joiningDrift;
    /** By level, those who came with a surge of the last three months and are taken to be there, last month first. */
    final int[][] newcomers;

    final long[][] key;
    /** Share of the as-of month that is left. */
    final double restOfMonth;
    /** Net pay-outs by day of charges before the as-of day (rule 84). */
    final long[] onTheWay;
    /** Episodes published in the as-of month so far. */
    final int publishedThisMonth;
    /** Occurrences of regular items in the order of their days: day, item. */
    final int[] regularDay;

    final int[] regularItem;
    final long[] regularKey;
    final long[] otherMonths;
    /** Pay an hour times minutes that were logged on the as-of day, booked the next morning (rule 88). */
    final long wagesOfToday;

    final long otherKey = Streams.key(Streams.Purpose.OTHER_MONTH, "");

    FundsTable(Inputs inputs, Calendar calendar) {
        List<PledgeLevel> all = inputs.levels();
        LocalDate today = LocalDate.ofEpochDay(inputs.asOf());
        int thisMonth = 12 * today.getYear() + today.getMonthValue() - 1;
        wagesOfToday = inputs.workedToday().stream()
                .mapToLong(worked -> worked.toPay() * pay(inputs, worked.crew()))
                .sum();
        levels = all.size();
        newcomers = new int[levels][Surges.NEW_MONTHS];
        charge = new Charge[levels];
        perEpisode = new boolean[levels];
        payoutDays = new int[levels];
        paidToday = new boolean[levels];
        atStart = new int[levels];
        now = new int[levels];
        stillThere = new int[levels];
        joinRate = new QuantileTable[levels];
        leaveShare = new QuantileTable[levels];
        key = new long[levels][];
        restOfMonth = (double) (today.lengthOfMonth() - today.getDayOfMonth()) / today.lengthOfMonth();
        onTheWay = new long[calendar.days];
        publishedThisMonth = (int) inputs.episodes().stream()
                .filter(e -> e.published() != Inputs.NONE && e.published() <= inputs.asOf())
                .filter(e -> month(e.published()) == thisMonth)
                .count();
        for (int i = 0; i < levels; i++) {
            PledgeLevel level = all.get(i);
            charge[i] =
                    Charge.of(level.amountMinor(), level.feePercent(), level.feeFixedMinor(), level.declinedPercent());
            perEpisode[i] = level.perEpisode();
            payoutDays[i] = level.payoutDays();
            paidToday[i] = level.paidToday();
            long id = Streams.idHash(level.id());
            key[i] = new long[] {
                Streams.key(Streams.Purpose.JOIN_RATE, id),
                Streams.key(Streams.Purpose.LEAVE_SHARE, id),
                // one factor for all levels (rule 123)
                Streams.key(Streams.Purpose.JOIN_DRIFT, ""),
                Streams.key(Streams.Purpose.JOINED, id),
                Streams.key(Streams.Purpose.LEFT, id)
            };
            learn(inputs, i, thisMonth);
            pending(inputs, i);
        }
        surges = new Surges(inputs, thisMonth);
        joiningDrift = new JoiningDrift(inputs, thisMonth);
        List<int[]> occurrences = new ArrayList<>();
        for (int r = 0; r < inputs.regular().size(); r++) {
            occurrences(inputs.regular().get(r), r, inputs.asOf(), calendar.days, occurrences);
        }
        occurrences.sort((a, b) -> a[0] != b[0] ? Integer.compare(a[0], b[0]) : Integer.compare(a[1], b[1]));
        regularDay = occurrences.stream().mapToInt(o -> o[0]).toArray();
        regularItem = occurrences.stream().mapToInt(o -> o[1]).toArray();
        regularKey = inputs.regular().stream()
                .mapToLong(r -> Streams.key(Streams.Purpose.REGULAR_AMOUNT, r.id()))
                .toArray();
        otherMonths = MoneyDraws.sorted(
                inputs.money().otherMonths().stream().mapToLong(Long::longValue).toArray());
    }

    private static int month(int date) {
        LocalDate day = LocalDate.ofEpochDay(date);
        return 12 * day.getYear() + day.getMonthValue() - 1;
    }

    private void learn(Inputs inputs, int i, int thisMonth) {
        String id = inputs.levels().get(i).id();
        List<SupporterMonth> whole = inputs.supporters().stream()
                .filter(row -> row.level().equals(id) && row.month() < thisMonth)
                .toList();
        double halfLife = inputs.model().supportersHalfLife();
        LevelHistory history = whole.isEmpty() && startOf(inputs, id, thisMonth) == null
                ? LevelHistory.NONE
                : LevelHistory.learn(
                        whole.stream().mapToInt(SupporterMonth::start).toArray(),
                        whole.stream().mapToInt(SupporterMonth::joined).toArray(),
                        whole.stream().mapToInt(SupporterMonth::left).toArray(),
                        surged(whole),
                        whole.stream()
                                .mapToDouble(
                                        row -> EffortRatio.ageWeight(inputs.asOf() - middle(row.month()), halfLife))
                                .toArray());
        double usual = history.joinShape() / history.joinRate();
        for (SupporterMonth row : whole) {
            int age = thisMonth - 1 - row.month();
            if (row.surge() && age < Surges.NEW_MONTHS) {
                newcomers[i][age] = (int) StrictMath.max(0, row.joined() - StrictMath.round(usual));
            }
        }
        joinRate[i] = history.joinRates();
        leaveShare[i] = history.leaveShares();
        SupporterMonth current = startOf(inputs, id, thisMonth);
        if (current != null) {
            atStart[i] = current.start();
            stillThere[i] = Math.max(0, current.start() - current.left());
            now[i] = Math.max(0, current.start() + current.joined() - current.left());
        } else {
            SupporterMonth last = whole.stream()
                    .max((a, b) -> Integer.compare(a.month(), b.month()))
                    .orElse(null);
            int n = last == null ? 0 : Math.max(0, last.start() + last.joined() - last.left());
            atStart[i] = n;
            stillThere[i] = n;
            now[i] = n;
        }
    }

    private static boolean[] surged(List<SupporterMonth> rows) {
        boolean[] surged = new boolean[rows.size()];
        for (int i = 0; i < surged.length; i++) {
            surged[i] = rows.get(i).surge();
        }
        return surged;
    }

    private static SupporterMonth startOf(Inputs inputs, String level, int month) {
        return inputs.supporters().stream()
                .filter(row -> row.level().equals(level) && row.month() == month)
                .findFirst()
                .orElse(null);
    }

    /** Middle of a month as epoch day. */
    static double middle(int month) {
        LocalDate first = LocalDate.of(month / 12, month % 12 + 1, 1);
        return first.toEpochDay() + first.lengthOfMonth() / 2.0;
    }

    /** Charges made by the as-of day whose pay-out comes after it, at the start of their month (rule 84). */
    private void pending(Inputs inputs, int i) {
        int asOf = inputs.asOf();
        String id = inputs.levels().get(i).id();
        if (perEpisode[i]) {
            List<Integer> dates = inputs.episodes().stream()
                    .map(Inputs.Episode::published)
                    .filter(d -> d != Inputs.NONE && d <= asOf)
                    .sorted()
                    .toList();
            int inMonth = 0;
            int month = Integer.MIN_VALUE;
            for (int date : dates) {
                inMonth = month(date) == month ? inMonth + 1 : 1;
                month = month(date);
                if (inMonth <= inputs.publishing().chargesAMonth()) {
                    int supporters = startOfMonth(inputs, id, i, month);
                    comesIn(i, date - asOf + payoutDays[i], supporters);
                    if (date == asOf && payoutDays[i] == 0 && !paidToday[i] && onTheWay.length > 0) {
                        // a charge of today that is not recorded is still to come (rule 1)
                        onTheWay[0] += charge[i].net(supporters);
                    }
                }
            }
        } else {
            LocalDate first = LocalDate.ofEpochDay(asOf).withDayOfMonth(1);
            for (; asOf - first.toEpochDay() <= payoutDays[i] + 31L; first = first.minusMonths(1)) {
                int day = (int) (first.toEpochDay() - asOf);
                if (day < 0) {
                    comesIn(i, day + payoutDays[i], startOfMonth(inputs, id, i, month(day + asOf)));
                }
            }
        }
    }

    private int startOfMonth(Inputs inputs, String level, int i, int month) {
        SupporterMonth row = startOf(inputs, level, month);
        return row == null ? (month == month(inputs.asOf()) ? atStart[i] : 0) : row.start();
    }

    private void comesIn(int i, int day, int supporters) {
        if (day > 0 && day < onTheWay.length) {
            onTheWay[day] += charge[i].net(supporters);
        }
    }

    /** Days after the as-of day on which a regular item falls due (rule 87). */
    private static void occurrences(Inputs.Regular item, int r, int asOf, int days, List<int[]> found) {
        if (item.every() == Every.EPISODE) {
            return;
        }
        LocalDate from = LocalDate.ofEpochDay(item.from() == Inputs.NONE ? asOf : item.from());
        for (int k = 0; ; k++) {
            LocalDate date = switch (item.every()) {
                case WEEK -> from.plusDays(7L * k);
                case MONTH -> from.plusMonths(k);
                case YEAR -> from.plusYears(k);
                case EPISODE -> throw new IllegalStateException();
            };
            int day = (int) (date.toEpochDay() - asOf);
            if (day >= days || (item.to() != Inputs.NONE && date.toEpochDay() > item.to())) {
                return;
            }
            if (day > 0) {
                found.add(new int[] {day, r});
            }
        }
    }

    private static long pay(Inputs inputs, String crew) {
        return inputs.crew().stream()
                .filter(one -> one.id().equals(crew))
                .mapToLong(Inputs.Crew::payMinor)
                .sum();
    }
}
