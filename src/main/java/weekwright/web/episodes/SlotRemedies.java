package weekwright.web.episodes;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import weekwright.base.Hours;
import weekwright.base.Id;
import weekwright.base.Quantity;
import weekwright.base.Shape;
import weekwright.build.ReferenceStore;
import weekwright.build.Said;
import weekwright.build.Settings;
import weekwright.build.SettingsStore;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.episodes.Episode;
import weekwright.episodes.EpisodeStore;
import weekwright.episodes.SlotCalendar;
import weekwright.episodes.StoryBank;
import weekwright.episodes.Tell;
import weekwright.episodes.TellStore;
import weekwright.forecast.Forecast;
import weekwright.forecast.SlotPlan;
import weekwright.render.Formats;

/** What could be done about a slot that may stay empty, each as a plan whose futures can be drawn. Reads, never writes. */
final class SlotRemedies {
    /** A shorter cut keeps two thirds: common practice, no source. */
    private static final BigDecimal KEPT = new BigDecimal("2").divide(new BigDecimal("3"), 6, RoundingMode.HALF_UP);

    private static final int MOST_STANDBYS = 2;
    private static final int PLACES = 4;

    /** The kinds of remedy, as the page's buttons post them. */
    enum Kind {
        SHORTER,
        WITHOUT,
        STANDBY,
        BANK,
        SAY
    }

    /**
     * A remedy.
     *
     * @param what the id of the task left out or of the standby; empty for the others
     * @param cost in minutes and hours, in words
     * @param episode the episode that it changes or adds, as it would be; empty for the sentence alone
     * @param tells all that this episode would tell
     * @param ownTo where the slot's own episode goes; empty where it stays or there is none
     */
    record Remedy(
            Kind kind,
            String what,
            String title,
            String cost,
            Optional<Episode> episode,
            List<Tell> tells,
            Optional<LocalDate> ownTo,
            SlotPlan plan) {}

    private final Read read;
    private final Settings settings;
    private final LocalDate slot;
    private final Optional<Episode> own;
    private final Optional<LocalDate> next;
    private final Formats formats;
    private final SlotPlan plan;

    private SlotRemedies(Read read, LocalDate slot, Formats formats) {
        this.read = read;
        this.settings = SettingsStore.get(read);
        this.slot = slot;
        this.formats = formats;
        this.plan = SlotPlan.of(read);
        this.own = EpisodeStore.TABLE.values(read).stream()
                .filter(one -> one.published().isEmpty() && one.slot().equals(Optional.of(slot)))
                .findFirst();
        this.next = SlotCalendar.of(read, slot.plusDays(1), slot.plusYears(1)).stream()
                .filter(SlotCalendar.Slot::isEmpty)
                .map(SlotCalendar.Slot::day)
                .findFirst();
    }

    /** All that can be done, in the order of least change. */
    static List<Remedy> of(Read read, LocalDate slot, Optional<Forecast> forecast, Formats formats) {
        return new SlotRemedies(read, slot, formats).all(forecast);
    }

    private List<Remedy> all(Optional<Forecast> forecast) {
        List<Remedy> all = new ArrayList<>();
        Optional<Episode> uncut = own.filter(one -> one.cut().isEmpty());
        uncut.ifPresent(one -> all.add(shorter(one)));
        uncut.flatMap(one -> forecast.flatMap(f -> f.episode(one.id().value()))
                        .flatMap(Forecast.Episode::lateBy)
                        .flatMap(task -> without(one, new Id(task))))
                .ifPresent(all::add);
        if (own.isEmpty()) {
            fromBank().ifPresent(all::add);
        }
        EpisodeStore.TABLE.values(read).stream()
                .filter(one -> one.kindOrDefault() == Episode.Kind.STANDBY
                        && one.published().isEmpty())
                .sorted(Comparator.comparing((Episode one) -> one.cut().isEmpty())
                        .thenComparing(one -> one.footageComplete().isEmpty()))
                .limit(MOST_STANDBYS)
                .forEach(one -> standby(one).ifPresent(all::add));
        say().ifPresent(all::add);
        return all;
    }

    private Remedy shorter(Episode one) {
        Episode cut = scaled(one, KEPT);
        return new Remedy(
                Kind.SHORTER,
                "",
                "A shorter cut of “" + one.title() + "”",
                EpisodesFootagePage.minutes(minutes(cut).value()) + " instead of "
                        + minutes(one).text() + "; " + Formats.hoursLong(edit(one) - edit(cut)) + " less editing",
                Optional.of(cut),
                tells(one.id()),
                Optional.empty(),
                plan.with(cut));
    }

    /** Leaves out the task that makes it late; empty where it tells nothing else. */
    private Optional<Remedy> without(Episode one, Id late) {
        List<Tell> tells = tells(one.id());
        List<Tell> left = tells.stream().filter(tell -> !tell.task().same(late)).toList();
        Optional<Task> task = TaskStore.TABLE.find(read, late).map(Stored::value);
        if (left.isEmpty() || left.size() == tells.size() || task.isEmpty()) {
            return Optional.empty();
        }
        BigDecimal share = BigDecimal.valueOf(left.size())
                .divide(BigDecimal.valueOf(tells.size()), PLACES, RoundingMode.HALF_UP)
                .max(KEPT);
        Episode cut = scaled(one, share);
        return Optional.of(new Remedy(
                Kind.WITHOUT,
                late.value(),
                "“" + one.title() + "” without “" + task.get().title() + "”",
                EpisodesFootagePage.minutes(minutes(cut).value()) + " instead of "
                        + minutes(one).text() + "; " + Formats.hoursLong(edit(one) - edit(cut))
                        + " less editing; that work is told later",
                Optional.of(cut),
                left,
                Optional.empty(),
                plan.with(cut).withoutTelling(one.id(), late)));
    }

