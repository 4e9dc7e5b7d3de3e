package weekwright.engine.simulate;

import java.util.Arrays;
import weekwright.engine.Inputs;

/**
 * What is drawn for one trial before its first day, or the expected values from which the plan is made (rule 54). One per thread,
 * filled anew for each trial. Minutes and days are whole.
 */
final class Luck {
    /** Least that is left of an episode not cut (rule 74: a tenth of an hour). */
    private static final int LEAST_EDIT = 6;

    /** A task fails at most so often (rule 132). */
    private static final int MOST_FAILURES = 3;

    /** "Never". */
    static final int NEVER = Integer.MAX_VALUE;

    private final Setup setup;
    /** Whether these are expected values. */
    boolean expected;

    long trialKey;
    /** How often each task fails, and the person-minutes or days that each failure costs again. */
    final int[] failures;

    final int[] again;
    /** By unlisted task, share of the stage's open work and material that turns up. */
    final double[] foundShare;
    /** Cost, deposit and lead of a line that is bought again after a failure. */
    final long[] costAgain;

    final long[] depositAgain;
    final int[] leadAgain;
    /** Shares of the stated hours by week and person, see {@link Turnout}. */
    final int[] turnout;

    /** Chance of a surge at a publication. */
    double surgeChance;

    double beta;
    double kappa;
    /** Person-minutes of the whole task, of a wait its days. */
    final int[] total;
    /** Person-minutes left on the as-of day. */
    final int[] left;
    /** A mark is reached when so many person-minutes or fewer are left. */
    final int[] markLeft;

    /** By line needed from a share of its task on: so many person-minutes of the task are left then; of others "always". */
    final int[] neededLeft;

    final int[] linkWait;
    final long[] cost;
    final long[] deposit;
    final int[] lead;
    /** Leads of lines not ordered yet, and of those bought again, as they are before {@link #late}. */
    final double[] leadDays;

    private final double[] leadDaysAgain;
    /** How many times as long orders of a month take, from {@link LateTogether#from} on; empty where nothing is known of it. */
    final double[] late;

    /** Position of the as-of month in {@link #late}. */
    private final int lateNow;

    final int[] edit;
    /** By day; known as far as {@link #weatherUntil} was asked. */
    final boolean[] lost;

    private int weatherKnown;
    final int[] came;
    /** Day on which equipment that is down is back. */
    final int[] back;

    final double[] joining;
    /** How much joining wanders from month to month. */
    double joiningDrift;

    final double[] leaving;
    final long[] regular;
    final long[] other;

    /** κ of the leads of lines of no known supplier. */
    private double leadKappaOfOthers = 1;

    private double priceKappa = 1;
    private double priceBeta;
    /** By supplier of whom something is learned. */
    private final double[] leadKappa;

    private final double[] leadBeta;
    /** By task of several pieces: share of the hours of all pieces that the first k take. */
    private final double[][] piecesTaken;
    /** Chance of a lost day after a fine one (0) and after a lost one (1), by month. */
    private final double[][] lostAfter = new double[2][12];

    private final boolean outdoors;

    Luck(Setup setup) {
        this.setup = setup;
        turnout = new int[setup.turnout.size()];
        failures = new int[setup.tasks.count];
        again = new int[setup.tasks.count];
        foundShare = new double[setup.tasks.count - setup.tasks.listed];
        costAgain = new long[setup.lines.count];
        depositAgain = new long[setup.lines.count];
        leadAgain = new int[setup.lines.count];
        TaskTable tasks = setup.tasks;
        total = new int[tasks.count];
        left = new int[tasks.count];
        markLeft = new int[setup.links.markShare.length];
        neededLeft = new int[setup.lines.count];
        Arrays.fill(neededLeft, NEVER);
        linkWait = new int[setup.links.count];
        cost = new long[setup.lines.count];
        deposit = new long[setup.lines.count];
        lead = new int[setup.lines.count];
        leadDays = new double[setup.lines.count];
        leadDaysAgain = new double[setup.lines.count];
        LateTogether together = setup.learned.late();
        lateNow = together.any() ? setup.calendar.months[0] - together.from() : 0;
        late = new double[together.any() ? lateNow + setup.calendar.months.length : 0];
        leadKappa = new double[setup.leadKappa.length];
        leadBeta = new double[setup.leadKappa.length];
        edit = new int[setup.episodes.count];
        lost = new boolean[setup.calendar.days];
        came = new int[setup.inputs.gatherings().size()];
        back = new int[setup.equipment.count];
        joining = new double[setup.funds.levels];
        leaving = new double[setup.funds.levels];
        regular = new long[setup.funds.regularDay.length];
        other = new long[setup.calendar.months.length];
        piecesTaken = new double[tasks.count][];
        boolean any = false;
        for (int t = 0; t < tasks.count; t++) {
            any |= tasks.outdoors[t] && tasks.status[t] <= TaskTable.UNDER_WAY;
            if (tasks.pieces[t] > 1) {
                piecesTaken[t] = PiecesLog.taken(tasks.pieces[t], tasks.learning[t]);
            }
        }
        outdoors = any;
        double spell = Math.max(1, setup.inputs.weather().spellDays());
        for (int m = 0; m < 12; m++) {
            double p = setup.inputs.weather().lost().get(m);
            double toLost = p >= 1 ? 1 : p / (spell * (1 - p));
            lostAfter[0][m] = Math.min(1, toLost);
            lostAfter[1][m] = p <= 0 ? 0 : toLost > 1 ? 2 - 1 / p : 1 - 1 / spell;
            if (p >= 1) {
                lostAfter[1][m] = 1;
            }
        }
    }

