package weekwright.campaign;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.Statement;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A few rounds of the campaign; hundreds by command (see the guide). */
class KillCampaignTest {
    @TempDir
    Path folder;

    @Test
    void a_server_killed_in_the_middle_of_writes_loses_nothing_acknowledged_and_doubles_nothing_sent_again()
            throws Exception {
        KillCampaign.Tally tally = KillCampaign.run(folder, 2, 7, false);
        assertThat(tally.faults()).isEmpty();
        assertThat(tally.lost()).isEmpty();
        assertThat(tally.rounds()).isEqualTo(2);
        assertThat(tally.acknowledged()).isGreaterThanOrEqualTo(2);
    }

    @Test
    void what_is_lost_doubled_or_does_not_fit_is_seen() throws Exception {
        CampaignProject.in(folder.resolve("project"), 1);
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("project/build.db"));
                Statement statement = connection.createStatement()) {
            for (int i = 1; i <= 2; i++) {
                statement.execute("INSERT INTO photos (\"note\", file, caption, alternative) VALUES ('n.0', 'p" + i
                        + ".jpg', '', 'mark 0 1')");
            }
            statement.execute("UPDATE meta SET project_version = project_version + 1");
        }
        Map<Crowd.Kind, List<String>> acknowledged = new EnumMap<>(Crowd.Kind.class);
        for (Crowd.Kind kind : Crowd.Kind.values()) {
            acknowledged.put(kind, kind == Crowd.Kind.NOTE ? List.of("mark 0 2") : List.of());
        }
        try (Kept kept = new Kept(folder.resolve("project"), folder.resolve("project/photos"))) {
            assertThat(kept.lost(acknowledged)).containsExactly("mark 0 2");
            assertThat(kept.faults())
                    .containsExactly(
                            "SELECT (SELECT project_version FROM meta) - max(project_version) FROM change gave [1]",
                            "mark 0 1 stands in photos 2 times",
                            "photos and the change log differ: 1 and 0 marks",
                            "the picture p1.jpg has no file",
                            "the picture p2.jpg has no file");
        }
    }
}
