package weekwright.web.week;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import weekwright.db.Read;
import weekwright.forecast.Forecast;
import weekwright.forecast.Forecasts;
import weekwright.forecast.Proposals;
import weekwright.forecast.WeekPlan;
import weekwright.render.Formats;
import weekwright.render.Frame;
import weekwright.web.kit.Access;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.parts.EmergencyCells;
import weekwright.web.parts.StoryRows;

/**
 * The week's sheet: for each day who does what, which pictures are wanted, what is dangerous, what is delivered and what
 * goes out. The crew's own lines stand first; what is proposed comes from the order of work and is stored nowhere. Printed
 * it is one A4 page for the shop wall.
 */
public final class WeekPage implements Page {
    private static final int MOST_WEEKS_AHEAD = 8;

    /**
     * @param title {@code Week 48}
     * @param lead the episode due, and what is said about a week to come
     * @param fullness empty, fuller, fullest, or fullest and packed: how much the printed sheet has to shrink
     * @param emergency empty where nothing is set
     * @param key names the forecast whose order of work is shown; the script asks whether there is another
     * @param moving whether newer proposals are being made
     * @param proposed whether any order of work is known yet
     * @param over whether the week lies before this one
     * @param story work that gives story, where little is in hand; empty otherwise
     * @param overWeek the address of the week that is held against its plan: this one if it is over, else the last one
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
            boolean empty,
            String here,
            String key,
            boolean moving,
            boolean proposed,
            boolean over,
            String overWeek,
            WeekAgainst against,
            List<Left> left,
            String words,
            Optional<StoryRows> story) {}

    /** A line that was not got to: what it was, and the form that moves it to the day it is offered for. */
    public record Left(String text, LocalDate from, LocalDate to, String link) {}

    /**
     * A day.
     *
     * @param kind past, today or empty
     * @param said who said by their own address that they come or cannot
     * @param conflicts what does not go together on it
     */
    public record Day(
            LocalDate date,
            String kind,
            List<Line> lines,
            List<String> rain,
            List<WantedShot> shots,
            List<String> onceOnly,
            List<String> said,
            List<String> conflicts,
            List<Care> cautions,
            List<String> deliveries,
            List<String> orders,
            Optional<String> episode) {
        /** Whether it is over, lies before the build began, and holds nothing. */
        boolean isBefore(LocalDate started) {
            return kind.equals("past") && date.isBefore(started) && lines.isEmpty() && episode.isEmpty();
        }
    }

    /**
     * A line of a person.
     *
     * @param hours in minutes, 0 for none
     * @param edit where an own line is changed, or a proposal taken over; empty where it cannot be
     */
    public record Line(String person, String text, int hours, String clock, boolean own, boolean done, String edit) {}

    public record WantedShot(long row, String text, boolean must, boolean once, boolean captured, boolean off) {}

    /** @param camera what whoever films minds; empty on a day without filming */
    public record Care(String hazard, String hands, String camera) {}

