package weekwright.build;

import static weekwright.base.RowRules.needed;
import static weekwright.base.RowRules.notBefore;
import static weekwright.base.RowRules.oneDecimal;
import static weekwright.base.RowRules.percent;
import static weekwright.base.RowRules.rising;

import java.util.Collection;
import java.util.Optional;
import weekwright.base.Codec;
import weekwright.base.Hours;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Quantity;
import weekwright.base.Reading;
import weekwright.base.Refused;
import weekwright.base.Shape;
import weekwright.base.Words;

/** What must hold within one task, whether it comes from a form or a file. */
public final class TaskRules {
    private static final Shape<Task> SHAPE = Shape.of(Task.class);

    private TaskRules() {}

    public static void check(Task task, Problems problems) {
        needed("title", task.title(), "write what is done, such as Raise the wheel shaft", problems);
        estimate(task, problems);
        if (task.isWork()) {
            leastHands(task, problems);
        } else {
            waitColumns(task, problems);
        }
        company(task, task.hazards().list(), problems);
        seasonAndDays(task, problems);
        HazardCodes.check("hazards", task.hazards(), problems);
        EquipmentNeeds.read(task.equipment(), problems);
        rising("rebook_", task.rebookLow(), task.rebookLikely(), task.rebookHigh(), problems);
        oneDecimal("story_minutes", task.storyMinutes(), problems);
        percent("learning", task.learning(), problems);
        percent("without", task.without(), problems);
        percent("camera_extra", task.cameraExtra(), problems);
        percent("fail", task.fail(), problems);
        percent("redo", task.redo(), problems);
        if (task.redoOf().filter(of -> of.same(task.id())).isPresent()) {
            problems.fault("redo_of", task.redoOf().get().value(), "is the task itself", "name the task done again");
        }
    }

    /** Rule 21: rising; no likely hours is "not estimated"; none at all is not work, a wait of no days is. */
    private static void estimate(Task task, Problems problems) {
        if (task.likely().isPresent()) {
            if (task.isWork() && task.likely().get().value().signum() == 0) {
                problems.fault("likely", "0", "is no work", "write the hours, or leave it empty if nobody knows yet");
                return;
            }
            rising("", task.low(), task.likely(), task.high(), problems);
        } else if (!task.isWork()) {
            problems.fault("likely", "", "is missing", "write the days that the wait takes");
        } else if (task.low().isPresent() || task.high().isPresent()) {
            problems.remark(
                    "likely",
                    "",
                    "is missing, so low and high are not used",
                    "write the likely hours to have them count");
        }
    }

    private static void leastHands(Task task, Problems problems) {
        if (task.leastHandsOrDefault() > task.handsOrDefault()) {
            problems.fault(
                    "least_hands",
                    String.valueOf(task.leastHandsOrDefault()),
                    "is over the " + task.handsOrDefault() + " of hands",
                    "write " + task.handsOrDefault() + " or less");
        }
    }

    /** Rule 33: a wait takes calendar days, nobody's hours, no camera; what only says the default is no matter. */
    private static void waitColumns(Task task, Problems problems) {
        ofNoWait("hands", task.hands(), 1, problems);
        ofNoWait("least_hands", task.leastHands(), 1, problems);
        ofNoWait("pieces", task.pieces(), 1, problems);
        ofNoWait("learning", task.learning(), Quantity.of(100), problems);
        ofNoWait("trades", Optional.of(task.trades()), Words.NONE, problems);
        ofNoWait("outdoors", Optional.of(task.outdoors() ? "yes" : ""), "", problems);
        ofNoWait("camera", task.camera().map(Codec::word), "none", problems);
        ofNoWait("camera_extra", task.cameraExtra(), Quantity.ZERO, problems);
        if (task.left().isPresent()) {
            problems.remark("left", task.left().get().text(), "is not used by a wait", "change its days instead");
        }
    }

    private static <T> void ofNoWait(String column, Optional<T> value, T nothing, Problems problems) {
        value.filter(given -> !given.equals(nothing))
                .ifPresent(given -> problems.fault(
                        column,
                        given.toString(),
                        "belongs to work, and this is a wait",
                        "leave it empty, or make it work"));
    }

    /**
     * Less company than the hazards ask for needs its reason (rule 125).
     *
     * @param hazards those of the task, with those of its equipment where they are known
     */
    public static void company(Task task, Collection<String> hazards, Problems problems) {
        Task.Company asked = HazardCodes.company(hazards);
        if (task.isWork()
                && task.company().filter(c -> c.compareTo(asked) < 0).isPresent()
                && task.companyReason().isBlank()) {
            problems.fault(
                    "company_reason",
                    "",
                    "is missing: " + Codec.word(task.company().get()) + " is less company than "
                            + Codec.word(asked) + ", which " + String.join(" ", hazards)
                            + " asks for",
                    "write why less is enough, or set company to " + Codec.word(asked));
        }
    }

    private static void seasonAndDays(Task task, Problems problems) {
        if (task.seasonFrom().isPresent() != task.seasonTo().isPresent()) {
            problems.fault(
                    task.seasonFrom().isPresent() ? "season_to" : "season_from",
                    "",
                    "is missing beside the other end of the season",
                    "write both, or neither");
        }
        notBefore("done", task.done(), "started", task.started(), problems);
        if (task.done().isPresent() && task.dropped().isPresent()) {
            problems.fault(
                    "dropped",
                    task.dropped().get().toString(),
                    "is given for a task done on " + task.done().get(),
                    "leave one of the two empty");
        }
        if (task.done().isPresent()
                && task.left().filter(left -> left.minutes() > 0).isPresent()) {
            problems.fault(
                    "left",
                    task.left().get().text(),
                    "hours are left of a task done on " + task.done().get(),
                    "leave left empty, or leave done empty");
        }
        if (task.booked().isPresent()
                && task.notBefore()
                        .filter(day -> day.isAfter(task.booked().get()))
                        .isPresent()) {
            problems.remark(
                    "booked",
                    task.booked().get().toString(),
                    "is before not_before " + task.notBefore().get() + ", so the turn will be missed",
                    "change one of the two");
        }
    }

    /**
     * The task with its hours on whole minutes, as files write them (rule 101): 0.34 becomes 0.33, which is 20 minutes,
     * with a remark; more than two decimal places are a fault. A wait's days stay as they are.
     */
    public static Task onWholeMinutes(Task task, Problems problems) {
        if (!task.isWork()) {
            return task;
        }
        Task low = onWholeMinutes(task, "low", task.low(), problems);
        Task likely = onWholeMinutes(low, "likely", task.likely(), problems);
        return onWholeMinutes(likely, "high", task.high(), problems);
    }

    private static Task onWholeMinutes(Task task, String column, Optional<Quantity> hours, Problems problems) {
        if (hours.isEmpty()) {
            return task;
        }
        Quantity given = hours.get();
        if (given.value().scale() > 2) {
            problems.fault(column, given.text(), "has more than two decimal places", "write at most two");
            return task;
        }
        try {
            Hours minutes = Hours.ofDecimal(given.value());
            Quantity whole = Quantity.parse(minutes.text(), Reading.file(0));
            if (whole.equals(given)) {
                return task;
            }
            problems.remark(
                    column, given.text(), "is read as " + minutes.minutes() + " minutes", "write " + minutes.text());
            return SHAPE.with(task, column, Optional.of(whole));
        } catch (Refused refused) {
            problems.add(Problem.fault(column, given.text(), refused));
            return task;
        }
    }
}
