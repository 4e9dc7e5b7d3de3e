package weekwright.engine.simulate;

import static weekwright.engine.simulate.State.LATER;
import static weekwright.engine.simulate.TaskTable.NO_DAY;
import static weekwright.engine.simulate.TaskTable.OPEN;
import static weekwright.engine.simulate.TaskTable.UNDER_WAY;

import weekwright.engine.Inputs.LineKind;
import weekwright.engine.Outcome.Count;

/**
 * A day's work (rules 37 to 47, 125 to 131): the crew's own week lines first, then tasks from the top of the order; after a stretch the
 * same task is tried again with other people, then the next; when a task ended or a link was reached, from the top again.
 *
 * <p>What differs from task to task is joined by {@code &} where both sides are at hand: a processor foresees one jump that is seldom
 * taken, but not two that go either way, and each that it does not foresee costs as much as twenty simple steps.
 */
final class Work {
    /** One, in the units of {@link #factor}. */
    private static final int WHOLE = 10_000;

    /** With fewer hands than asked a task takes 30 % longer (rule 41). */
    private static final int FEWER_HANDS = 13_000;

    /** The longest stretch worked in one go, in minutes (rule 127). */
    private static final int LONGEST_GO = 14 * 60;

    private static final int FITS = Integer.MIN_VALUE;

    private final Setup setup;
    private final Luck luck;
    private final Flow flow;
    private final People people;
    private final Tools tools;
    private final StoryBank bank;
    private final Cash cash;
    Trace trace;
    private State x;
    private int today;
    /** Whether the day is lost for outdoor work. */
    private boolean lost;
    /** The seasons closed today, see {@link Seasons#bit}. */
    private long closedSeasons;
    /** The own lines of today: positions ownFrom to ownTo - 1. */
    private int ownFrom;

    private int ownTo;
    /** How many own lines of today keep hours for a task that waits for the work before it. */
    private int ownKept;
    // what fits() found
    private int hands;
    private int company;
    private int operator;
    private int from;
    private int clock;
    /** What an hour's work takes in hours, in ten-thousandths. */
    private long factor;

    private boolean withTools;

    Work(Setup setup, Luck luck, Flow flow, People people, Tools tools, StoryBank bank, Cash cash) {
        this.setup = setup;
        this.luck = luck;
        this.flow = flow;
        this.people = people;
        this.tools = tools;
        this.bank = bank;
        this.cash = cash;
    }

    /** Before the first day of a run, or before the day from which it goes on. */
    void restart(State state, int day) {
        x = state;
        today = -1;
        for (TaskState k : x.task) {
            k.filmPerson = -1;
            k.filmMinutes = 0;
            k.workedOn = -1;
        }
        ownTo = 0;
        while (ownTo < setup.own.count && setup.own.day[ownTo] < day) {
            ownTo++;
        }
        ownFrom = ownTo;
    }

    /** Whether the crew has lines of its own for a day whose morning has not been yet. */
    boolean ownLines(int day) {
        return ownTo < setup.own.count && setup.own.day[ownTo] <= day;
    }

    /** The crew's own lines of the day for errands, care, rest and filming: their hours are set aside (rule 43). */
    void setAside(int day) {
        OwnLines own = setup.own;
        for (int i = ownFrom; i < ownTo; i++) {
            if (own.task[i] >= 0) {
                x.task[own.task[i]].filmPerson = -1;
                x.task[own.task[i]].filmMinutes = 0;
            }
        }
        ownFrom = ownTo;
        while (ownTo < own.count && own.day[ownTo] <= day) {
            int i = ownTo++;
            int p = own.person[i];
            int minutes = Math.min(own.minutes[i], people.statedLeft(p));
            people.stay(p, minutes);
            switch (own.kind[i]) {
                case WORK, EDIT -> people.reserve(i, p, minutes);
                case FILM -> {
                    if (own.task[i] >= 0) {
                        people.use(p, minutes);
                        x.task[own.task[i]].filmPerson = p;
                        x.task[own.task[i]].filmMinutes = minutes;
                    }
                }
                default -> people.use(p, minutes);
            }
        }
    }

