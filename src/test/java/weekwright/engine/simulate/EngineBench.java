package weekwright.engine.simulate;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import weekwright.bench.LargeProjectBench;
import weekwright.engine.Outcome;
import weekwright.engine.plan.Plan;
import weekwright.engine.plan.Planner;

/**
 * A day, the draws of a future, a future and a forecast of the large made-up project (300 tasks, 3 people, four years, everything on),
 * measured by JMH on one thread. Run it with
 * {@code mvn -q test-compile exec:java -Dexec.classpathScope=test -Dexec.mainClass=weekwright.engine.simulate.EngineBench -Dexec.args=},
 * a part of a name in the arguments for some of them.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
public class EngineBench {
    private static final int TASKS = 300;
    private static final int MONTHS = 48;
    /** From 1 March 2027 to the last of February 2031, both counted. */
    private static final int DAYS = 1461;

    private static final int FUTURES = 1000;

    private final Setup setup = new Setup(LargeProjectBench.project(TASKS, MONTHS));
    private final Plan plan = Planner.plan(setup, 1, 0);
    private final WorkOrder order = WorkOrder.of(setup, plan);
    private final Trial trial = new Trial(setup, true);
    private int next;

    public static void main(String[] arguments) throws RunnerException {
        // in this process: a forked one would not know the class path that Maven gave
        new Runner(new OptionsBuilder()
                        .include("EngineBench\\..*" + (arguments.length > 0 ? arguments[0] : ""))
                        .forks(0)
                        .build())
                .run();
    }

    /** One day of one answer, the recording of the future left out; each future's draws are divided over its days. */
    @Benchmark
    @OperationsPerInvocation(DAYS)
    @OutputTimeUnit(TimeUnit.NANOSECONDS)
    public long day() {
        trial.luck.draw(1, next++ % FUTURES);
        trial.run(order);
        return trial.held.cash;
    }

    /** All that is drawn before the first day. */
    @Benchmark
    @OutputTimeUnit(TimeUnit.MICROSECONDS)
    public double draws() {
        trial.luck.draw(1, next++ % FUTURES);
        return trial.luck.beta;
    }

    /** One future with both funding answers, as a forecast draws it, not recorded. */
    @Benchmark
    @OutputTimeUnit(TimeUnit.MICROSECONDS)
    public long future() {
        trial.luck.draw(1, next++ % FUTURES);
        trial.run(order);
        if (trial.parted()) {
            trial.runWorkFirst();
        }
        return trial.free.cash;
    }

    /** A forecast of 1,000 futures, recorded, its tables made anew. */
    @Benchmark
    @OutputTimeUnit(TimeUnit.MILLISECONDS)
    public Outcome forecast() {
        return Simulation.run(setup.inputs, plan, FUTURES, 1, 1, Progress.NONE);
    }
}