    /** Draws trial number {@code trial} (from 0). */
    void draw(long seed, int trial) {
        expected = false;
        trialKey = Streams.trialKey(seed, trial);
        kappa = setup.kappa.at(u(setup.spreadKey, 0));
        beta = setup.learned.ratio().beta(kappa, u(setup.ratioKey, 0));
        setup.turnout.draw(trialKey, turnout);
        take();
        weatherKnown = 0;
        FundsTable funds = setup.funds;
        surgeChance = funds.surges.any ? funds.surges.chance(trialKey) : 0;
        joiningDrift = funds.joiningDrift.drift(trialKey);
        double now = funds.joiningDrift.now(trialKey);
        for (int i = 0; i < funds.levels; i++) {
            joining[i] = funds.joinRate[i] == null ? 0 : now * funds.joinRate[i].at(u(funds.key[i][0], 0));
            leaving[i] = funds.leaveShare[i].at(u(funds.key[i][1], 0));
        }
        for (int o = 0; o < regular.length; o++) {
            Inputs.Regular item = setup.inputs.regular().get(funds.regularItem[o]);
            regular[o] = MoneyDraws.drawRegular(
                    item.amountMinor(),
                    item.spreadPercent(),
                    u(funds.regularKey[funds.regularItem[o]], setup.calendar.asOf + funds.regularDay[o]));
        }
        for (int m = 0; m < other.length; m++) {
            other[m] = MoneyDraws.drawMonth(funds.otherMonths, u(funds.otherKey, setup.calendar.months[m]));
        }
    }

    /** Sets expected values: β = β_n, κ = 1, means, weather by error diffusion; nothing about money. */
    void expect() {
        expected = true;
        trialKey = 0;
        kappa = 1;
        beta = setup.learned.ratio().betaN();
        setup.turnout.expect(turnout);
        take();
        double owed = 0;
        for (int d = 0; d < lost.length; d++) {
            owed += setup.inputs.weather().lost().get(setup.calendar.monthOfYear[d]);
            lost[d] = owed > 1;
            owed -= lost[d] ? 1 : 0;
        }
        weatherKnown = lost.length;
    }

    /** Position of a day's shares in {@link #turnout}. */
    int turnoutAt(int day) {
        return setup.turnout.at(day);
    }

    private double u(long key, long index) {
        return Streams.uniform(trialKey, key, index);
    }