    @Override
    public View show(Request request) {
        LocalDate today = request.today();
        LocalDate thisMonday = Weeks.monday(today);
        LocalDate monday = monday(request, thisMonday);
        // what is known is read before anything newer is asked for
        Optional<Proposals> proposals = request.forecasts().proposals();
        Optional<StoryRows> story = monday.equals(thisMonday) ? StoryRows.ifThin(request) : Optional.empty();
        Forecasts.Look look = request.forecast();
        Optional<Forecast> forecast = look.shown().map(Forecasts.Shown::forecast);
        boolean crew = request.access() == Access.CREW;
        record Seen(WeekPlan plan, WeekFacts facts, WeekAgainst against, List<Left> left) {}
        LocalDate over = monday.isBefore(thisMonday) ? monday : thisMonday.minusWeeks(1);
        Seen seen = request.read(read -> new Seen(
                WeekPlan.of(read, monday, today, proposals, forecast),
                WeekFacts.of(read, monday),
                against(request, read, over),
                left(read, today)));
        LocalDate started = request.settings().project().started();
        List<Day> days = new WeekDays(seen.plan(), seen.facts(), today, crew)
                .days().stream().filter(day -> !day.isBefore(started)).toList();
        Formats formats = request.formats();
        return new View(
                Weeks.title(monday),
                lead(days, formats, monday.compareTo(thisMonday)),
                days,
                EmergencyCells.of(request.settings().emergency()),
                fullness(days),
                crew,
                monday.isAfter(first(request))
                        ? Optional.of(Weeks.address(monday.minusWeeks(1), today))
                        : Optional.empty(),
                monday.isBefore(thisMonday.plusWeeks(MOST_WEEKS_AHEAD))
                        ? Optional.of(Weeks.address(monday.plusWeeks(1), today))
                        : Optional.empty(),
                days.stream().allMatch(day -> day.lines().isEmpty()),
                Weeks.address(monday, today),
                look.key(),
                look.state() == Forecasts.State.RUNNING
                        && !monday.isBefore(thisMonday)
                        && proposals
                                .filter(one -> one.know(request.version(), today))
                                .isEmpty(),
                proposals.isPresent(),
                monday.isBefore(thisMonday),
                Weeks.address(over, today),
                seen.against(),
                crew && monday.equals(thisMonday) ? seen.left() : List.of(),
                crew ? "/week/words?week=" + Weeks.name(monday) : "",
                story);
    }

    private static List<Left> left(Read read, LocalDate today) {
        return LeftOver.of(read, today).stream()
                .map(one -> {
                    var line = one.line().value();
                    WeekFacts facts = WeekFacts.of(read, Weeks.monday(line.date()));
                    return new Left(
                            facts.person(line.crew().map(Object::toString).orElse("")) + ", "
                                    + WeekDays.text(line, facts),
                            line.date(),
                            one.to(),
                            "/week/lines/" + one.line().row() + "/edit?to=" + one.to());
                })
                .toList();
    }

    private static WeekAgainst against(Request request, Read read, LocalDate monday) {
        Optional<WeekPlan> plan = request.forecasts()
                .proposedOn(monday)
                .map(then -> WeekPlan.of(read, monday, monday, Optional.of(then), Optional.empty()));
        return WeekAgainst.of(plan, WeekFacts.of(read, monday), monday);
    }

    /** The first week that can be looked at: the one in which the project was started. */
    private static LocalDate first(Request request) {
        return Weeks.monday(request.settings().project().started());
    }

    private static LocalDate monday(Request request, LocalDate thisMonday) {
        LocalDate monday = Weeks.asked(request);
        if (monday.isAfter(thisMonday.plusWeeks(MOST_WEEKS_AHEAD)) || monday.isBefore(first(request))) {
            throw new NotFound(
                    "There is a sheet for each week from the start of the build to the eighth after this one.");
        }
        return monday;
    }

    private static String lead(List<Day> days, Formats formats, int toCome) {
        String due = days.stream()
                .filter(day -> day.episode().isPresent())
                .map(day -> day.episode().get() + (toCome < 0 ? " was due " : " is due ") + formats.date(day.date())
                        + (toCome < 0 ? "" : formats.comingOrGone(day.date())) + ".")
                .reduce((a, b) -> a + " " + b)
                .orElse(toCome < 0 ? "No episode was due." : "No episode is due.");
        return Formats.sentence(due) + (toCome > 0 ? " Proposed as the order of work has it today." : "");
    }

    /** How many rows of text the sheet has, roughly, against what an A4 page takes. */
    private static String fullness(List<Day> days) {
        int rows = 0;
        for (Day day : days) {
            int left = day.lines().size() + day.rain().size();
            int middle = day.shots().size() * 3 + day.onceOnly().size();
            int right = day.cautions().size() * 5
                    + day.conflicts().size() * 3
                    + day.deliveries().size()
                    + day.orders().size()
                    + 1;
            rows += Math.max(3, Math.max(left, Math.max(middle, right))) + 1;
        }
        return rows <= 34 ? "" : rows <= 40 ? "fuller" : rows <= 46 ? "fullest" : "fullest packed";
    }
}
