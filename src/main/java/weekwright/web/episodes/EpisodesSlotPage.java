package weekwright.web.episodes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import weekwright.base.Rejected;
import weekwright.build.Settings;
import weekwright.build.Shown;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;
import weekwright.episodes.Episode;
import weekwright.episodes.EpisodeStore;
import weekwright.episodes.MoveEpisode;
import weekwright.episodes.SaveEpisode;
import weekwright.episodes.SkipSlot;
import weekwright.episodes.SlotCalendar;
import weekwright.forecast.Forecast;
import weekwright.forecast.SlotFutures;
import weekwright.render.Chances;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.parts.Outlook;
import weekwright.web.parts.StoryRows;

/** One slot: what stands on it, what could fill it, and leaving it out. */
public final class EpisodesSlotPage implements Page {
    private final SlotFutures futures;

    public EpisodesSlotPage(SlotFutures futures) {
        this.futures = futures;
    }

    /**
     * @param kind planned, open or skipped
     * @param id of its episode; empty where it has none
     * @param bank what the story bank could give; empty where nothing
     * @param side work that can begin and has story, until what it gives and holds up is known
     * @param story that work with what it gives and holds up; empty until that is known, or where an episode is planned
     * @param version of its episode, 0 for none
     * @param trouble whether it may well stay empty, so that something should be done
     * @param remedies what could be done; empty before that is asked for
     */
    public record View(
            Form form,
            LocalDate date,
            String day,
            String head,
            String lead,
            String kind,
            String id,
            String title,
            String bank,
            List<SlotFillers.Filler> standbys,
            List<SlotFillers.Filler> side,
            Optional<StoryRows> story,
            long version,
            boolean trouble,
            Optional<SlotTrouble> remedies) {}

    @Override
    public View show(Request request) {
        LocalDate day = SlotDays.slot(request);
        Settings settings = request.settings();
        Formats formats = request.formats();
        Optional<StoryRows> known = StoryRows.of(request);
        Optional<Forecast> forecast = Outlook.forecast(request);
        Optional<SlotTrouble> remedies = request.query("look").isEmpty()
                ? Optional.empty()
                : Optional.of(SlotTrouble.of(request, futures, day, forecast, formats));
        return request.read(read -> {
            SlotCalendar.Slot slot = SlotCalendar.of(read, day, day).stream()
                    .findFirst()
                    .filter(one -> !day.isBefore(request.today()))
                    .orElseThrow(() -> new NotFound(
                            "The slot of " + formats.dateLong(day) + " is past or has its episode published."));
            SlotFillers fillers = SlotFillers.of(read, settings, day, forecast, formats);
            boolean planned = slot.episode().isPresent();
            Optional<StoryRows> story = planned ? Optional.empty() : known;
            String act = Stream.of("skip", "back", "remedy")
                    .filter(request::wasRefused)
                    .findFirst()
                    .orElse("");
            return new View(
                    request.form(act),
                    day,
                    formats.dateLong(day),
                    SlotDays.day(day, formats) + formats.comingOrGone(day),
                    lead(slot, forecast),
                    planned ? "planned" : slot.skipped().isPresent() ? "skipped" : "open",
                    slot.episode().map(e -> e.id().value()).orElse(""),
                    slot.episode().map(Episode::title).orElse(""),
                    fillers.bank()
                            .map(minutes -> "The story bank holds about " + Formats.count(minutes, "minute")
                                    + " by then, and an episode from it takes "
                                    + settings.targetMinutes().text()
                                    + ". The forecast counts on it by itself.")
                            .orElse(""),
                    planned ? List.of() : fillers.standbys(),
                    planned || story.isPresent() ? List.of() : fillers.side(),
                    story,
                    MoveEpisode.on(read, day).map(Stored::version).orElse(0L),
                    slot.skipped().isEmpty()
                            && forecast.flatMap(f -> f.emptyChance(day))
                                    .map(chance -> chance > EpisodesSlotsPage.TROUBLE)
                                    .orElse(false),
                    remedies);
        });
    }

    private static String lead(SlotCalendar.Slot slot, Optional<Forecast> forecast) {
        if (slot.skipped().isPresent() && slot.episode().isEmpty()) {
            String why = slot.skipped().get();
            return why.isEmpty() ? "It is skipped; no reason is written down." : "It is skipped: " + why + ".";
        }
        List<String> said = new ArrayList<>();
        said.add(slot.episode()
                .map(e -> "Planned: “" + e.title() + "”"
                        + forecast.flatMap(f -> f.episode(e.id().value()))
                                .flatMap(Forecast.Episode::onTime)
                                .map(chance -> ", " + Chances.words(chance) + " that it is ready in time")
                                .orElse("")
                        + ".")
                .orElse("Nothing is planned for it."));
        forecast.flatMap(f -> f.emptyChance(slot.day()))
                .ifPresent(chance -> said.add(Formats.sentence(SlotDays.empty(chance)) + "."));
        return String.join(" ", said);
    }

    @Override
    public Answer submit(Request request) throws Exception {
        LocalDate day = SlotDays.slot(request);
        FormReader form = request.form();
        String reason = form.text("reason");
        Formats formats = request.formats();
        switch (form.act()) {
            case "back" -> {
                return request.save(write -> {
                    SkipSlot.takeBack(write, day, request.today());
                    return Saved.to("/episodes/slots").saying(formats.dateLong(day) + " is a slot again.");
                });
            }
            case "remedy" -> {
                Optional<SlotRemedies.Kind> kind = form.needed("kind", SlotRemedies.Kind.class);
                String what = form.text("what");
                Optional<Forecast> forecast = Outlook.forecast(request);
                return request.save(write -> {
                    SlotRemedies.Remedy remedy = SlotRemedies.of(write, day, forecast, formats).stream()
                            .filter(one -> one.kind() == kind.orElseThrow()
                                    && one.what().equals(what))
                            .findFirst()
                            .orElseThrow(() -> new NotFound("This can no longer be done; look at the slot once more."));
                    keep(write, day, remedy, form.version(), request.today());
                    return Saved.to("/episodes/slots").saying(remedy.title() + ": done.");
                });
            }
            default -> {
                return request.save(write -> {
                    SkipSlot.skip(write, day, reason, request.today());
                    return Saved.to("/episodes/slots").saying(formats.dateLong(day) + " is skipped.");
                });
            }
        }
    }

    /** @param version of the slot's own episode as it was shown, 0 where it had none */
    private static void keep(Write write, LocalDate day, SlotRemedies.Remedy remedy, long version, LocalDate today)
            throws Rejected, Stale {
        Optional<Stored<Episode>> own = MoveEpisode.on(write, day);
        Optional<Shown> shown = own.map(one -> new Shown(one.row(), version));
        if (shown.isPresent() && remedy.ownTo().isPresent()) {
            MoveEpisode.move(write, shown.get(), remedy.ownTo().get(), today);
        }
        switch (remedy.kind()) {
            case SHORTER, WITHOUT ->
                SaveEpisode.save(write, shown, remedy.episode().orElseThrow(), remedy.tells(), today);
            case BANK ->
                SaveEpisode.save(write, Optional.empty(), remedy.episode().orElseThrow(), remedy.tells(), today);
            case STANDBY -> {
                Stored<Episode> standby = EpisodeStore.TABLE
                        .find(write, remedy.episode().orElseThrow().id())
                        .orElseThrow();
                MoveEpisode.move(write, new Shown(standby.row(), standby.version()), day, today);
            }
            case SAY -> SkipSlot.skip(write, day, "No film; said beforehand", today);
        }
    }
}
