package weekwright.web.build;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import weekwright.build.Said;
import weekwright.build.Task;
import weekwright.build.TaskFigures;
import weekwright.db.Read;
import weekwright.engine.EarnedSchedule;
import weekwright.engine.EarnedValue;
import weekwright.forecast.Forecast;
import weekwright.forecast.SavedForecast;
import weekwright.forecast.SavedForecastStore;
import weekwright.render.Formats;

/**
 * Earned value and earned schedule of a stage in hours, for those who know them. The plan is the first forecast that was kept: a
 * task was to be done on its even-chances day; its size is its estimate. Tasks added since are told and not counted.
 */
public final class StageEarned {
    private static final int LEAST_DAYS = 7;

    private StageEarned() {}

    /** @param note what is compared, or why nothing can be */
    public record Table(String note, List<Row> rows) {}

    /** A figure; {@code what} in words, {@code code} as the trade has it. */
    public record Row(String what, String code, String figure) {}

    /** @param tasks of the stage, without those dropped */
    static Table of(Read read, List<Task> tasks, Map<String, TaskFigures> figures, LocalDate today, int moneyDigits) {
        Optional<SavedForecast> first = SavedForecastStore.oldest(read);
        if (first.isEmpty() || first.get().day().isAfter(today.minusDays(LEAST_DAYS))) {
            return new Table(
                    "These compare with the first forecast that was kept, once that is a week old.", List.of());
        }
        Forecast plan = first.get().forecast(moneyDigits);
        List<Planned> planned = new ArrayList<>();
        int since = 0;
        for (Task task : tasks) {
            Optional<Forecast.Task> then = plan.task(task.id().value());
            if (task.isWork() && then.isPresent()) {
                planned.add(new Planned(
                        figures.get(task.id().value()),
                        task.done().isPresent(),
                        then.get().start().p50(),
                        then.get().landing().p50()));
            } else if (task.isWork()) {
                since++;
            }
        }
        String note = "Against the forecast of " + Said.day(first.get().day())
                + ", the first that was kept, in hours of the hands."
                + (since == 0
                        ? ""
                        : " " + Formats.sentence(Formats.counted(since, "task was", "tasks were")) + " added since and "
                                + (since == 1 ? "is" : "are") + " not counted.");
        return planned.isEmpty()
                ? new Table("The first forecast that was kept knows no task of this stage.", List.of())
                : new Table(note, rows(planned, today));
    }

    /** A task as the plan had it. */
    private record Planned(TaskFigures hours, boolean done, Optional<LocalDate> start, Optional<LocalDate> landing) {
        double earned() {
            int all = hours.logged() + hours.left();
            return done ? hours.estimate() : all == 0 ? 0 : (double) hours.estimate() * hours.logged() / all;
        }

        boolean by(LocalDate day) {
            return landing.map(date -> !date.isAfter(day)).orElse(false);
        }
    }

    private static List<Row> rows(List<Planned> planned, LocalDate today) {
        EarnedValue value = new EarnedValue(
                planned.stream().mapToDouble(one -> one.hours().estimate()).sum(),
                sum(planned, today),
                planned.stream().mapToDouble(Planned::earned).sum(),
                planned.stream().mapToDouble(one -> one.hours().logged()).sum());
        List<Row> rows = new ArrayList<>(List.of(
                new Row("Budget", "BAC", hours(value.budget())),
                new Row("Planned by today", "PV", hours(value.planned())),
                new Row("Earned", "EV", hours(value.earned())),
                new Row("What it took", "AC", hours(value.actual())),
                new Row("Cost variance", "CV", hours(value.costVariance())),
                new Row("Schedule variance", "SV", hours(value.scheduleVariance()))));
        index("Cost index", "CPI", value.costIndex(), rows);
        index("Schedule index", "SPI", value.scheduleIndex(), rows);
        value.atCompletion().ifPresent(all -> rows.add(new Row("At completion, as it goes", "EAC", hours(all))));
        schedule(planned, value.earned(), today).ifPresent(schedule -> {
            rows.add(new Row("Earned schedule", "ES", weeks(schedule.earned())));
            rows.add(new Row("Time gone", "AT", weeks(schedule.actual())));
            rows.add(new Row("Schedule variance in time", "SV(t)", weeks(schedule.variance())));
            index("Schedule index in time", "SPI(t)", schedule.index(), rows);
            schedule.duration()
                    .ifPresent(all -> rows.add(new Row(
                            "Duration, as it goes",
                            "PD/SPI(t)",
                            weeks(all) + ", planned " + weeks(schedule.planned()))));
        });
        return rows;
    }

    private static double sum(List<Planned> planned, LocalDate day) {
        return planned.stream()
                .filter(one -> one.by(day))
                .mapToDouble(one -> one.hours().estimate())
                .sum();
    }

    /** By weeks from the planned start; empty where the plan has no days for all of it, or it was not to begin yet. */
    private static Optional<EarnedSchedule> schedule(List<Planned> planned, double earned, LocalDate today) {
        Optional<LocalDate> start =
                planned.stream().flatMap(one -> one.start().stream()).min(LocalDate::compareTo);
        boolean whole = planned.stream().allMatch(one -> one.landing().isPresent());
        if (start.isEmpty() || !whole || !start.get().isBefore(today)) {
            return Optional.empty();
        }
        LocalDate end = planned.stream()
                .map(one -> one.landing().orElseThrow())
                .max(LocalDate::compareTo)
                .orElseThrow();
        List<Double> plan = new ArrayList<>();
        LocalDate week = start.get();
        do {
            week = week.plusWeeks(1);
            plan.add(sum(planned, week));
        } while (week.isBefore(end));
        double gone = ChronoUnit.DAYS.between(start.get(), today) / 7.0;
        return Optional.of(
                EarnedSchedule.of(plan.stream().mapToDouble(Double::doubleValue).toArray(), earned, gone));
    }

    private static void index(String what, String code, OptionalDouble index, List<Row> rows) {
        index.ifPresent(value -> rows.add(new Row(what, code, String.format(Locale.ROOT, "%.2f", value))));
    }

    private static String hours(double minutes) {
        long whole = Math.round(Math.abs(minutes) / 15) * 15;
        return (minutes < 0 && whole > 0 ? Formats.MINUS : "") + Formats.hoursLong(whole);
    }

    private static String weeks(double weeks) {
        String text = String.format(Locale.ROOT, "%.1f", Math.abs(weeks));
        return (weeks < 0 && !text.equals("0.0") ? Formats.MINUS : "") + text + Formats.NBSP + "weeks";
    }
}
