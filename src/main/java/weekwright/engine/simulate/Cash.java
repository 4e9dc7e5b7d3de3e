package weekwright.engine.simulate;

import static weekwright.engine.simulate.State.LATER;

import java.time.LocalDate;
import java.util.Arrays;
import weekwright.engine.Inputs;
import weekwright.engine.Outcome.Count;

/**
 * Money in and out (rules 8, 76 to 88): on the 1st the supporters' changes, then monthly charges; then pay-outs, regular items, other
 * income and costs, and the wages of the day before. Nothing of it happens where the plan is made with expected values.
 */
final class Cash {
    /** Less of a surge than this, in months of usual joining, is over. */
    private static final double NEXT_TO_NOTHING = 0.001;

    private final Setup setup;
    private final Calendar calendar;
    private final Luck luck;
    Trace trace;
    private State x;
    private int today;
    private final long[] stageNeed;
    /**
     * By stage and week, in how many of the futures lived so far that Sunday's cash without the stage's payments covered need and
     * reserve, where orders wait for funds.
     */
    final int[] covered;

    private boolean counts;
    private final Inputs.PutBy putBy;
    private final Supporters supporters;

    Cash(Setup setup, Luck luck) {
        this.setup = setup;
        calendar = setup.calendar;
        this.luck = luck;
        supporters = new Supporters(setup, luck);
        putBy = setup.inputs.money().putBy();
        int stages = setup.inputs.stages().size();
        stageNeed = new long[stages];
        covered = new int[stages * calendar.sundays.length];
        for (int m = 0; m < setup.lines.count; m++) {
            stageNeed[setup.tasks.stage[setup.lines.task[m]]] += setup.lines.expectedCost[m];
        }
    }

    /** On the as-of morning. */
    void begin(State state) {
        x = state;
        FundsTable funds = setup.funds;
        x.cash = setup.inputs.money().availableMinor();
        x.putBy = putBy.minor();
        x.wages = funds.wagesOfToday;
        System.arraycopy(funds.onTheWay, 0, x.payIn, 0, funds.onTheWay.length);
        Arrays.fill(x.payInNew, 0);
        System.arraycopy(funds.now, 0, x.supporters, 0, funds.levels);
        System.arraycopy(funds.atStart, 0, x.supportersAtStart, 0, funds.levels);
        System.arraycopy(funds.stillThere, 0, x.stillThere, 0, funds.levels);
        Arrays.fill(x.supportersMonth, 0);
        Arrays.fill(x.paidOutMonth, 0);
        x.supportersMonth[0] = Arrays.stream(x.supportersAtStart).sum();
        Arrays.fill(x.surge, 0);
        for (int i = 0; i < funds.levels; i++) {
            System.arraycopy(funds.newcomers[i], 0, x.newcomers, i * Surges.NEW_MONTHS, Surges.NEW_MONTHS);
        }
        supporters.begin();
        Arrays.fill(x.stagePaid, 0);
        Arrays.fill(x.stageShort, 0);
        Arrays.fill(x.underReserve, false);
        Arrays.fill(x.underZero, false);
        x.emptyThisMonth = calendar.emptyThisMonth;
        x.chargedThisMonth = funds.publishedThisMonth;
        x.nextRegular = 0;
        x.firstUnderReserve = LATER;
        x.firstUnderZero = LATER;
        x.firstUnderWithout = LATER;
    }

    /**
     * Goes on with a copied state from a day.
     *
     * @param firstAnswer whether orders wait for funds: of the other answer only the balances of Sundays are kept
     */
    void restart(State state, int day, boolean firstAnswer) {
        x = state;
        today = day;
        counts = firstAnswer;
    }

    /** Whether a day on which nobody works or edits can change the balance or is one to be recorded. */
    boolean moves(int day) {
        return calendar.marked[day]
                || x.payIn[day] != 0
                || x.payInNew[day] != 0
                || x.arriveFirst[day] >= 0
                || x.wages != 0
                || x.toOrder > 0
                || setup.moneyOn[day];
    }

    /** What falls due before the day's deliveries. */
    void morning(int day) {
        today = day;
        if (luck.expected) {
            return;
        }
        boolean planned = setup.moneyOn[day];
        if (planned && calendar.dayOfMonth[day] == 1) {
            if (day > 0) {
                payTax(day);
                turnMonth(day);
            }
            chargeMonthly(day);
        }
        long in = x.payIn[day] + x.payInNew[day];
        if (in != 0) {
            comesIn(in, x.payInNew[day]);
        }
        if (planned) {
            regularAndOther(day);
        }
        if (day > 0) {
            long wages = (x.wages + 30) / 60;
            x.wages = 0;
            x.cash -= wages;
            tell("wages", -wages);
        }
        if (planned) {
            gathering(day);
        }
    }

