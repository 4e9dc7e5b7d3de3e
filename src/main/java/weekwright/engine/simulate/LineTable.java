package weekwright.engine.simulate;

import java.util.ArrayList;
import java.util.List;
import weekwright.engine.Inputs;
import weekwright.engine.Inputs.Material;
import weekwright.engine.Inputs.Source;

/** Material lines as columns, and the lines of each task. */
final class LineTable {
    /** Where a line stands: of no more interest, there, out, not yet ordered. */
    static final byte IDLE = 0, THERE = 1, OUT = 2, TO_ORDER = 3;

    /** In {@link #leadBy}: a day was promised, which stands for itself, or it is the crew's own and nobody delivers it. */
    static final int BY_ITSELF = -2;

    final int count;
    final int[] task;
    final byte[] status;
    final Spread[] price;
    final double[] quantity;
    final double[] waste;
    final double[] deposit;
    /** Whether it is bought again when its task fails (rule 132). */
    final boolean[] buyAgain;

    final Spread[] usualLead;
    /** Lead in days as drawn; of a line that is out, counted from its order. */
    final Spread[] lead;

    /** With what the supplier's earlier orders teach, and those of all that were given out of late. */
    final int[] likelyLead;

    /** Whether its price goes by what was paid for others. */
    final boolean[] learnsPrice;
    /** Its supplier's place in {@link Purchases#suppliers}, -1 for one that teaches nothing. */
    final int[] supplier;
    /** The same for the lead that is drawn, or {@link #BY_ITSELF}. */
    final int[] leadBy;

    final int[] ordered;
    /** Month of the order of a line that is out, the as-of month being 0. */
    final int[] orderedMonth;

    final long[] paid;
    final double[] atShare;
    /** Share of its lot that the line brings, 0 if it is no part of one. */
    final double[] lotShare;
    /** Number of its lot, -1 for none. */
    final int[] lot;
    /** Mean of what is left to pay. */
    final long[] expectedCost;

    final long[] priceKey;
    final long[] leadKey;
    /** Lines of task t: positions start[t] to start[t + 1] - 1 of {@link #ofTask}. */
    final int[] start;

    final int[] ofTask;
    /** By task: whether some of its lines are needed only once a share of it is done. */
    final boolean[] byShare;

