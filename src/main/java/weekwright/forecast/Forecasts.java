package weekwright.forecast;

import java.time.Clock;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.TemporalAdjusters;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import weekwright.build.SettingsStore;
import weekwright.db.Db;
import weekwright.db.Read;
import weekwright.db.StoreTrouble;
import weekwright.engine.plan.Plan;
import weekwright.engine.simulate.Simulation;
import weekwright.engine.simulate.Stopped;

/**
 * Runs the forecasts of one open project in a thread of its own and keeps the last: a first look of 1,000 futures, then
 * 10,000 (rule 110). Nobody who asks ever waits; a change of the project stops a running forecast and starts it anew. The
 * first finished forecast of each day is saved, and others by hand. At most two finished forecasts are held in memory. Safe for
 * use from several threads.
 */
public final class Forecasts implements AutoCloseable {
    /** Futures of the first look. */
    public static final int FIRST_LOOK = 1_000;
    /** Futures of a whole forecast. */
    public static final int TRIALS = 10_000;
    /** The seed of every forecast that a server makes. */
    public static final long SEED = 1;

    private static final Logger LOG = LoggerFactory.getLogger("weekwright.forecast");
    private static final int WEEK = 7;
    /** Weeks before this one whose proposals are kept. */
    private static final int WEEKS_BACK = 4;

    private final Db db;
    private final Clock clock;
    private final int firstLook;
    private final int trials;
    private final int threads;
    private final Thread worker;

    private Key wanted = Key.NONE;
    private Key working = Key.NONE;
    private Key failed = Key.NONE;
    /** What somebody did not want to wait for. */
    private Key stopped = Key.NONE;

    private final Lull lull = new Lull();
    private boolean closed;
    private int done;
    private int of;
    private String trouble = "";
    private LocalDate recalled = LocalDate.MIN;

    private Optional<Shown> last = Optional.empty();
    private Optional<ForecastRun.Made> whole = Optional.empty();
    private Optional<Earlier> earlier = Optional.empty();
    private Optional<Moved> moved = Optional.empty();
    private Optional<StoryWork> story = Optional.empty();
    private Optional<Proposals> proposals = Optional.empty();
    private final Map<LocalDate, Proposals> printed = new HashMap<>();

    /** What a forecast is asked for: a state of the project on a day. */
    private record Key(long version, LocalDate day) {
        static final Key NONE = new Key(-1, LocalDate.MIN);
    }

    /** What is going on. */
    public enum State {
        /** What is shown is the answer. */
        READY,
        /** A newer answer is being worked on. */
        RUNNING,
        /** The last try ended in an error; what is shown is older. */
        FAILED,
        /** Somebody stopped it; what is shown is older or the quick answer. */
        STOPPED
    }

    /**
     * A finished forecast.
     *
     * @param version of the project that it knows
     * @param firstLook whether it is the quick one
     * @param plan the order of work; empty for one read back from the store
     */
    public record Shown(
            Forecast forecast, Names names, long version, Instant madeAt, boolean firstLook, Optional<Plan> plan) {}

    /**
     * What a page gets.
     *
     * @param shown the newest finished forecast, whatever its day; empty before the first
     * @param done futures drawn of the running one
     * @param of futures it is to have, 0 while it still reads and plans
     * @param trouble why it failed, "" if it did not
     */
    public record Look(Optional<Shown> shown, State state, int done, int of, String trouble) {
        /** Names what is shown: another key means that a page made from it is out of date. */
        public String key() {
            String which = shown.map(s -> s.version() + "-" + s.forecast().asOf() + "-"
                            + s.forecast().trials())
                    .orElse("none");
            return which + (state == State.FAILED ? "-failed" : state == State.STOPPED ? "-stopped" : "");
        }
    }

    /** A forecast that was saved on an earlier day. */
    public record Earlier(LocalDate day, Forecast forecast) {}

    /** Forecasts of an open project with the usual numbers of futures. */
    public Forecasts(Db db, Clock clock, int threads) {
        this(db, clock, threads, FIRST_LOOK, TRIALS);
    }

    /** As above with other numbers of futures. */
    public Forecasts(Db db, Clock clock, int threads, int firstLook, int trials) {
        this.db = db;
        this.clock = clock;
        this.threads = threads;
        this.firstLook = firstLook;
        this.trials = trials;
        worker = new Thread(this::work, "forecast");
        worker.setDaemon(true);
        worker.start();
        db.onChange(this::changed);
    }

    /**
     * The forecast of a day as the project stands now, or the last one there is while that is being made. Never waits for a
     * simulation.
     */
    public synchronized Look current(LocalDate day) {
        Key key = new Key(db.version(), day);
        if (isShown(key)) {
            return new Look(last, State.READY, trials, trials, "");
        }
        if (failed.equals(key)) {
            return new Look(last, State.FAILED, 0, 0, trouble);
        }
        if (stopped.equals(key)) {
            return new Look(last, State.STOPPED, 0, 0, "");
        }
        want(key);
        return new Look(last, State.RUNNING, done, of, "");
    }

