package weekwright.web.episodes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Quantity;
import weekwright.build.Settings;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.episodes.Episode;
import weekwright.episodes.EpisodeStore;
import weekwright.episodes.MondayEpisode;
import weekwright.episodes.PublishFromBank;
import weekwright.episodes.SlotRules;
import weekwright.forecast.Forecast;
import weekwright.forecast.Forecasts;
import weekwright.forecast.Names;
import weekwright.render.Chances;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.parts.Outlook;
import weekwright.web.parts.SlotWords;
import weekwright.web.parts.StoryRows;

/** The coming slots with what can fill each, how far that is, how safe; the standbys and the story bank. */
public final class EpisodesPage implements Page {
    private static final int SLOTS = 12;
    private static final int PUBLISHED = 12;

    /**
     * @param head how many of the coming slots are safe
     * @param lead the others, and who makes them late
     * @param bank minutes and weeks in hand in words
     * @param bankOutlook empty before the first forecast
     * @param story work that gives story, where little is in hand; empty otherwise
     * @param untitled those whose title is asked
     * @param owed licences and consents that episodes soon out still need
     */
    public record View(
            String head,
            String lead,
            String days,
            List<Line> slots,
            List<Line> standbys,
            String bank,
            String weeksInHand,
            Optional<BankOutlook> bankOutlook,
            Optional<StoryRows> story,
            List<Line> published,
            boolean some,
            List<Untitled> untitled,
            List<EpisodeRightsPage.Owed> owed,
            Form titleForm,
            Form form,
            LocalDate today) {}

    /** An episode that was made by itself and has no title of its own yet. */
    public record Untitled(long row, long version, String id, String said) {}

    /**
     * An episode, or a slot without one.
     *
     * @param safety safe, close, at risk, open; empty where there is no forecast or no slot
     * @param reel the strip of film
     * @param step how far it is in words
     */
    public record Line(
            Optional<LocalDate> day,
            String id,
            String number,
            String title,
            String tells,
            String safety,
            String chance,
            String reel,
            String step) {}

    @Override
    public View show(Request request) {
        Settings settings = request.settings();
        Formats formats = request.formats();
        Optional<StoryRows> story = StoryRows.ifThin(request);
        Optional<Forecasts.Shown> shown = Outlook.shown(request);
        return request.read(read -> {
            List<Episode> all = EpisodeStore.TABLE.values(read);
            List<Line> slots = slots(read, all, settings, shown, formats);
            List<Line> ahead = coming(slots, request.today());
            List<Line> standbys = all.stream()
                    .filter(e -> e.kindOrDefault() == Episode.Kind.STANDBY
                            && e.published().isEmpty())
                    .map(e -> line(read, e, shown, formats))
                    .toList();
            List<Line> published = all.stream()
                    .filter(e -> e.published().isPresent())
                    .sorted(Comparator.comparing((Episode e) -> e.published().get())
                            .reversed())
                    .limit(PUBLISHED)
                    .map(e -> line(read, e, shown, formats))
                    .toList();
            return new View(
                    head(ahead, settings, shown.isPresent()),
                    lead(ahead, slots, all, shown, formats),
                    SlotWords.one(settings),
                    slots,
                    standbys,
                    bank(shown),
                    shown.map(s -> weeks(s.forecast().weeksInHand())).orElse(""),
                    shown.flatMap(s -> BankOutlook.of(s.forecast(), settings, request.today(), formats)),
                    story,
                    published,
                    !all.isEmpty(),
                    untitled(read, formats),
                    EpisodeRightsPage.owed(read, all, settings, formats),
                    request.form("title"),
                    request.form(
                            "bank",
                            Map.of(
                                    "slot", request.today().toString(),
                                    "minutes", settings.targetMinutes().text())),
                    request.today());
        });
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        if (form.act().equals("title")) {
            long row = form.needed("row", Integer.class).orElse(0);
            String title = form.text("title", Episode.class, "title");
            return request.save(write -> {
                MondayEpisode.call(write, row, form.version(), title);
                return Saved.to("/episodes").saying("It is called “" + title + "”.");
            });
        }
        String title = form.neededText("title");
        Optional<LocalDate> slot = form.needed("slot", LocalDate.class);
        Optional<Quantity> minutes = form.needed("minutes", Quantity.class);
        return request.save(write -> {
            Stored<Episode> kept =
                    PublishFromBank.publish(write, slot.orElseThrow(), title, minutes.orElseThrow(), request.today());
            return Saved.to("/episodes/" + kept.value().id()).saying("Published from the story bank.");
        });
    }

