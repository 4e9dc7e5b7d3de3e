package weekwright.build;

import java.util.Optional;
import weekwright.base.Id;
import weekwright.base.Problem;
import weekwright.base.Rejected;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Starts a person's clock on a task, and stops the one that ran. */
public final class StartClock {
    private StartClock() {}

    /**
     * @return the clock that ran and is stopped now
     * @throws Rejected where the task cannot be worked on, or its clock already runs or waits to be saved
     */
    public static Optional<RunningClock> start(Write write, Id crew, Id taskId) throws Rejected {
        Stored<Task> task = TaskStore.TABLE
                .find(write, taskId)
                .orElseThrow(() -> new Rejected(
                        Problem.fault("task", taskId.value(), "is not there any more", "choose another task")));
        String title = task.value().title();
        if (!task.value().isOpen()) {
            throw new Rejected(Problem.fault("task", title, "is not open any more", "log its hours without the clock"));
        }
        if (!task.value().isWork()) {
            throw new Rejected(Problem.fault("task", title, "is a wait", "say on its page that it has begun"));
        }
        Optional<RunningClock> same = RunningClockStore.find(write, crew, taskId);
        if (same.isPresent()) {
            boolean runs = same.get().stopped().isEmpty();
            throw new Rejected(Problem.fault(
                    "task",
                    title,
                    runs ? "has its clock running already" : "has a stopped clock whose hours are not saved",
                    runs ? "stop it when the work is over" : "save or throw away those first"));
        }
        Optional<RunningClock> before = RunningClockStore.running(write, crew);
        before.ifPresent(clock -> RunningClockStore.stop(write, clock, write.at()));
        RunningClockStore.insert(write, new RunningClock(crew, taskId, write.at(), Optional.empty()));
        return before.flatMap(clock -> RunningClockStore.find(write, clock.crew(), clock.task()));
    }
}