    /** Whether something that happens once may be worked today: it goes before editing (rule 133). */
    boolean onceWaits() {
        if (!setup.tasks.anyOnce || people.there == 0) {
            return false;
        }
        for (int i = 0; i < x.queued; i++) {
            if (x.queue[i].camera == TaskTable.ONCE) {
                return true;
            }
        }
        return false;
    }

    /** Works what happens once, after the crew's own lines and before anything else of the day. */
    void onceFirst(int day) {
        open(day);
        pass(true);
    }

    /** Works a day. */
    void day(int day) {
        if (people.there == 0) {
            return;
        }
        if (today != day) {
            open(day);
        }
        pass(false);
        if (ownKept > 0) {
            // what they were kept for has not become possible today
            releaseKept();
            pass(false);
        }
    }

    private void open(int day) {
        today = day;
        luck.weatherUntil(day);
        lost = luck.lost[day];
        closedSeasons = setup.closedSeasons[day];
        tools.open(day);
        ownWork();
        flow.bankLow();
        if (x.resort || (day >= x.staleOn && setup.calendar.monday[day])) {
            flow.resort();
        }
    }

    private void pass(boolean onceOnly) {
        flow.event = false;
        int at = 0;
        while (at < x.queued) {
            if (people.free == 0) {
                if (x.accounts() && !onceOnly) {
                    nobodyLeft(at);
                }
                break;
            }
            TaskState k = x.queue[at];
            if (onceOnly && k.camera != TaskTable.ONCE) {
                at++;
                continue;
            }
            x.counts[Count.TRIES.ordinal()]++;
            boolean worked = !inVain(k) && attempt(k, at, 0, LATER);
            if (flow.event) {
                flow.event = false;
                at = 0;
                if (ownKept > 0) {
                    keptWork();
                }
            } else if (!worked && at < x.queued && x.queue[at] == k) {
                at++;
            }
        }
    }

    /**
     * Whether a try would change nothing: no closed season or date sets the task aside, the reason of its day is not asked for or known, and
     * either the weather is against it, too few who could do it have half an hour left, or none of them has it after its last stretch.
     */
    private boolean inVain(TaskState k) {
        if (x.asksWhy(k, today) || (k.seasonBit & closedSeasons) != 0 || k.booked != NO_DAY) {
            return false;
        }
        if (k.outdoors & lost) {
            return true;
        }
        int free = k.can & people.free;
        return Integer.bitCount(free) < k.least
                || (k.workedOn == today && people.longestDay(free) - k.stretchEnd < People.HALF_HOUR);
    }

    private void ownWork() {
        OwnLines own = setup.own;
        ownKept = 0;
        for (int i = ownFrom; i < ownTo; i++) {
            if (own.kind[i] == LineKind.WORK) {
                int t = own.task[i];
                if (t >= 0 && x.task[t].status == OPEN && x.task[t].pending > 0) {
                    ownKept++;
                } else {
                    people.release(i, own.person[i]);
                }
            }
        }
        for (int i = ownFrom; i < ownTo; i++) {
            if (own.kind[i] == LineKind.WORK && own.task[i] >= 0) {
                workOwn(i);
            }
        }
    }

    /** Works the own lines whose task has become possible since the morning; their hours were kept for it (rule 43). */
    private void keptWork() {
        OwnLines own = setup.own;
        for (int i = ownFrom; i < ownTo; i++) {
            int t = own.task[i];
            if (own.kind[i] != LineKind.WORK || t < 0 || !x.task[t].listed || people.reserved(i) == 0) {
                continue;
            }
            for (int j = i; j < ownTo; j++) {
                if (own.kind[j] == LineKind.WORK && own.task[j] == t) {
                    people.release(j, own.person[j]);
                    ownKept--;
                }
            }
            workOwn(i);
        }
    }