    LineTable(Inputs inputs, TaskTable tasks, Ids taskIds, Purchases purchases, LateTogether late) {
        List<Material> lines = inputs.materials();
        count = lines.size();
        task = new int[count];
        status = new byte[count];
        price = new Spread[count];
        quantity = new double[count];
        waste = new double[count];
        deposit = new double[count];
        lead = new Spread[count];
        buyAgain = new boolean[count];
        usualLead = new Spread[count];
        likelyLead = new int[count];
        learnsPrice = new boolean[count];
        supplier = new int[count];
        leadBy = new int[count];
        ordered = new int[count];
        orderedMonth = new int[count];
        paid = new long[count];
        atShare = new double[count];
        lotShare = new double[count];
        lot = new int[count];
        expectedCost = new long[count];
        priceKey = new long[count];
        leadKey = new long[count];
        List<String> lots = new ArrayList<>();
        for (int m = 0; m < count; m++) {
            Material line = lines.get(m);
            task[m] = taskIds.at(line.task());
            price[m] = Spread.of(line.priceMinor());
            quantity[m] = line.quantity();
            buyAgain[m] =
                    line.source() == Source.BOUGHT && tasks.fail[task[m]] > 0 && tasks.status[task[m]] < TaskTable.DONE;
            usualLead[m] = Spread.of(line.leadDays());
            waste[m] = line.wastePercent();
            deposit[m] = line.depositPercent();
            learnsPrice[m] = line.source() == Source.BOUGHT;
            supplier[m] = purchases.supplier(line.supplier());
            likelyLead[m] = ThreePoint.wholeDays(line.leadDays().likely()
                    * (line.source() == Source.OWN ? 1 : purchases.leadTimes(line.supplier()) * late.times()));
            paid[m] = line.paidMinor();
            // what is done in one go cannot wait for a line halfway (rules 127, 131)
            atShare[m] = tasks.oneGo[task[m]] ? 0 : line.atShare();
            lot[m] = lotOf(lots, line, tasks, m);
            priceKey[m] = Streams.key(Streams.Purpose.UNIT_PRICE, line.id());
            leadKey[m] = Streams.key(Streams.Purpose.LEAD_DAYS, line.id());
            status[m] = statusOf(line, inputs.asOf(), tasks.status[task[m]]);
            ordered[m] = status[m] == OUT ? line.ordered() - inputs.asOf() : TaskTable.NO_DAY;
            orderedMonth[m] =
                    status[m] == OUT ? LateTogether.month(line.ordered()) - LateTogether.month(inputs.asOf()) : 0;
            lead[m] = Spread.of(status[m] == OUT ? promised(line) : line.leadDays());
            boolean promised = status[m] == OUT && line.promised() != Inputs.NONE;
            leadBy[m] = promised || line.source() == Source.OWN ? BY_ITSELF : supplier[m];
            long mean = MoneyDraws.lineCost(
                    quantity[m], waste[m], line.priceMinor().mean() * (learnsPrice[m] ? purchases.priceTimes() : 1));
            expectedCost[m] = status[m] == TO_ORDER ? mean : status[m] == OUT ? Math.max(0, mean - paid[m]) : 0;
        }
        for (int m = 0; m < count; m++) {
            double all = 0;
            int parts = 0;
            for (int k = 0; k < count; k++) {
                if (lot[m] >= 0 && lot[k] == lot[m]) {
                    all += quantity[k];
                    parts++;
                }
            }
            lotShare[m] = parts > 1 && all > 0 ? quantity[m] / all : 0;
        }
        byShare = new boolean[tasks.count];
        for (int m = 0; m < count; m++) {
            byShare[task[m]] |= atShare[m] > 0 || lot[m] >= 0;
        }
        start = new int[tasks.count + 1];
        for (int m = 0; m < count; m++) {
            start[task[m] + 1]++;
        }
        for (int t = 0; t < tasks.count; t++) {
            start[t + 1] += start[t];
        }
        int[] fill = start.clone();
        ofTask = new int[count];
        for (int m = 0; m < count; m++) {
            ofTask[fill[task[m]]++] = m;
        }
    }

    /** Only lots of tasks in pieces that are needed from the start let so many pieces be worked (rule 131). */
    private int lotOf(List<String> lots, Material line, TaskTable tasks, int m) {
        if (line.lot().isEmpty() || tasks.pieces[task[m]] <= 1 || line.atShare() > 0) {
            return -1;
        }
        String key = line.task() + " " + line.lot();
        if (!lots.contains(key)) {
            lots.add(key);
        }
        return lots.indexOf(key);
    }

    /** A dropped or done task orders nothing more; what is out still comes and is paid. Own stock without a lead is there. */
    private static byte statusOf(Material line, int asOf, byte taskStatus) {
        if (line.received() != Inputs.NONE && line.received() <= asOf) {
            return THERE;
        }
        if (line.ordered() != Inputs.NONE && line.ordered() <= asOf) {
            return OUT;
        }
        if (taskStatus == TaskTable.DONE || taskStatus == TaskTable.DROPPED) {
            return IDLE;
        }
        return line.source() == Source.OWN && line.leadDays().high() <= 0 ? THERE : TO_ORDER;
    }

    /** Promised - ordered in place of the likely lead, low and high scaled (rule 62). */
    private static Inputs.Range promised(Material line) {
        if (line.promised() == Inputs.NONE) {
            return line.leadDays();
        }
        double days = Math.max(0, line.promised() - line.ordered());
        double likely = line.leadDays().likely();
        return likely > 0
                ? new Inputs.Range(
                        line.leadDays().low() * days / likely,
                        days,
                        line.leadDays().high() * days / likely)
                : Inputs.Range.of(days);
    }
}
