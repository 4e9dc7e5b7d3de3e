package weekwright.engine.simulate;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Arrays;
import weekwright.engine.Inputs;
import weekwright.engine.Inputs.Camera;
import weekwright.engine.Inputs.Company;
import weekwright.engine.Inputs.Kind;

/** Follows a trial and fails at the first thing that the rules do not allow; reads the inputs, not the engine's tables. */
final class DayValidator implements Trace {
    private final Inputs inputs;
    private final Luck luck;
    private final String where;
    private final boolean hold;
    private final int people;
    private final int[] used;
    private final int[] start;
    private final int[] land;
    private final int[] done;
    private final int[] waitBegan;
    private final int[] waitDays;
    private final int[] stretchesOf;
    private final int[] lastEnd;
    private final int[] lastDay;
    private final boolean[] lineThere;
    private final long[] paid;
    private int day = -1;
    private long cash;
    /** By task, how much work it comes to with its failures so far, and whether it holds kept equipment. */
    private final int[] target;

    private final int[] failuresOf;
    private final boolean[] comesAgain;

    private final boolean[] holds;
    private final int[] holdsSince;
    private final int[] firstFrom;
    int failures;
    int stretches;
    int orders;
    int waits;

    DayValidator(Inputs inputs, Luck luck, String where, boolean hold) {
        this.inputs = inputs;
        this.luck = luck;
        this.where = where;
        this.hold = hold;
        int tasks = inputs.tasks().size();
        people = inputs.crew().size()
                + inputs.gatherings().stream()
                        .mapToInt(Inputs.Gathering::hands)
                        .max()
                        .orElse(0);
        used = new int[people];
        start = filled(tasks);
        land = filled(tasks);
        done = new int[tasks];
        target = Arrays.copyOf(luck.total, tasks);
        holds = new boolean[tasks];
        holdsSince = new int[tasks];
        firstFrom = new int[tasks];
        failuresOf = new int[tasks];
        comesAgain = new boolean[inputs.materials().size()];
        waitBegan = filled(tasks);
        waitDays = new int[tasks];
        stretchesOf = new int[tasks];
        lastEnd = new int[tasks];
        lastDay = filled(tasks);
        lineThere = new boolean[inputs.materials().size()];
        paid = new long[inputs.materials().size()];
        cash = inputs.money().availableMinor();
    }

    private static int[] filled(int n) {
        int[] array = new int[n];
        Arrays.fill(array, Integer.MAX_VALUE);
        return array;
    }

    private String at(int today, int t) {
        return "%s, day %s, task %s"
                .formatted(
                        where,
                        LocalDate.ofEpochDay(inputs.asOf() + (long) today),
                        inputs.tasks().get(t).id());
    }

    private void turn(int today) {
        if (today != day) {
            assertThat(today).as(where).isGreaterThanOrEqualTo(day);
            day = today;
            Arrays.fill(used, 0);
        }
    }

    /** Hours of the weekday, days off as whole days away or ceilings, gatherings with everyone who came. */
    private int leaving(int p) {
        int share = p < inputs.crew().size() ? luck.turnout[luck.turnoutAt(day) + p] : Turnout.WHOLE;
        return (int) Math.round(stated(p) * (double) share / Turnout.WHOLE);
    }

    private int stated(int p) {
        int date = inputs.asOf() + day;
        if (p >= inputs.crew().size()) {
            return inputs.gatherings().stream()
                    .filter(g -> g.date() == date && p - inputs.crew().size() < g.hands())
                    .mapToInt(Inputs.Gathering::minutes)
                    .findFirst()
                    .orElse(0);
        }
        Inputs.Crew person = inputs.crew().get(p);
        int minutes = person.weekdayMinutes()
                .get(LocalDate.ofEpochDay(date).getDayOfWeek().getValue() - 1);
        for (Inputs.DaysOff off : inputs.daysOff()) {
            if ((off.crew().isEmpty() || off.crew().equals(person.id())) && date >= off.from() && date <= off.to()) {
                minutes = Math.min(minutes, off.minutes());
            }
        }
        return minutes;
    }

    private boolean allowed(int p, Inputs.Task task) {
        return p >= inputs.crew().size()
                ? task.hazards().isEmpty()
                : inputs.crew().get(p).notFor().stream().noneMatch(task.hazards()::contains);
    }

    private boolean skilled(int p, Inputs.Task task) {
        return task.trades().isEmpty()
                || p >= inputs.crew().size()
                || inputs.crew().get(p).trades().stream().anyMatch(task.trades()::contains);
    }