    private void take() {
        takeTasks();
        takeMarks();
        LinkTable links = setup.links;
        for (int l = 0; l < links.count; l++) {
            linkWait[l] = links.wait[l].mean() <= 0
                    ? 0
                    : ThreePoint.wholeDays(links.wait[l].take(expected ? 0 : u(links.key[l], 0), expected));
        }
        waitForFound();
        takePurchases();
        takeLines();
        EpisodeTable episodes = setup.episodes;
        for (int e = 0; e < episodes.count; e++) {
            if (episodes.cut[e] == TaskTable.NO_DAY) {
                double minutes = expected
                        ? episodes.edit[e].mean()
                        : episodes.edit[e].drawBeyond(episodes.edited[e], u(episodes.editKey[e], 0));
                edit[e] = StrictMath.max(LEAST_EDIT, (int) StrictMath.round(minutes) - episodes.edited[e]);
            }
        }
        for (int g = 0; g < came.length; g++) {
            Inputs.Gathering gathering = setup.inputs.gatherings().get(g);
            came[g] = expected
                    ? (int) StrictMath.round(gathering.hands() * gathering.comeShare())
                    : Inverse.binomial(
                            gathering.hands(), gathering.comeShare(), u(setup.gatheringKey[g], gathering.date()));
        }
        EquipmentTable equipment = setup.equipment;
        for (int q = 0; q < back.length; q++) {
            int from = equipment.downFrom[q];
            if (from == TaskTable.NO_DAY || equipment.back[q] == null) {
                back[q] = NEVER;
            } else if (expected) {
                back[q] = StrictMath.max(from < 0 ? 1 : 0, from + ThreePoint.wholeDays(equipment.back[q].mean()));
            } else if (from < 0) {
                double days = equipment.back[q].drawBeyond(-from, u(equipment.backKey[q], 0));
                back[q] = StrictMath.max(1, from + ThreePoint.wholeDays(days));
            } else {
                back[q] = from + ThreePoint.wholeDays(equipment.back[q].draw(u(equipment.backKey[q], 0)));
            }
        }
    }

    /** What turns up in a stage is worked when the last of what was bought for it is there (rule 122). */
    private void waitForFound() {
        if (expected || !setup.foundMaterial.any()) {
            return;
        }
        TaskTable tasks = setup.tasks;
        LinkTable links = setup.links;
        for (int r = tasks.listed; r < tasks.count; r++) {
            double share = left[r] == 0 ? 0 : foundShare[r - tasks.listed];
            for (int i = links.inStart[r]; i < links.inStart[r + 1]; i++) {
                int t = links.inFrom[i];
                linkWait[links.in[i]] = share > 0 && !tasks.wait[t] && tasks.status[t] < TaskTable.DONE
                        ? setup.foundMaterial.wait(trialKey, links.in[i], share)
                        : 0;
            }
        }
    }

    private void takeTasks() {
        TaskTable tasks = setup.tasks;
        for (int t = 0; t < tasks.count; t++) {
            if (tasks.status[t] >= TaskTable.DONE) {
                left[t] = 0;
                total[t] = tasks.wait[t] ? StrictMath.max(0, tasks.landed[t] - tasks.started[t]) : tasks.logged[t];
            } else if (tasks.wait[t]) {
                total[t] = waitDays(t);
                left[t] = 1;
            } else {
                left[t] = workLeft(t);
                total[t] = tasks.logged[t] + left[t];
            }
            if (tasks.fail[t] > 0 && tasks.status[t] < TaskTable.DONE) {
                takeFailures(t);
            }
        }
        Found found = setup.learned.found();
        double lambda = setup.foundRate == null || expected ? 0 : setup.foundRate.at(u(setup.foundRateKey, 0));
        for (int r = tasks.listed; r < tasks.count; r++) {
            int rest = total[r];
            long open = 0;
            for (int t = 0; t < tasks.listed; t++) {
                if (tasks.stage[t] == tasks.roughOf[r] && !tasks.wait[t]) {
                    // what was dropped is not to be done, under no name
                    boolean dropped = tasks.status[t] == TaskTable.DROPPED;
                    rest -= dropped && tasks.effort[t] != null ? total[t] + workLeft(t) : total[t];
                    open += left[t];
                }
            }
            rest = StrictMath.max(0, rest);
            double share = !found.any() ? 0 : expected ? found.mean() : foundShare(r, lambda);
            foundShare[r - tasks.listed] = share;
            left[r] = rest + (int) StrictMath.min(1e8, StrictMath.round(share * (open + rest)));
            total[r] = left[r];
        }
    }

    /** Person-minutes that a task takes from now on, at least one. */
    private int workLeft(int t) {
        TaskEffort effort = setup.tasks.effort[t];
        double minutes = effort == null
                ? 0
                : expected ? effort.expectedLeft(beta) : effort.left(beta, kappa, u(setup.hoursKey[t], 0));
        return (int) StrictMath.min(1e8, StrictMath.max(1, StrictMath.round(minutes)));
    }

    private double foundShare(int r, double lambda) {
        int i = r - setup.tasks.listed;
        double u = u(setup.foundKey[r], 0);
        double unit = setup.foundUnits[i] == null ? -StrictMath.log1p(-u) : setup.foundUnits[i].at(u);
        return setup.learned.found().share(lambda, setup.openPart[i], unit);
    }

