package weekwright.web.episodes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weekwright.build.Settings;
import weekwright.episodes.Episode;
import weekwright.episodes.SkipSlot;
import weekwright.episodes.SlotCalendar;
import weekwright.forecast.Forecast;
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

/** One slot: what stands on it, what could fill it, and leaving it out. */
public final class EpisodesSlotPage implements Page {

    /**
     * @param kind planned, open or skipped
     * @param id of its episode; empty where it has none
     * @param bank what the story bank could give; empty where nothing
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
            List<SlotFillers.Filler> side) {}

    @Override
    public View show(Request request) {
        LocalDate day = SlotDays.slot(request);
        Settings settings = request.settings();
        Formats formats = new Formats(settings.project().currency(), request.today());
        Optional<Forecast> forecast = Outlook.forecast(request);
        return request.read(read -> {
            SlotCalendar.Slot slot = SlotCalendar.of(read, day, day).stream()
                    .findFirst()
                    .filter(one -> !day.isBefore(request.today()))
                    .orElseThrow(() -> new NotFound(
                            "The slot of " + formats.dateLong(day) + " is past or has its episode published."));
            SlotFillers fillers = SlotFillers.of(read, settings, day, forecast, formats);
            boolean planned = slot.episode().isPresent();
            String act = request.wasRefused("skip") ? "skip" : "";
            return new View(
                    request.form(act),
                    day,
                    formats.dateLong(day),
                    SlotDays.day(day, formats),
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
                    planned ? List.of() : fillers.side());
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
        Formats formats = new Formats(request.settings().project().currency(), request.today());
        boolean back = form.act().equals("back");
        return request.save(write -> {
            if (back) {
                SkipSlot.takeBack(write, day, request.today());
            } else {
                SkipSlot.skip(write, day, reason, request.today());
            }
            return Saved.to("/episodes/slots")
                    .saying(formats.dateLong(day) + (back ? " is a slot again." : " is skipped."));
        });
    }
}