    private boolean films(int p) {
        return p < inputs.crew().size() && inputs.crew().get(p).trades().contains("camera");
    }

    @Override
    public void stretch(
            int today,
            int t,
            int hands,
            int company,
            int operator,
            int from,
            int clock,
            int filming,
            int progress,
            boolean withEquipment) {
        turn(today);
        Inputs.Task task = inputs.tasks().get(t);
        String as = at(today, t);
        stretches++;
        stretchesOf[t]++;
        boolean first = start[t] == Integer.MAX_VALUE;
        assertThat(land[t]).as(as + ": not done yet").isEqualTo(Integer.MAX_VALUE);
        assertThat(task.kind()).as(as).isEqualTo(Kind.WORK);
        int n = Integer.bitCount(hands);
        assertThat(n).as(as + ": hands").isBetween(task.leastHands(), task.hands());
        int before = 0;
        for (int p = 0; p < people; p++) {
            if ((hands >> p & 1) != 0) {
                assertThat(allowed(p, task)).as(as + ": hazards of person " + p).isTrue();
                assertThat(skilled(p, task)).as(as + ": trade of person " + p).isTrue();
                before = Math.max(before, used[p]);
                spend(p, clock, task.oneGo(), as);
            }
        }
        if (lastDay[t] == today) {
            assertThat(from).as(as + ": no more than its hands at once").isGreaterThanOrEqualTo(lastEnd[t]);
        }
        company(task, hands, company, operator, clock, as);
        camera(task, first, hands, company, operator, clock, filming, as);
        equipment(t, today, from, as);
        if (lastDay[t] != today) {
            firstFrom[t] = from;
        }
        lastEnd[t] = Math.max(from, before) + clock;
        lastDay[t] = today;
        if (first) {
            start[t] = today;
            assertThat(today + inputs.asOf()).as(as + ": not before").isGreaterThanOrEqualTo(task.notBefore());
        }
        for (int m = 0; m < lineThere.length; m++) {
            if (inputs.materials().get(m).task().equals(task.id())) {
                assertThat(lineThere[m]).as(as + ": material " + m).isTrue();
            }
        }
        if (!holds[t]) {
            holdsSince[t] = today;
        }
        holds[t] = true;
        links(t, today, as);
        seasonAndWeather(task, today, as);
        done[t] += progress;
        assertThat(done[t]).as(as + ": no more than drawn").isLessThanOrEqualTo(target[t]);
        if (done[t] < target[t]) {
            assertThat(clock).as(as + ": no stretch under half an hour").isGreaterThanOrEqualTo(30);
            assertThat(task.oneGo()).as(as + ": in one go").isFalse();
        }
        int asked = n < task.hands() ? 13 : 10;
        assertThat(progress).as(as + ": work done by the hands").isLessThanOrEqualTo(n * clock * 10 / asked + 1);
    }

    /** On work in one go people give all that they have stated. */
    private void spend(int p, int minutes, boolean whole, String as) {
        used[p] += minutes;
        int most = whole ? Math.max(stated(p), leaving(p)) : leaving(p);
        assertThat(used[p]).as(as + ": hours of person " + p).isLessThanOrEqualTo(most);
    }

    private void company(Inputs.Task task, int hands, int company, int operator, int clock, String as) {
        if (company >= 0) {
            assertThat(hands >> company & 1)
                    .as(as + ": company is not one of the hands")
                    .isZero();
            assertThat(company).as(as + ": company is not at the camera").isNotEqualTo(operator);
            assertThat(allowed(company, task)).as(as + ": company's hazards").isTrue();
            spend(company, clock, task.oneGo(), as);
        }
        if (Integer.bitCount(hands) == 1 && task.company() == Company.BY) {
            assertThat(company).as(as + ": company by").isNotNegative();
        }
        if (Integer.bitCount(hands) == 1 && task.company() == Company.CALL) {
            int others = 0;
            for (int p = 0; p < people; p++) {
                others += (hands >> p & 1) == 0 && leaving(p) > 0 ? 1 : 0;
            }
            assertThat(others).as(as + ": company within call").isPositive();
        }
    }

    private void camera(
            Inputs.Task task, boolean first, int hands, int company, int operator, int clock, int filming, String as) {
        if (filming > 0) {
            assertThat(films(operator)).as(as + ": operator's trade").isTrue();
            assertThat(hands >> operator & 1)
                    .as(as + ": operator is not one of the hands")
                    .isZero();
            assertThat(operator).as(as + ": operator is not the company").isNotEqualTo(company);
            spend(operator, filming, task.camera() == Camera.ONCE, as);
        }
        if (task.camera() == Camera.ONCE && first) {
            assertThat(filming).as(as + ": once is filmed whole").isEqualTo(clock);
        }
        if (task.camera() == Camera.OPERATOR) {
            assertThat(filming).as(as + ": operator's share").isLessThanOrEqualTo((int) Math.round(clock * 0.3));
        }
    }

