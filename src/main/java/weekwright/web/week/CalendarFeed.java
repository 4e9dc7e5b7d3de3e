package weekwright.web.week;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.LongSupplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import weekwright.account.CalendarLinkStore;
import weekwright.account.Codes;
import weekwright.account.Throttle;
import weekwright.base.Id;
import weekwright.build.CrewMember;
import weekwright.db.Db;
import weekwright.files.calendar.CalendarEntry;
import weekwright.files.calendar.ICalendar;
import weekwright.files.calendar.ToldEntryStore;
import weekwright.forecast.Forecast;
import weekwright.forecast.Forecasts;
import weekwright.forecast.Proposals;
import weekwright.forecast.WeekPlan;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Fragment;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Request;

/**
 * Calendars for other programs, behind a secret address and without a log-in: {@code slots.ics} and {@code deliveries.ics}
 * for what concerns all, {@code week.ics} for a person. Wrong secrets are throttled by address; a right one never is. What was
 * made is kept while nothing changes, so that asking often costs little. Safe for use from several threads.
 */
public final class CalendarFeed implements Fragment {
    private static final Logger LOG = LoggerFactory.getLogger("weekwright.account");
    private static final String UNKNOWN =
            "There is no calendar at this address. It may have been renewed: ask the crew.";
    private static final int MOST_KEPT = 40;

    private final Throttle throttle;
    private final Map<String, byte[]> made = new LinkedHashMap<>();
    private Optional<State> state = Optional.empty();

    private record State(
            Db db, long version, LocalDate day, Optional<Instant> forecast, Optional<Proposals> proposals) {}

    /** @param nanos a counter that nobody sets */
    public CalendarFeed(LongSupplier nanos) {
        throttle = new Throttle(nanos);
    }

    @Override
    public Answer answer(Request request) {
        if (!request.hasProject()) {
            throw new NotFound(UNKNOWN);
        }
        Optional<CalendarLinkStore.CalendarLink> found =
                request.read(read -> CalendarLinkStore.find(read, request.part("secret")));
        if (found.isEmpty()) {
            LOG.info("a calendar's address that leads nowhere was asked for");
            return unknown(throttle.ask("calendar", request.remoteAddress()));
        }
        CalendarLinkStore.CalendarLink link = found.get();
        byte[] body = body(request, link, request.part("feed"));
        String tag = "\"" + Codes.sha256(new String(body, StandardCharsets.UTF_8)) + "\"";
        return Answer.tagged(request, ICalendar.TYPE, body, tag, "private, no-cache");
    }

    private static Answer unknown(Duration wait) {
        if (wait.isZero()) {
            throw new NotFound(UNKNOWN);
        }
        String seconds = String.valueOf(Math.max(1, wait.toSeconds()));
        return new Answer.Body(
                429,
                "text/plain; charset=utf-8",
                ("Too many wrong addresses from here. Seconds to wait: " + seconds + "\n")
                        .getBytes(StandardCharsets.UTF_8),
                Map.of("Retry-After", seconds, "Cache-Control", "no-store"));
    }

    private synchronized byte[] body(Request request, CalendarLinkStore.CalendarLink link, String feed) {
        Optional<Forecasts.Shown> shown = request.forecast().shown();
        State now = new State(
                request.db(),
                request.version(),
                request.today(),
                shown.map(Forecasts.Shown::madeAt),
                request.forecasts().proposals());
        if (!state.equals(Optional.of(now)) || made.size() > MOST_KEPT) {
            made.clear();
            state = Optional.of(now);
        }
        String key = link.crew().map(Id::folded).orElse("") + "/" + feed;
        byte[] kept = made.get(key);
        if (kept == null) {
            kept = text(request, link, feed, shown.map(Forecasts.Shown::forecast))
                    .getBytes(StandardCharsets.UTF_8);
            made.put(key, kept);
        }
        return kept;
    }

    private String text(
            Request request, CalendarLinkStore.CalendarLink link, String feed, Optional<Forecast> forecast) {
        String project = request.settings().project().name();
        LocalDate today = request.today();
        if (link.crew().isEmpty() && feed.equals("slots.ics")) {
            return told(request, project + ", slots", request.read(read -> CalendarEntries.slots(read, today)));
        }
        if (link.crew().isEmpty() && feed.equals("deliveries.ics")) {
            return told(
                    request,
                    project + ", deliveries and orders",
                    request.read(read -> CalendarEntries.deliveries(read, forecast, today)));
        }
        CrewMember member = request.crew().stream()
                .filter(one -> link.crew().filter(id -> id.same(one.id())).isPresent())
                .findFirst()
                .filter(one -> feed.equals("week.ics"))
                .orElseThrow(() -> new NotFound(UNKNOWN));
        return told(request, project + ", " + member.name(), week(request, member.id(), forecast));
    }

    /** From this Monday to the Sunday of the next week. */
    private static List<CalendarEntry> week(Request request, Id crew, Optional<Forecast> forecast) {
        LocalDate today = request.today();
        Optional<Proposals> proposals = request.forecasts().proposals();
        return request.read(read -> {
            List<CalendarEntry> entries = new ArrayList<>();
            for (LocalDate monday :
                    List.of(Weeks.monday(today), Weeks.monday(today).plusWeeks(1))) {
                entries.addAll(CalendarEntries.week(
                        request.settings(),
                        WeekPlan.of(read, monday, today, proposals, forecast),
                        WeekFacts.of(read, monday),
                        crew));
            }
            return entries;
        });
    }

    private static String told(Request request, String name, List<CalendarEntry> entries) {
        return ICalendar.text(
                name,
                request.db().projectKey(),
                ToldEntryStore.tell(request.db(), CalendarEntries.once(entries), request.today()));
    }
}
