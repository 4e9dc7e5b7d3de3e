package weekwright.web.week;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.build.LayAside;
import weekwright.build.Shown;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Db;
import weekwright.db.Stored;
import weekwright.db.Write;
import weekwright.forecast.Forecast;
import weekwright.forecast.PairedFutures;
import weekwright.render.Chances;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Request;

/** What a change of the week would do to the landings and the next slot, told on the form that asks, before it is kept. */
final class Tried {
    private static final String FIELD = "tried";
    private static final int MOST_STAGES = 3;
    private static final List<String> ACTS = List.of("try", "aside", "try-aside", "swap", "try-swap", "delete");

    private Tried() {}

    /** The form once more with what the change does; a change that is refused is refused here too. */
    static Answer of(Request request, Db.Work<?, ? extends Exception> change) throws Exception {
        request.form().check();
        PairedFutures.Compared compared = PairedFutures.compare(
                request.db(), request.who(), request.today(), request.forecast().shown(), (Db.Work<Object, Exception>)
                        write -> change.in(write));
        Formats formats = request.formats();
        return new Answer.Again(Map.of(FIELD, sentences(compared, formats)), "");
    }

    /** What stands on the form after it was tried; empty before. */
    static List<String> shown(Request request) {
        return request.form("").values().getOrDefault(FIELD, List.of());
    }

    /** Which button was pressed on the form that was refused: one form has several. */
    static String refused(Request request) {
        return ACTS.stream().filter(request::wasRefused).findFirst().orElse("");
    }

    static List<String> sentences(PairedFutures.Compared compared, Formats formats) {
        List<String> said = new ArrayList<>();
        said.add("Tried in " + PairedFutures.FUTURES + " futures as it stands and " + PairedFutures.FUTURES
                + " with the change, with the same luck. Nothing is kept yet.");
        List<String> moved = new ArrayList<>();
        for (Forecast.Stage stage : compared.now().stages()) {
            Optional<LocalDate> now = stage.landing().p50();
            Optional<LocalDate> then =
                    compared.then().stage(stage.id()).flatMap(s -> s.landing().p50());
            if (now.isPresent() && then.isPresent() && !now.equals(then)) {
                moved.add(stage.name() + " is done about " + formats.date(then.get()) + " instead of "
                        + formats.date(now.get()) + ", "
                        + later(ChronoUnit.DAYS.between(now.get(), then.get())) + ".");
            }
        }
        said.addAll(moved.subList(0, Math.min(MOST_STAGES, moved.size())));
        if (moved.isEmpty()) {
            said.add("No landing moves by a day.");
        } else if (moved.size() > MOST_STAGES) {
            said.add(Formats.count(moved.size() - MOST_STAGES, "more stage") + " with it.");
        }
        compared.now().episodes().stream()
                .filter(episode ->
                        episode.slot().isPresent() && episode.onTime().isPresent())
                .min(Comparator.comparing(episode -> episode.slot().get()))
                .ifPresent(episode -> said.add(slot(episode, compared, formats)));
        return said;
    }

    private static String later(long days) {
        return Formats.count(Math.abs(days), "day") + (days > 0 ? " later" : " earlier");
    }

    private static String slot(Forecast.Episode episode, PairedFutures.Compared compared, Formats formats) {
        String now = Chances.words(episode.onTime().get());
        String then = compared.then()
                .episode(episode.id())
                .flatMap(Forecast.Episode::onTime)
                .map(Chances::words)
                .orElse(now);
        return "\"" + compared.names().episode(episode.id()) + "\" ready for "
                + formats.date(episode.slot().get()) + ": " + then
                + (then.equals(now) ? ", as before." : ", before it was " + now + ".");
    }

    /** Takes the task that stands in the form out of work until the Monday after its day. */
    static Stored<Task> notThisWeek(Write write, Request request, LocalDate day, Id task) throws Exception {
        Stored<Task> stored = TaskStore.TABLE.find(write, task).orElseThrow();
        return LayAside.lay(write, Shown.of(stored), Optional.of(until(day)), request.today());
    }

    static LocalDate until(LocalDate day) {
        return Weeks.monday(day).plusWeeks(1);
    }

    /** The task that is chosen; a fault where none is. */
    static Optional<Id> task(Request request, FormReader form) {
        Optional<Id> task = form.read("task", Id.class);
        if (form.text("task").isEmpty()) {
            form.fault("task", "", "is missing", "choose the task that is not for this week");
        } else if (task.isPresent()
                && request.read(read -> TaskStore.TABLE.find(read, task.get())).isEmpty()) {
            form.fault("task", form.text("task"), "is no task of this project", "choose one of the list");
        }
        return task;
    }
}