    /** What others hold over night, or took today and have not given back by then, and this task's need fit the quantity. */
    private void equipment(int t, int today, int from, String as) {
        for (Inputs.Need need : inputs.tasks().get(t).equipment()) {
            Inputs.Equipment one = inputs.equipment().stream()
                    .filter(e -> e.id().equals(need.equipment()))
                    .findFirst()
                    .orElseThrow();
            int peak = heldAt(t, one, today, from);
            for (int other = 0; other < start.length; other++) {
                if (other != t && lastDay[other] == today && firstFrom[other] > from) {
                    peak = Math.max(peak, heldAt(t, one, today, firstFrom[other]));
                }
            }
            assertThat(peak + need.quantity()).as(as + ": " + one.id()).isLessThanOrEqualTo(one.quantity());
        }
    }

    /** How many of an equipment other tasks have at a minute of the day. */
    private int heldAt(int t, Inputs.Equipment one, int today, int minute) {
        int held = 0;
        for (int other = 0; other < start.length; other++) {
            if (other == t || quantity(other, one.id()) == 0) {
                continue;
            }
            boolean has;
            if (inputs.tasks().get(other).kind() == Kind.WAIT) {
                has = waitBegan[other] < today && waitBegan[other] + waitDays[other] > today;
            } else {
                boolean overNight = one.kept() && holds[other] && holdsSince[other] < today && land[other] >= today;
                boolean sinceToday = holds[other] && lastDay[other] == today && firstFrom[other] <= minute;
                has = (overNight || sinceToday) && (land[other] > today || lastEnd[other] > minute);
            }
            held += has ? quantity(other, one.id()) : 0;
        }
        return held;
    }

    private int quantity(int t, String id) {
        return inputs.tasks().get(t).equipment().stream()
                .filter(need -> need.equipment().equals(id))
                .mapToInt(Inputs.Need::quantity)
                .sum();
    }

    private void links(int t, int today, String as) {
        for (Inputs.Link link : inputs.links()) {
            if (!link.task().equals(inputs.tasks().get(t).id())) {
                continue;
            }
            int before = position(link.after());
            int wait = (int) link.waitDays().likely();
            if (link.share() == 1) {
                assertThat(land[before]).as(as + ": after " + link.after()).isLessThanOrEqualTo(today - wait);
            } else if (inputs.tasks().get(before).kind() == Kind.WORK) {
                assertThat((double) done[before])
                        .as(as + ": after half of " + link.after())
                        .isGreaterThanOrEqualTo(link.share() * luck.total[before] - 1);
            } else if (failuresOf[before] == 0) {
                // what has failed had reached its half before
                assertThat(waitBegan[before] + link.share() * waitDays[before] + wait)
                        .as(as + ": after half of " + link.after())
                        .isLessThanOrEqualTo(today);
            }
        }
    }

    private int position(String id) {
        for (int t = 0; t < start.length; t++) {
            if (inputs.tasks().get(t).id().equals(id)) {
                return t;
            }
        }
        throw new IllegalArgumentException(id);
    }

    private void seasonAndWeather(Inputs.Task task, int today, String as) {
        LocalDate date = LocalDate.ofEpochDay(inputs.asOf() + (long) today);
        if (task.seasonFrom() != 0) {
            int monthDay = date.getMonthValue() * 100 + date.getDayOfMonth();
            assertThat(monthDay).as(as + ": season").isBetween(task.seasonFrom(), task.seasonTo());
        }
        if (task.outdoors()) {
            assertThat(luck.lost[today]).as(as + ": lost to weather").isFalse();
        }
    }

    @Override
    public void landed(int today, int t) {
        assertThat(land[t]).as(at(today, t) + ": lands once").isEqualTo(Integer.MAX_VALUE);
        land[t] = today;
        if (inputs.tasks().get(t).kind() == Kind.WAIT) {
            assertThat(today).as(at(today, t) + ": days of the wait").isEqualTo(waitBegan[t] + waitDays[t]);
        } else {
            assertThat(done[t]).as(at(today, t) + ": all of it is done").isEqualTo(target[t]);
            assertThat(inputs.tasks().get(t).oneGo() && stretchesOf[t] > 1 + failuresOf[t])
                    .as(at(today, t) + ": in one go")
                    .isFalse();
        }
    }

