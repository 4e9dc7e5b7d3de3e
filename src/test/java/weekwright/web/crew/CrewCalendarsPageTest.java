package weekwright.web.crew;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import weekwright.testkit.Requirement;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class CrewCalendarsPageTest {
    /** The addresses that were just made, in the order of the sentence. */
    public static String[] made(Visitor visitor, String who) {
        Visitor.Reply done = visitor.follow(
                visitor.form(visitor.get("/crew/calendars"), "form:has(input[name=who][value='" + who + "'])")
                        .press("renew"));
        String said = done.page().select(".flash p").text();
        assertThat(said).contains(visitor.origin() + "/calendars/");
        return Pattern.compile("/calendars/[^ ]+\\.ics")
                .matcher(said)
                .results()
                .map(found -> found.group())
                .toArray(String[]::new);
    }

    @Test
    void an_address_is_made_shown_once_renewed_and_ended() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor ilse = server.as("ilse");
            Visitor.Reply page = ilse.get("/crew/calendars");
            assertThat(page.page().select("tbody th").eachText())
                    .containsExactly("Slots and deliveries", "Ilse", "Bram", "Noor");
            assertThat(page.page().select("tbody td:nth-child(3)").eachText())
                    .containsExactly("no address", "no address", "no address", "no address");
            String[] first = made(ilse, "");
            assertThat(first).hasSize(2);
            assertThat(first[0]).matches("/calendars/[A-Za-z0-9_-]{43}/slots\\.ics");
            assertThat(first[1]).isEqualTo(first[0].replace("slots.ics", "deliveries.ics"));
            Visitor stranger = server.stranger();
            assertThat(stranger.get(first[0]).status()).isEqualTo(200);
            Visitor.Reply later = ilse.get("/crew/calendars");
            assertThat(later.body()).doesNotContain(first[0]);
            assertThat(later.page().select("tbody td:nth-child(3)").get(0).text())
                    .isEqualTo("since Wed 25 Nov");
            String[] second = made(ilse, "");
            assertThat(second[0]).isNotEqualTo(first[0]);
            assertThat(stranger.get(first[0]).status()).isEqualTo(404);
            assertThat(stranger.get(second[0]).status()).isEqualTo(200);
            Visitor.Reply ended =
                    ilse.follow(ilse.form(ilse.get("/crew/calendars")).press("end"));
            assertThat(ended.page().select(".flash p").text())
                    .isEqualTo("The address of slots and deliveries has ended.");
            assertThat(stranger.get(second[0]).status()).isEqualTo(404);
        }
    }

    @Test
    @Requirement({"13.3.1", "14.2.1"})
    void only_a_hash_of_an_address_is_kept() {
        try (ServerFixture server = ServerFixture.small()) {
            String secret = made(server.as("ilse"), "bram")[0].split("/")[2];
            String kept = server.db()
                    .read(read -> read.handle()
                            .createQuery("SELECT token_sha256 || purpose || crew FROM secret_link")
                            .mapTo(String.class)
                            .one());
            assertThat(kept).endsWith("calendarbram").doesNotContain(secret);
        }
    }

    @Test
    void somebody_who_is_not_there_gets_none_and_a_helper_makes_none() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor ilse = server.as("ilse");
            Visitor.Reply refused =
                    ilse.form(ilse.get("/crew/calendars")).with("who", "nobody").press("renew");
            assertThat(refused.status()).isEqualTo(422);
            assertThat(refused.troubles()).hasSize(1);
            assertThat(server.as("noor").get("/crew/calendars").status()).isEqualTo(403);
        }
    }
}
