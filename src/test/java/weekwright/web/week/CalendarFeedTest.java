package weekwright.web.week;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import weekwright.account.CalendarLinkStore;
import weekwright.build.WeekLine;
import weekwright.build.WeekLineStore;
import weekwright.db.Stored;
import weekwright.db.Write;
import weekwright.funds.Material;
import weekwright.funds.MaterialStore;
import weekwright.testkit.OakMill;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SmallProject;
import weekwright.testkit.Visitor;

/** Feeds as a program without a log-in gets them, read back by biweekly, an iCalendar library. */
class CalendarFeedTest {
    private static String made(ServerFixture server, String who, int which) {
        Visitor ilse = server.as("ilse");
        Visitor.Reply done =
                ilse.follow(ilse.form(ilse.get("/crew/calendars"), "form:has(input[name=who][value='" + who + "'])")
                        .press("renew"));
        return Pattern.compile("/calendars/[^ ]+\\.ics")
                .matcher(done.page().select(".flash p").text())
                .results()
                .map(found -> found.group())
                .toList()
                .get(which);
    }

    private static Map<String, VEvent> events(Visitor.Reply reply) {
        assertThat(reply.status()).isEqualTo(200);
        assertThat(reply.header("content-type")).isEqualTo("text/calendar; charset=utf-8");
        ICalendar calendar = Biweekly.parse(reply.body()).first();
        assertThat(calendar.validate(biweekly.ICalVersion.V2_0).isEmpty()).isTrue();
        Map<String, VEvent> events = new TreeMap<>();
        for (VEvent event : calendar.getEvents()) {
            assertThat(events.put(event.getUid().getValue().replaceFirst("@.*", ""), event))
                    .isNull();
        }
        return events;
    }

    private static Instant start(VEvent event) {
        return event.getDateStart().getValue().toInstant();
    }