    /** A shorter piece from what is filmed of finished tasks; empty where the bank holds too little. */
    private Optional<Remedy> fromBank() {
        BigDecimal wanted = settings.targetMinutes().value().multiply(KEPT).setScale(0, RoundingMode.HALF_UP);
        List<Tell> tells = new ArrayList<>();
        Id id = ReferenceStore.unusedId(read, EpisodeStore.TABLE.name(), "ep");
        BigDecimal left = wanted;
        for (StoryBank.Part part : StoryBank.finished(read)) {
            if (left.signum() <= 0) {
                break;
            }
            BigDecimal taken = left.min(part.minutes().value());
            BigDecimal share = part.told()
                    .value()
                    .add(taken.divide(part.task().storyMinutes().orElseThrow().value(), PLACES, RoundingMode.HALF_UP))
                    .min(BigDecimal.ONE);
            tells.add(new Tell(id, part.task().id(), Optional.of(new Quantity(share))));
            left = left.subtract(taken);
        }
        if (left.signum() > 0) {
            return Optional.empty();
        }
        Episode piece = Shape.of(Episode.class).with(blank(id), "minutes", Optional.of(new Quantity(wanted)));
        piece = scaled(piece, KEPT, new Quantity(wanted));
        SlotPlan with = plan.with(piece);
        for (Tell tell : tells) {
            with = with.telling(tell);
        }
        return Optional.of(new Remedy(
                Kind.BANK,
                "",
                "A short piece from the story bank",
                EpisodesFootagePage.minutes(wanted) + " instead of "
                        + settings.targetMinutes().text() + " from the bank; " + Formats.hoursLong(edit(piece))
                        + " of editing",
                Optional.of(piece),
                List.copyOf(tells),
                Optional.empty(),
                with));
    }

    private Episode blank(Id id) {
        Optional<Integer> number = EpisodeStore.TABLE.values(read).stream()
                .flatMap(one -> one.number().stream())
                .max(Integer::compare)
                .map(last -> last + 1);
        return new Episode(
                id,
                number,
                Optional.of(slot),
                "A short piece for " + Said.day(slot),
                Optional.of(Episode.Kind.SIDE),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(formats.today()),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "",
                Optional.empty(),
                "");
    }

    private Optional<Remedy> standby(Episode one) {
        if (own.isPresent() && next.isEmpty()) {
            return Optional.empty();
        }
        Episode here = Shape.of(Episode.class)
                .with(
                        Shape.of(Episode.class).with(one, "slot", Optional.of(slot)),
                        "kind",
                        Optional.of(Episode.Kind.SIDE));
        SlotPlan with = ownMoved(plan).with(here);
        String goes = own.map(e -> "; “" + e.title() + "” goes to " + formats.dateLong(next.orElseThrow()))
                .orElse("");
        return Optional.of(new Remedy(
                Kind.STANDBY,
                one.id().value(),
                "The standby “" + one.title() + "”",
                EpisodesFootagePage.minutes(minutes(one).value()) + "; "
                        + (one.cut().isPresent() ? "ready" : Formats.hoursLong(edit(one)) + " of editing in all")
                        + goes,
                Optional.of(here),
                tells(one.id()),
                own.isPresent() ? next : Optional.empty(),
                with));
    }

    private Optional<Remedy> say() {
        if (own.isPresent() && next.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Remedy(
                Kind.SAY,
                "",
                "Say it beforehand, and leave the slot out",
                "no film; "
                        + own.map(e -> "“" + e.title() + "” goes to " + formats.dateLong(next.orElseThrow()))
                                .orElse("nothing is moved"),
                Optional.empty(),
                List.of(),
                own.isPresent() ? next : Optional.empty(),
                ownMoved(plan).skipping(slot)));
    }

    private SlotPlan ownMoved(SlotPlan from) {
        return own.map(one -> from.with(Shape.of(Episode.class).with(one, "slot", next)))
                .orElse(from);
    }

    private List<Tell> tells(Id episode) {
        return TellStore.ofEpisode(read, episode).stream().map(Stored::value).toList();
    }

    private Quantity minutes(Episode one) {
        return one.minutes().orElse(settings.targetMinutes());
    }

    private int edit(Episode one) {
        return one.editLikely().orElse(settings.editLikely()).minutes();
    }

    private Episode scaled(Episode one, BigDecimal share) {
        Quantity kept = new Quantity(minutes(one).value().multiply(share).setScale(0, RoundingMode.HALF_UP));
        return scaled(one, share, kept);
    }

    /** Editing goes with the finished minutes. */
    private Episode scaled(Episode one, BigDecimal share, Quantity minutes) {
        Shape<Episode> shape = Shape.of(Episode.class);
        Episode cut = shape.with(one, "minutes", Optional.of(minutes));
        boolean given = one.editLikely().isPresent();
        cut = shape.with(cut, "edit_low", hours(given ? one.editLow() : Optional.of(settings.editLow()), share));
        cut = shape.with(cut, "edit_likely", hours(Optional.of(new Hours(edit(one))), share));
        return shape.with(cut, "edit_high", hours(given ? one.editHigh() : Optional.of(settings.editHigh()), share));
    }

    /** To the quarter of an hour. */
    private static Optional<Hours> hours(Optional<Hours> hours, BigDecimal share) {
        return hours.map(one -> new Hours(share.multiply(BigDecimal.valueOf(one.minutes()))
                        .divide(BigDecimal.valueOf(15), 0, RoundingMode.HALF_UP)
                        .intValueExact()
                * 15));
    }
}
