package weekwright.web.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import weekwright.base.Money;
import weekwright.build.CrewMember;
import weekwright.build.CrewMemberStore;
import weekwright.build.Settings;
import weekwright.build.SettingsStore;
import weekwright.funds.LedgerEntry;
import weekwright.funds.LedgerEntryStore;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class StartNewPageTest {
    private ServerFixture server;
    private Visitor visitor;

    @BeforeEach
    void start() {
        server = ServerFixture.empty();
        visitor = server.stranger();
    }

    @AfterEach
    void stop() {
        server.close();
    }

    private Visitor.Form filled() {
        return visitor.form(visitor.get("/start/new"))
                .with("name", "The weir")
                .with("started", "2026-11-01")
                .with("weekday", "saturday")
                .with("crew", "Ilse\nBram de Wit\n\nIlse Maas")
                .with("hours", "6,5")
                .with("currency", "EUR")
                .with("cash", "3200,50")
                .with("reserve", "500")
                .with("zone", "Europe/Berlin");
    }

    @Test
    void a_project_is_started_while_the_server_runs() {
        Visitor.Reply started = filled().send();
        assertThat(started.status()).isEqualTo(303);
        assertThat(started.to()).isEqualTo("/start/build");
        Settings settings = server.db().read(SettingsStore::get);
        assertThat(settings.project().name()).isEqualTo("The weir");
        assertThat(settings.weekday()).isEqualTo(DayOfWeek.SATURDAY);
        assertThat(settings.reserve().minor()).isEqualTo(50_000);
        List<CrewMember> crew = server.db().read(CrewMemberStore.TABLE::values);
        assertThat(crew)
                .extracting(member -> member.id() + " " + member.name())
                .containsExactly("ilse Ilse", "bram Bram de Wit", "ilse.1 Ilse Maas");
        assertThat(crew.get(1).on(DayOfWeek.FRIDAY).minutes()).isEqualTo(390);
        assertThat(crew.get(1).on(DayOfWeek.SUNDAY).minutes()).isZero();
    }

    /** Begun weeks ago: what is entered later of the days before does not change what is at hand today. */
    @Test
    void money_at_hand_of_a_build_begun_before_is_a_balance_counted_last_night() {
        filled().send();
        assertThat(server.db().read(SettingsStore::get).openingCash()).isEqualTo(Money.ZERO);
        assertThat(server.db().read(LedgerEntryStore.TABLE::values))
                .extracting(
                        LedgerEntry::date,
                        LedgerEntry::kind,
                        entry -> entry.amount().minor())
                .containsExactly(tuple(LocalDate.of(2026, 11, 24), LedgerEntry.Kind.COUNTED, 320_050L));
    }

    @Test
    void the_first_file_of_the_bank_says_where_is_written_what_was_there_before() {
        filled().send();
        Visitor ilse = server.as("ilse");
        Visitor.Reply read = ilse.follow(ilse.form(ilse.get("/funds/files/new"))
                .with(
                        "text",
                        "Date,Name,Amount,Balance\n2026-11-05,Nails,-186.40,2213.60\n2026-11-13,Oil,-7.10,2206.50\n")
                .send());
        Visitor.Reply rows =
                ilse.follow(ilse.form(read).with("name", "The bank").send());
        assertThat(rows.text())
                .contains("The file ends with \u20ac2,206.50 on 13 November; with the ticked rows the books would have"
                        + " \u2212\u20ac193.50, \u20ac2,400.00 less. If that was there when the books opened,"
                        + " write it under Settings as Opening cash.");
    }

    @Test
    void money_at_hand_of_a_build_begun_today_opens_the_books() {
        filled().with("started", "2026-11-25").send();
        assertThat(server.db().read(SettingsStore::get).openingCash().minor()).isEqualTo(320_050);
        assertThat(server.db().read(LedgerEntryStore.TABLE::values)).isEmpty();
    }

    @Test
    void trades_stand_behind_a_colon() {
        filled().with("crew", "Ilse: mason, smith\nBram:camera edit\nMaas :").send();
        assertThat(server.db().read(CrewMemberStore.TABLE::values))
                .extracting(member -> member.name() + " " + member.trades().text())
                .containsExactly("Ilse mason smith", "Bram camera edit", "Maas ");
    }

    @Test
    void a_trade_that_stands_twice_is_told() {
        assertThat(filled().with("crew", "Ilse: mason mason").send().troubles())
                .containsExactly("\"mason mason\" has the word mason twice; write each word once");
    }

    @Test
    void everything_wrong_is_told_at_once_and_nothing_is_made() {
        Visitor.Reply refused = filled().with("started", "2026-02-30")
                .with("cash", "0.255")
                .with("reserve", "-5")
                .with("hours", "3x")
                .with("crew", "Ilse\nilse")
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly(
                        "\"2026-02-30\" is not a day of the calendar; write a day that exists, such as 2026-02-28",
                        "\"0.255\" has more decimal places than the currency; write at most 2 places",
                        "\"-5\" is under 0; write 0 or more",
                        "\"3x\" is not hours; write 3.5 or 3:30",
                        "\"ilse\" stands there twice; add a second name");
        assertThat(refused.page().select("#crew").val()).isEqualTo("Ilse\nilse");
        assertThat(server.app().folder().isProject()).isFalse();
    }

    @Test
    void a_currency_a_zone_and_a_name_that_mean_nothing_are_refused() {
        Visitor.Reply refused = filled().with("name", "")
                .with("currency", "eur")
                .with("zone", "+01:00")
                .send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly(
                        "is missing; write what is being built",
                        "\"eur\" is not a currency of ISO 4217; write EUR",
                        "\"+01:00\" is an offset, which has no summer time; write a place such as Europe/Berlin");
        assertThat(server.app().project()).isEmpty();
        assertThat(filled().send().status()).isEqualTo(303);
    }

    @Test
    void nobody_in_the_crew_is_refused() {
        assertThat(filled().with("crew", "  \n ").send().troubles())
                .containsExactly("names nobody; write at least one name");
    }

    @Test
    void the_same_form_sent_again_goes_on_to_the_project() {
        Visitor.Form form = filled();
        form.send();
        Visitor.Reply again = form.send();
        assertThat(again.status()).isIn(303, 403);
        assertThat(server.db().read(CrewMemberStore.TABLE::values)).hasSize(3);
    }

    @Test
    void a_line_of_the_crew_without_a_name_is_told_at_the_crew_and_not_at_what_is_built() {
        Visitor.Reply refused = filled().with("crew", "Ilse: mason\n: camera").send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly("\": camera\" has no name; write it before the colon: Ann: mason camera");
        assertThat(refused.page().select("#crew-error")).hasSize(1);
    }

    /** Nothing is logged, counted or shown of a build before its first day, so that it cannot be ahead. */
    @Test
    void a_start_after_today_is_refused_where_the_project_is() {
        Visitor.Reply refused = filled().with("started", "2026-11-26").send();
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.troubles())
                .containsExactly("\"26 November 2026\" is after today; write today or the day it began; what is built"
                        + " later can be given a day under Build");
    }
}