    private void regularAndOther(int day) {
        while (x.nextRegular < luck.regular.length && setup.funds.regularDay[x.nextRegular] == day) {
            long amount = luck.regular[x.nextRegular++];
            x.cash += amount;
            tell("regular", amount);
        }
        if (calendar.dayOfMonth[day] == 15 && day > 0) {
            long amount = luck.other[calendar.monthIndex[day]];
            x.cash += amount;
            tell("other", amount);
        }
    }

    private void gathering(int day) {
        int g = setup.gatheringOn[day];
        if (g >= 0 && setup.inputs.gatherings().get(g).costMinor() != 0) {
            long cost = setup.inputs.gatherings().get(g).costMinor();
            x.cash -= cost;
            tell("gathering", -cost);
        }
    }

    /** A pay-out: what of it goes to the tax office is put by at once and never counts as theirs (rule 135). */
    private void comesIn(long amount, long ofNewCharges) {
        x.paidOutMonth[calendar.monthIndex[today]] += amount;
        long kept = putBy.of(amount);
        x.cash += amount - kept;
        x.putBy += kept;
        x.pledged += ofNewCharges - putBy.of(ofNewCharges);
        tell("payout", amount - kept);
    }

    /** On the morning after the tax month all that was put by is paid out; what is theirs does not change by it. */
    private void payTax(int day) {
        if (calendar.months[calendar.monthIndex[day] - 1] % 12 + 1 == putBy.taxMonth()) {
            x.putBy = 0;
        }
    }

    private void tell(String why, long amount) {
        if (trace != null && amount != 0) {
            trace.money(today, why, amount);
        }
    }

    /** The supporters of the month gone (rules 76, 77, 81): those there on its 1st leave, others join and pay from now on. */
    private void turnMonth(int day) {
        int gone = calendar.monthIndex[day] - 1;
        int empty = x.emptyThisMonth;
        double surge = surgeOfMonth(day);
        for (int i = 0; i < setup.funds.levels; i++) {
            int fresh = 0;
            int freshLeft = 0;
            int at = i * Surges.NEW_MONTHS;
            for (int age = Surges.NEW_MONTHS - 1; age >= 0; age--) {
                int n = Math.min(x.newcomers[at + age], x.stillThere[i] - fresh);
                int gonePeople = supporters.newcomersLeft(gone, i, n, age, empty);
                fresh += n;
                freshLeft += gonePeople;
                if (age + 1 < Surges.NEW_MONTHS) {
                    x.newcomers[at + age + 1] = n - gonePeople;
                }
            }
            x.newcomers[at] = surge > 0 ? supporters.joinedBySurge(gone, i, surge) : 0;
            x.supporters[i] += supporters.joined(gone, i)
                    + x.newcomers[at]
                    - freshLeft
                    - supporters.left(gone, i, x.stillThere[i] - fresh, empty);
            x.supportersMonth[gone + 1] += x.supporters[i];
            x.supportersAtStart[i] = x.supporters[i];
            x.stillThere[i] = x.supporters[i];
        }
        x.emptyThisMonth = 0;
        x.chargedThisMonth = 0;
    }

    /** What surges brought in the month that ends before a day, in months of usual joining; what is still to come is carried on. */
    private double surgeOfMonth(int day) {
        if (x.surge[0] + x.surge[1] <= 0) {
            return 0;
        }
        int length =
                Math.min(day, LocalDate.ofEpochDay(calendar.asOf + day - 1L).getDayOfMonth());
        double rest = Surges.rest(length);
        double come = x.surge[0] * (1 - rest) + x.surge[1];
        x.surge[0] = x.surge[0] * rest + x.surge[2];
        if (x.surge[0] < NEXT_TO_NOTHING) {
            x.surge[0] = 0;
        }
        x.surge[1] = 0;
        x.surge[2] = 0;
        return come;
    }

    /** A publication may set off a surge (rule 123). */
    private void surge(int day) {
        if (luck.surgeChance <= 0) {
            return;
        }
        int date = calendar.asOf + day;
        double size = setup.funds.surges.size(luck.trialKey, luck.surgeChance, date);
        if (size > 0) {
            LocalDate on = LocalDate.ofEpochDay(date);
            double rest = Surges.rest(on.lengthOfMonth() - on.getDayOfMonth());
            x.surge[1] += size * (1 - rest);
            x.surge[2] += size * rest;
        }
    }

    private double u(long key, long index) {
        return Streams.uniform(luck.trialKey, key, index);
    }

    private void chargeMonthly(int day) {
        FundsTable funds = setup.funds;
        for (int i = 0; i < funds.levels; i++) {
            if (!funds.perEpisode[i] && !(day == 0 && funds.paidToday[i])) {
                payOut(i, day);
            }
        }
    }

