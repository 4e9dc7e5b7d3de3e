package weekwright.forecast;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import weekwright.db.Db;
import weekwright.engine.Inputs;
import weekwright.engine.explain.Levers;
import weekwright.engine.plan.Plan;
import weekwright.engine.simulate.Progress;
import weekwright.engine.simulate.Stopped;

/**
 * Draws futures of the plan as it stands and with levers pulled, in pairs: the same seed and, for both, the order of work of
 * the newest forecast (rule 52). A first answer is drawn while the asker waits; the whole one, and the one with an order of work made
 * anew where a lever touches tasks or crew, in a thread of its own that begins anew a moment after each question. What was drawn is kept
 * while nothing changes. Safe for use from several threads.
 */
public final class LeverFutures {
    private static final Logger LOG = LoggerFactory.getLogger("weekwright.forecast");
    private static final int MOST_KEPT = 40;

    /** So long nothing better is drawn after a question: its first answer is then on its way, and a slider has come to rest. */
    private static final long PAUSE_NANOS = 150_000_000;

    private final int firstLook;
    private final int whole;
    private final int threads;

    private Optional<Key> key = Optional.empty();
    private Optional<Ground> ground = Optional.empty();
    private final Map<Drawn, LeverSide> drawn = new LinkedHashMap<>(16, 0.75f, true);
    private Optional<Question> wanted = Optional.empty();
    private boolean working;
    private Optional<Question> failed = Optional.empty();
    /** Held while the asker's futures are drawn: one question at a time, and the background lets go first. */
    private final Object turn = new Object();

    private record Key(Db db, long version, LocalDate day) {}

    /** What all futures of a state of the project are drawn from. */
    private record Ground(Key key, Basis basis, Plan order) {}

    /** @param anew whether the order of work is made for the levers themselves */
    private record Drawn(Levers levers, int futures, boolean anew) {}

    private record Question(Key key, Levers levers) {}

    /**
     * An answer.
     *
     * @param settled whether nothing better will come
     */
    public record Look(LeverAnswer answer, boolean settled, Basis basis) {}

    public LeverFutures() {
        this(Forecasts.FIRST_LOOK, Forecasts.TRIALS, Runtime.getRuntime().availableProcessors());
    }

    /** With other numbers of futures, the first answer's and the whole one's. */
    public LeverFutures(int firstLook, int whole, int threads) {
        this.firstLook = firstLook;
        this.whole = whole;
        this.threads = threads;
    }

    /**
     * The best answer there is; at least the first one, which is waited for.
     *
     * @param shown the newest forecast, whose order of work is followed where it knows the project as it stands
     */
    public Look look(Db db, LocalDate day, Optional<Forecasts.Shown> shown, Levers levers) {
        synchronized (turn) {
            Ground on = ground(db, day, shown);
            Question question = new Question(on.key(), levers);
            Optional<LeverSide> now = kept(on, new Drawn(Levers.NONE, whole, false));
            Optional<LeverSide> then = kept(on, new Drawn(levers, whole, false));
            Optional<LeverSide> anew = levers.reorders() ? kept(on, new Drawn(levers, whole, true)) : Optional.empty();
            if (now.isPresent() && then.isPresent() && (anew.isPresent() || !levers.reorders())) {
                return new Look(LeverAnswer.of(now.get(), then.get(), anew), true, on.basis());
            }
            giveUpOthers(question);
            LeverSide first = draw(on, new Drawn(Levers.NONE, firstLook, false), done -> true);
            LeverSide tried = draw(on, new Drawn(levers, firstLook, false), done -> true);
            boolean more = begin(question);
            return new Look(LeverAnswer.of(first, tried, Optional.empty()), !more, on.basis());
        }
    }

    /**
     * What the levers are pulled on. Futures of it as it stands are drawn in the background, so that the first lever is
     * answered as soon as any other.
     */
    public Basis basis(Db db, LocalDate day, Optional<Forecasts.Shown> shown) {
        synchronized (turn) {
            Ground on = ground(db, day, shown);
            synchronized (this) {
                if (wanted.isEmpty() && !drawn.containsKey(new Drawn(Levers.NONE, whole, false))) {
                    begin(new Question(on.key(), Levers.NONE));
                }
            }
            return on.basis();
        }
    }

