package weekwright.worlds;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import weekwright.engine.Inputs;
import weekwright.engine.Outcome;
import weekwright.engine.plan.Plan;
import weekwright.engine.plan.Planner;
import weekwright.engine.simulate.Progress;
import weekwright.engine.simulate.Setup;
import weekwright.engine.simulate.Simulation;
import weekwright.engine.simulate.Trace;
import weekwright.engine.simulate.TrueFuture;
import weekwright.forecast.ForecastRun;
import weekwright.worlds.Kind.Trait;
import weekwright.worlds.WorldFiles.Told;

/** A world that is lived up to a day, forecast on that day from its plain files, and lived to its end. */
public final class Lived {
    private static final int WEEKS = 4;
    private static final int QUARTER = 91;
    private static final int[] CASH_WEEKS = {4, 13, 26, 39};
    /** Orders of work tried at each re-planning. */
    private static final int PASSES = 20;

    private final World world;
    private final TrueFuture truth;
    private int today = (int) World.START.toEpochDay();

    /** The forecast and the project's files of its day. */
    public final Outcome outcome;
    /** Planned days of that forecast. */
    public final Plan plan;
    /** Which tasks were done when it was made, and which were known. */
    private final boolean[] done;

    private final boolean[] known;
    private final boolean[] cutBefore;
    private final int[] setupStage;

    /** Lives a world, forecasts it half way, lives it to its end. */
    public Lived(Kind kind, long seed, int number, int trials) {
        world = new World(kind, seed, number);
        truth = new TrueFuture(seed, number, new TrueFuture.Hidden() {
            @Override
            public double given(int person, int date) {
                return world.given(person, date);
            }

            @Override
            public double longer(String task) {
                int at = Integer.parseInt(task.substring(1));
                return kind.is(Trait.SLOWER) ? Math.pow(1.2, 1.3 * at / world.tasks.size()) : 1;
            }

            @Override
            public double later(String line) {
                int clump = Integer.parseInt(line.substring(1)) / 4;
                return kind.is(Trait.CLUMPS) ? Math.exp(1.2 * (world.chance("clump", clump, 0) - 0.4)) : 1;
            }
        });
        Plan first = Planner.plan(
                new Setup(WorldFiles.basis(world, today, Told.TRUTH).inputs()), seed, 0);
        world.film(first.landing());
        int last = first.landing().stream()
                .filter(d -> d != Outcome.LATER)
                .mapToInt(d -> d)
                .max()
                .orElseThrow();
        int asOf = today + (int) ((0.35 + 0.2 * world.chance("as of", 0, 0)) * (last - today));
        while (today < asOf) {
            live(next(asOf));
        }
        if (kind.is(Trait.LOST_MONTH)) {
            world.lostFrom = today + 7 + (int) (120 * world.chance("lost", 0, 0));
        }
        Setup setup = setup(kind.learned() ? Told.CREW : Told.LESS);
        plan = Planner.plan(setup, 1, Math.min(60, ForecastRun.passes(setup.inputs())));
        outcome = Simulation.run(setup, plan, trials, 1, 1, Progress.NONE);
        done = new boolean[world.tasks.size()];
        known = new boolean[done.length];
        for (int t = 0; t < done.length; t++) {
            done[t] = world.tasks.get(t).done != World.NEVER;
            known[t] = !world.tasks.get(t).hidden;
        }
        setupStage = world.tasks.stream()
                .filter(task -> !task.hidden)
                .mapToInt(task -> task.stage)
                .toArray();
        cutBefore = new boolean[world.films.size()];
        for (int e = 0; e < cutBefore.length; e++) {
            cutBefore[e] = world.films.get(e).cut != World.NEVER;
        }
        live(setup(Told.TRUTH), plan, kind.inSteps() ? next(Integer.MAX_VALUE) : Integer.MAX_VALUE);
        for (int step = 0; step < 40 && !world.over(); step++) {
            live(next(Integer.MAX_VALUE));
        }
    }

    /** Up to the next planning: never the first of a month, whose charges would be told twice. */
    private int next(int most) {
        int to = world.kind.inSteps() ? Math.min(most, today + 7 * weeks()) : most;
        return to < Integer.MAX_VALUE && LocalDate.ofEpochDay(to).getDayOfMonth() == 1 ? to + 1 : to;
    }

    /** The order of work of the last planning, kept where the crew keeps it (rule 52). */
    private Inputs.Kept kept = Inputs.Kept.NONE;

    private Setup setup(Told told) {
        Inputs i = WorldFiles.basis(world, today, told).inputs();
        return new Setup(new Inputs(
                i.asOf(),
                i.horizonMonths(),
                i.crew(),
                i.crewHours(),
                i.daysOff(),
                i.gatherings(),
                i.workedToday(),
                i.turnout(),
                i.stages(),
                i.tasks(),
                i.links(),
                i.equipment(),
                i.ownLines(),
                i.materials(),
                i.episodes(),
                i.publishing(),
                i.weather(),
                i.orders(),
                i.model(),
                i.money(),
                i.levels(),
                i.supporters(),
                i.regular(),
                world.kind.is(Trait.REPLANNED) ? Inputs.Kept.NONE : kept));
    }

    private int weeks() {
        return world.kind.is(Trait.FOUND) ? WEEKS / 2 : WEEKS;
    }

    private void live(int to) {
        Setup setup = setup(Told.TRUTH);
        live(setup, Planner.plan(setup, 1, PASSES), to);
    }

    private void live(Setup setup, Plan order, int to) {
        kept = order.keep();
        int days = to == Integer.MAX_VALUE ? Integer.MAX_VALUE : to - today;
        int[] cut = truth.live(setup, order, new Diary(setup, days));
        for (int e = 0; e < cut.length; e++) {
            World.Film film = world.films.get(e);
            if (film.cut == World.NEVER && cut[e] != Outcome.LATER && cut[e] < days) {
                film.cut = today + cut[e];
            }
        }
        today = to == Integer.MAX_VALUE ? today + 7 * weeks() : to;
        world.look(today);
    }

