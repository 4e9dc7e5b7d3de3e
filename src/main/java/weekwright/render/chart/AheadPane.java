package weekwright.render.chart;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.Optional;

/**
 * How the picture of Ahead is looked at: which weeks, what stood there before, and where its things lead.
 *
 * @param first the first day of the wide drawing, a Monday; empty for the weeks around today
 * @param weeks of the wide drawing, one of {@link #SPANS}; narrower drawings show fewer
 * @param before landings as they were said before, by the index of the stage; may be empty
 * @param stages where each stage leads, by index; empty where nothing is to be touched
 * @param slots where the publication days lead, in the model's order; empty likewise
 * @param purchases where the purchases lead, by index; empty likewise
 */
public record AheadPane(
        Optional<LocalDate> first,
        int weeks,
        List<Optional<AheadPicture.Range>> before,
        List<String> stages,
        List<String> slots,
        List<String> purchases) {
    /** Weeks that the wide drawing can show, from close to far. */
    public static final List<Integer> SPANS = List.of(8, 16, 24, 52, 104, 156);

    public static final int USUAL = 24;
    private static final int WEEKS_BACK = 4;

    /** The weeks around today, nothing to touch. */
    public static final AheadPane PLAIN =
            new AheadPane(Optional.empty(), USUAL, List.of(), List.of(), List.of(), List.of());

    public AheadPane {
        before = List.copyOf(before);
        stages = List.copyOf(stages);
        slots = List.copyOf(slots);
        purchases = List.copyOf(purchases);
    }

    /** The same with things that lead somewhere. */
    public AheadPane leading(List<String> stages, List<String> slots, List<String> purchases) {
        return new AheadPane(first, weeks, before, stages, slots, purchases);
    }

    /** Whether the weeks were chosen by somebody. */
    public boolean chosen() {
        return first.isPresent() || weeks != USUAL;
    }

    /** The first day of the wide drawing. */
    public LocalDate from(LocalDate today) {
        return first.orElse(monday(today).minusWeeks(WEEKS_BACK));
    }

    /** The first day after the wide drawing. */
    public LocalDate until(LocalDate today) {
        return from(today).plusWeeks(weeks);
    }

    /** The part of these weeks that a drawing for so many of the usual weeks shows; around today its own weeks back. */
    AheadSheet sheet(AheadPicture.Model model, int weeksBack, int of, int most) {
        LocalDate from = first.orElse(monday(model.today()).minusWeeks(weeksBack));
        int shown = Math.max(4, (int) Math.round((double) weeks * of / USUAL));
        return AheadSheet.of(model, from, shown, most);
    }

    Optional<AheadPicture.Range> before(int stage) {
        return stage < before.size() ? before.get(stage) : Optional.empty();
    }

    /** Whole weeks from the first day to that one; 0 where it lies before. */
    public int weeksTo(LocalDate today, LocalDate day) {
        return (int) Math.max(0, ChronoUnit.WEEKS.between(from(today), day) + 1);
    }

    public static LocalDate monday(LocalDate day) {
        return day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    }
}
