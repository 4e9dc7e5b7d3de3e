package weekwright.forecast;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import weekwright.engine.Inputs;
import weekwright.engine.Outcome;

/**
 * What the futures of one plan of the slots came to. Chances are 0 to 1.
 *
 * @param ready by episode: the chance that it is cut by its slot less the early days; only those with a slot
 * @param empty by slot: the chance that nothing comes out on it
 * @param emptyOf12 how many of the next twelve slots stay empty, in the mean
 * @param cash mean balance by Sunday in minor units, with the purchases left out that are not yet made
 */
public record SlotOutlook(
        Map<String, Double> ready, Map<LocalDate, Double> empty, double emptyOf12, Map<LocalDate, Long> cash) {
    public SlotOutlook {
        ready = Map.copyOf(ready);
        empty = Map.copyOf(empty);
        cash = Map.copyOf(cash);
    }

    static SlotOutlook of(Basis basis, Outcome outcome) {
        Inputs inputs = basis.inputs();
        Map<String, Double> ready = new HashMap<>();
        for (int e = 0; e < inputs.episodes().size(); e++) {
            Inputs.Episode episode = inputs.episodes().get(e);
            if (episode.published() == Inputs.NONE && episode.slot() != Inputs.NONE) {
                int due = episode.slot() - inputs.publishing().earlyDays();
                long cut = Arrays.stream(outcome.episodeCut[e])
                        .filter(day -> day <= due)
                        .count();
                ready.put(episode.id(), (double) cut / outcome.trials);
            }
        }
        Map<LocalDate, Double> empty = new HashMap<>();
        ForecastMaker.everySlot(outcome).forEach(one -> empty.put(one.date(), one.empty()));
        Map<LocalDate, Long> cash = new HashMap<>();
        for (int w = 0; w < outcome.weeks.length; w++) {
            cash.put(
                    LocalDate.ofEpochDay(outcome.weeks[w]),
                    Math.round(Arrays.stream(outcome.unspent[w]).average().orElse(0)));
        }
        return new SlotOutlook(
                ready, empty, ForecastMaker.slots(inputs, outcome).expectedEmpty12(), cash);
    }

    /** The chance of a slot to stay empty; empty where it was not looked at. */
    public Optional<Double> empty(LocalDate slot) {
        return Optional.ofNullable(empty.get(slot));
    }

    /** The chance of an episode to be ready in time; empty for one without a slot. */
    public Optional<Double> ready(String episode) {
        return Optional.ofNullable(ready.get(episode));
    }

    /** The mean balance on the first Sunday on or after a day; empty after the last one that was looked at. */
    public Optional<Long> cashBy(LocalDate day) {
        return cash.keySet().stream()
                .filter(sunday -> !sunday.isBefore(day))
                .min(LocalDate::compareTo)
                .map(cash::get);
    }
}