    private void releaseKept() {
        for (int i = ownFrom; i < ownTo; i++) {
            if (setup.own.kind[i] == LineKind.WORK) {
                people.release(i, setup.own.person[i]);
            }
        }
        ownKept = 0;
    }

    /** Works a task with all of those whose own lines of today name it, if this is the first of these lines. */
    private void workOwn(int i) {
        OwnLines own = setup.own;
        int t = own.task[i];
        if (!x.task[t].listed || setup.tasks.wait[t]) {
            return;
        }
        int who = 0;
        int minutes = LATER;
        for (int j = ownFrom; j < ownTo; j++) {
            if (own.kind[j] == LineKind.WORK && own.task[j] == t) {
                if (j < i) {
                    return;
                }
                who |= 1 << own.person[j];
                minutes = Math.min(minutes, own.minutes[j]);
            }
        }
        attempt(x.task[t], position(t), who, minutes);
    }

    private int position(int t) {
        for (int i = 0; i < x.queued; i++) {
            if (x.queue[i].number == t) {
                return i;
            }
        }
        throw new IllegalStateException("task " + setup.tasks.id[t] + " is listed but not in the list");
    }

    /**
     * Tries a task.
     *
     * @param at its position in the list
     * @param own whose week line it is, 0 for none
     * @param most minutes of the stretch
     * @return whether a stretch was worked
     */
    private boolean attempt(TaskState k, int at, int own, int most) {
        int season = k.season;
        boolean closed = (k.seasonBit & closedSeasons) != 0 && setup.seasons[season][today] != today;
        boolean missed = k.booked != NO_DAY && k.booked < today && (k.status == OPEN || k.again);
        int reason = closed ? setup.reasons.season : missed ? setup.reasons.booking : fits(k, own, most);
        boolean stuck = k.left <= k.stop && !closed && !missed;
        if (reason == FITS && !stuck) {
            work(k, at);
            return true;
        }
        if (reason >= 0 && !stuck) {
            x.account(k, reason, today);
        }
        if (closed || missed || reason == FITS) {
            unlist(k, at);
            if (closed) {
                flow.sleep(k.number, setup.seasons[season][today], reason);
            } else if (missed) {
                flow.place(k.number);
                if (k.listed) {
                    // its next turn is today
                    return attempt(k, position(k.number), own, most);
                }
            } else {
                // short of material: only looked at to learn the day on which it was needed
                needed(k);
            }
        }
        return false;
    }

    private void unlist(TaskState k, int at) {
        State.remove(x.queue, x.queued--, at);
        k.listed = false;
    }

    private void needed(TaskState k) {
        int t = k.number;
        for (int i = setup.lines.start[t]; i < setup.lines.start[t + 1]; i++) {
            int m = setup.lines.ofTask[i];
            if (x.needDay[m] == LATER && k.left <= luck.neededLeft[m]) {
                x.needDay[m] = today;
            }
        }
    }

    /**
     * Whether a stretch can be worked now, and with whom; tests in the order weather, equipment, operator, person.
     *
     * @return {@link #FITS}, the number of the reason why not, or -1 if nobody who could is there today
     */
    private int fits(TaskState k, int own, int most) {
        if (k.outdoors & lost) {
            return setup.reasons.weather + setup.calendar.monthOfYear[today];
        }
        from = k.availableDay == today ? k.availableMinute : 0;
        if (k.workedOn == today) {
            from = Math.max(from, k.stretchEnd);
        }
        withTools = true;
        if ((k.toolBits & tools.inUse) != 0) {
            int lacking = tools.lacking(k);
            if (lacking >= 0) {
                if (setup.tasks.without[k.number] <= 0 || !tools.gone(k)) {
                    return setup.reasons.equipment + lacking;
                }
                withTools = false;
            } else {
                from = Math.max(from, tools.from(k));
            }
        }
        int can = k.can | own;
        if (k.camera == TaskTable.ONCE && k.status != UNDER_WAY) {
            return fitsFilmed(k, can, own, most);
        }
        operator = -1;
        int reason = fitsWith(k, can, 0, own, most);
        if (reason != FITS) {
            return reason;
        }
        if (k.camera >= TaskTable.OPERATOR) {
            int bits = setup.tasks.films[k.number] & ~hands & ~(company >= 0 ? 1 << company : 0);
            operator = k.filmPerson >= 0 && (bits >>> k.filmPerson & 1) != 0
                    ? k.filmPerson
                    : people.mostLeft(bits, 1, from);
        }
        return FITS;
    }

