package weekwright.web.crew;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import weekwright.account.CalendarLinkStore;
import weekwright.base.Id;
import weekwright.build.CrewMember;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** The secret addresses under which other calendars can read the slots, the deliveries and each person's week. */
public final class CrewCalendarsPage implements Page {
    private static final Logger LOG = LoggerFactory.getLogger("weekwright.account");
    private static final String ALL = "";

    /** What concerns all first, then the people. */
    public record View(List<Line> lines, Form form) {}

    /**
     * A secret address.
     *
     * @param who the person's id; empty for what concerns all
     * @param since the day on which it was made; empty where there is none
     */
    public record Line(String who, String name, String holds, Optional<LocalDate> since) {}

    @Override
    public View show(Request request) {
        Map<String, Instant> since = request.read(CalendarLinkStore::since);
        List<Line> lines = new ArrayList<>();
        lines.add(line(
                request,
                since,
                ALL,
                "Slots and deliveries",
                "the slots of a year; deliveries, and the days by which orders go out"));
        for (CrewMember member : request.crew()) {
            lines.add(line(
                    request,
                    since,
                    member.id().value(),
                    member.name(),
                    "the work of this week and the next, without rest and care"));
        }
        String act = request.wasRefused("end") ? "end" : "renew";
        return new View(lines, request.form(act));
    }

    private static Line line(Request request, Map<String, Instant> since, String who, String name, String holds) {
        return new Line(
                who,
                name,
                holds,
                Optional.ofNullable(since.get(who.toLowerCase(Locale.ROOT)))
                        .map(at -> LocalDate.ofInstant(at, request.settings().zone())));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        String who = form.text("who");
        Optional<Id> crew = who.equals(ALL)
                ? Optional.empty()
                : form.oneOf("who", request.crew().stream().map(CrewMember::id).toList());
        form.check();
        String name = crew.flatMap(id ->
                        request.crew().stream().filter(one -> one.id().same(id)).findFirst())
                .map(one -> one.name() + "’s week")
                .orElse("slots and deliveries");
        if (form.act().equals("end")) {
            request.db().write(request.who(), write -> {
                CalendarLinkStore.end(write, crew);
                return null;
            });
            LOG.info("a calendar's address was ended");
            return Answer.to(Saved.to("/crew/calendars").saying("The address of " + name + " has ended."));
        }
        String secret = request.db().write(request.who(), write -> CalendarLinkStore.renew(write, crew));
        LOG.info("a calendar's address was made");
        String address = request.origin() + "/calendars/" + secret + "/";
        return Answer.to(Saved.to("/crew/calendars")
                .saying((crew.isPresent()
                                ? "Address of " + name + ": " + address + "week.ics."
                                : "Addresses of slots and deliveries: " + address + "slots.ics and " + address
                                        + "deliveries.ics.")
                        + " Copy it now: it is not shown again, and an earlier one has ended."));
    }
}
