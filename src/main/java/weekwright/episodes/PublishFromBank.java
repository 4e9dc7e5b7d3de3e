package weekwright.episodes;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import weekwright.base.Problems;
import weekwright.base.Quantity;
import weekwright.base.Rejected;
import weekwright.build.Faults;
import weekwright.build.ReferenceStore;
import weekwright.build.Said;
import weekwright.build.SettingsStore;
import weekwright.db.Stored;
import weekwright.db.Write;

/**
 * Keeps an episode that was made from the story bank and published on a slot (rule 104): of kind build, telling finished
 * tasks in the order in which they were done, each by the share told so far plus its minutes.
 */
public final class PublishFromBank {
    private static final int PLACES = 4;

    private PublishFromBank() {}

    /**
     * @param slot the day on which it came out
     * @param minutes its finished length
     * @param today in the project's zone
     */
    public static Stored<Episode> publish(Write write, LocalDate slot, String title, Quantity minutes, LocalDate today)
            throws Rejected {
        List<Episode> all = EpisodeStore.TABLE.values(write);
        List<StoryBank.Part> parts = StoryBank.finished(write);
        BigDecimal bank = parts.stream().map(part -> part.minutes().value()).reduce(BigDecimal.ZERO, BigDecimal::add);
        Problems problems = new Problems();
        if (slot.isAfter(today)) {
            problems.fault("slot", Said.day(slot), "is after today, " + Said.day(today), "mark it once it is out");
        }
        if (!SlotRules.isSlot(slot, SettingsStore.get(write))) {
            problems.fault("slot", Said.day(slot), "is no day on which episodes come out", "choose a slot");
        }
        all.stream()
                .filter(other -> other.slot().map(slot::equals).orElse(false)
                        || other.published().map(slot::equals).orElse(false))
                .findFirst()
                .ifPresent(other -> problems.fault(
                        "slot", Said.day(slot), "is the day of \"" + other.title() + "\" already", "choose another"));
        if (minutes.compareTo(Quantity.ZERO) <= 0) {
            problems.fault("minutes", minutes.text(), "is no length", "write its finished minutes");
        } else if (bank.compareTo(minutes.value()) < 0) {
            problems.fault(
                    "minutes",
                    minutes.text(),
                    "is more than the story bank holds of finished tasks, " + new Quantity(bank).text() + " minutes",
                    "write fewer, or list the episode with what it tells");
        }
        Faults.refuse(problems);
        Episode episode = new Episode(
                ReferenceStore.unusedId(write, EpisodeStore.TABLE.name(), "bank"),
                all.stream()
                        .flatMap(one -> one.number().stream())
                        .max(Integer::compare)
                        .map(n -> n + 1),
                Optional.of(slot),
                title,
                Optional.of(Episode.Kind.BUILD),
                Optional.of(minutes),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(slot),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(slot),
                Optional.of(slot),
                "",
                Optional.empty(),
                "");
        Stored<Episode> kept = EpisodeStore.TABLE.insert(write, episode);
        tell(write, episode, parts, minutes.value());
        return kept;
    }

    private static void tell(Write write, Episode episode, List<StoryBank.Part> parts, BigDecimal minutes) {
        BigDecimal left = minutes;
        for (StoryBank.Part part : parts) {
            if (left.signum() <= 0) {
                return;
            }
            BigDecimal taken = left.min(part.minutes().value());
            BigDecimal share = part.told()
                    .value()
                    .add(taken.divide(part.task().storyMinutes().orElseThrow().value(), PLACES, RoundingMode.HALF_UP))
                    .min(BigDecimal.ONE);
            TellStore.TABLE.insert(write, new Tell(episode.id(), part.task().id(), Optional.of(new Quantity(share))));
            left = left.subtract(taken);
        }
    }
}