    /** `once` begins only when an operator has the hours for all of it, at most the day's (rule 45); he is set aside first. */
    private int fitsFilmed(TaskState k, int can, int own, int most) {
        int candidates = setup.tasks.films[k.number] & people.there;
        int tried = 0;
        int reason = setup.reasons.camera;
        while ((candidates & ~tried) != 0) {
            int who = people.mostLeft(candidates & ~tried, People.HALF_HOUR, from);
            if (k.filmPerson >= 0 && tried == 0) {
                who = k.filmPerson;
            }
            if (who < 0) {
                break;
            }
            tried |= 1 << who;
            operator = who;
            int found = fitsWith(k, can & ~(1 << who), 1 << who, own & ~(1 << who), most);
            int minutes = people.availableStated(who, from) + (k.filmPerson == who ? k.filmMinutes : 0);
            if (found == FITS && minutes >= clock) {
                return FITS;
            }
            reason = found == FITS ? setup.reasons.camera : found;
        }
        operator = -1;
        return reason;
    }

    /** Chooses hands and company; {@code busy} holds the camera. */
    private int fitsWith(TaskState k, int can, int busy, int own, int most) {
        int free = can & people.free;
        if (Integer.bitCount(free) < k.least) {
            return missing(can);
        }
        int n = people.choose(free, k.hands, k.lastOn, own, from);
        if (n < k.least) {
            return missing(can);
        }
        hands = people.chosen;
        clock = Math.min(people.clock, most);
        company = -1;
        if (n == 1 && k.company != TaskTable.ALONE) {
            int others = ~hands & ~busy;
            if (k.company == TaskTable.BY) {
                company = people.mostLeft(setup.tasks.beside[k.number] & others, People.HALF_HOUR, from);
                if (company < 0) {
                    return setup.reasons.company;
                }
                clock = Math.min(clock, people.available(company, from));
            } else if ((people.there & others) == 0) {
                return setup.reasons.company;
            }
        }
        factor = n < k.hands ? FEWER_HANDS : WHOLE;
        if (!withTools) {
            factor = (long) (factor * setup.tasks.without[k.number]);
        }
        int stop = k.stop == LATER || k.left <= k.stop ? 0 : k.stop;
        int whole = wholeClock(k.left - stop, n);
        if (k.oneGo && (k.status == OPEN || k.again)) {
            return oneGo(can, Math.min(whole, LONGEST_GO), most);
        }
        clock = Math.min(clock, whole);
        return FITS;
    }

    private int wholeClock(int minutes, int n) {
        if (factor == WHOLE) {
            return n == 1 ? minutes : n == 2 ? minutes + 1 >> 1 : (minutes + n - 1) / n;
        }
        long whole = (long) n * WHOLE;
        return (int) ((minutes * factor + whole - 1) / whole);
    }

    /**
     * In one go (rule 127): begins only when the people have its whole length left, at most 14 hours. If it is longer than any day
     * these people ever have, they need the whole of such a day and stay on to the end of the work. On such a day they give all the
     * hours they have stated (rule 120).
     */
    private int oneGo(int can, int length, int most) {
        int together = hands | (company >= 0 ? 1 << company : 0);
        int need = Math.min(length, people.longestTogether(together));
        int there = most;
        for (int bits = together; bits != 0; bits &= bits - 1) {
            there = Math.min(there, people.availableStated(Integer.numberOfTrailingZeros(bits), from));
        }
        if (there < need) {
            return missing(can);
        }
        clock = length;
        return FITS;
    }

