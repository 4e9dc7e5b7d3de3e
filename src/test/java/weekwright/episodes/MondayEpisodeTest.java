package weekwright.episodes;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import weekwright.base.Id;
import weekwright.base.Quantity;
import weekwright.base.Reading;
import weekwright.build.Publishing;
import weekwright.build.SettingsStore;
import weekwright.db.Stored;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

/** The sample's Monday is 23 November 2026; of its episodes those are taken out of the way that tell what was filmed before it. */
class MondayEpisodeTest {
    private static final LocalDate MONDAY = LocalDate.of(2026, 11, 23);
    private static final LocalDate WEDNESDAY = LocalDate.of(2026, 11, 25);
    private static final Reading FILE = Reading.file(2);
    private ServerFixture server;

    @BeforeEach
    void open() {
        server = ServerFixture.sample();
    }

    @AfterEach
    void close() {
        server.close();
    }

    private Optional<Stored<Episode>> make(LocalDate today) {
        return server.db().write("weekwright", write -> MondayEpisode.make(write, today));
    }

    private void untell() {
        server.db().write("ilse", write -> {
            TellStore.TABLE.deleteAll(write);
            return null;
        });
    }

    private List<String> told(Id episode) {
        return server.db().read(read -> TellStore.ofEpisode(read, episode)).stream()
                .map(row -> row.value().task()
                        + row.value().share().map(share -> " " + share.text()).orElse(""))
                .toList();
    }

    @Test
    void what_other_episodes_tell_makes_none() {
        long before = server.db().version();
        assertThat(make(WEDNESDAY)).isEmpty();
        assertThat(server.db().version()).isEqualTo(before);
    }

    @Test
    void what_was_filmed_in_the_seven_days_gets_the_next_free_slot_and_is_told_as_far_as_it_is_done() {
        untell();
        Episode made = make(WEDNESDAY).orElseThrow().value();
        assertThat(made.title()).isEqualTo("Filmed 16 November to 22 November");
        assertThat(MondayEpisode.isUntitled(made)).isTrue();
        assertThat(made.number()).contains(58);
        assertThat(made.slot()).contains(LocalDate.of(2027, 3, 5));
        List<String> told = told(made.id());
        assertThat(told).isNotEmpty();
        assertThat(server.db().read(SettingsStore::get).publishing().shootUntil())
                .isEmpty();
    }

    /** Stones.2 was dressed on Saturday; another film tells the first tenth of it. */
    @Test
    void a_task_that_goes_on_is_told_again_once_it_is_further_than_any_episode_tells() throws Exception {
        server.db().write("ilse", write -> {
            for (Stored<Tell> tell : TellStore.ofTask(write, new Id("stones.2"))) {
                TellStore.TABLE.update(
                        write,
                        tell.row(),
                        tell.version(),
                        TellStore.TABLE.shape().with(tell.value(), "share", Optional.of(Quantity.parse("0.1", FILE))));
            }
            return null;
        });
        Id made = make(WEDNESDAY).orElseThrow().value().id();
        assertThat(told(made)).hasSize(1).first().asString().matches("stones\\.2 0\\.[1-9][0-9]?");
    }

    @Test
    void late_in_the_week_it_gets_no_slot_that_is_past() throws Exception {
        untell();
        server.db().write("ilse", write -> {
            for (Stored<Episode> row : EpisodeStore.TABLE.list(write)) {
                if (row.value()
                        .slot()
                        .filter(day -> day.equals(LocalDate.of(2026, 11, 27)))
                        .isPresent()) {
                    EpisodeStore.TABLE.update(
                            write,
                            row.row(),
                            row.version(),
                            EpisodeStore.TABLE.shape().with(row.value(), "slot", Optional.empty()));
                }
            }
            return null;
        });
        assertThat(make(LocalDate.of(2026, 11, 28)).orElseThrow().value().slot())
                .contains(LocalDate.of(2027, 3, 5));
    }

    @Test
    void the_log_of_changes_says_that_the_program_made_it_and_takes_it_back_for_good() {
        untell();
        make(WEDNESDAY);
        Visitor ilse = server.as("ilse");
        Visitor.Reply history = ilse.get("/crew/history");
        assertThat(history.page().select("table.changes tbody tr").get(0).text())
                .startsWith(
                        "25 Nov 2026, 09:00 The program itself Episode “no. 58, Filmed 16 November to 22 November”");
        Visitor.Reply back = ilse.follow(
                ilse.form(history, "table.changes tbody tr:first-child form").send());
        assertThat(back.page().select(".flash p").text())
                .startsWith("Taken back: episode “no. 58, Filmed 16 November to 22 November”");
        assertThat(ilse.get("/episodes").page().select(".untitled")).isEmpty();
        assertThat(make(WEDNESDAY)).isEmpty();
    }

    @Test
    void it_is_made_once_for_a_monday_whatever_becomes_of_it() throws Exception {
        untell();
        Stored<Episode> made = make(MONDAY).orElseThrow();
        assertThat(make(WEDNESDAY)).isEmpty();
        server.db().write("ilse", write -> {
            for (Stored<Tell> tell : TellStore.ofEpisode(write, made.value().id())) {
                TellStore.TABLE.delete(write, tell.row(), tell.version());
            }
            EpisodeStore.TABLE.delete(write, made.row(), made.version());
            return null;
        });
        assertThat(make(LocalDate.of(2026, 11, 29))).isEmpty();
        assertThat(make(LocalDate.of(2026, 11, 30)).map(row -> row.value().title()))
                .contains("Filmed 23 November to 29 November");
    }

    @Test
    void the_seven_days_end_with_the_day_until_which_the_crew_films() throws Exception {
        server.db().write("ilse", write -> {
            Stored<Publishing> stored = SettingsStore.one(write, SettingsStore.PUBLISHING);
            SettingsStore.update(
                    write,
                    SettingsStore.PUBLISHING,
                    stored.version(),
                    SettingsStore.PUBLISHING.shape().with(stored.value(), "shoot_until", "Thursday 17:00"));
            return null;
        });
        MondayEpisode.Days days = server.db().read(read -> MondayEpisode.days(MONDAY, SettingsStore.get(read)));
        assertThat(days.title()).isEqualTo("Filmed 13 November to 19 November");
    }

    @Test
    void only_its_title_is_asked() {
        untell();
        make(WEDNESDAY);
        Visitor ilse = server.as("ilse");
        Visitor.Reply page = ilse.get("/episodes");
        assertThat(page.page().select(".untitled p").text())
                .isEqualTo("An episode for 5 March 2027 was made from what was filmed 16 November to 22 November.");
        Visitor.Reply refused =
                ilse.form(page, "form.untitled").with("title", " ").press("title");
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles()).containsExactly("is missing; write what it is called");
        Visitor.Reply named = ilse.follow(
                ilse.form(refused, "form.untitled").with("title", "Gudgeons in").press("title"));
        assertThat(named.page().select(".flash p").text()).isEqualTo("It is called “Gudgeons in”.");
        assertThat(named.page().select(".untitled")).isEmpty();
    }
}
