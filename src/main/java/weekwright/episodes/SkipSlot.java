package weekwright.episodes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.base.Words;
import weekwright.build.Faults;
import weekwright.build.Publishing;
import weekwright.build.Said;
import weekwright.build.Settings;
import weekwright.build.SettingsStore;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/** Leaves a slot out of the calendar, with the reason, and takes that back. */
public final class SkipSlot {
    private static final int REASON_MOST = 300;

    private SkipSlot() {}

    /**
     * @param today in the project's zone
     * @throws Rejected where the day is past, is no slot, is skipped already, or has its episode
     */
    public static void skip(Write write, LocalDate slot, String reason, LocalDate today) throws Rejected, Stale {
        Settings settings = SettingsStore.get(write);
        Problems problems = new Problems();
        if (settings.skip().contains(slot)) {
            problems.fault("", Said.day(slot), "is skipped already", "");
        } else if (!SlotRules.isSlot(slot, settings)) {
            problems.fault("", Said.day(slot), "is no day on which episodes come out", "choose a slot");
        }
        past(slot, today, problems);
        MoveEpisode.on(write, slot)
                .ifPresent(episode -> problems.fault(
                        "",
                        Said.day(slot),
                        "is the slot of \"" + episode.value().title() + "\"",
                        "move that one to another slot first"));
        if (reason.length() > REASON_MOST) {
            problems.fault("reason", reason, "is longer than 300 characters", "write it shorter");
        }
        Faults.refuse(problems);
        List<String> dates = new ArrayList<>(days(settings));
        dates.add(slot.toString());
        set(write, dates);
        SkippedSlotStore.TABLE.insert(write, new SkippedSlot(slot, reason));
    }

    /** @throws Rejected where the day is not skipped, or past */
    public static void takeBack(Write write, LocalDate slot, LocalDate today) throws Rejected, Stale {
        Settings settings = SettingsStore.get(write);
        Problems problems = new Problems();
        if (!settings.skip().contains(slot)) {
            problems.fault("", Said.day(slot), "is not skipped", "");
        }
        past(slot, today, problems);
        Faults.refuse(problems);
        set(
                write,
                days(settings).stream()
                        .filter(day -> !day.equals(slot.toString()))
                        .toList());
        Optional<Stored<SkippedSlot>> why = SkippedSlotStore.of(write, slot);
        if (why.isPresent()) {
            SkippedSlotStore.TABLE.delete(write, why.get().row(), why.get().version());
        }
    }

    private static void past(LocalDate slot, LocalDate today, Problems problems) {
        if (slot.isBefore(today)) {
            problems.fault("", Said.day(slot), "is past", "what is past stays");
        }
    }

    private static List<String> days(Settings settings) {
        return settings.publishing().skip().list();
    }

    private static void set(Write write, List<String> dates) throws Stale {
        Stored<Publishing> row = SettingsStore.one(write, SettingsStore.PUBLISHING);
        Words skip = new Words(dates.stream().sorted().toList());
        SettingsStore.update(
                write,
                SettingsStore.PUBLISHING,
                row.version(),
                SettingsStore.PUBLISHING.shape().with(row.value(), "skip", skip));
    }
}
