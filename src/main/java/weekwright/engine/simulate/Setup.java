package weekwright.engine.simulate;

import java.util.Arrays;
import java.util.List;
import weekwright.engine.Inputs;
import weekwright.engine.Outcome;

/**
 * The inputs as primitive columns, with everything that does not depend on luck computed once. Immutable after construction and
 * shared by all threads.
 */
public final class Setup {
    final Inputs inputs;
    final Ids taskIds;
    final Crowd crowd;
    final Calendar calendar;
    final Turnout turnout;
    final int[][] seasons;
    /** By day, see {@link Seasons#closed}. */
    final long[] closedSeasons;

    final Learned learned;
    final TaskTable tasks;
    final EquipmentTable equipment;
    final EpisodeTable episodes;
    final LinkTable links;
    final LineTable lines;
    final FundsTable funds;
    final OwnLines own;
    final Reasons reasons;
    final long reserve;
    final QuantileTable kappa;
    /** κ of prices and of each supplier's leads, null where nothing teaches it. */
    final QuantileTable priceKappa;

    final QuantileTable[] leadKappa;
    /** Rate of the shares found, null where nothing is drawn. */
    final QuantileTable foundRate;

    /** Story minutes in hand under which fill work takes its turn. */
    final double bankFloor;

    /** By unlisted task: the part of its stage's hours that is expected to be open, and what that part brings at rate 1. */
    final double[] openPart;

    final QuantileTable[] foundUnits;
    final FoundMaterial foundMaterial;
    final long[] foundKey;
    final long[] failKey;
    final long[] hoursKey;
    final long[] rebookKey;
    final long[] gatheringKey;
    /** By day: the gathering of that day or -1; of two on one day the later in the file. */
    final int[] gatheringOn;
    /** By day, whether it is a 1st or a 15th, a regular item falls due or there is a gathering. */
    final boolean[] moneyOn;

    final long foundRateKey = Streams.key(Streams.Purpose.FOUND_RATE, "");
    final long spreadKey = Streams.key(Streams.Purpose.EFFORT_SPREAD, "");
    final long ratioKey = Streams.key(Streams.Purpose.EFFORT_RATIO, "");
    final long priceSpreadKey = Streams.key(Streams.Purpose.PRICE_SPREAD, "");
    final long priceRatioKey = Streams.key(Streams.Purpose.PRICE_RATIO, "");
    final long[] leadSpreadKey;
    final long[] leadRatioKey;
    final long weatherKey = Streams.key(Streams.Purpose.WEATHER, "");

    /** @throws IllegalArgumentException for unknown or doubled ids and for links in a cycle; the message names them */
    public Setup(Inputs inputs) {
        this.inputs = inputs;
        crowd = new Crowd(inputs);
        calendar = new Calendar(inputs);
        turnout = new Turnout(inputs, calendar);
        taskIds = Ids.of("task", inputs.tasks(), Inputs.Task::id);
        Ids stageIds = Ids.of("stage", inputs.stages(), Inputs.Stage::id);
        Seasons found = new Seasons(calendar);
        learned = new Learned(inputs);
        tasks = new TaskTable(inputs, crowd, stageIds, found, learned);
        seasons = found.nextOpen();
        closedSeasons = found.closed();
        equipment = new EquipmentTable(inputs, tasks, taskIds);
        episodes = new EpisodeTable(inputs, tasks, taskIds, calendar, crowd);
        links = new LinkTable(inputs, tasks, taskIds, episodes.tellRows);
        lines = new LineTable(inputs, tasks, taskIds, learned.purchases(), learned.late());
        funds = new FundsTable(inputs, calendar);
        own = new OwnLines(inputs, crowd, taskIds);
        reasons = new Reasons(inputs, crowd, tasks);
        reserve = inputs.money().reserveMinor();
        kappa = learned.ratio().kappas();
        Purchases purchases = learned.purchases();
        priceKappa = purchases.prices().map(EffortRatio::kappas).orElse(null);
        leadKappa =
                purchases.suppliers().stream().map(one -> one.ratio().kappas()).toArray(QuantileTable[]::new);
        leadSpreadKey = purchases.suppliers().stream()
                .mapToLong(one -> Streams.key(Streams.Purpose.LEAD_SPREAD, one.name()))
                .toArray();
        leadRatioKey = purchases.suppliers().stream()
                .mapToLong(one -> Streams.key(Streams.Purpose.LEAD_RATIO, one.name()))
                .toArray();
        foundRate = learned.found().any() && learned.found().fixed() < 0
                ? learned.found().rates()
                : null;
        foundMaterial = new FoundMaterial(inputs, links, learned.found());
        openPart = tasks.openParts(learned.ratio().betaN());
        foundUnits = new QuantileTable[openPart.length];
        for (int r = 0; r < openPart.length; r++) {
            foundUnits[r] = Found.units(openPart[r]);
        }
        Inputs.Publishing publishing = inputs.publishing();
        bankFloor = publishing.bankFloorWeeks() * publishing.targetMinutes() / Math.max(1, publishing.everyWeeks());
        foundKey = new long[tasks.count];
        failKey = new long[tasks.count];
        hoursKey = new long[tasks.count];
        rebookKey = new long[tasks.count];
        for (int t = 0; t < tasks.count; t++) {
            long id = Streams.idHash(tasks.id[t]);
            hoursKey[t] = Streams.key(
                    tasks.wait[t]
                            ? Streams.Purpose.WAIT_DAYS
                            : tasks.roughOf[t] >= 0 ? Streams.Purpose.STAGE_ROUGH : Streams.Purpose.TASK_HOURS,
                    id);
            rebookKey[t] = Streams.key(Streams.Purpose.REBOOK_DAYS, id);
            failKey[t] = Streams.key(Streams.Purpose.FAILURE, id);
            foundKey[t] = Streams.key(Streams.Purpose.FOUND_SHARE, id);
        }
        gatheringOn = new int[calendar.days];
        Arrays.fill(gatheringOn, -1);
        for (int g = 0; g < inputs.gatherings().size(); g++) {
            int day = inputs.gatherings().get(g).date() - inputs.asOf();
            if (day >= 0 && day < calendar.days) {
                gatheringOn[day] = g;
            }
        }
        moneyOn = new boolean[calendar.days];
        for (int day = 0; day < calendar.days; day++) {
            moneyOn[day] = calendar.dayOfMonth[day] == 1 || calendar.dayOfMonth[day] == 15 || gatheringOn[day] >= 0;
        }
        for (int day : funds.regularDay) {
            moneyOn[day] = true;
        }
        gatheringKey = inputs.gatherings().stream()
                .mapToLong(g -> Streams.key(Streams.Purpose.GATHERING, g.id()))
                .toArray();
    }

    /** The columns of {@link weekwright.engine.Outcome#heldBy}. */
    public List<Outcome.Reason> reasons() {
        return reasons.list;
    }

    /** The inputs it was made from. */
    public Inputs inputs() {
        return inputs;
    }

    /** What the finished tasks teach. */
    public Learned learned() {
        return learned;
    }
}
