package weekwright.web.episodes;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;

class EpisodesFootageEditPageTest {
    @Test
    void a_clip_that_is_not_there_is_not_found() {
        try (ServerFixture server = ServerFixture.small()) {
            assertThat(server.as("bram").get("/episodes/footage/99/edit").status())
                    .isEqualTo(404);
        }
    }
}
