package weekwright.web.episodes;

import java.time.LocalDate;
import java.time.temporal.IsoFields;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weekwright.build.Settings;
import weekwright.db.Read;
import weekwright.episodes.Episode;
import weekwright.episodes.SlotCalendar;
import weekwright.forecast.Forecast;
import weekwright.render.Chances;
import weekwright.render.Formats;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.parts.Outlook;
import weekwright.web.parts.SlotWords;

/** The slots of a year ahead, a line each: planned, empty or skipped, and what the forecast says of it. */
public final class EpisodesSlotsPage implements Page {
    /** From this chance of staying empty on a slot is in trouble. */
    static final double TROUBLE = 0.2;

    /**
     * @param cadence on which days episodes come out
     * @param late episodes not published whose slot is past
     */
    public record View(String head, String lead, String cadence, List<Line> late, List<Month> months) {}

    /** @param name {@code December 2026} */
    public record Month(String name, List<Line> lines) {}

    /**
     * A slot.
     *
     * @param kind planned, open or skipped
     * @param day {@code 4 Dec}
     * @param week of ISO 8601
     * @param id of its episode; empty where it has none
     * @param said what it tells, what could fill it, or why it is skipped
     * @param safety of the episode in time; empty where nothing is known
     * @param chance of staying empty in words
     * @param trouble whether something should be done
     */
    public record Line(
            String kind,
            LocalDate date,
            String day,
            int week,
            String id,
            String number,
            String title,
            String said,
            String safety,
            String chance,
            boolean trouble) {}

    @Override
    public View show(Request request) {
        Settings settings = request.settings();
        LocalDate today = request.today();
        Formats formats = request.formats();
        Optional<Forecast> forecast = Outlook.forecast(request);
        return request.read(read -> {
            List<Line> lines = new ArrayList<>();
            List<SlotCalendar.Slot> slots = SlotCalendar.of(read, today, today.plusYears(1));
            for (SlotCalendar.Slot slot : slots) {
                lines.add(line(read, settings, slot, forecast, formats));
            }
            List<Line> late = SlotCalendar.late(read, today).stream()
                    .map(slot -> line(read, settings, slot, forecast, formats))
                    .toList();
            return new View(
                    head(slots, settings),
                    lead(lines, forecast, formats),
                    SlotDays.cadence(settings),
                    late,
                    months(lines));
        });
    }

    private static Line line(
            Read read, Settings settings, SlotCalendar.Slot slot, Optional<Forecast> forecast, Formats formats) {
        Optional<Double> empty = forecast.flatMap(f -> f.emptyChance(slot.day()));
        Optional<Episode> episode = slot.episode();
        Optional<Double> ready = episode.flatMap(e -> e.cut().isPresent()
                ? Optional.of(1.0)
                : forecast.flatMap(f -> f.episode(e.id().value())).flatMap(Forecast.Episode::onTime));
        String said = slot.skipped()
                .map(why -> why.isEmpty() ? "No reason is written down." : why)
                .or(() -> episode.map(
                        e -> Formats.sentence(EpisodeSteps.of(read, e).words(formats)) + "."
                                + (slot.regular() ? "" : " This is no day on which episodes come out.")))
                .orElseGet(() -> SlotFillers.of(read, settings, slot.day(), forecast, formats)
                        .brief());
        boolean skipped = slot.skipped().isPresent() && episode.isEmpty();
        return new Line(
                skipped ? "skipped" : episode.isPresent() ? "planned" : "open",
                slot.day(),
                Formats.dayMonth(slot.day()),
                slot.day().get(IsoFields.WEEK_OF_WEEK_BASED_YEAR),
                episode.map(e -> e.id().value()).orElse(""),
                episode.flatMap(Episode::number)
                        .map(n -> "no." + Formats.NBSP + n)
                        .orElse(""),
                episode.map(Episode::title).orElse(skipped ? "Skipped" : "Nothing planned"),
                said,
                ready.map(Chances::safety).orElse(""),
                skipped ? "" : empty.map(SlotDays::empty).orElse(""),
                !skipped && empty.map(chance -> chance > TROUBLE).orElse(false));
    }

    private static List<Month> months(List<Line> lines) {
        List<Month> months = new ArrayList<>();
        List<Line> of = new ArrayList<>();
        String name = "";
        for (Line line : lines) {
            String its = Formats.monthYear(line.date());
            if (!its.equals(name) && !of.isEmpty()) {
                months.add(new Month(name, List.copyOf(of)));
                of.clear();
            }
            name = its;
            of.add(line);
        }
        if (!of.isEmpty()) {
            months.add(new Month(name, List.copyOf(of)));
        }
        return months;
    }

    private static String head(List<SlotCalendar.Slot> slots, Settings settings) {
        List<SlotCalendar.Slot> open = slots.stream()
                .filter(slot -> slot.regular() && slot.skipped().isEmpty())
                .toList();
        long all = open.size();
        long planned = open.stream().filter(slot -> slot.episode().isPresent()).count();
        return planned(planned, all, settings);
    }

    /** {@code Twelve of 50 Fridays ahead have their episode}. */
    static String planned(long planned, long all, Settings settings) {
        if (all == 0) {
            return "No slots ahead";
        }
        return Formats.sentence(planned == 0 ? "none" : Formats.number(planned)) + " of "
                + SlotWords.counted(all, settings) + " ahead "
                + (planned < 2 ? "has its episode" : "have their episode");
    }

    private static String lead(List<Line> lines, Optional<Forecast> forecast, Formats formats) {
        if (forecast.isEmpty()) {
            return SlotWords.NOT_SAID;
        }
        return lines.stream()
                .filter(Line::trouble)
                .findFirst()
                .map(line -> "The first in trouble is " + formats.date(line.date()) + formats.comingOrGone(line.date())
                        + ": " + line.chance() + ".")
                .orElse("None of them has more than one chance in five to stay empty.");
    }
}
