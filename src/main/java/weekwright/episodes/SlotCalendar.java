package weekwright.episodes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import weekwright.build.Settings;
import weekwright.build.SettingsStore;
import weekwright.db.Read;

/**
 * The slots from a day on: with the episode planned, or empty, or skipped with the reason. A day that is no slot stands
 * among them when an episode is planned on it.
 */
public final class SlotCalendar {
    private SlotCalendar() {}

    /**
     * A day of the calendar.
     *
     * @param episode planned on it and not yet published
     * @param skipped the reason; an empty text where none was given; empty where it is not skipped
     * @param regular whether episodes come out on such a day at all, skipped or not
     */
    public record Slot(LocalDate day, Optional<Episode> episode, Optional<String> skipped, boolean regular) {
        public boolean isEmpty() {
            return episode.isEmpty() && skipped.isEmpty();
        }
    }

    /**
     * The days in their order. A slot on which something has been published already is left out.
     *
     * @param first included
     * @param last included
     */
    public static List<Slot> of(Read read, LocalDate first, LocalDate last) {
        Settings settings = SettingsStore.get(read);
        List<Episode> all = EpisodeStore.TABLE.values(read);
        Map<LocalDate, String> reasons = SkippedSlotStore.TABLE.values(read).stream()
                .collect(Collectors.toMap(SkippedSlot::date, SkippedSlot::reason));
        List<Slot> slots = new ArrayList<>();
        for (LocalDate day = SlotRules.next(first, settings);
                !day.isAfter(last);
                day = day.plusWeeks(settings.everyWeeks())) {
            LocalDate slot = day;
            boolean published = all.stream().anyMatch(one -> one.published().equals(Optional.of(slot)));
            Optional<Episode> planned = planned(all, slot);
            if (planned.isPresent() || !published) {
                boolean skip = settings.skip().contains(slot);
                slots.add(new Slot(
                        slot, planned, skip ? Optional.of(reasons.getOrDefault(slot, "")) : Optional.empty(), true));
            }
        }
        for (Episode one : all) {
            if (one.published().isEmpty()
                    && one.slot()
                            .filter(day -> !day.isBefore(first) && !day.isAfter(last))
                            .isPresent()
                    && !SlotRules.isRegular(one.slot().get(), settings)) {
                slots.add(new Slot(one.slot().get(), Optional.of(one), Optional.empty(), false));
            }
        }
        slots.sort(Comparator.comparing(Slot::day));
        return slots;
    }

    /** Episodes not published whose slot is past, the oldest first. */
    public static List<Slot> late(Read read, LocalDate today) {
        Settings settings = SettingsStore.get(read);
        return EpisodeStore.TABLE.values(read).stream()
                .filter(one -> one.published().isEmpty()
                        && one.slot().filter(day -> day.isBefore(today)).isPresent())
                .map(one -> new Slot(
                        one.slot().orElseThrow(),
                        Optional.of(one),
                        Optional.empty(),
                        SlotRules.isRegular(one.slot().get(), settings)))
                .sorted(Comparator.comparing(Slot::day))
                .toList();
    }

    private static Optional<Episode> planned(List<Episode> all, LocalDate slot) {
        return all.stream()
                .filter(one -> one.published().isEmpty() && one.slot().equals(Optional.of(slot)))
                .findFirst();
    }
}
