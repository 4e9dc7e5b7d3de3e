package weekwright.forecast;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.build.HoursEntry;
import weekwright.build.Settings;
import weekwright.engine.Inputs;
import weekwright.engine.simulate.EffortRatio;
import weekwright.episodes.Episode;

/**
 * How long editing takes, learned from the log as the effort ratio of the shop is ({@link EffortRatio}, its prior centred on
 * 1): of each episode that is ready the logged hours of editing over its estimate, its own or the default of the settings
 * for its length. What is still to be edited is estimated at so many times its estimate; while no episode is ready with hours of
 * editing, all is as it was written down. Pure.
 */
final class EditHours {
    private final Settings settings;
    private final Inputs.Range standard;
    private final EffortRatio ratio;
    private final List<Edited> finished = new ArrayList<>();

    /**
     * An episode that is ready.
     *
     * @param estimateMinutes mean of its estimate
     * @param loggedMinutes hours of editing
     * @param finishedMinutes its length; 0 where that is not known
     */
    record Edited(String id, LocalDate ready, double estimateMinutes, int loggedMinutes, double finishedMinutes) {}

    EditHours(Facts facts) {
        settings = facts.settings();
        standard = Facts.hoursRange(
                Optional.of(settings.editLow()), Optional.of(settings.editLikely()), Optional.of(settings.editHigh()));
        Map<String, Integer> logged = new HashMap<>();
        for (HoursEntry entry : facts.hours()) {
            if (entry.episode().isPresent() && facts.known(entry.date()) && entry.asOrDefault() == HoursEntry.As.EDIT) {
                logged.merge(
                        entry.episode().get().folded(),
                        entry.hours().minutes() * entry.peopleOrDefault(),
                        Integer::sum);
            }
        }
        List<double[]> learned = new ArrayList<>();
        double halfLife = settings.effortHalfLife().doubleValue();
        for (Episode episode : facts.episodes()) {
            Optional<LocalDate> ready = episode.cut().or(episode::published).filter(facts::known);
            int minutes = logged.getOrDefault(episode.id().folded(), 0);
            Inputs.Range base = base(episode);
            if (ready.isPresent() && EffortRatio.counts(minutes, base.low())) {
                double variance = EffortRatio.variance(base.mean(), base.deviation());
                long days = facts.asOf().toEpochDay() - ready.get().toEpochDay();
                learned.add(new double[] {
                    EffortRatio.logRatio(minutes, base.mean(), variance),
                    variance,
                    EffortRatio.ageWeight(days, halfLife)
                });
                finished.add(new Edited(
                        episode.id().value(),
                        ready.get(),
                        base.mean(),
                        minutes,
                        episode.minutes().map(one -> one.doubleValue()).orElse(0.0)));
            }
        }
        ratio = EffortRatio.learn(1, column(learned, 0), column(learned, 1), column(learned, 2));
    }

    private static double[] column(List<double[]> rows, int column) {
        return rows.stream().mapToDouble(row -> row[column]).toArray();
    }

    /** Its own hours, else the settings' for as many minutes as it is long. */
    private Inputs.Range base(Episode episode) {
        Inputs.Range own = Facts.hoursRange(episode.editLow(), episode.editLikely(), episode.editHigh());
        if (own.given()) {
            return own;
        }
        double target = settings.targetMinutes().doubleValue();
        return episode.minutes()
                .filter(minutes -> minutes.value().signum() > 0 && target > 0)
                .map(minutes -> times(standard, minutes.doubleValue() / target))
                .orElse(standard);
    }

    private static Inputs.Range times(Inputs.Range range, double factor) {
        return new Inputs.Range(range.low() * factor, range.likely() * factor, range.high() * factor);
    }

    /** How many times their estimate the hours of editing take; 1 while nothing is learned. */
    double times() {
        return finished.isEmpty() ? 1 : StrictMath.exp(ratio.betaN());
    }

    EffortRatio ratio() {
        return ratio;
    }

    List<Edited> finished() {
        return List.copyOf(finished);
    }

    /** Hours of editing of an episode; {@link Inputs.Range#EMPTY} for the default where nothing is learned. */
    Inputs.Range of(Episode episode) {
        return finished.isEmpty()
                ? Facts.hoursRange(episode.editLow(), episode.editLikely(), episode.editHigh())
                : times(base(episode), times());
    }

    /** Hours of editing of an episode made from the story bank. */
    Inputs.Range standard() {
        return times(standard, times());
    }
}
