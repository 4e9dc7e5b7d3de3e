package weekwright.build;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import weekwright.base.Id;
import weekwright.base.Problems;
import weekwright.base.Quantity;
import weekwright.base.Rejected;
import weekwright.base.Shape;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/**
 * Makes two tasks of one that is open. The first keeps its id and what it waited for; the second waits for the first, and what
 * waited for the whole waits for the second, or for the part that its share lies in. Hours go where they are put. Hours said
 * to be left are forgotten: they were said of the whole.
 */
public final class SplitTask {
    private static final Shape<Task> SHAPE = Shape.of(Task.class);
    private static final BigDecimal HALF = new BigDecimal("0.5");

    private SplitTask() {}

    /**
     * How it is split.
     *
     * @param first and
     * @param second titles of the parts
     * @param rest hours, days or pieces of the second part; empty where the whole has no estimate
     * @param hours rows of the hours entries that go with the second part
     */
    public record Parts(String first, String second, Optional<Quantity> rest, Set<Long> hours) {}

    /** @return the second part */
    public static Stored<Task> split(Write write, Shown shown, Parts parts) throws Rejected, Stale {
        Task whole = TaskChange.shown(write, shown);
        Problems problems = new Problems();
        TaskChange.mustBeOpen(whole, problems);
        check(whole, parts, problems);
        Faults.refuse(problems);
        BigDecimal share = share(whole, parts);
        BigDecimal keeps = BigDecimal.ONE.subtract(share);
        Task first = clear(SHAPE.with(part(whole, keeps, parts, false), "title", parts.first()), "left", "left_on");
        Task second = SHAPE.with(part(whole, share, parts, true), "title", parts.second());
        second = clear(second, "left", "left_on", "not_before", "booked", "redo_of", "started", "aside_until");
        second = SHAPE.with(second, "id", TaskStore.nextId(write, whole.stage()));
        TaskRules.check(first, problems);
        TaskRules.check(second, problems);
        Faults.refuse(problems);
        TaskStore.TABLE.update(write, shown.row(), shown.version(), first);
        Stored<Task> kept = TaskStore.TABLE.insert(write, second);
        successors(write, whole.id(), second.id(), share);
        LinkStore.TABLE.insert(
                write,
                new Link(
                        second.id(),
                        first.id(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()));
        hours(write, whole, second.id(), parts.hours());
        return TaskStore.TABLE.find(write, kept.row()).orElseThrow();
    }

    private static void check(Task whole, Parts parts, Problems problems) {
        if (parts.first().equalsIgnoreCase(parts.second())) {
            problems.fault("second", parts.second(), "is the title of both parts", "give them different titles");
        }
        Optional<Quantity> all = amount(whole);
        if (all.isEmpty()) {
            parts.rest()
                    .ifPresent(rest -> problems.fault(
                            "rest", rest.text(), "cannot be taken from a task without an estimate", "leave it empty"));
            return;
        }
        boolean fits = parts.rest()
                .map(rest -> rest.compareTo(Quantity.ZERO) > 0 && rest.compareTo(all.get()) < 0)
                .orElse(false);
        if (!fits) {
            problems.fault(
                    "rest",
                    parts.rest().map(Quantity::text).orElse(""),
                    parts.rest().isEmpty() ? "is missing" : "leaves one of the parts nothing",
                    "write more than 0 and less than " + all.get().text());
        } else if (whole.pieces().isPresent() && parts.rest().get().value().scale() > 0) {
            problems.fault("rest", parts.rest().get().text(), "is no number of pieces", "write a whole number");
        }
    }

    /** What is divided: pieces where there are some, else the likely hours or days. */
    private static Optional<Quantity> amount(Task whole) {
        return whole.pieces().isPresent() ? whole.pieces().map(n -> Quantity.of(n)) : whole.likely();
    }

    private static BigDecimal share(Task whole, Parts parts) {
        Optional<Quantity> all = amount(whole);
        return all.isEmpty()
                ? HALF
                : parts.rest().orElseThrow().value().divide(all.get().value(), 8, RoundingMode.HALF_UP);
    }

    private static Task part(Task whole, BigDecimal share, Parts parts, boolean second) {
        Task part = whole;
        if (whole.pieces().isPresent()) {
            int rest = parts.rest().orElseThrow().value().intValueExact();
            part = SHAPE.with(part, "pieces", Optional.of(second ? rest : whole.piecesOrDefault() - rest));
        } else {
            for (String column : List.of("low", "likely", "high")) {
                part = scaled(part, column, share, 2);
            }
        }
        return scaled(part, "story_minutes", share, 1);
    }

    private static Task scaled(Task task, String column, BigDecimal share, int places) {
        Optional<Object> value = SHAPE.field(column).orElseThrow().value(task);
        return value.map(v -> SHAPE.with(
                        task,
                        column,
                        Optional.of(new Quantity(
                                ((Quantity) v).value().multiply(share).setScale(places, RoundingMode.HALF_UP)))))
                .orElse(task);
    }

    private static Task clear(Task task, String... columns) {
        Task cleared = task;
        for (String column : columns) {
            cleared = SHAPE.with(cleared, column, Optional.empty());
        }
        return cleared;
    }

    private static void successors(Write write, Id first, Id second, BigDecimal share) throws Stale {
        BigDecimal keeps = BigDecimal.ONE.subtract(share);
        for (Stored<Link> stored : LinkStore.after(write, first)) {
            Link link = stored.value();
            BigDecimal asked = link.share().map(Quantity::value).orElse(BigDecimal.ONE);
            boolean early = asked.compareTo(keeps) <= 0;
            Optional<Quantity> own = link.share().isEmpty()
                    ? Optional.empty()
                    : early ? Optional.of(quotient(asked, keeps)) : Optional.of(quotient(asked.subtract(keeps), share));
            LinkStore.TABLE.update(
                    write,
                    stored.row(),
                    stored.version(),
                    new Link(
                            link.task(),
                            early ? first : second,
                            own,
                            link.waitLow(),
                            link.waitLikely(),
                            link.waitHigh()));
        }
    }

    private static Quantity quotient(BigDecimal part, BigDecimal of) {
        return new Quantity(part.divide(of, 4, RoundingMode.HALF_UP).min(BigDecimal.ONE));
    }

    private static void hours(Write write, Task whole, Id second, Set<Long> rows) throws Stale {
        List<Stored<HoursEntry>> all = HoursEntryStore.ofTask(write, whole.id());
        for (Stored<HoursEntry> entry : all) {
            if (rows.contains(entry.row())) {
                HoursEntryStore.TABLE.update(
                        write,
                        entry.row(),
                        entry.version(),
                        HoursEntryStore.TABLE.shape().with(entry.value(), "task", Optional.of(second)));
                LoggedHours.followStart(
                        write, Optional.of(second), entry.value().date());
            }
        }
        for (Stored<HoursEntry> entry : all) {
            if (rows.contains(entry.row())) {
                LocalDate day = entry.value().date();
                LoggedHours.followStart(write, Optional.of(whole.id()), day);
            }
        }
    }
}
