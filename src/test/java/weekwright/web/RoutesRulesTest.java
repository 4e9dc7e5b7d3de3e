package weekwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.web.kit.Access;

class RoutesRulesTest {
    /** What a browser at which nobody was chosen may see: the choice of a person, the door, and the beginning of a project. */
    private static final Set<String> OPEN =
            Set.of("/account", "/account/log-in", "/account/start", "/start", "/start/new", "/start/files");

    @Test
    void rule_118_every_page_says_who_may_use_it_and_only_the_beginnings_are_open() {
        try (ServerFixture server = ServerFixture.small()) {
            List<Routes.Line> pages = new Routes(server.app()).pages();
            assertThat(pages).isNotEmpty().allMatch(line -> line.access() != null);
            assertThat(pages.stream()
                            .filter(line -> line.access() == Access.PUBLIC)
                            .map(Routes.Line::path))
                    .allMatch(OPEN::contains);
        }
    }

    @Test
    void rule_118_a_page_without_a_variable_is_refused_to_a_stranger_unless_it_is_open() {
        try (ServerFixture server = ServerFixture.small()) {
            for (Routes.Line line : new Routes(server.app()).pages()) {
                if (!line.path().contains("{") && line.access() != Access.PUBLIC) {
                    assertThat(server.stranger().get(line.path()).status())
                            .as(line.path())
                            .isIn(303, 403);
                }
            }
        }
    }
}
