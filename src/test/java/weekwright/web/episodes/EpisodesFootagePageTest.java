package weekwright.web.episodes;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

class EpisodesFootagePageTest {
    @Test
    void without_footage_nothing_is_measured_and_a_month_is_named_rightly() {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor bram = server.as("bram");
            assertThat(bram.get("/episodes/footage").page().select(".lead").text())
                    .isEqualTo("What is shot for a finished minute shows once an episode with footage in the log is"
                            + " published.");
            assertThat(bram.get("/episodes/footage?of=soon").status()).isEqualTo(404);
        }
    }
}
