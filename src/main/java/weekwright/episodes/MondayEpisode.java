package weekwright.episodes;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.time.temporal.TemporalAdjusters;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import weekwright.base.Id;
import weekwright.base.Problems;
import weekwright.base.Quantity;
import weekwright.base.Reading;
import weekwright.base.Rejected;
import weekwright.base.RowRules;
import weekwright.base.Shape;
import weekwright.build.HoursEntry;
import weekwright.build.HoursEntryStore;
import weekwright.build.ReferenceStore;
import weekwright.build.Settings;
import weekwright.build.SettingsStore;
import weekwright.build.Task;
import weekwright.build.TaskFigures;
import weekwright.build.TaskStore;
import weekwright.db.Read;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/**
 * The episode that is made by itself on a Monday, from what was filmed since the last week's day until which the crew films, up
 * to this week's (Sunday, where nothing is said), so that each day belongs to one Monday. It tells the tasks filmed then that are
 * further on than any other episode tells of them, gets the next free slot, and its title is asked. Made once for a Monday:
 * taken back, it is not made again.
 */
public final class MondayEpisode {
    private static final Pattern TITLE = Pattern.compile("Filmed [0-9]{1,2} [A-Z][a-z]+ to [0-9]{1,2} [A-Z][a-z]+");
    private static final int SLOTS_LOOKED_AT = 20;

    private MondayEpisode() {}

    /** The seven days that the episode of a Monday is made from. */
    record Days(LocalDate first, LocalDate last) {
        boolean hold(LocalDate day) {
            return !day.isBefore(first) && !day.isAfter(last);
        }

        String title() {
            return "Filmed " + words(first) + " to " + words(last);
        }