    /** Stops the forecast of a day that is being made; it is not begun again by a look, only by {@link #draw} or a change. */
    public synchronized void stop(LocalDate day) {
        Key key = new Key(db.version(), day);
        if (wanted.equals(key) && !isShown(key) && !failed.equals(key)) {
            stopped = key;
            want(Key.NONE);
        }
    }

    /** Makes the forecast of a day after all. */
    public synchronized void draw(LocalDate day) {
        stopped = Key.NONE;
        current(day);
    }

    private boolean isShown(Key key) {
        return last.isPresent()
                && !last.get().firstLook()
                && last.get().version() == key.version
                && last.get().forecast().asOf().equals(key.day)
                && last.get().forecast().trials() == trials
                && last.get().forecast().engine().equals(Simulation.VERSION);
    }

    /**
     * What was said about a week before the day of the last forecast that was asked for: the saved forecast whose day is
     * nearest to seven days before it. Known from the first answer on.
     */
    public synchronized Optional<Earlier> earlier() {
        return earlier;
    }

    /** What the newest order of work has people do, whatever state of the project it knows; empty before the first. */
    public synchronized Optional<Proposals> proposals() {
        return proposals;
    }

    /**
     * What was proposed on the Monday of this week or of one of the four before it, from the forecast that was saved then, or
     * as it would have been. Known once the first forecast of the day stands.
     */
    public synchronized Optional<Proposals> proposedOn(LocalDate monday) {
        return Optional.ofNullable(printed.get(monday));
    }

    private synchronized void changed(long version) {
        if (!wanted.equals(Key.NONE) && wanted.version < version) {
            lull.changed(System.nanoTime());
            want(new Key(version, wanted.day));
        }
    }

    private void want(Key key) {
        if (!key.equals(wanted)) {
            wanted = key;
            done = 0;
            of = 0;
            notifyAll();
        }
    }

    /** Waits until nothing is being worked on, for tests and for commands that want the answer. */
    public synchronized void await() throws InterruptedException {
        while (!closed && (!working.equals(Key.NONE) || isToDo())) {
            wait();
        }
    }

    private boolean isToDo() {
        return !wanted.equals(Key.NONE) && !isShown(wanted) && !failed.equals(wanted);
    }

