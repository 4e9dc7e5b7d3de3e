package weekwright.web.build;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.build.Equipment;
import weekwright.build.EquipmentStore;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SmallProject;

class BuildEquipmentPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();

    @AfterAll
    static void close() {
        SERVER.close();
    }

    @Test
    void equipment_is_listed_with_its_hazards_and_how_it_stands() {
        SERVER.db().write("test", write -> {
            EquipmentStore.TABLE.insert(
                    write,
                    SmallProject.of(
                            Equipment.class,
                            "id",
                            "saw",
                            "name",
                            "Bandsaw",
                            "hazards",
                            "woodm",
                            "down_from",
                            "2026-11-20",
                            "back_likely",
                            "14",
                            "inspect_by",
                            "2026-11-01"));
            return null;
        });
        assertThat(SERVER.as("ilse")
                        .get("/build/equipment")
                        .page()
                        .select("tbody tr")
                        .eachText())
                .containsExactly(
                        "Bandsaw 1 saws, planers, spindle cutters down from Fri 20 Nov, back about Friday 4 December 1"
                                + " Nov, 3 weeks ago (overdue) 0");
    }

    @Test
    void a_helper_is_sent_away() {
        assertThat(SERVER.as("noor").get("/build/equipment").status()).isEqualTo(403);
    }
}
