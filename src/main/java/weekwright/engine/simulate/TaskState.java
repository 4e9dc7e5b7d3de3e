package weekwright.engine.simulate;

/**
 * One task in a trial: what changes of it but its first and last day, and beside it what a try reads of what does not change. An object
 * each and not columns: a try touches some thirty of these, which then lie together and need no check of a position.
 */
final class TaskState {
    // what does not change
    final int number;
    final boolean wait;
    final int hands;
    final int least;
    /** Who may be its hands. */
    final int can;

    final byte company;
    final byte camera;
    final boolean outdoors;
    final boolean oneGo;
    final int season;
    /** See {@link Seasons#bit}. */
    final long seasonBit;
    /** What a camera films of it without an operator: 1 for a fixed one, else 0. */
    final int filmsItself;
    /** Share of a stretch's clock hours that the operator gives. */
    final double operatorShare;
    /** Story minutes of the whole task, and the share of it that planned episodes tell. */
    final double story;

    final double told;
    /** Whether some of its lines are needed only once a share of it is done. */
    final boolean byShare;
    /** What it needs of equipment: from and behind the last position in {@link EquipmentTable}. */
    final int tools;

    final int toolsEnd;
    /** The same as bits, see {@link EquipmentTable#bits}. */
    final long toolBits;
    /** Behind its last mark in {@link LinkTable#markTarget}. */
    final int lastMark;

    /** The tasks that it follows. */
    final TaskState[] follows;

    // what is planned
    /** Place among tasks under way and among those not under way, see {@link WorkOrder}. */
    int rank;

    int place;
    /** Whether it begins and lands before the horizon, and when. */
    boolean planned;

    int plannedStart;
    int plannedLanding;

    // what is drawn
    /** Person-minutes of the whole task, of a wait its days. */
    int total;
    /** How often it fails. */
    int failures;

    // what changes
    /** Person-minutes left; of a wait 1 until it has ended. */
    int left;
    /** Work may go on until so many minutes are left; {@link State#LATER} if it may not begin for want of material. */
    int stop;
    /** A value of {@link TaskTable}. */
    byte status;
    /** Links not yet reached. */
    int pending;
    /** First day on which the links allow it, and the minute of that day. */
    int availableDay;

    int availableMinute;
    /** The link that was satisfied last or -1. */
    int lastLink;

    int lastOn;
    int lastDay;
    int nextMark;
    /** The next mark is reached, or the task done, when so many person-minutes or fewer are left. */
    int reachesAt;
    /** Filmed person-minutes. */
    double filmed;
    /** What it has in the story bank. */
    double inBank;

    int booked;
    /** How often it has failed; whether it has still to begin again after that. */
    int failed;

    boolean again;
    /** Whether it holds equipment over night. */
    boolean keeps;
    /** Whether it stands in the list of work or of waits. */
    boolean listed;
    /** Whether it sleeps until a date. */
    boolean asleep;
    /** The next task that wakes on the same day, and what it slept for; the next wait that ends on the same day. */
    int wakeNext;

    int wakeReason;
    int endNext;
    /** The last day that was put down to a reason. */
    int accounted;
    /** The newest run of such days: for what reason, from and to; the one before it, -1 for none. */
    int runReason;

    int runFrom;
    int runTo;
    int runFirst;
    /** The first line that it holds back while it has not begun, see {@link Orders}. */
    int hungFirst;

    // what is of one day alone
    /** When its last stretch of a day ended, and on which day that was: no more than its hands are on it at once. */
    int stretchEnd;

    int workedOn;
    /** The day on which it holds what it needs of equipment, and from which minute. */
    int holdsOn;

    int holdsFrom;
    /** Who keeps the camera for it on this day by a week line, -1 for nobody, and for how long. */
    int filmPerson;

    int filmMinutes;

    /** Its drift against the plan in days, until when that holds, and whether it may be even more, see {@link Orders}. */
    int drift;

    int driftOn;
    boolean driftIsMore;

    TaskState(Setup setup, int number) {
        TaskTable tasks = setup.tasks;
        this.number = number;
        wait = tasks.wait[number];
        hands = tasks.hands[number];
        least = tasks.least[number];
        can = tasks.can[number];
        company = tasks.company[number];
        camera = tasks.camera[number];
        filmsItself = camera == TaskTable.FIXED ? 1 : 0;
        outdoors = tasks.outdoors[number];
        oneGo = tasks.oneGo[number];
        season = tasks.season[number];
        seasonBit = Seasons.bit(season);
        operatorShare = tasks.operatorShare[number];
        story = tasks.story[number];
        told = setup.episodes.told[number];
        byShare = setup.lines.byShare[number];
        tools = setup.equipment.start[number];
        toolBits = setup.equipment.bits[number];
        toolsEnd = setup.equipment.start[number + 1];
        lastMark = setup.links.markStart[number + 1];
        follows = new TaskState[setup.links.inStart[number + 1] - setup.links.inStart[number]];
    }

    /** Whether it needs any equipment. */
    boolean needsTools() {
        return tools != toolsEnd;
    }

    /** Finds the tasks that it follows among all of its state. */
    void connect(LinkTable links, TaskState[] all) {
        for (int i = 0; i < follows.length; i++) {
            follows[i] = all[links.inFrom[links.inStart[number] + i]];
        }
    }

    /** Becomes equal to the same task of another state. */
    void copy(TaskState other) {
        rank = other.rank;
        place = other.place;
        planned = other.planned;
        plannedStart = other.plannedStart;
        plannedLanding = other.plannedLanding;
        total = other.total;
        failures = other.failures;
        left = other.left;
        stop = other.stop;
        status = other.status;
        pending = other.pending;
        availableDay = other.availableDay;
        availableMinute = other.availableMinute;
        lastLink = other.lastLink;
        lastOn = other.lastOn;
        lastDay = other.lastDay;
        nextMark = other.nextMark;
        reachesAt = other.reachesAt;
        filmed = other.filmed;
        inBank = other.inBank;
        booked = other.booked;
        failed = other.failed;
        again = other.again;
        keeps = other.keeps;
        listed = other.listed;
        asleep = other.asleep;
        wakeNext = other.wakeNext;
        wakeReason = other.wakeReason;
        endNext = other.endNext;
        runReason = other.runReason;
        runFrom = other.runFrom;
        runTo = other.runTo;
        runFirst = other.runFirst;
        accounted = other.accounted;
        hungFirst = other.hungFirst;
    }
}
