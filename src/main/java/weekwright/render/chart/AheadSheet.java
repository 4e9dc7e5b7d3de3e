package weekwright.render.chart;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import weekwright.render.Formats;
import weekwright.render.chart.AheadPicture.Model;
import weekwright.render.chart.AheadPicture.Range;
import weekwright.render.chart.AheadPicture.Stage;

/** The stretch of days that a picture shows, and which of the stages find room on it. */
record AheadSheet(LocalDate first, int days, List<Integer> shown, Model model) {
    /** A day that never comes: far enough beyond every sheet to be cut off by its edge. */
    private static final int NEVER = 20_000;

    private static final int MOST_WIDE = 5;
    private static final int MOST_UPRIGHT = 3;
    /** On a picture of more weeks than usual. */
    private static final int MOST_FAR = 9;

    private static final int FAR_DAYS = 26 * 7;

    static AheadSheet wide(Model model, AheadPane pane) {
        return pane.sheet(model, 4, 24, pane.weeks() > AheadPane.USUAL ? MOST_FAR : MOST_WIDE);
    }

    static AheadSheet medium(Model model, AheadPane pane) {
        return pane.sheet(model, 2, 14, pane.weeks() > AheadPane.USUAL ? MOST_FAR : MOST_WIDE);
    }

    static AheadSheet upright(Model model, AheadPane pane) {
        return pane.sheet(model, 1, 16, MOST_UPRIGHT);
    }

    static AheadSheet of(Model model, LocalDate first, int weeks, int most) {
        AheadSheet all = new AheadSheet(first, weeks * 7, List.of(), model);
        List<Integer> onSheet = IntStream.range(0, model.stages().size())
                .filter(i -> all.from(model.stages().get(i)) < all.days
                        && all.to(model.stages().get(i)) > 0)
                .boxed()
                .toList();
        List<Integer> kept = onSheet.stream()
                .sorted(Comparator.comparingInt(
                                (Integer i) -> all.turn(model.stages().get(i)))
                        .thenComparingDouble(i -> all.from(model.stages().get(i)))
                        .thenComparingInt(i -> i))
                .limit(most)
                .sorted()
                .toList();
        return new AheadSheet(first, all.days, kept, model);
    }

    /** Those in hand come first, then those to come, then those done. */
    private int turn(Stage stage) {
        return stage.done().isPresent() ? 2 : stage.inHand() ? 0 : 1;
    }

    LocalDate last() {
        return first.plusDays(days);
    }

    /** Days since the sheet's first day; negative before it. */
    double day(LocalDate date) {
        return ChronoUnit.DAYS.between(first, date);
    }

    double day(Optional<LocalDate> date) {
        return date.map(this::day).orElse((double) NEVER);
    }

    double today() {
        return day(model.today());
    }

    /** Whether so many weeks are shown that letters have to give way. */
    boolean isFar() {
        return days > FAR_DAYS;
    }

    boolean holdsToday() {
        return today() >= 0 && today() < days;
    }

    /** The day on which the stage's timber begins: its first hours, or the earliest start. */
    double from(Stage stage) {
        return stage.began()
                .map(this::day)
                .orElseGet(() -> stage.start()
                        .map(s -> day(s.p10()))
                        .orElseGet(() -> stage.done().map(this::day).orElse((double) NEVER)));
    }

    /** The day on which its timber ends: the day it was done, or the latest landing. */
    double to(Stage stage) {
        return stage.done()
                .map(this::day)
                .orElseGet(() -> stage.landing().map(Range::p90).map(this::day).orElse((double) NEVER));
    }

    List<LocalDate> weekdays(DayOfWeek weekday) {
        List<LocalDate> list = new ArrayList<>();
        for (LocalDate day = first.with(TemporalAdjusters.nextOrSame(weekday));
                day.isBefore(last());
                day = day.plusWeeks(1)) {
            list.add(day);
        }
        return list;
    }

    List<LocalDate> monthStarts() {
        List<LocalDate> list = new ArrayList<>();
        for (LocalDate day = first.withDayOfMonth(1).plusMonths(1); day.isBefore(last()); day = day.plusMonths(1)) {
            list.add(day);
        }
        return list;
    }

    /** {@code Off this sheet: wheel pit masonry, done 21 August; gearing about June 2027; stones and roof later.} */
    String offSheet(Formats formats) {
        List<String> parts = new ArrayList<>();
        List<String> later = new ArrayList<>();
        List<String> nothing = new ArrayList<>();
        long done = IntStream.range(0, model.stages().size())
                .filter(i -> !shown.contains(i) && model.stages().get(i).done().isPresent())
                .count();
        if (done > 1) {
            parts.add(Formats.count(done, "stage") + " done");
        }
        for (int i = 0; i < model.stages().size(); i++) {
            Stage stage = model.stages().get(i);
            if (shown.contains(i) || done > 1 && stage.done().isPresent()) {
                continue;
            }
            Optional<LocalDate> even = stage.landing().flatMap(Range::p50);
            if (stage.done().isPresent()) {
                parts.add(
                        stage.name() + ", done " + formats.dateLong(stage.done().get()));
            } else if (even.isPresent()) {
                parts.add(stage.name() + " about " + formats.far(even.get()));
            } else if (stage.landing().isPresent()) {
                later.add(stage.name());
            } else {
                nothing.add(stage.name());
            }
        }
        if (!later.isEmpty()) {
            parts.add(Formats.list(later) + " later than the forecast reaches");
        }
        if (!nothing.isEmpty()) {
            parts.add(Formats.list(nothing) + " without a date, as nothing to do is known of "
                    + (nothing.size() == 1 ? "it" : "them"));
        }
        return parts.isEmpty() ? "" : "Off this sheet: " + String.join("; ", parts);
    }
}