    private Ground ground(Db db, LocalDate day, Optional<Forecasts.Shown> shown) {
        Key stands = new Key(db, db.version(), day);
        synchronized (this) {
            if (key.equals(Optional.of(stands))) {
                return ground.orElseThrow();
            }
        }
        Basis basis = db.read(read -> InputsBuilder.build(read, day));
        Key asked = new Key(db, basis.version(), day);
        Plan order = shown.filter(one -> one.version() == basis.version()
                        && one.forecast().asOf().equals(day))
                .flatMap(Forecasts.Shown::plan)
                .orElseGet(() -> new ForecastRun.Planned(basis, Forecasts.SEED).plan());
        synchronized (this) {
            key = Optional.of(asked);
            ground = Optional.of(new Ground(asked, basis, order));
            drawn.clear();
            failed = Optional.empty();
            return ground.get();
        }
    }

    private synchronized Optional<LeverSide> kept(Ground on, Drawn what) {
        return key.equals(Optional.of(on.key())) ? Optional.ofNullable(drawn.get(what)) : Optional.empty();
    }

    private synchronized void giveUpOthers(Question question) {
        wanted = wanted.filter(question::equals);
        notifyAll();
    }

    private LeverSide draw(Ground on, Drawn what, Progress progress) {
        Optional<LeverSide> known = kept(on, what);
        if (known.isPresent()) {
            return known.get();
        }
        Inputs inputs = what.levers().over(on.basis().inputs());
        Basis basis = new Basis(
                inputs, on.basis().names(), on.basis().currency(), on.basis().version());
        ForecastRun.Planned run = what.anew()
                ? new ForecastRun.Planned(basis, Forecasts.SEED)
                : new ForecastRun.Planned(basis, Forecasts.SEED, on.order());
        LeverSide side = LeverSide.of(inputs, run.compared(what.futures(), threads, progress));
        synchronized (this) {
            if (key.equals(Optional.of(on.key()))) {
                drawn.put(what, side);
                if (drawn.size() > MOST_KEPT) {
                    drawn.remove(drawn.keySet().iterator().next());
                }
            }
        }
        return side;
    }

    private synchronized boolean stillWanted(Question question) {
        return wanted.equals(Optional.of(question));
    }

    private synchronized boolean begin(Question question) {
        if (failed.equals(Optional.of(question))) {
            return false;
        }
        wanted = Optional.of(question);
        if (!working) {
            working = true;
            Thread thread = new Thread(this::work, "levers");
            thread.setDaemon(true);
            thread.start();
        }
        return true;
    }

    private void work() {
        while (true) {
            Optional<Question> next;
            synchronized (this) {
                next = wanted;
                if (next.isEmpty()) {
                    working = false;
                    notifyAll();
                    return;
                }
            }
            Question question = next.get();
            try {
                pause(question);
                settle(groundOf(question), question);
            } catch (Stopped e) {
                LOG.debug("levers given up for a newer question");
            } catch (RuntimeException | Error e) {
                LOG.error("levers failed, project version {}", question.key().version(), e);
                synchronized (this) {
                    failed = Optional.of(question);
                }
            }
            synchronized (this) {
                if (wanted.equals(next)) {
                    wanted = Optional.empty();
                }
            }
        }
    }

    /** Leaves the processors to those who bring the first answer. */
    private synchronized void pause(Question question) {
        long until = System.nanoTime() + PAUSE_NANOS;
        long left = PAUSE_NANOS;
        while (left > 0 && wanted.equals(Optional.of(question))) {
            try {
                TimeUnit.NANOSECONDS.timedWait(this, left);
            } catch (InterruptedException e) {
                throw new Stopped(0, whole);
            }
            left = until - System.nanoTime();
        }
        if (left > 0) {
            throw new Stopped(0, whole);
        }
    }

    private synchronized Ground groundOf(Question question) {
        return ground.filter(one -> one.key().equals(question.key())).orElseThrow(() -> new Stopped(0, whole));
    }

    private void settle(Ground on, Question question) {
        Progress progress = done -> stillWanted(question);
        draw(on, new Drawn(Levers.NONE, firstLook, false), progress);
        draw(on, new Drawn(Levers.NONE, whole, false), progress);
        draw(on, new Drawn(question.levers(), whole, false), progress);
        if (question.levers().reorders()) {
            draw(on, new Drawn(question.levers(), whole, true), progress);
        }
    }

    /** Waits until the whole answer stands, for tests and commands. */
    public synchronized void await() throws InterruptedException {
        while (working) {
            wait();
        }
    }
}