    @Override
    public void failed(int today, int t) {
        failures++;
        assertThat(++failuresOf[t]).as(at(today, t) + ": fails as drawn").isLessThanOrEqualTo(luck.failures[t]);
        holds[t] = false;
        if (inputs.tasks().get(t).kind() == Kind.WORK) {
            assertThat(done[t]).as(at(today, t) + ": fails at its end").isEqualTo(target[t]);
            target[t] += luck.again[t];
        }
        for (int m = 0; m < lineThere.length; m++) {
            if (inputs.materials().get(m).task().equals(inputs.tasks().get(t).id())) {
                lineThere[m] = false;
                comesAgain[m] = true;
            }
        }
    }

    @Override
    public void waitBegins(int today, int t, int days) {
        turn(today);
        waits++;
        waitBegan[t] = today;
        waitDays[t] = days;
        start[t] = Math.min(start[t], today);
        assertThat(days).as(at(today, t)).isEqualTo(failuresOf[t] == 0 ? luck.total[t] : luck.again[t]);
        links(t, today, at(today, t));
        for (Inputs.Need need : inputs.tasks().get(t).equipment()) {
            Inputs.Equipment one = inputs.equipment().stream()
                    .filter(e -> e.id().equals(need.equipment()))
                    .findFirst()
                    .orElseThrow();
            int held = need.quantity();
            for (int other = 0; other < start.length; other++) {
                boolean wait = inputs.tasks().get(other).kind() == Kind.WAIT;
                boolean inUse = other != t
                        && (wait
                                ? waitBegan[other] <= today && waitBegan[other] + waitDays[other] > today
                                : one.kept() && holds[other] && land[other] > today);
                held += inUse ? quantity(other, one.id()) : 0;
            }
            assertThat(held).as(at(today, t) + ": " + one.id() + " over night").isLessThanOrEqualTo(one.quantity());
        }
    }

    /** Two days before a slot, or later, an editor gives all that he has stated. */
    private boolean deadline(int today, int episode) {
        int slot = episode >= 0
                ? inputs.episodes().get(episode).slot() - inputs.asOf()
                : new Calendar(inputs).slots[-1 - episode];
        return slot <= today + 2;
    }

    @Override
    public void edits(int today, int p, int episode, int minutes) {
        turn(today);
        spend(p, minutes, deadline(today, episode), where + ", editing on day " + today);
        if (episode >= 0) {
            for (Inputs.Tell tell : inputs.episodes().get(episode).tells()) {
                assertThat(land[position(tell.task())])
                        .as(where + ": footage of episode " + episode)
                        .isLessThan(today);
            }
        }
    }

    @Override
    public void ordered(int today, int line, long cost, long cashAfter, long owedAfter) {
        turn(today);
        orders++;
        Inputs.Material material = inputs.materials().get(line);
        cash -= MoneyDraws.deposit(cost, material.depositPercent());
        assertThat(cashAfter).as(where + ": cash after order " + line).isEqualTo(cash);
        if (hold && cost > 0) {
            // rule 58: what stays after the whole cost and all balances owed is at least the reserve
            assertThat(cashAfter - owedAfter)
                    .as(where + ": reserve after order " + line)
                    .isGreaterThanOrEqualTo(inputs.money().reserveMinor());
        }
        paid[line] = MoneyDraws.deposit(cost, material.depositPercent());
    }

    @Override
    public void arrived(int today, int line, long amount) {
        turn(today);
        assertThat(lineThere[line]).as(where + ": line " + line + " comes once").isFalse();
        lineThere[line] = true;
        cash -= amount;
        assertThat(paid[line] + amount)
                .as(where + ": line " + line + " is paid once")
                .isEqualTo(comesAgain[line] ? luck.costAgain[line] : luck.cost[line]);
    }

    @Override
    public void money(int today, String why, long amount) {
        turn(today);
        cash += amount;
    }

    @Override
    public void evening(int today, long balance) {
        turn(today);
        assertThat(balance).as(where + ": every movement of day " + today).isEqualTo(cash);
    }

    /** At the end the engine's dates are those that were told. */
    void end(State state) {
        for (int t = 0; t < start.length; t++) {
            assertThat(failuresOf[t])
                    .as(at(0, t) + ": failures")
                    .isEqualTo(land[t] == Integer.MAX_VALUE ? failuresOf[t] : luck.failures[t]);
            assertThat(state.landDay[t]).as(at(0, t) + ": landing").isEqualTo(land[t]);
            assertThat(state.startDay[t]).as(at(0, t) + ": start").isEqualTo(start[t]);
        }
    }
}
