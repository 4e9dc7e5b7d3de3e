package weekwright.worlds;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import weekwright.worlds.Kind.Trait;

/** A made-up project and all that has happened in it so far. The same seed and number give the same project. */
public final class World {
    static final LocalDate START = LocalDate.of(2024, 1, 8);
    static final int NEVER = -1;
    /** So many weeks long there is a short film on every Friday that has no other. */
    private static final int SIDE_WEEKS = 120;

    private static final String[] TRADES = {"mason", "joiner", "smith"};

    /** A link's wait is 0 or low, likely and high days. */
    record Link(int after, double share, int[] waitDays) {}

    /** A task and where it stands: days are epoch days. */
    static final class Task {
        String id;
        int stage;
        boolean wait;
        double[] estimate;
        String trade = "";
        boolean outdoors;
        String camera = "";
        /** Percent. */
        int fail;

        int redo;
        /** The task that it is done again for, or none. */
        String redoOf = "";
        /** Nobody knows of it yet. */
        boolean hidden;

        int added = NEVER;
        int started = NEVER;
        int done = NEVER;
        final List<Link> links = new ArrayList<>();
    }

    /** A bought line and where it stands. */
    static final class Line {
        String id;
        int task;
        int[] price;
        int[] lead;
        int ordered = NEVER;
        int received = NEVER;
    }

    /** An episode of one task, or of none. */
    static final class Film {
        String id;
        int task = NEVER;
        int slot;
        int cut = NEVER;
        int published = NEVER;
    }

    /** Logged minutes. */
    record Hours(int day, int person, String task, String episode, String as, int minutes) {}

    final Kind kind;
    final long seed;
    final int number;
    final int people;
    final int stages;
    final int income;
    final List<Task> tasks = new ArrayList<>();
    final List<Line> lines = new ArrayList<>();
    final List<Film> films = new ArrayList<>();
    final List<Hours> hours = new ArrayList<>();
    /** What each person gives of the stated hours, and how much a week differs. */
    final double[] turnout = {1, 1, 1};

    long cash;
    /** Nothing where money comes in as one regular item. */
    final Pledges pledges;

    /** Balance by day. */
    final Map<Integer, Long> evenings = new HashMap<>();

    int lostFrom = NEVER;
    private final SplittableRandom random;

    World(Kind kind, long seed, int number) {
        this.kind = kind;
        this.seed = seed;
        this.number = number;
        random = new SplittableRandom(seed * 1_000_003 + number);
        people = 2 + random.nextInt(2);
        stages = 3 + random.nextInt(3);
        cash = 300_000 + random.nextInt(300_000);
        int spend = 0;
        int each = 5 + random.nextInt(4);
        for (int s = 0; s < stages; s++) {
            for (int k = 0; k < each; k++) {
                spend += task(s, false);
            }
        }
        // the whole build takes some 14 months; money comes in at about the rate at which it is spent
        income = Math.max(5_000, (int) (spend / 14.0 * (0.9 + 0.5 * random.nextDouble())));
        pledges = kind.is(Trait.SUPPORTERS) ? new Pledges(this, income) : null;
        if (pledges != null) {
            cash = 60_000 + cash / 3;
        }
        if (kind.is(Trait.FOUND)) {
            // hours found for an hour listed, as rule 122 expects them before anything is known: 1 / gamma of shape 3
            // and rate 0.3
            double lambda = 0;
            for (int k = 0; k < 3; k++) {
                lambda -= Math.log1p(-random.nextDouble()) / 0.3;
            }
            double share = Math.min(0.6, 0.875 / lambda);
            for (int s = 0; s < stages; s++) {
                for (int k = 0; k < each; k++) {
                    if (random.nextDouble() < share) {
                        task(s, true);
                        // as rule 122 has it, what turns up is worked after the stage's last listed task
                        tasks.get(tasks.size() - 1).links.add(new Link((s + 1) * each - 1, 1, null));
                        if (kind.is(Trait.FOUND_BUYS) && random.nextInt(5) < 2) {
                            line(tasks.size() - 1);
                        }
                    }
                }
            }
        }
        for (int p = 0; p < people && kind.is(Trait.TURNOUT); p++) {
            turnout[p] = 0.6 + 0.35 * random.nextDouble();
        }
        for (int t = 0; t < tasks.size() && kind.is(Trait.FAILURES); t++) {
            int at = t;
            if (!tasks.get(t).wait && lines.stream().noneMatch(line -> line.task == at) && random.nextInt(3) == 0) {
                tasks.get(t).fail = between(15, 35);
                tasks.get(t).redo = between(50, 100);
            }
        }
    }

    private int between(int low, int high) {
        return low + random.nextInt(high - low + 1);
    }

    private double[] around(double likely) {
        return new double[] {
            round(likely * (0.6 + 0.25 * random.nextDouble())),
            round(likely),
            round(likely * (1.3 + 1.1 * random.nextDouble()))
        };
    }

    private static double round(double hours) {
        return Math.round(hours * 4) / 4.0;
    }

