package weekwright.web.crew;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class CrewSafetyPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void empty_lists_say_what_belongs_there_and_defer_to_those_who_know() {
        Visitor.Reply page = SERVER.as("ilse").get("/crew/safety");
        assertThat(page.page().select("main section p.quiet").get(0).text())
                .isEqualTo(
                        "None yet. What is special about your shop or your machine belongs here; it is printed on the"
                                + " week sheet of each day with that hazard.");
        assertThat(page.text()).contains("Local codes and licensed or qualified people come first");
    }

    @Test
    void the_folder_lists_dangers_with_room_to_sign_and_who_was_on_site() {
        Visitor.Reply page = SERVER.as("ilse").get("/crew/safety?from=2026-11-01&to=2026-11-30");
        assertThat(page.page().select(".dangers thead th").eachText())
                .containsExactly("Hazard", "Cautions", "Where it is written", "Ilse", "Bram", "Noor");
        assertThat(page.page().select(".dangers tbody th").eachText())
                .containsExactly(
                        "Hardwood dust Plane the gate boards",
                        "Lifting and rigging Set the sill stones",
                        "Hot work Forge the straps");
        assertThat(page.page()
                        .select(".dangers tbody tr")
                        .get(1)
                        .select("td")
                        .get(1)
                        .text())
                .isEqualTo("29 CFR 1910.184, 1926.1400, 1926.251; UK LOLER 1998 (L113); ASME B30.9.");
        assertThat(page.page().select(".dangers + p").text())
                .isEqualTo("Where it is written was looked up once, to see that the number is about the subject."
                        + " What it says today, and what holds where you are, look up before you rely on it.");
        assertThat(page.page()
                        .select("section[aria-labelledby=site-head] tbody tr")
                        .eachText())
                .containsExactly("10 Nov Ilse", "9 Nov Ilse");
        assertThat(page.page().select(".emergency").text()).startsWith("If something happens Call 112");
        assertThat(SERVER.as("ilse").get("/crew/safety?from=2026-02-30").text())
                .isEqualTo("Nothing stands here \"2026-02-30\" is not a day of the calendar.");
        assertThat(SERVER.as("noor").get("/crew/safety").status()).isEqualTo(403);
    }

    @Test
    void who_has_read_of_a_danger_is_kept_and_all_faults_are_said_at_once() {
        try (ServerFixture own = ServerFixture.small()) {
            Visitor ilse = own.as("ilse");
            Visitor.Reply refused =
                    ilse.form(ilse.get("/crew/safety"), "form[method=post]").press("read");
            assertThat(refused.status()).isEqualTo(422);
            assertThat(refused.troubles())
                    .containsExactly(
                            "is missing; choose who has read it", "is missing; choose the hazard that was read of");
            Visitor.Reply kept = ilse.follow(ilse.form(refused, "form[method=post]")
                    .with("crew", "noor")
                    .with("hazard", "lift", "hot")
                    .press("read"));
            assertThat(kept.page().select(".flash p").text()).isEqualTo("Noor has read of two dangers.");
            assertThat(kept.page()
                            .select(".dangers tbody tr .read-by:last-child")
                            .eachText())
                    .containsExactly("Wed 25 Nov", "Wed 25 Nov");
            Visitor.Reply strange = ilse.form(kept, "form:has(select[name=crew])")
                    .with("crew", "noor")
                    .with("hazard", "dragons")
                    .press("read");
            assertThat(strange.status()).isEqualTo(422);
            assertThat(strange.troubles()).containsExactly("\"dragons\" is not a known hazard; write drone");
            Visitor.Reply back = ilse.follow(ilse.form(kept, ".flash form").send());
            assertThat(back.page()
                            .select(".dangers tbody tr .read-by:last-child")
                            .eachText())
                    .isEmpty();
        }
    }
}