    /** Writes down what happens up to a day. */
    private final class Diary implements Trace {
        private final int days;
        private final int[] task;
        private final int[] line;

        Diary(Setup setup, int days) {
            this.days = days;
            task = setup.inputs().tasks().stream()
                    .mapToInt(row -> Integer.parseInt(row.id().substring(1)))
                    .toArray();
            line = setup.inputs().materials().stream()
                    .mapToInt(row -> Integer.parseInt(row.id().substring(1)))
                    .toArray();
        }

        private World.Task of(int t) {
            return world.tasks.get(task[t]);
        }

        @Override
        public void stretch(
                int day,
                int t,
                int hands,
                int company,
                int operator,
                int from,
                int clock,
                int filming,
                int progress,
                boolean with) {
            if (day >= days || t >= task.length) {
                return;
            }
            int people = Integer.bitCount(hands);
            int left = progress;
            for (int p = 0, k = people; k > 0; p++) {
                if ((hands & 1 << p) != 0) {
                    int minutes = left / k;
                    left -= minutes;
                    k--;
                    if (minutes > 0) {
                        world.hours.add(new World.Hours(today + day, p, of(t).id, "", "hands", minutes));
                    }
                }
            }
            if (operator >= 0 && filming > 0) {
                world.hours.add(new World.Hours(today + day, operator, of(t).id, "", "camera", filming));
            }
            if (of(t).started == World.NEVER) {
                of(t).started = today + day;
            }
        }

        @Override
        public void waitBegins(int day, int t, int length) {
            if (day < days) {
                of(t).started = today + day;
            }
        }

        @Override
        public void landed(int day, int t) {
            if (day < days && t < task.length) {
                of(t).done = today + day;
                if (of(t).started == World.NEVER) {
                    of(t).started = today + day;
                }
            }
        }

        @Override
        public void failed(int day, int t) {
            if (day < days && t < task.length) {
                world.failed(of(t), today + day);
                task[t] = world.tasks.size() - 1;
            }
        }

        @Override
        public void ordered(int day, int m, long cost, long cash, long owed) {
            if (day < days) {
                world.lines.get(line[m]).ordered = today + day;
            }
        }

        @Override
        public void arrived(int day, int m, long paid) {
            if (day < days) {
                world.lines.get(line[m]).received = today + day;
            }
        }

        @Override
        public void edits(int day, int person, int episode, int minutes) {
            if (day < days && episode >= 0) {
                world.hours.add(new World.Hours(today + day, person, "", world.films.get(episode).id, "edit", minutes));
            }
        }

        @Override
        public void evening(int day, long cash) {
            if (day < days) {
                world.cash = cash;
                world.evenings.put(today + day, cash);
            }
        }

        @Override
        public void slot(int day, int what, int episode) {
            if (day < days && episode >= 0 && episode < world.films.size()) {
                world.films.get(episode).published = today + day;
            }
        }
    }

    /** The true effort ratio. */
    public double ratio() {
        return truth.ratio();
    }

    /** Stages of which something was open on the day of the forecast. */
    public int[] openStages() {
        return IntStream.range(0, world.stages)
                .filter(s -> IntStream.range(0, done.length)
                        .anyMatch(t -> world.tasks.get(t).stage == s && known[t] && !done[t]))
                .toArray();
    }

    /** Day on which the last task of a stage was done. */
    public int landed(int stage) {
        return world.tasks.stream()
                .filter(task -> task.stage == stage && !task.hidden)
                .mapToInt(task -> task.done == World.NEVER ? outcome.horizon : task.done)
                .max()
                .orElseThrow();
    }

    /** As the plan had it. */
    public int planned(int stage) {
        int last = 0;
        for (int t = 0; t < plan.landing().size(); t++) {
            if (setupStage[t] == stage) {
                last = Math.max(last, Math.min(outcome.horizon, plan.landing().get(t)));
            }
        }
        return last;
    }

    /** 4, 13, 26 and 39 weeks ahead: whether the balance lay from its P10 to its P90 (1) or not (0), of days that were lived. */
    public int[] cash() {
        return Arrays.stream(CASH_WEEKS)
                .filter(w -> w < outcome.weeks.length && world.evenings.containsKey(outcome.weeks[w]))
                .map(w -> {
                    long[] drawn = outcome.held.cash[w].clone();
                    Arrays.sort(drawn);
                    long low = drawn[(int) Math.ceil(0.1 * drawn.length) - 1];
                    long high = drawn[(int) Math.ceil(0.9 * drawn.length) - 1];
                    long was = world.evenings.get(outcome.weeks[w]);
                    return low <= was && was <= high ? 1 : 0;
                })
                .toArray();
    }

    /** Chance that was given to each episode of the next three months to be cut in time, and whether it was (1 or 0). */
    public double[][] episodes() {
        List<double[]> rows = new ArrayList<>();
        for (int e = 0; e < world.films.size(); e++) {
            World.Film film = world.films.get(e);
            if (film.task == World.NEVER
                    || cutBefore[e]
                    || film.slot <= outcome.asOf
                    || film.slot > outcome.asOf + QUARTER) {
                continue;
            }
            int by = film.slot - 1;
            double chance = Arrays.stream(outcome.episodeCut[e])
                            .filter(day -> day <= by)
                            .count()
                    / (double) outcome.trials;
            rows.add(new double[] {chance, film.cut != World.NEVER && film.cut <= by ? 1 : 0});
        }
        return rows.toArray(double[][]::new);
    }
}