    /** How often it fails, at most three times (rule 132); the plan expects the mean of what that costs. */
    private void takeFailures(int t) {
        double fail = setup.tasks.fail[t];
        double redo = setup.tasks.redo[t];
        if (expected) {
            double more = redo * fail * (1 + fail * (1 + fail));
            failures[t] = 0;
            if (setup.tasks.wait[t]) {
                total[t] += ThreePoint.wholeDays(more * total[t]);
            } else {
                left[t] += (int) StrictMath.min(1e8, StrictMath.round(more * total[t]));
                total[t] = setup.tasks.logged[t] + left[t];
            }
            return;
        }
        int n = 0;
        while (n < MOST_FAILURES && u(setup.failKey[t], n) < fail) {
            n++;
        }
        failures[t] = n;
        again[t] = StrictMath.max(1, (int) StrictMath.min(1e8, StrictMath.round(redo * total[t])));
    }

    private int waitDays(int t) {
        TaskTable tasks = setup.tasks;
        Spread days = tasks.waitDays[t];
        if (tasks.status[t] != TaskTable.UNDER_WAY) {
            return ThreePoint.wholeDays(days.take(expected ? 0 : u(setup.hoursKey[t], 0), expected));
        }
        int gone = -tasks.started[t];
        double drawn = expected ? days.drawBeyond(gone, 0.5) : days.drawBeyond(gone, u(setup.hoursKey[t], 0));
        return StrictMath.max(gone + 1, ThreePoint.wholeDays(drawn));
    }

    /** From what is left of each task: where links and lines stand in it. */
    void takeMarks() {
        LinkTable links = setup.links;
        for (int t = 0; t < setup.tasks.count; t++) {
            for (int i = links.markStart[t]; i < links.markStart[t + 1]; i++) {
                markLeft[i] = leftAtShare(t, links.markShare[i]);
            }
        }
        LineTable lines = setup.lines;
        for (int m = 0; m < lines.count; m++) {
            if (lines.atShare[m] > 0) {
                neededLeft[m] = leftAtShare(lines.task[m], lines.atShare[m]);
            }
        }
    }

    /**
     * How many person-minutes are left when a share of the task is done (rule 27: hours done of the drawn hours; of a task in
     * pieces, pieces done of all pieces).
     */
    private int leftAtShare(int t, double share) {
        if (share >= 1) {
            return 0;
        }
        if (setup.tasks.pieces[t] > 1) {
            return leftAtPieces(t, (int) Math.ceil(share * setup.tasks.pieces[t] - 1e-9));
        }
        return (int) Math.floor((1 - share) * total[t]);
    }

    /** How many person-minutes are left when the first {@code k} pieces are done. */
    int leftAtPieces(int t, int k) {
        double[] taken = piecesTaken[t];
        int done = setup.tasks.piecesDone[t];
        if (k <= done) {
            return left[t];
        }
        if (k >= taken.length - 1) {
            return 0;
        }
        return (int) Math.floor(left[t] * (1 - taken[k]) / (1 - taken[done]));
    }

    /** Days from a missed turn to the next, at least one (rule 129), drawn for the date that was missed. */
    int rebookDays(int t, int day) {
        Spread days = setup.tasks.rebook[t];
        double drawn = days.take(expected ? 0 : u(setup.rebookKey[t], setup.calendar.asOf + (long) day), expected);
        return StrictMath.max(1, ThreePoint.wholeDays(drawn));
    }

    /** Edit minutes of an episode made from the story bank for the slot of a day. */
    int bankEdit(int slotDay) {
        EpisodeTable episodes = setup.episodes;
        double minutes = episodes.standardEdit.take(
                expected ? 0 : u(episodes.bankKey, setup.calendar.asOf + (long) slotDay), expected);
        return StrictMath.max(LEAST_EDIT, (int) StrictMath.round(minutes));
    }

    /** How prices and each supplier's leads stand to what was written down (rule 124), one number a trial. */
    private void takePurchases() {
        Purchases purchases = setup.learned.purchases();
        purchases.prices().ifPresent(prices -> {
            priceKappa = expected ? 1 : setup.priceKappa.at(u(setup.priceSpreadKey, 0));
            priceBeta = expected ? prices.betaN() : prices.beta(priceKappa, u(setup.priceRatioKey, 0));
        });
        for (int s = 0; s < leadKappa.length; s++) {
            EffortRatio leads = purchases.suppliers().get(s).ratio();
            leadKappa[s] = expected ? 1 : setup.leadKappa[s].at(u(setup.leadSpreadKey[s], 0));
            leadBeta[s] = expected ? leads.betaN() : leads.beta(leadKappa[s], u(setup.leadRatioKey[s], 0));
        }
        if (late.length > 0 && expected) {
            setup.learned.late().expect(late);
        } else if (late.length > 0) {
            leadKappaOfOthers = setup.learned.late().draw(trialKey, late);
        }
    }

