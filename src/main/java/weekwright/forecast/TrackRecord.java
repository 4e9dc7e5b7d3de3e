package weekwright.forecast;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import weekwright.engine.Score;

/**
 * Past forecasts against what happened.
 *
 * @param today up to which things have happened
 * @param fridays oldest first
 * @param estimatesFrom day from which on the change log knows estimates; empty from plain files, where they stand as they do now
 */
public record TrackRecord(LocalDate today, List<Friday> fridays, Optional<LocalDate> estimatesFrom) {
    /** Share of landings that the range from P10 to P90 is to hold. */
    public static final double SHARE = 0.8;

    /** Fewer stages than these say nothing of ranges: of three right ones one may well miss. */
    private static final int ENOUGH_STAGES = 4;

    private static final double[] QUANTILES = {0.1, 0.5, 0.9};

    /**
     * What was said on a day.
     *
     * @param saved whether it is made from the inputs of a forecast that was kept then
     */
    public record Friday(LocalDate date, boolean saved, List<Stage> stages) {}

    /**
     * What was said of a stage that was open then. Days beyond the horizon stand as the horizon.
     *
     * @param drawn landings of all futures as epoch days, smallest first
     * @param plan the plan's date (rule 54)
     * @param velocity remaining likely hours at the rate of the eight weeks before (rule 97)
     * @param likely remaining likely hours at the crew's stated hours (rule 97)
     * @param landed when all its tasks were done; empty while it is open
     */
    public record Stage(
            String id,
            String name,
            double[] drawn,
            LocalDate p10,
            LocalDate p50,
            LocalDate p90,
            LocalDate plan,
            LocalDate velocity,
            LocalDate likely,
            Optional<LocalDate> landed) {}

    /** Mean losses in days of the forecast and its three rivals. */
    public record Losses(double model, double plan, double velocity, double likely) {}

    /** How the landing of a stage lay to its range. */
    public enum Fell {
        EARLIER,
        WITHIN,
        LATER,
        OPEN
    }

    /** As known today: a stage still open after the last day of its range is later, whenever it lands. */
    public Fell fell(Stage stage) {
        LocalDate happened = stage.landed().orElse(today);
        if (happened.isAfter(stage.p90())) {
            return Fell.LATER;
        }
        if (stage.landed().isEmpty()) {
            return Fell.OPEN;
        }
        return happened.isBefore(stage.p10()) ? Fell.EARLIER : Fell.WITHIN;
    }

    /**
     * The ranges whose last day is past: each of them is decided, and which they are does not depend on how the work went, so that
     * neither early nor late landings are left out for being so.
     */
    public List<Stage> decided() {
        return all().stream().filter(stage -> stage.p90().isBefore(today)).toList();
    }

    /** All stages of all days. */
    public List<Stage> all() {
        return fridays.stream().flatMap(friday -> friday.stages().stream()).toList();
    }

    /** How many of the decided fell so. */
    public int count(Fell fell) {
        return (int) decided().stream().filter(stage -> fell(stage) == fell).count();
    }

    /** Different stages among the decided: forecasts of one stage a week apart are nearly one forecast. */
    public int stages() {
        return (int) decided().stream().map(Stage::id).distinct().count();
    }

    /** Share of the decided ranges that held. */
    public double coverage() {
        return decided().isEmpty() ? 0 : (double) count(Fell.WITHIN) / decided().size();
    }

    /** How many of that many ranges may hold, in 19 of 20 cases, were they right and each of its own. */
    public Score.Span expected() {
        return Score.expectedHits(decided().size(), SHARE);
    }

    /** Whether ranges were too narrow, too wide, or neither, judged by as many independent cases as there are stages. */
    public Verdict verdict() {
        int n = stages();
        if (n == 0) {
            return Verdict.NONE;
        }
        if (n < ENOUGH_STAGES) {
            return Verdict.TOO_FEW;
        }
        Score.Span span = Score.expectedHits(n, SHARE);
        int held = (int) Math.round(coverage() * n);
        return held < span.from() ? Verdict.TOO_NARROW : held > span.to() ? Verdict.TOO_WIDE : Verdict.FITTING;
    }

    /** What the coverage says of the ranges. */
    public enum Verdict {
        NONE,
        TOO_FEW,
        TOO_NARROW,
        FITTING,
        TOO_WIDE
    }

    /** Ranked scores; of a stage still open the part up to today. */
    public Losses crps() {
        return losses(
                stage -> crps(stage, stage.drawn()), (stage, said) -> crps(stage, new double[] {said.toEpochDay()}));
    }

    /** Pinball losses, mean of those at P10, P50 and P90; of a stage still open as if it landed today. */
    public Losses pinball() {
        return losses(
                stage -> pinball(stage, stage.p10(), stage.p50(), stage.p90()),
                (stage, said) -> pinball(stage, said, said, said));
    }

    private double crps(Stage stage, double[] values) {
        return stage.landed()
                .map(day -> Score.crps(values, day.toEpochDay()))
                .orElseGet(() -> Score.crpsUpTo(values, today.toEpochDay()));
    }

    private double pinball(Stage stage, LocalDate... said) {
        double sum = 0;
        for (int i = 0; i < QUANTILES.length; i++) {
            // what is not known to be too late cannot be blamed for it yet
            double day = stage.landed().isPresent()
                    ? said[i].toEpochDay()
                    : Math.min(said[i].toEpochDay(), today.toEpochDay());
            sum += Score.pinball(QUANTILES[i], day, stage.landed().orElse(today).toEpochDay());
        }
        return sum / QUANTILES.length;
    }

    private interface OfDate {
        double loss(Stage stage, LocalDate said);
    }

    private Losses losses(ToDoubleFunction<Stage> model, OfDate rival) {
        List<Stage> stages = new ArrayList<>(all());
        return new Losses(
                stages.stream().mapToDouble(model).average().orElse(0),
                stages.stream()
                        .mapToDouble(stage -> rival.loss(stage, stage.plan()))
                        .average()
                        .orElse(0),
                stages.stream()
                        .mapToDouble(stage -> rival.loss(stage, stage.velocity()))
                        .average()
                        .orElse(0),
                stages.stream()
                        .mapToDouble(stage -> rival.loss(stage, stage.likely()))
                        .average()
                        .orElse(0));
    }

    /** What is written as JSON: landings that have not happened are null. */
    public record Told(List<ToldFriday> fridays, double coverage80, int n, Losses crps, Losses pinball) {}

    /** One Friday of {@link Told}. */
    public record ToldFriday(LocalDate date, List<ToldStage> stages) {}

    /** One stage of {@link Told}. */
    public record ToldStage(String id, LocalDate p10, LocalDate p50, LocalDate p90, Optional<LocalDate> landed) {}

    /** For JSON. */
    public Told told() {
        return new Told(
                fridays.stream()
                        .map(friday -> new ToldFriday(
                                friday.date(),
                                friday.stages().stream()
                                        .map(stage -> new ToldStage(
                                                stage.id(), stage.p10(), stage.p50(), stage.p90(), stage.landed()))
                                        .toList()))
                        .toList(),
                coverage(),
                decided().size(),
                crps(),
                pinball());
    }
}