        private static String words(LocalDate day) {
            return day.getDayOfMonth() + " " + day.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH);
        }
    }

    /** Whether nobody has given the episode a title yet. */
    public static boolean isUntitled(Episode episode) {
        return TITLE.matcher(episode.title()).matches();
    }

    /**
     * Makes the episode of this week's Monday where there is something to tell; call it once a day, or as often as you like.
     *
     * @return what was made; empty where that was done already, or nothing was filmed that no episode tells
     */
    public static Optional<Stored<Episode>> make(Write write, LocalDate today) {
        if (isMade(write, today)) {
            return Optional.empty();
        }
        LocalDate monday = monday(today);
        Settings settings = SettingsStore.get(write);
        Days days = days(monday, settings);
        List<Task> told = filmed(write, days);
        Optional<LocalDate> slot = freeSlot(write, today, settings);
        if (told.isEmpty() || slot.isEmpty()) {
            return Optional.empty();
        }
        Id id = ReferenceStore.unusedId(write, EpisodeStore.TABLE.name(), "ep");
        Episode blank = Shape.of(Episode.class)
                .parse(Map.of("id", id.value(), "title", days.title()), Reading.form(2), new Problems())
                .orElseThrow();
        Shape<Episode> shape = EpisodeStore.TABLE.shape();
        Episode episode = shape.with(shape.with(blank, "slot", slot), "number", nextNumber(write));
        Stored<Episode> made = EpisodeStore.TABLE.insert(write, episode);
        for (Task task : told) {
            TellStore.TABLE.insert(write, new Tell(id, task.id(), share(write, task)));
        }
        MadeWeekStore.add(write, monday);
        return Optional.of(made);
    }

    /** Whether this week's was made already. */
    public static boolean isMade(Read read, LocalDate today) {
        return MadeWeekStore.has(read, monday(today));
    }

    private static LocalDate monday(LocalDate today) {
        return today.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
    }

    static Days days(LocalDate monday, Settings settings) {
        String said = settings.publishing().shootUntil().strip().toUpperCase(Locale.ROOT);
        DayOfWeek until = Arrays.stream(DayOfWeek.values())
                .filter(day -> said.startsWith(day.name()))
                .findFirst()
                .orElse(DayOfWeek.SUNDAY);
        LocalDate last = monday.with(TemporalAdjusters.previous(until));
        return new Days(last.minusDays(6), last);
    }

    /** Tasks that were filmed on one of these days and have more in them than episodes tell, in the order of the build. */
    private static List<Task> filmed(Read read, Days days) {
        Set<String> filmed = new HashSet<>();
        for (HoursEntry entry : HoursEntryStore.TABLE.values(read)) {
            boolean camera = entry.asOrDefault() == HoursEntry.As.CAMERA
                    || entry.filmed()
                    || entry.footageMinutes()
                            .filter(minutes -> minutes.value().signum() > 0)
                            .isPresent();
            if (camera && days.hold(entry.date())) {
                entry.task().ifPresent(task -> filmed.add(task.folded()));
            }
        }
        for (Clip clip : ClipStore.TABLE.values(read)) {
            if (days.hold(clip.date())) {
                clip.task().ifPresent(task -> filmed.add(task.folded()));
            }
        }
        for (Shot shot : ShotStore.TABLE.values(read)) {
            if (shot.captured().filter(days::hold).isPresent()) {
                shot.task().ifPresent(task -> filmed.add(task.folded()));
            }
        }
        return TaskStore.TABLE.values(read).stream()
                .filter(task ->
                        filmed.contains(task.id().folded()) && task.dropped().isEmpty() && hasMore(read, task))
                .toList();
    }

    /** Whether the task is told by nobody, or further on than the largest share that an episode tells of it. */
    private static boolean hasMore(Read read, Task task) {
        Quantity done = share(read, task).orElse(Quantity.ONE);
        return TellStore.ofTask(read, task.id()).stream()
                .allMatch(tell -> tell.value().share().orElse(Quantity.ONE).compareTo(done) < 0);
    }

    private static Optional<Integer> nextNumber(Read read) {
        return EpisodeStore.TABLE.values(read).stream()
                .flatMap(one -> one.number().stream())
                .max(Integer::compare)
                .map(last -> last + 1);
    }

    private static Optional<LocalDate> freeSlot(Read read, LocalDate today, Settings settings) {
        Set<LocalDate> taken = new HashSet<>();
        EpisodeStore.TABLE.values(read).forEach(one -> one.slot().ifPresent(taken::add));
        LocalDate slot = SlotRules.next(today, settings);
        for (int i = 0; i < SLOTS_LOOKED_AT; i++) {
            if (!taken.contains(slot) && SlotRules.isSlot(slot, settings)) {
                return Optional.of(slot);
            }
            slot = SlotRules.next(slot.plusDays(1), settings);
        }
        return Optional.empty();
    }

    /** As much of the task as is done, so that the film waits for no more; nothing for all of it. */
    private static Optional<Quantity> share(Read read, Task task) {
        if (task.done().isPresent()) {
            return Optional.empty();
        }
        TaskFigures hours = TaskFigures.of(read, task);
        int all = hours.logged() + hours.left();
        BigDecimal share = all == 0
                ? BigDecimal.ZERO
                : new BigDecimal(hours.logged()).divide(new BigDecimal(all), 2, RoundingMode.DOWN);
        return Optional.of(new Quantity(share));
    }

    /** {@code Filmed 16 November to 22 November} is a title for the meantime; this is the real one. */
    public static Stored<Episode> call(Write write, long row, long version, String title) throws Rejected, Stale {
        Stored<Episode> stands = EpisodeStore.TABLE
                .find(write, row)
                .orElseThrow(() -> new Stale(EpisodeStore.TABLE.name(), row, Optional.empty()));
        Problems problems = new Problems();
        RowRules.needed("title", title, "write what it is called", problems);
        Rejected.ifFaults(problems);
        return EpisodeStore.TABLE.update(
                write, row, version, EpisodeStore.TABLE.shape().with(stands.value(), "title", title.strip()));
    }
}
