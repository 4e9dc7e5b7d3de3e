package weekwright.web.episodes;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.build.Publishing;
import weekwright.build.SettingsStore;
import weekwright.db.Stored;
import weekwright.episodes.Episode;
import weekwright.episodes.EpisodeStore;
import weekwright.testkit.OakMill;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class EpisodesSlotsPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    static void everyWeeks(ServerFixture server, int weeks) throws Exception {
        server.db().write("test", write -> {
            Stored<Publishing> row = SettingsStore.one(write, SettingsStore.PUBLISHING);
            SettingsStore.update(
                    write,
                    SettingsStore.PUBLISHING,
                    row.version(),
                    SettingsStore.PUBLISHING.shape().with(row.value(), "every_weeks", Optional.of(weeks)));
            return null;
        });
    }

    @Test
    void a_year_of_slots_is_listed_with_what_stands_on_each() throws Exception {
        SERVER.as("bram").get("/episodes");
        SERVER.app().forecasts().orElseThrow().await();
        Visitor.Reply page = SERVER.as("bram").get("/episodes/slots");
        assertThat(page.page().select("h1").text()).isEqualTo("Two of 52 Fridays ahead have their episode");
        assertThat(page.page().select(".page-head .lead").text())
                .endsWith("An episode comes out every Friday at 17:00.");
        assertThat(page.page().select(".slots-row")).hasSize(52);
        assertThat(page.page().select(".slots-row").get(0).select(".slots-what").text())
                .startsWith("Sill stones no. 11 Ready");
        assertThat(page.page()
                        .select(".slots-row")
                        .get(2)
                        .select(".slots-what b")
                        .text())
                .isEqualTo("Nothing planned");
        assertThat(page.page()
                        .select(".slots-row")
                        .get(2)
                        .select(".slots-what p")
                        .text())
                .isEqualTo("A standby could fill it: Why a weir.");
        assertThat(page.page()
                        .select(".slots-row")
                        .get(2)
                        .select(".slots-safe p")
                        .text())
                .isEqualTo("One in ten that it stays empty");
        assertThat(page.page().select(".rule-head h2").eachText())
                .startsWith("November 2026", "December 2026", "January 2027")
                .endsWith("November 2027");
    }

    @Test
    void the_weeks_of_a_year_of_53_are_those_of_iso_8601() {
        // ISO 8601:2004, 2.2.10: week 1 is the one with the first Thursday; so 2026 has 53 weeks, and 1 January 2027, a
        // Friday, is in week 53 of 2026.
        Visitor.Reply page = SERVER.as("bram").get("/episodes/slots");
        assertThat(week(page, "2026-12-25")).isEqualTo("week 52");
        assertThat(week(page, "2027-01-01")).isEqualTo("week 53");
        assertThat(week(page, "2027-01-08")).isEqualTo("week 1");
    }

    private static String week(Visitor.Reply page, String date) {
        return page.page()
                .select(".slots-row:has(time[datetime=" + date + "]) .slots-day .quiet")
                .text();
    }

    @Test
    void every_second_week_there_is_a_slot_and_the_words_say_so() throws Exception {
        try (ServerFixture server = ServerFixture.small()) {
            everyWeeks(server, 2);
            Visitor.Reply page = server.as("bram").get("/episodes/slots");
            assertThat(page.page().select("h1").text()).isEqualTo("One of 26 slots ahead has its episode");
            assertThat(page.page().select(".page-head .lead").text())
                    .endsWith("An episode comes out every second Friday at 17:00.");
            assertThat(page.page().select(".slots-row time").eachAttr("datetime"))
                    .startsWith("2026-11-27", "2026-12-04", "2026-12-11", "2026-12-25");
            assertThat(page.page()
                            .select(".slots-row")
                            .get(1)
                            .select(".slots-what p")
                            .text())
                    .isEqualTo("0 of 1 shot. This is no day on which episodes come out.");
            everyWeeks(server, 4);
            assertThat(server.as("bram")
                            .get("/episodes/slots")
                            .page()
                            .select(".lead")
                            .text())
                    .endsWith("An episode comes out on a Friday every four weeks at 17:00.");
        }
    }

    @Test
    void an_episode_whose_slot_is_past_stands_first() throws Exception {
        try (ServerFixture server = ServerFixture.small()) {
            Stored<Episode> boards = OakMill.find(server.db(), EpisodeStore.TABLE, "ep.12");
            server.db().write("test", write -> {
                Optional<LocalDate> past = Optional.of(LocalDate.of(2026, 11, 13));
                EpisodeStore.TABLE.update(
                        write,
                        boards.row(),
                        boards.version(),
                        EpisodeStore.TABLE.shape().with(boards.value(), "slot", past));
                return null;
            });
            Visitor.Reply page = server.as("bram").get("/episodes/slots");
            assertThat(page.page()
                            .select("section[aria-labelledby=late-head] .slots-row b")
                            .eachText())
                    .containsExactly("13 Nov", "Boards for the gate");
        }
    }
}