    @Test
    void slots_stand_at_their_hour_and_a_moved_one_keeps_its_name_and_has_its_number_raised() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor bram = server.as("bram");
            Visitor stranger = server.stranger();
            String address = made(server, "", 0);
            bram.follow(bram.form(bram.get("/episodes/slots/2026-12-25"))
                    .with("reason", "Christmas")
                    .press("skip"));
            Visitor.Reply first = stranger.get(address);
            Map<String, VEvent> before = events(first);
            assertThat(before)
                    .containsKeys("slot-ep.10", "slot-ep.11", "slot-ep.12", "open-2026-12-11")
                    .doesNotContainKeys("open-2026-12-25", "slot-ep.s1");
            assertThat(before).hasSize(52);
            assertThat(before.get("slot-ep.12").getSummary().getValue()).isEqualTo("No. 12, Boards for the gate");
            assertThat(start(before.get("slot-ep.12"))).isEqualTo("2026-12-04T16:00:00Z");
            assertThat(start(before.get("open-2027-07-02"))).isEqualTo("2027-07-02T15:00:00Z");
            assertThat(before.get("slot-ep.12").getSequence().getValue()).isZero();
            assertThat(first.body()).doesNotContain("Christmas", "\u20ac", "EUR");
            bram.follow(bram.form(bram.get("/episodes/ep.12/slot"))
                    .with("slot", "2026-12-11")
                    .press("move"));
            Map<String, VEvent> after = events(stranger.get(address));
            assertThat(start(after.get("slot-ep.12"))).isEqualTo("2026-12-11T16:00:00Z");
            assertThat(after.get("slot-ep.12").getSequence().getValue()).isEqualTo(1);
            assertThat(after.get("slot-ep.11").getSequence().getValue()).isZero();
            assertThat(after).containsKey("open-2026-12-04").doesNotContainKey("open-2026-12-11");
            assertThat(after.get("slot-ep.12").getUid())
                    .isEqualTo(before.get("slot-ep.12").getUid());
        }
    }

    @Test
    void what_has_not_changed_is_not_sent_again() {
        try (ServerFixture server = ServerFixture.small()) {
            String address = made(server, "", 0);
            Visitor stranger = server.stranger();
            Visitor.Reply first = stranger.get(address);
            String tag = first.header("etag");
            assertThat(tag).matches("\"[A-Za-z0-9_-]{43}\"");
            assertThat(first.header("cache-control")).isEqualTo("private, no-cache");
            assertThat(first.header("set-cookie")).isEmpty();
            Visitor.Reply same = stranger.get(address, "If-None-Match", "W/" + tag);
            assertThat(same.status()).isEqualTo(304);
            assertThat(same.body()).isEmpty();
            long version = server.db().version();
            Visitor ilse = server.as("ilse");
            ilse.follow(ilse.form(ilse.get("/log"), "form[data-log]")
                    .with("hours", "1")
                    .send());
            assertThat(server.db().version()).isEqualTo(version + 1);
            assertThat(stranger.get(address, "If-None-Match", tag).status()).isEqualTo(304);
            Visitor bram = server.as("bram");
            bram.follow(bram.form(bram.get("/episodes/slots/2026-12-25")).press("skip"));
            assertThat(stranger.get(address, "If-None-Match", tag).status()).isEqualTo(200);
        }
    }

    @Test
    void deliveries_and_the_days_by_which_orders_go_out_stand_for_the_whole_day_without_money() throws Exception {
        try (ServerFixture server = ServerFixture.small()) {
            Stored<Material> iron = OakMill.find(server.db(), MaterialStore.TABLE, "mat.2");
            server.db().write("test", write -> {
                var shape = MaterialStore.TABLE.shape();
                Material ordered = shape.with(iron.value(), "ordered", Optional.of(LocalDate.of(2026, 11, 24)));
                ordered = shape.with(ordered, "promised", Optional.of(LocalDate.of(2026, 12, 1)));
                return MaterialStore.TABLE.update(write, iron.row(), iron.version(), ordered);
            });
            String address = made(server, "", 1);
            server.as("ilse").get("/ahead");
            server.app().forecasts().orElseThrow().await();
            Visitor.Reply reply = server.stranger().get(address);
            Map<String, VEvent> events = events(reply);
            assertThat(events).containsOnlyKeys("delivery-mat.2", "order-mat.1");
            VEvent delivery = events.get("delivery-mat.2");
            assertThat(delivery.getSummary().getValue()).isEqualTo("Delivery: Flat iron, 6 m");
            assertThat(delivery.getDescription().getValue()).isEqualTo("From Iron yard.");
            assertThat(delivery.getDateStart().getValue().hasTime()).isFalse();
            assertThat(delivery.getDateStart().getValue().getRawComponents().getDate())
                    .isEqualTo(1);
            assertThat(events.get("order-mat.1").getSummary().getValue())
                    .isEqualTo("Order, overdue since 7 October 2026: Oak boards, 14 m");
            assertThat(events.get("order-mat.1")
                            .getDateStart()
                            .getValue()
                            .getRawComponents()
                            .getDate())
                    .isEqualTo(25);
            assertThat(reply.body()).doesNotContain("21.5", "301", "\u20ac", "EUR");
        }
    }

    @Test
    void a_persons_work_stands_in_their_own_calendar_alone_without_rest_and_care() throws Exception {
        try (ServerFixture server = ServerFixture.small()) {
            server.db().write("test", write -> {
                line(write, "w.1", "kind", "errand", "from", "09:00", "to", "10:30", "text", "Fetch the iron");
                line(write, "w.2", "kind", "rest", "hours", "8", "text", "Away");
                line(write, "w.3", "kind", "care", "hours", "2", "text", "Doctor");
                line(write, "w.4", "kind", "errand", "hours", "1", "text", "Sweep, stack; oil");
                return null;
            });
            String address = made(server, "ilse", 0);
            server.as("ilse").get("/week");
            server.app().forecasts().orElseThrow().await();
            Visitor.Reply reply = server.stranger().get(address);
            Map<String, VEvent> events = events(reply);
            assertThat(events).containsKeys("line-w.1", "line-w.4").doesNotContainKeys("line-w.2", "line-w.3");
            assertThat(events.keySet()).anyMatch(uid -> uid.startsWith("plan-2026-11-26-ilse-work-"));
            assertThat(events.keySet()).noneMatch(uid -> uid.contains("bram"));
            assertThat(start(events.get("line-w.1"))).isEqualTo("2026-11-27T08:00:00Z");
            assertThat(events.get("line-w.1").getDateEnd().getValue().toInstant())
                    .isEqualTo("2026-11-27T09:30:00Z");
            assertThat(events.get("line-w.1").getSummary().getValue()).isEqualTo("Errand: Fetch the iron");
            assertThat(events.get("line-w.4").getSummary().getValue()).isEqualTo("Errand: Sweep, stack; oil, 1 h");
            assertThat(reply.body()).doesNotContain("Away", "Doctor");
            assertThat(server.stranger()
                            .get(address.replace("week.ics", "slots.ics"))
                            .status())
                    .isEqualTo(404);
        }
    }

    private static void line(Write write, String id, String... more) {
        String[] texts = new String[6 + more.length];
        System.arraycopy(new String[] {"id", id, "date", "2026-11-27", "crew", "ilse"}, 0, texts, 0, 6);
        System.arraycopy(more, 0, texts, 6, more.length);
        WeekLineStore.TABLE.insert(write, SmallProject.of(WeekLine.class, texts));
    }

    @Test
    void a_feed_needs_no_log_in_where_everything_else_does_and_nothing_more_opens() {
        try (ServerFixture server = ServerFixture.small()) {
            String address = made(server, "noor", 0);
            server.giveLogIn("ilse", "oak pegs and tallow");
            Visitor stranger = server.stranger();
            assertThat(stranger.get("/week").status()).isEqualTo(303);
            assertThat(stranger.get(address).status()).isEqualTo(200);
            assertThat(stranger.method("HEAD", address).status()).isEqualTo(200);
            assertThat(stranger.post(address, "").status()).isEqualTo(405);
            Map<String, Instant> links = server.db().read(CalendarLinkStore::since);
            assertThat(links).containsOnlyKeys("noor");
        }
    }

    @Test
    void who_guesses_is_made_to_wait() {
        try (ServerFixture server = ServerFixture.small()) {
            String address = made(server, "", 0);
            Visitor stranger = server.stranger();
            for (int i = 0; i < 5; i++) {
                assertThat(stranger.get("/calendars/guess" + i + "/slots.ics").status())
                        .isEqualTo(404);
            }
            Visitor.Reply late = stranger.get("/calendars/guess/slots.ics");
            assertThat(late.status()).isEqualTo(429);
            assertThat(late.header("retry-after")).isEqualTo("1");
            assertThat(late.body()).isEqualTo("Too many wrong addresses from here. Seconds to wait: 1\n");
            assertThat(stranger.get(address).status()).isEqualTo(200);
        }
    }

    @Test
    void a_folder_without_a_project_has_no_calendar() {
        try (ServerFixture server = ServerFixture.empty()) {
            assertThat(server.stranger().get("/calendars/x/slots.ics").status()).isEqualTo(404);
        }
    }
}
