package weekwright.web.build;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import weekwright.base.Quantity;
import weekwright.build.LayAside;
import weekwright.build.Link;
import weekwright.build.Task;
import weekwright.build.TaskFigures;
import weekwright.episodes.Footage;
import weekwright.render.Formats;
import weekwright.render.Frame;

/** The facts of a task in words; what stands at its default is not told. */
final class TaskFacts {
    private TaskFacts() {}

    static String state(Task task, LocalDate today, Formats formats) {
        if (task.done().isPresent()) {
            return "done on " + formats.dateLong(task.done().get());
        }
        if (task.dropped().isPresent()) {
            return "dropped on " + formats.dateLong(task.dropped().get());
        }
        if (LayAside.isAside(task, today)) {
            return LayAside.until(task, today)
                    .map(day -> "laid aside until " + formats.date(day))
                    .orElse("laid aside until it is taken up");
        }
        return task.started().map(day -> "under way since " + formats.date(day)).orElse("not begun");
    }

    static List<Frame.Cell> of(Task task, TaskFigures hours, Footage footage, List<String> equipment, Formats formats) {
        List<Frame.Cell> facts = new ArrayList<>();
        if (task.isWork()) {
            add(facts, "Estimate", estimate(task, hours));
            add(facts, "Logged", hours.logged() == 0 ? "nothing yet" : Formats.hoursLong(hours.logged()));
            if (hours.filming() > 0) {
                add(facts, "Filming", Formats.hoursLong(hours.filming()));
            }
            if (task.isOpen()) {
                add(
                        facts,
                        task.left().isPresent() ? "Left, as said" : "Left by the estimate",
                        hours.estimate() == 0 && task.left().isEmpty() ? "" : Formats.hoursLong(hours.left()));
            }
            if (task.pieces().isPresent()) {
                add(facts, "Pieces", hours.pieces() + " of " + task.piecesOrDefault());
            }
            add(
                    facts,
                    "Hands",
                    task.handsOrDefault() == 1
                            ? ""
                            : task.handsOrDefault()
                                    + (task.leastHandsOrDefault() < task.handsOrDefault()
                                            ? ", at least " + task.leastHandsOrDefault()
                                            : ""));
            add(facts, "Trades", Formats.list(task.trades().list()));
        } else {
            add(facts, "Waits", days(task));
        }
        add(facts, "Equipment", Formats.list(equipment));
        add(facts, "Where", task.outdoors() ? "outdoors" : "");
        if (task.seasonFrom().isPresent() || task.seasonTo().isPresent()) {
            add(
                    facts,
                    "Season",
                    task.seasonFrom().map(Formats::dayMonthLong).orElse("…") + " to "
                            + task.seasonTo().map(Formats::dayMonthLong).orElse("…")
                            + (task.isOpen() ? season(task, formats) : ""));
        }
        task.notBefore().ifPresent(day -> add(facts, "Not before", formats.dateLong(day) + coming(day, task, formats)));
        task.booked().ifPresent(day -> add(facts, "Booked", formats.dateLong(day) + coming(day, task, formats)));
        add(facts, "In one go", task.oneGo() ? "yes" : "");
        add(
                facts,
                "Camera",
                switch (task.cameraOrDefault()) {
                    case NONE -> "";
                    case FIXED -> "left running";
                    case OPERATOR -> "somebody films";
                    case ONCE -> "once only, somebody films";
                });
        task.storyMinutes()
                .ifPresent(minutes -> add(facts, "Story", story(minutes, footage.ofTask(task.id()), footage)));
        add(facts, "Why less company", task.companyReason());
        return facts;
    }

    /** "6 minutes, of about 71 of footage; filmed so far: 40". */
    private static String story(Quantity minutes, BigDecimal filmed, Footage footage) {
        String usual = footage.usual(minutes)
                .map(all -> ", of about " + all.toPlainString() + " of footage")
                .orElse("");
        String done = filmed.signum() == 0
                ? ""
                : "; filmed so far: " + filmed.stripTrailingZeros().toPlainString();
        return minutes.text() + (minutes.equals(Quantity.ONE) ? " minute" : " minutes") + usual + done;
    }

    private static void add(List<Frame.Cell> facts, String label, String text) {
        if (!text.isEmpty()) {
            facts.add(new Frame.Cell(label, text));
        }
    }

    private static String estimate(Task task, TaskFigures hours) {
        if (task.likely().isEmpty()) {
            return "none: it is guessed from finished tasks";
        }
        return task.pieces().isPresent()
                ? Formats.hoursLong(hours.estimate()) + " for " + Formats.count(task.piecesOrDefault(), "piece")
                : Formats.hoursLong(minutes(task.likely().get())) + sides(task, q -> Formats.hours(minutes(q)));
    }

    private static String days(Task task) {
        return task.likely()
                .map(days -> days.text() + (days.equals(Quantity.ONE) ? " day" : " days") + sides(task, Quantity::text))
                .orElse("");
    }

    private static String sides(Task task, Function<Quantity, String> said) {
        return task.low().isPresent() && task.high().isPresent()
                ? " (" + said.apply(task.low().get()) + " to "
                        + said.apply(task.high().get()) + ")"
                : "";
    }

    private static long minutes(Quantity hours) {
        return hours.value()
                .multiply(BigDecimal.valueOf(60))
                .setScale(0, RoundingMode.HALF_UP)
                .longValue();
    }

    private static String coming(LocalDate day, Task task, Formats formats) {
        return task.isOpen() && day.isAfter(formats.today()) ? formats.comingOrGone(day) : "";
    }

    /** {@code ; it closes in 3 weeks}, {@code ; it opens in 9 days}: told up to eight weeks before. */
    private static String season(Task task, Formats formats) {
        if (task.seasonFrom().isEmpty() || task.seasonTo().isEmpty()) {
            return "";
        }
        LocalDate today = formats.today();
        LocalDate opens = next(task.seasonFrom().get(), today);
        LocalDate closes = next(task.seasonTo().get(), today);
        boolean open = closes.isBefore(opens) || opens.equals(today);
        String away = formats.away(open ? closes : opens);
        return away.isEmpty() ? "" : (open ? "; it closes " : "; it opens ") + away;
    }

    /** The next such day, today among them. */
    private static LocalDate next(MonthDay day, LocalDate today) {
        LocalDate here = day.atYear(today.getYear());
        return here.isBefore(today) ? day.atYear(today.getYear() + 1) : here;
    }

    /** What a link asks for beside the order: "once half is done", "then 7 days". */
    static String link(Link link) {
        String share = link.share()
                .filter(s -> s.compareTo(Quantity.ONE) < 0)
                .map(s -> s.compareTo(Quantity.ZERO) == 0
                        ? "once it has begun"
                        : "once "
                                + s.value()
                                        .movePointRight(2)
                                        .stripTrailingZeros()
                                        .toPlainString() + Formats.NBSP + "% is done")
                .orElse("");
        String wait = link.waitLikely()
                .filter(w -> w.compareTo(Quantity.ZERO) > 0)
                .map(w -> "then " + w.text() + (w.equals(Quantity.ONE) ? " day" : " days")
                        + (link.waitLow().isPresent() && link.waitHigh().isPresent()
                                ? ", " + link.waitLow().get().text() + " to "
                                        + link.waitHigh().get().text()
                                : ""))
                .orElse("");
        return share + (share.isEmpty() || wait.isEmpty() ? "" : ", ") + wait;
    }
}