    private void payOut(int i, int day) {
        FundsTable funds = setup.funds;
        long net = funds.charge[i].net(x.supportersAtStart[i]);
        x.counts[Count.CHARGES.ordinal()]++;
        int on = day + funds.payoutDays[i];
        if (on < x.payInNew.length) {
            x.payInNew[on] += net;
        }
    }

    /** A publication of any kind: levels charged per episode pay, the first so many of a month (rule 82), and regular items. */
    void published(int day) {
        x.counts[Count.EPISODES.ordinal()]++;
        if (luck.expected) {
            return;
        }
        surge(day);
        FundsTable funds = setup.funds;
        if (x.chargedThisMonth++ < setup.inputs.publishing().chargesAMonth()) {
            long before = x.payInNew[day];
            for (int i = 0; i < funds.levels; i++) {
                if (funds.perEpisode[i] && !(day == 0 && funds.paidToday[i])) {
                    payOut(i, day);
                }
            }
            long atOnce = x.payInNew[day] - before;
            comesIn(atOnce, atOnce);
        }
        for (int r = 0; r < setup.inputs.regular().size(); r++) {
            Inputs.Regular item = setup.inputs.regular().get(r);
            int date = calendar.asOf + day;
            if (item.every() == Inputs.Every.EPISODE && StatedHours.within(date, item.from(), item.to())) {
                long amount =
                        MoneyDraws.drawRegular(item.amountMinor(), item.spreadPercent(), u(funds.regularKey[r], date));
                x.cash += amount;
                tell("regular", amount);
            }
        }
    }

    /** A slot stayed empty. */
    void emptySlot() {
        x.emptyThisMonth++;
        x.counts[Count.EMPTY_SLOTS.ordinal()]++;
    }

    /** Somebody worked so many minutes for so much an hour; booked next morning (rule 88). */
    void wage(long pay, int minutes) {
        x.wages += pay * minutes;
    }

    /** What turns up in a stage has begun: the same share of the material not yet ordered is bought for it (rule 122). */
    void found(int t) {
        int r = t - setup.tasks.listed;
        if (r < 0 || luck.expected || luck.foundShare[r] <= 0) {
            return;
        }
        int stage = setup.tasks.stage[t];
        long open = 0;
        for (int m = 0; m < setup.lines.count; m++) {
            if (setup.lines.status[m] == LineTable.TO_ORDER && setup.tasks.stage[setup.lines.task[m]] == stage) {
                open += luck.cost[m];
            }
        }
        long amount = StrictMath.round(luck.foundShare[r] * open);
        if (amount > 0) {
            x.cash -= amount;
            x.spent += amount;
            paid(stage, amount);
            tell("found", -amount);
        }
    }

    /** Something was paid for the material of a stage. */
    void paid(int stage, long amount) {
        x.stagePaid[stage] += amount;
        int i = 0;
        while (i < x.stagesPaid && x.paidToday[i] != stage) {
            i++;
        }
        if (i == x.stagesPaid) {
            x.paidToday[x.stagesPaid++] = stage;
        }
    }

    /** Records the balance at the end of a day. */
    void evening(int day) {
        if (luck.expected) {
            return;
        }
        long cash = x.cash;
        int month = calendar.monthIndex[day];
        boolean underReserve = cash < setup.reserve;
        x.underReserve[month] |= underReserve;
        x.firstUnderReserve = Math.min(x.firstUnderReserve, underReserve ? day : LATER);
        x.underZero[month] |= cash < 0;
        x.firstUnderZero = Math.min(x.firstUnderZero, cash < 0 ? day : LATER);
        for (; x.stagesPaid > 0; x.stagesPaid--) {
            int stage = x.paidToday[x.stagesPaid - 1];
            x.stageShort[stage] = Math.max(x.stageShort[stage], setup.reserve - cash);
        }
        if (x.firstUnderWithout == LATER && cash + x.spent - x.pledged < setup.reserve) {
            x.firstUnderWithout = day;
        }
        int week = calendar.sundayIndex[day];
        if (week >= 0) {
            x.cashWeek[week] = cash;
            if (counts) {
                sunday(week);
            }
        }
        if (trace != null) {
            trace.evening(day, cash);
        }
    }

    private void sunday(int week) {
        x.unspentWeek[week] = x.cash + x.spent;
        x.putByWeek[week] = x.putBy;
        x.bankWeek[week] = (float) x.bank;
        int at = week;
        for (int s = 0; s < stageNeed.length; s++) {
            long left = x.cash + x.stagePaid[s] - stageNeed[s];
            covered[at] += left >= setup.reserve ? 1 : 0;
            at += calendar.sundays.length;
        }
    }

    /** Mean of what is left to pay for a stage's lines. */
    long need(int stage) {
        return stageNeed[stage];
    }
}