    private static List<Untitled> untitled(Read read, Formats formats) {
        return EpisodeStore.TABLE.list(read).stream()
                .filter(row -> MondayEpisode.isUntitled(row.value())
                        && row.value().published().isEmpty())
                .map(row -> new Untitled(
                        row.row(),
                        row.version(),
                        row.value().id().value(),
                        "An episode"
                                + row.value()
                                        .slot()
                                        .map(day -> " for " + formats.date(day))
                                        .orElse("")
                                + " was made from what was "
                                + row.value().title().substring(0, 1).toLowerCase(Locale.ROOT)
                                + row.value().title().substring(1) + "."))
                .toList();
    }

    private static List<Line> slots(
            Read read, List<Episode> all, Settings settings, Optional<Forecasts.Shown> shown, Formats formats) {
        LocalDate today = formats.today();
        List<Line> lines = new ArrayList<>();
        List<Episode> late = all.stream()
                .filter(e -> e.published().isEmpty()
                        && e.slot().map(slot -> slot.isBefore(today)).orElse(false))
                .toList();
        late.forEach(e -> lines.add(line(read, e, shown, formats)));
        int count = 0;
        LocalDate day = today.isBefore(settings.firstSlot()) ? settings.firstSlot() : today;
        LocalDate last = day.plusWeeks(3L * SLOTS * settings.everyWeeks());
        while (count < SLOTS && day.isBefore(last)) {
            if (SlotRules.isSlot(day, settings)) {
                LocalDate slot = day;
                Optional<Episode> own = all.stream()
                        .filter(e -> e.slot().map(slot::equals).orElse(false))
                        .findFirst();
                boolean told = all.stream()
                        .anyMatch(e -> e.published().map(slot::equals).orElse(false));
                if (own.map(e -> e.published().isEmpty()).orElse(!told)) {
                    lines.add(own.map(e -> line(read, e, shown, formats))
                            .orElseGet(() -> new Line(
                                    Optional.of(slot),
                                    "",
                                    "",
                                    "Nothing planned",
                                    SlotWords.COULD_FILL,
                                    "open",
                                    "",
                                    "",
                                    "")));
                    count++;
                }
            }
            day = day.plusDays(1);
        }
        return lines;
    }

    static Line line(Read read, Episode episode, Optional<Forecasts.Shown> shown, Formats formats) {
        EpisodeSteps steps = EpisodeSteps.of(read, episode);
        Optional<Forecast.Episode> ahead =
                shown.flatMap(s -> s.forecast().episode(episode.id().value()));
        Optional<Double> chance = episode.cut().isPresent() && episode.slot().isPresent()
                ? Optional.of(1.0)
                : ahead.flatMap(Forecast.Episode::onTime);
        return new Line(
                episode.published().or(episode::slot),
                episode.id().value(),
                episode.number().map(n -> "no.\u00a0" + n).orElse(""),
                episode.title(),
                tells(steps, ahead, shown.map(Forecasts.Shown::names), formats),
                episode.published().isPresent()
                        ? ""
                        : chance.map(Chances::safety).orElse(""),
                chance.map(c -> episode.cut().isPresent() ? "ready" : Chances.words(c))
                        .orElse(""),
                steps.reel(),
                steps.words(formats));
    }