    /** @return what its material costs */
    private int task(int stage, boolean hidden) {
        Task task = new Task();
        int at = tasks.size();
        task.id = "t" + at;
        task.stage = stage;
        task.hidden = hidden;
        task.added = hidden ? NEVER : (int) START.toEpochDay();
        task.wait = !hidden && random.nextInt(8) == 0;
        if (task.wait) {
            int likely = between(4, 20);
            task.estimate = new double[] {Math.max(1, likely * 2 / 3), likely, likely * 2};
        } else {
            task.estimate = around(Math.exp(3.4 + 0.7 * (random.nextDouble() + random.nextDouble() - 1) * 1.6));
            task.trade = random.nextInt(2) == 0 ? "" : TRADES[random.nextInt(3)];
            task.outdoors = random.nextInt(4) == 0;
            task.camera = new String[] {"", "", "fixed", "operator"}[random.nextInt(4)];
        }
        for (int k = 0; k < 2 && at > 0 && !hidden; k++) {
            int before = Math.max(0, at - 1 - random.nextInt(9));
            boolean there = tasks.get(before).hidden || task.links.stream().anyMatch(link -> link.after() == before);
            if (!there && (k == 0 || random.nextBoolean())) {
                task.links.add(new Link(
                        before,
                        tasks.get(before).wait || random.nextInt(6) > 0 ? 1 : 0.5,
                        random.nextInt(8) == 0 ? new int[] {2, 4, 10} : null));
            }
        }
        tasks.add(task);
        if (task.wait || hidden || random.nextInt(5) >= 2) {
            return 0;
        }
        return line(at);
    }

    /** @return what it costs */
    private int line(int task) {
        Line line = new Line();
        line.id = "m" + lines.size();
        line.task = task;
        int price = between(40, 900);
        line.price = new int[] {price * 9 / 10, price, price * 13 / 10};
        int lead = between(5, 70);
        line.lead = new int[] {lead * 2 / 3, lead, lead * 9 / 5};
        lines.add(line);
        return price * 100;
    }

    /** Every second work task gets a film, on a Friday of its own some weeks after its planned end. */
    void film(List<Integer> plannedEnd) {
        List<Integer> taken = new ArrayList<>();
        for (int t = 0; t < tasks.size(); t++) {
            Task task = tasks.get(t);
            if (task.wait || task.hidden || t % 2 == 1 || plannedEnd.get(t) == Integer.MAX_VALUE) {
                continue;
            }
            LocalDate slot = LocalDate.ofEpochDay(plannedEnd.get(t) + between(7, 42))
                    .with(TemporalAdjusters.nextOrSame(DayOfWeek.FRIDAY));
            while (taken.contains((int) slot.toEpochDay())) {
                slot = slot.plusWeeks(1);
            }
            taken.add((int) slot.toEpochDay());
            Film film = new Film();
            film.id = "e" + t;
            film.task = t;
            film.slot = (int) slot.toEpochDay();
            films.add(film);
        }
        if (pledges != null) {
            LocalDate friday = START.with(TemporalAdjusters.nextOrSame(DayOfWeek.FRIDAY));
            for (int k = 0; k < SIDE_WEEKS; k++, friday = friday.plusWeeks(1)) {
                if (!taken.contains((int) friday.toEpochDay())) {
                    Film side = new Film();
                    side.id = "side" + k;
                    side.slot = (int) friday.toEpochDay();
                    films.add(side);
                }
            }
        }
    }

    /** Minutes of a number that belongs to this world, a person and a week, between 0 and 1. */
    double chance(String what, int a, int b) {
        return new SplittableRandom(
                        seed * 31 + number * 7_919L + what.hashCode() * 104_729L + a * 611_953L + b * 15_485_863L)
                .nextDouble();
    }

    /** Share of the stated hours that a person really gives in the week of a day. */
    double given(int person, int day) {
        int week = Math.floorDiv(day + 3, 7);
        if (lostFrom != NEVER && day >= lostFrom && day < lostFrom + 28) {
            return 0;
        }
        if (!kind.is(Trait.TURNOUT)) {
            return 1;
        }
        if (chance("ill", person, week / 2) < 0.06) {
            return 0.15;
        }
        return Math.min(1, Math.max(0.2, turnout[person] + 0.24 * (chance("week", person, week) - 0.5)));
    }

    /** What nobody had listed is seen once a part of its stage, another for each task, is done. */
    void look(int day) {
        for (Task task : tasks) {
            if (task.hidden && doneShare(task.stage) > 0.95 * chance("seen", task.id.hashCode(), 0)) {
                task.hidden = false;
                task.added = day;
            }
        }
    }

    /** What has failed is done, and is done again as a task of its own, which all that follows it waits for too. */
    void failed(Task task, int day) {
        task.done = day;
        Task again = new Task();
        again.id = "t" + tasks.size();
        again.stage = task.stage;
        again.estimate = new double[3];
        for (int i = 0; i < 3; i++) {
            again.estimate[i] = round(task.estimate[i] * task.redo / 100.0);
        }
        again.trade = task.trade;
        again.outdoors = task.outdoors;
        again.fail = task.fail;
        again.redo = task.redo;
        again.redoOf = task.id;
        again.added = day;
        int first = tasks.indexOf(task);
        int place = tasks.size();
        for (Task after : tasks) {
            if (after.done == NEVER && after.links.stream().anyMatch(link -> link.after() == first)) {
                after.links.add(new Link(place, 1, null));
            }
        }
        again.links.add(new Link(first, 1, null));
        tasks.add(again);
    }

    private double doneShare(int stage) {
        long all =
                tasks.stream().filter(one -> one.stage == stage && !one.hidden).count();
        long done = tasks.stream()
                .filter(one -> one.stage == stage && !one.hidden && one.done != NEVER)
                .count();
        return done / (double) all;
    }

    /** Whether all that is and will be listed is done. */
    boolean over() {
        return tasks.stream().allMatch(task -> task.done != NEVER);
    }
}