    /** The one with the right trade who was taken first today; -1 if none of them is there. */
    private int missing(int can) {
        return x.accounts() ? people.takenFirst(can) : -1;
    }

    /** Person-minutes of the task that so many people get done in the stretch. */
    private int progressOf(int n) {
        return Math.max(1, factor == WHOLE ? n * clock : (int) ((long) n * clock * WHOLE / factor));
    }

    private void work(TaskState k, int at) {
        int n = Integer.bitCount(hands);
        int end = Math.max(from, people.latest(hands)) + clock;
        int todo = k.left - k.stop;
        int progress = wholeClock(todo, n) <= clock ? todo : progressOf(n);
        int row = k.number * setup.crowd.count;
        for (int bits = hands; bits != 0; bits &= bits - 1) {
            int p = Integer.numberOfTrailingZeros(bits);
            people.use(p, Math.min(clock, people.left(p)), from);
            cash.wage(people.pay(p), clock);
            x.workedBy[row + p] += clock;
        }
        if (company >= 0) {
            people.use(company, Math.min(clock, people.left(company)), from);
        }
        int filming = film(k, progress);
        boolean first = k.status == OPEN;
        if (first) {
            begin(k);
        } else if (k.lastDay < today - Flow.STALE_DAYS) {
            x.resort = true;
        }
        k.left -= progress;
        k.again = false;
        k.stretchEnd = end;
        k.workedOn = today;
        k.lastOn = hands;
        k.lastDay = today;
        x.counts[Count.STRETCHES.ordinal()]++;
        x.account(k, Reasons.WORKED, today);
        if (withTools && k.needsTools()) {
            tools.take(k, first, from);
        }
        if (trace != null) {
            trace.stretch(today, k.number, hands, company, operator, from, clock, filming, progress, withTools);
        }
        if (k.left <= k.stop) {
            unlist(k, at);
        }
        if (k.left == 0 && k.needsTools()) {
            tools.giveBack(k, end);
        }
        flow.progress(k, end);
        if (k.byShare) {
            needed(k);
        }
    }

    private void begin(TaskState k) {
        k.status = UNDER_WAY;
        x.startDay[k.number] = today;
        x.resort = true;
        flow.begun(k.number);
        needed(k);
        cash.found(k.number);
    }

    /** The operator gives his share of the clock hours; what he cannot give goes unfilmed (rules 45, 46). */
    private int film(TaskState k, int progress) {
        if (k.camera < TaskTable.OPERATOR) {
            bank.filmed(k, progress * k.filmsItself);
            return 0;
        }
        int given = 0;
        int need = (int) StrictMath.round(clock * k.operatorShare);
        if (operator >= 0) {
            if (k.filmPerson == operator && k.filmMinutes > 0) {
                people.giveBack(operator, k.filmMinutes);
                k.filmMinutes = 0;
            }
            int there = k.camera == TaskTable.ONCE
                    ? people.availableStated(operator, from)
                    : people.available(operator, from);
            given = k.oneGo && k.camera == TaskTable.ONCE ? need : Math.min(need, Math.max(0, there));
        }
        if (given > 0) {
            people.use(operator, Math.min(given, people.left(operator)), from);
            cash.wage(people.pay(operator), given);
        }
        bank.filmed(k, progress * (need == 0 ? 1 : (double) given / need));
        return given;
    }

    /** Nobody has half an hour left: what was not tried today waits for a person, or for the weather. */
    private void nobodyLeft(int at) {
        int weather = setup.reasons.weather + setup.calendar.monthOfYear[today];
        for (int i = at; i < x.queued; i++) {
            TaskState k = x.queue[i];
            if (k.accounted < today & k.left > k.stop) {
                int reason = k.outdoors & lost ? weather : people.takenFirst(k.can);
                if (reason >= 0) {
                    x.account(k, reason, today);
                }
            }
        }
    }
}