    /** Stops a running forecast and the thread; what was finished stays saved. */
    @Override
    public void close() {
        synchronized (this) {
            closed = true;
            notifyAll();
        }
        try {
            worker.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void work() {
        while (true) {
            Key key;
            synchronized (this) {
                working = Key.NONE;
                notifyAll();
                while (!closed && !isToDo()) {
                    if (!waited()) {
                        return;
                    }
                }
                if (!lulled()) {
                    return;
                }
                if (closed) {
                    return;
                }
                if (!isToDo()) {
                    continue;
                }
                working = wanted;
                key = wanted;
            }
            try {
                recall(key.day);
                if (!shown(key)) {
                    run(key);
                }
            } catch (Stopped e) {
                LOG.debug("forecast of {} stopped for a newer one", key.day);
            } catch (RuntimeException | Error e) {
                LOG.error("forecast of {} failed, project version {}", key.day, key.version, e);
                synchronized (this) {
                    failed = key;
                    trouble = String.valueOf(e.getMessage());
                }
            }
        }
    }

    /** Waits while change follows on change; false if there is no time to. */
    private boolean lulled() {
        long since = System.nanoTime();
        try {
            for (long left = lull.left(since, since); !closed && left > 0; left = lull.left(since, System.nanoTime())) {
                wait(left / 1_000_000 + 1);
            }
            return true;
        } catch (InterruptedException e) {
            return false;
        }
    }

    private synchronized boolean shown(Key key) {
        return isShown(key);
    }

    /** Once a day: what was said a week before; after a start also the newest saved forecast, shown until there is a new one. */
    private void recall(LocalDate day) {
        if (day.equals(recalled)) {
            return;
        }
        record Kept(Optional<Earlier> earlier, Optional<Shown> newest) {}
        Kept kept = db.read(read -> {
            int digits = SettingsStore.get(read).moneyDigits();
            return new Kept(
                    SavedForecastStore.nearest(read, day.minusDays(WEEK), day)
                            .map(saved -> new Earlier(saved.day(), saved.forecast(digits))),
                    SavedForecastStore.newest(read, day).map(saved -> readBack(saved, digits, read)));
        });
        synchronized (this) {
            earlier = kept.earlier;
            last = last.isPresent() ? last : kept.newest;
            recalled = day;
        }
    }

    private static Shown readBack(SavedForecast saved, int digits, Read read) {
        return new Shown(
                saved.forecast(digits),
                InputsBuilder.names(read),
                saved.projectVersion(),
                saved.madeAt(),
                false,
                Optional.empty());
    }

    private boolean waited() {
        try {
            wait();
            return true;
        } catch (InterruptedException e) {
            return false;
        }
    }

    private void run(Key key) {
        Basis basis = db.read(read -> InputsBuilder.build(read, key.day));
        ForecastRun.Planned planned = new ForecastRun.Planned(basis, SEED);
        propose(basis, planned);
        show(run(key, planned, firstLook), true);
        ForecastRun.Made made = run(key, planned, trials);
        save(made);
        show(made, false);
        lookForStory(key, made);
        lookBack(key);
        explain(key, made);
    }

    /** Why the dates differ from those of a week before; in the background, given up for anything newer. */
    private void explain(Key key, ForecastRun.Made finished) {
        Optional<SavedForecast> saved =
                db.read(read -> SavedForecastStore.nearest(read, key.day.minusDays(WEEK), key.day));
        if (saved.isEmpty() || !saved.get().engine().equals(Simulation.VERSION)) {
            return;
        }
        Moved made = Moved.between(saved.get(), finished, trials, threads, mixture -> told(key, trials, trials));
        keep(write -> {
            MovedStore.keep(write, made);
            return null;
        });
        synchronized (this) {
            moved = Optional.of(made);
        }
    }

    /** Why the newest forecast differs from {@link #earlier}; empty until that is known for this state of the project. */
    public synchronized Optional<Moved> moved() {
        return moved.filter(one -> last.isPresent()
                && one.version() == last.get().version()
                && one.day().equals(last.get().forecast().asOf()));
    }

    /** Which work would give story; in the background, given up for anything newer. */
    private void lookForStory(Key key, ForecastRun.Made finished) {
        StoryWork made = StoryWork.of(
                finished.basis().inputs(),
                finished.basis().version(),
                finished.plan(),
                finished.forecast().weeksInHand(),
                Math.min(trials, StoryWork.FUTURES),
                threads,
                drawn -> told(key, trials, trials));
        synchronized (this) {
            story = Optional.of(made);
        }
    }

    /** Which work would give story, of the newest forecast; empty until that is known for this state of the project. */
    public synchronized Optional<StoryWork> story() {
        return story.filter(
                one -> last.isPresent() && one.version() == last.get().version());
    }

    private void propose(Basis basis, ForecastRun.Planned planned) {
        Proposals made = Proposals.of(basis, planned.plan());
        synchronized (this) {
            proposals = Optional.of(made);
        }
    }

    private void lookBack(Key key) {
        LocalDate monday = key.day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        for (int week = 0; week <= WEEKS_BACK; week++) {
            LocalDate of = monday.minusWeeks(week);
            if (proposedOn(of).isEmpty() && told(key, trials, trials)) {
                Proposals then = Proposals.then(db, of);
                synchronized (this) {
                    printed.put(of, then);
                }
            }
        }
    }

    private ForecastRun.Made run(Key key, ForecastRun.Planned planned, int count) {
        return planned.run(count, threads, drawn -> told(key, drawn, count));
    }

    private synchronized boolean told(Key key, int drawn, int count) {
        if (closed || !key.equals(wanted)) {
            return false;
        }
        done = drawn;
        of = count;
        return true;
    }

    private synchronized void show(ForecastRun.Made made, boolean quick) {
        last = Optional.of(new Shown(
                made.forecast(),
                made.basis().names(),
                made.basis().version(),
                clock.instant(),
                quick,
                Optional.of(made.plan())));
    }

    /** What the store does not take, on a full disk say, is shown all the same; the next forecast tries again. */
    private void keep(Db.Work<Void, RuntimeException> work) {
        try {
            db.write("forecast", work);
        } catch (StoreTrouble trouble) {
            LOG.warn("a forecast was not kept: {}", trouble.getMessage());
        }
    }

    private void save(ForecastRun.Made made) {
        SavedForecast saved = SavedForecast.of(made, clock.instant(), false, "");
        keep(write -> {
            if (!SavedForecastStore.has(write, saved.day())) {
                SavedForecastStore.insert(write, saved);
                SavedForecastStore.thin(write, saved.day());
            }
            return null;
        });
        synchronized (this) {
            whole = Optional.of(made);
        }
    }

    /**
     * The newest finished forecast as it is kept by hand under a name; empty before the first since the start.
     */
    public Optional<SavedForecast> toKeep(String name) {
        Optional<ForecastRun.Made> made;
        synchronized (this) {
            made = whole;
        }
        return made.map(one -> SavedForecast.of(one, clock.instant(), true, name));
    }
}