    private double price(int m) {
        LineTable lines = setup.lines;
        double beta = lines.learnsPrice[m] ? priceBeta : 0;
        return expected
                ? lines.price[m].mean() * StrictMath.exp(beta)
                : lines.price[m].draw(u(lines.priceKey[m], 0), lines.learnsPrice[m] ? priceKappa : 1, beta);
    }

    /** How many times as long the order of a line takes that is given out in a month, the as-of month being 0 (rule 137). */
    private double late(int m, int month) {
        int i = lateNow + month;
        return late.length == 0 || i < 0 || setup.lines.leadBy[m] == LineTable.BY_ITSELF ? 1 : late[i];
    }

    /** Days until a line is there that is ordered on a day. */
    int leadFrom(int m, boolean bought, int day) {
        return late.length == 0
                ? bought ? leadAgain[m] : lead[m]
                : ThreePoint.wholeDays(
                        (bought ? leadDaysAgain[m] : leadDays[m]) * late(m, setup.calendar.monthIndex[day]));
    }

    /** Days of a lead, its logarithm moved by {@code gamma}; more than {@code gone} where that is 0 or more. */
    private double leadDays(Spread spread, int supplier, long key, int index, int gone, double gamma) {
        double beta = gamma + (supplier >= 0 ? leadBeta[supplier] : 0);
        if (expected) {
            return spread.mean() * StrictMath.exp(beta);
        }
        double kappaOf = supplier >= 0 ? leadKappa[supplier] : supplier == LineTable.BY_ITSELF ? 1 : leadKappaOfOthers;
        return gone >= 0
                ? spread.drawBeyond(gone, u(key, index), kappaOf, beta)
                : spread.draw(u(key, index), kappaOf, beta);
    }

    private void takeLines() {
        LineTable lines = setup.lines;
        for (int m = 0; m < lines.count; m++) {
            if (lines.buyAgain[m]) {
                costAgain[m] = MoneyDraws.lineCost(lines.quantity[m], lines.waste[m], price(m));
                depositAgain[m] = MoneyDraws.deposit(costAgain[m], lines.deposit[m]);
                leadDaysAgain[m] = leadDays(lines.usualLead[m], lines.supplier[m], lines.leadKey[m], 1, -1, 0);
                leadAgain[m] = ThreePoint.wholeDays(leadDaysAgain[m]);
            }
            if (lines.status[m] < LineTable.OUT) {
                continue;
            }
            cost[m] = MoneyDraws.lineCost(lines.quantity[m], lines.waste[m], price(m));
            if (lines.status[m] == LineTable.OUT) {
                // what is left to pay on arrival (rule 62); the lead counts from the order
                cost[m] = StrictMath.max(0, cost[m] - lines.paid[m]);
                deposit[m] = 0;
                int gone = -lines.ordered[m];
                double gamma = StrictMath.log(late(m, lines.orderedMonth[m]));
                double days = leadDays(lines.lead[m], lines.leadBy[m], lines.leadKey[m], 0, gone, gamma);
                lead[m] = StrictMath.max(gone + 1, ThreePoint.wholeDays(days));
            } else {
                deposit[m] = MoneyDraws.deposit(cost[m], lines.deposit[m]);
                leadDays[m] = leadDays(lines.lead[m], lines.leadBy[m], lines.leadKey[m], 0, -1, 0);
                lead[m] = ThreePoint.wholeDays(leadDays[m] * (expected ? late(m, 0) : 1));
            }
        }
    }

    /**
     * Makes the weather known up to a day, in spells (rule 50): a chain of lost and fine days, the chances those of the day's month.
     * Drawn only as far as somebody works, and where nobody works outdoors never.
     */
    void weatherUntil(int day) {
        if (weatherKnown == 0 && outdoors) {
            lost[0] = lost(0, setup.inputs.weather().lost().get(setup.calendar.monthOfYear[0]));
            weatherKnown = 1;
        }
        for (; weatherKnown <= day && outdoors; weatherKnown++) {
            int month = setup.calendar.monthOfYear[weatherKnown];
            lost[weatherKnown] = lost(weatherKnown, lostAfter[lost[weatherKnown - 1] ? 1 : 0][month]);
        }
    }

    private boolean lost(int day, double chance) {
        return u(setup.weatherKey, setup.calendar.asOf + (long) day) < chance;
    }
}