    private static String tells(
            EpisodeSteps steps, Optional<Forecast.Episode> ahead, Optional<Names> names, Formats formats) {
        String told = steps.tells().isEmpty() ? "" : "Tells " + Formats.list(steps.tells()) + ".";
        String late = ahead.filter(e -> steps.tells().size() > 1)
                .flatMap(Forecast.Episode::lateBy)
                .flatMap(id -> names.map(n -> " If it is late, it is by " + n.task(id) + "."))
                .orElse("");
        String from = ahead.filter(e -> e.onTime().map(c -> c < 0.8).orElse(false))
                .flatMap(Forecast.Episode::safeFrom)
                .map(day -> " Four chances in five from " + formats.date(day) + " on.")
                .orElse("");
        return told + late + from;
    }

    private static List<Line> coming(List<Line> slots, LocalDate today) {
        return slots.stream()
                .filter(line -> line.day().filter(today::isAfter).isEmpty())
                .toList();
    }

    private static String head(List<Line> slots, Settings settings, boolean forecast) {
        if (slots.isEmpty()) {
            return "No slots ahead";
        }
        if (!forecast) {
            return Formats.sentence(SlotWords.counted(slots.size(), settings)) + " ahead";
        }
        long safe = slots.stream().filter(line -> line.safety().equals("safe")).count();
        return safe(safe, slots.size(), settings);
    }

    /** {@code Five of the next eight Fridays are safe}. */
    static String safe(long safe, int of, Settings settings) {
        if (of == 1) {
            return "The next " + SlotWords.one(settings) + (safe == 1 ? " is safe" : " is not safe");
        }
        return safe == of
                ? "All of the next " + SlotWords.counted(of, settings) + " are safe"
                : Formats.sentence(safe == 0 ? "none" : Formats.number(safe)) + " of the next "
                        + SlotWords.counted(of, settings) + (safe == 1 ? " is safe" : " are safe");
    }

    /**
     * @param slots those ahead
     * @param listed these and the episodes whose slot has gone by
     */
    private static String lead(
            List<Line> slots, List<Line> listed, List<Episode> all, Optional<Forecasts.Shown> shown, Formats formats) {
        if (all.isEmpty()) {
            return "";
        }
        if (shown.isEmpty()) {
            return SlotWords.NOT_SAID;
        }
        List<String> parts = new ArrayList<>();
        for (String word : List.of("close", "at risk", "open")) {
            List<Line> these =
                    slots.stream().filter(line -> line.safety().equals(word)).toList();
            if (!these.isEmpty()) {
                parts.add(Formats.number(these.size())
                        + (these.size() == 1 ? " is " : " are ")
                        + word
                        + (word.equals("at risk")
                                ? ": "
                                        + Formats.list(these.stream()
                                                .map(line -> formats.dateShort(
                                                        line.day().orElseThrow()))
                                                .toList())
                                : ""));
            }
        }
        long late = listed.size() - slots.size();
        if (late > 0) {
            parts.add(Formats.counted(late, "episode is", "episodes are") + " past " + (late == 1 ? "its" : "their")
                    + " slot");
        }
        return parts.isEmpty() ? "" : Formats.sentence(String.join("; ", parts)) + ".";
    }

    private static String bank(Optional<Forecasts.Shown> shown) {
        return shown.filter(s -> !s.forecast().storyBank().isEmpty())
                .map(s -> {
                    long minutes = Math.round(s.forecast().storyBank().get(0).p50());
                    return minutes == 0
                            ? "Nothing is in the story bank."
                            : "About "
                                    + Formats.count(minutes, "minute of filmed story is", "minutes of filmed story are")
                                    + " not told yet.";
                })
                .orElse("");
    }

    private static String weeks(int weeks) {
        return weeks == 0
                ? "If nothing more were filmed, the next slot would stay empty."
                : "If nothing more were filmed, "
                        + (weeks == 1 ? "the next slot" : "the next " + Formats.number(weeks) + " slots")
                        + " could be filled.";
    }
}
