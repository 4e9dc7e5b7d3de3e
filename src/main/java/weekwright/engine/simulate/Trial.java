package weekwright.engine.simulate;

/**
 * One future, day by day (model: pay-outs and deliveries, orders, editing, work, waits, slots). Holds all the memory a thread needs;
 * nothing is allocated while days go by.
 */
final class Trial {
    final Setup setup;
    private final Calendar calendar;
    final Luck luck;
    /** The future in which orders wait for funds, or the plan's future. */
    final State held;
    /** The future in which work goes first; only meaningful if the two parted. */
    final State free;

    private final Flow flow;
    private final People people;
    private final Tools tools;
    private final StoryBank bank;
    final Cash cash;
    private final Orders orders;
    private final Editing editing;
    private final Work work;
    private final Waits waits;
    private final boolean editingFirst;
    private Trace trace;
    private State x;
    private int today;
    /** The day on which the first order was held, -1 if none was. */
    private int partedOn;

    /** @param reasons whether it is kept what each task waited for */
    Trial(Setup setup, boolean reasons) {
        this.setup = setup;
        calendar = setup.calendar;
        luck = new Luck(setup);
        held = new State(setup, reasons);
        free = new State(setup, false);
        flow = new Flow(setup, luck);
        people = new People(setup, luck);
        tools = new Tools(setup, luck);
        bank = new StoryBank(setup, luck);
        cash = new Cash(setup, luck);
        orders = new Orders(setup, luck, flow, cash, this::part);
        flow.buyAgain = orders::again;
        flow.orderFor = orders::begun;
        editing = new Editing(setup, luck, people, cash);
        work = new Work(setup, luck, flow, people, tools, bank, cash);
        waits = new Waits(setup, luck, flow, tools);
        editingFirst = setup.inputs.model().editingFirst();
    }

    /** Tells somebody of everything that happens from now on; null for nobody. */
    void trace(Trace listener) {
        trace = listener;
        cash.trace = listener;
        orders.trace = listener;
        editing.trace = listener;
        work.trace = listener;
        flow.trace = listener;
        waits.trace = listener;
    }

    /** Runs the days with the luck as it stands, orders held for funds. */
    void run(WorkOrder order) {
        partedOn = -1;
        start(order);
        days(0, true);
    }

    /** Whether an order was held in the last run: only then do the two answers differ. */
    boolean parted() {
        return partedOn >= 0;
    }

    /** Runs the other answer, in which work goes first, from the day on which the first order was held. */
    void runWorkFirst() {
        goOn(free, partedOn);
        orders.day(partedOn, false);
        rest(partedOn);
        days(partedOn + 1, false);
    }

    private void start(WorkOrder order) {
        goOn(held, 0);
        flow.order = order;
        x.clear();
        cash.begin(x);
        editing.begin(x);
        orders.begin(x, order);
        flow.begin();
        bank.begin(x);
    }

    private void goOn(State state, int day) {
        x = state;
        flow.x = state;
        flow.today = day;
        tools.restart(state);
        bank.restart(state);
        cash.restart(state, day, state == held);
        orders.restart(state);
        editing.restart(state);
        work.restart(state, day);
    }

    private void part() {
        if (partedOn < 0) {
            partedOn = today;
            free.copy(held);
        }
    }

    private void days(int from, boolean hold) {
        int day = from;
        for (; day < calendar.days && (x.openTasks > 0 || editing.busy()); day++) {
            today = day;
            cash.morning(day);
            orders.morning(day);
            flow.morning(day);
            order(day, hold);
            rest(day);
        }
        // nothing is left to build or to edit, and nothing will be: only money and slots go on
        for (; day < calendar.days; day++) {
            if (day == 0 || cash.moves(day)) {
                today = day;
                cash.morning(day);
                orders.morning(day);
                order(day, hold);
                slot(day);
                cash.evening(day);
            }
        }
    }

    private void rest(int day) {
        if (calendar.nobody[day] && setup.gatheringOn[day] < 0 && !work.ownLines(day)) {
            editing.nobody(day);
        } else {
            crew(day);
        }
        if (x.waiting > 0) {
            waits.evening(day, x);
        }
        slot(day);
        cash.evening(day);
    }

    private void slot(int day) {
        int s = calendar.slotIndex[day];
        if (s >= 0) {
            editing.slot(s, day);
        }
    }

    private void order(int day, boolean hold) {
        if (x.toOrder > 0) {
            orders.day(day, hold);
        }
    }

    private void crew(int day) {
        people.open(day);
        gather(day);
        work.setAside(day);
        if (editingFirst) {
            if (x.openTasks > 0 && work.onceWaits()) {
                editing.urgent(day);
                work.onceFirst(day);
            }
            editing.day(day);
        }
        if (x.openTasks > 0) {
            work.day(day);
        }
        if (!editingFirst) {
            editing.day(day);
        }
    }

    private void gather(int day) {
        int g = setup.gatheringOn[day];
        if (g >= 0 && luck.came[g] > 0) {
            people.gather(luck.came[g], setup.inputs.gatherings().get(g).minutes());
        }
    }
}
