package weekwright.web.week;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.IsoFields;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weekwright.base.Codec;
import weekwright.base.Refused;
import weekwright.build.Emergency;
import weekwright.forecast.Forecasts;
import weekwright.forecast.WeekPlan;
import weekwright.render.Formats;
import weekwright.render.Frame;
import weekwright.web.kit.Access;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;

/**
 * The week's sheet: for each day who does what, which pictures are wanted, what is dangerous, what is delivered and what
 * goes out. The crew's own lines stand first; what is proposed comes from the order of work and is stored nowhere. Printed
 * it is one A4 page for the shop wall.
 */
public final class WeekPage implements Page {
    private static final int MOST_WEEKS_AHEAD = 8;

    private final WeekSheets sheets = new WeekSheets();

    /**
     * @param title {@code Week 48}
     * @param lead the episode due, and what is said about a week to come
     * @param fullness empty, fuller, fullest, or fullest and packed: how much the printed sheet has to shrink
     * @param emergency empty where nothing is set
     */
    public record View(
            String title,
            String lead,
            List<Day> days,
            List<Frame.Cell> emergency,
            String fullness,
            boolean crew,
            Optional<String> earlier,
            Optional<String> later,
            boolean empty) {}

    /**
     * A day.
     *
     * @param kind past, today or empty
     */
    public record Day(
            LocalDate date,
            String kind,
            List<Line> lines,
            List<String> rain,
            List<WantedShot> shots,
            List<String> onceOnly,
            List<Care> cautions,
            List<String> deliveries,
            List<String> orders,
            Optional<String> episode) {}

    /**
     * A line of a person.
     *
     * @param hours in minutes, 0 for none
     * @param edit where an own line is changed, or a proposal taken over; empty where it cannot be
     */
    public record Line(String person, String text, int hours, String clock, boolean own, boolean done, String edit) {}

    public record WantedShot(String text, boolean once, boolean captured, boolean off) {}

    /** @param camera what whoever films minds; empty on a day without filming */
    public record Care(String hazard, String hands, String camera) {}

    @Override
    public View show(Request request) {
        LocalDate today = request.today();
        LocalDate thisMonday = today.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        LocalDate monday = monday(request, thisMonday);
        LocalDate asOf = monday.equals(thisMonday) ? today : monday;
        WeekPlan plan = sheets.of(
                request.db(),
                asOf,
                monday.equals(thisMonday)
                        ? request.forecast().shown().map(Forecasts.Shown::forecast)
                        : Optional.empty());
        WeekFacts facts = request.read(read -> WeekFacts.of(read, monday));
        boolean crew = request.access() == Access.CREW;
        List<Day> days = new WeekDays(plan, facts, today, crew).days();
        Formats formats = new Formats(request.settings().project().currency(), today);
        return new View(
                "Week " + monday.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR),
                lead(days, formats, monday.isAfter(thisMonday)),
                days,
                emergency(request.settings().emergency()),
                fullness(days),
                crew,
                monday.isAfter(thisMonday)
                        ? Optional.of(
                                monday.minusWeeks(1).equals(thisMonday) ? "/week" : "/week?of=" + monday.minusWeeks(1))
                        : Optional.empty(),
                monday.isBefore(thisMonday.plusWeeks(MOST_WEEKS_AHEAD))
                        ? Optional.of("/week?of=" + monday.plusWeeks(1))
                        : Optional.empty(),
                days.stream().allMatch(day -> day.lines().isEmpty()));
    }

    private static LocalDate monday(Request request, LocalDate thisMonday) {
        String text = request.query("of");
        if (text.isEmpty()) {
            return thisMonday;
        }
        try {
            LocalDate day =
                    Codec.of(LocalDate.class).parse(text, request.settings().typed());
            LocalDate monday = day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
            if (monday.isBefore(thisMonday) || monday.isAfter(thisMonday.plusWeeks(MOST_WEEKS_AHEAD))) {
                throw new NotFound(
                        "There is a sheet for this week and the eight after it. What was done stands in the log.");
            }
            return monday;
        } catch (Refused refused) {
            throw new NotFound("\"" + text + "\" " + refused.rule() + ".");
        }
    }

    private static String lead(List<Day> days, Formats formats, boolean toCome) {
        String due = days.stream()
                .filter(day -> day.episode().isPresent())
                .map(day -> day.episode().get() + " is due " + formats.date(day.date()) + ".")
                .reduce((a, b) -> a + " " + b)
                .orElse("No episode is due.");
        return Formats.sentence(due) + (toCome ? " Proposed as if the work stood then as it stands today." : "");
    }

    private static List<Frame.Cell> emergency(Emergency set) {
        List<Frame.Cell> cells = new ArrayList<>();
        add(cells, "Call", set.number());
        add(cells, "We are at", set.address());
        add(cells, "Way in", set.wayIn());
        add(cells, "First aid", set.firstAider());
        add(cells, "Kit", set.kit());
        add(cells, "Shut-offs", set.shutOffs());
        return cells;
    }

    private static void add(List<Frame.Cell> cells, String label, String text) {
        if (!text.isEmpty()) {
            cells.add(new Frame.Cell(label, text));
        }
    }

    /** How many rows of text the sheet has, roughly, against what an A4 page takes. */
    private static String fullness(List<Day> days) {
        int rows = 0;
        for (Day day : days) {
            int left = day.lines().size() + day.rain().size();
            int middle = day.shots().size() * 2 + day.onceOnly().size();
            int right = day.cautions().size() * 4
                    + day.deliveries().size()
                    + day.orders().size()
                    + 1;
            rows += Math.max(3, Math.max(left, Math.max(middle, right))) + 1;
        }
        return rows <= 34 ? "" : rows <= 40 ? "fuller" : rows <= 46 ? "fullest" : "fullest packed";
    }
}
