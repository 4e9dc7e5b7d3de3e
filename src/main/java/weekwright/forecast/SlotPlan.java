package weekwright.forecast;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import weekwright.base.Id;
import weekwright.base.Words;
import weekwright.build.Publishing;
import weekwright.build.Settings;
import weekwright.build.SettingsStore;
import weekwright.db.Read;
import weekwright.db.Table;
import weekwright.episodes.Episode;
import weekwright.episodes.EpisodeStore;
import weekwright.episodes.Tell;
import weekwright.episodes.TellStore;

/** The slots, as they are planned or as they might be: what the futures of a change are drawn from. Immutable. */
public record SlotPlan(List<Episode> episodes, List<Tell> tells, List<LocalDate> skipped) {
    public SlotPlan {
        episodes = List.copyOf(episodes);
        tells = List.copyOf(tells);
        skipped = List.copyOf(skipped);
    }

    /** As it stands. */
    public static SlotPlan of(Read read) {
        Source source = Source.of(read);
        return new SlotPlan(
                source.list(EpisodeStore.TABLE),
                source.list(TellStore.TABLE),
                source.settings().skip());
    }

    /** With an episode changed, or added where none has its id. */
    public SlotPlan with(Episode changed) {
        List<Episode> all = new ArrayList<>(episodes);
        all.replaceAll(one -> one.id().same(changed.id()) ? changed : one);
        if (episodes.stream().noneMatch(one -> one.id().same(changed.id()))) {
            all.add(changed);
        }
        return new SlotPlan(all, tells, skipped);
    }

    /** With one task more that an episode tells. */
    public SlotPlan telling(Tell tell) {
        List<Tell> all = new ArrayList<>(tells);
        all.add(tell);
        return new SlotPlan(episodes, all, skipped);
    }

    /** With a task less that an episode tells. */
    public SlotPlan withoutTelling(Id episode, Id task) {
        return new SlotPlan(
                episodes,
                tells.stream()
                        .filter(one ->
                                !one.episode().same(episode) || !one.task().same(task))
                        .toList(),
                skipped);
    }

    /** With a slot left out. */
    public SlotPlan skipping(LocalDate slot) {
        List<LocalDate> all = new ArrayList<>(skipped);
        all.add(slot);
        return new SlotPlan(episodes, tells, all);
    }

    /** Another source with these slots in place of its own. */
    Source over(Source base) {
        Settings settings = base.settings();
        Publishing publishing = SettingsStore.PUBLISHING
                .shape()
                .with(
                        settings.publishing(),
                        "skip",
                        new Words(skipped.stream().map(LocalDate::toString).toList()));
        Settings changed = new Settings(
                settings.project(),
                publishing,
                settings.weather(),
                settings.orders(),
                settings.money(),
                settings.emergency(),
                settings.model(),
                settings.buildLog());
        return new Source() {
            @Override
            public Settings settings() {
                return changed;
            }

            @Override
            @SuppressWarnings("unchecked")
            public <R extends Record> List<R> list(Table<R> table) {
                if (table.equals(EpisodeStore.TABLE)) {
                    return (List<R>) episodes;
                }
                return table.equals(TellStore.TABLE) ? (List<R>) tells : base.list(table);
            }
        };
    }
}
