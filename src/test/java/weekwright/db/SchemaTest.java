package weekwright.db;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.build.*;
import weekwright.episodes.*;
import weekwright.funds.*;
import weekwright.notes.*;

class SchemaTest {
    @TempDir
    Path folder;

    static Stream<Table<?>> tables() {
        return Stream.of(
                CrewMemberStore.TABLE,
                CrewHoursStore.TABLE,
                DaysOffStore.TABLE,
                StageStore.TABLE,
                TaskStore.TABLE,
                EquipmentStore.TABLE,
                StoppedStore.TABLE,
                LinkStore.TABLE,
                EpisodeStore.TABLE,
                TellStore.TABLE,
                ShotStore.TABLE,
                ClipStore.TABLE,
                HoursEntryStore.TABLE,
                WeekLineStore.TABLE,
                GatheringStore.TABLE,
                StockItemStore.TABLE,
                MaterialStore.TABLE,
                LedgerEntryStore.TABLE,
                SupplierStore.TABLE,
                RegularItemStore.TABLE,
                PledgeLevelStore.TABLE,
                SupporterMonthStore.TABLE,
                IncidentStore.TABLE,
                CautionStore.TABLE,
                NoteStore.TABLE,
                PhotoStore.TABLE,
                SettingsStore.PROJECT,
                SettingsStore.PUBLISHING,
                SettingsStore.WEATHER,
                SettingsStore.ORDERS,
                SettingsStore.MONEY,
                SettingsStore.EMERGENCY,
                SettingsStore.MODEL,
                SettingsStore.BUILD_LOG);
    }

    /** The packed program cannot list a folder, so the list stands in the code; the two are the same. */
    @Test
    void every_migration_of_the_folder_is_run_in_the_order_of_its_number() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("src/main/resources/migrations"))) {
            assertThat(files.map(file -> file.getFileName().toString()).sorted())
                    .as("files of migrations/, as db/Migrations lists them")
                    .containsExactlyElementsOf(Migrations.FILES);
        }
    }

    @Test
    void each_table_has_the_columns_of_its_record_in_their_order_and_is_strict() throws Exception {
        try (Db db = new Folder(folder).create(Clock.systemUTC())) {
            tables().forEach(table -> {
                List<String> columns = db.read(r -> r.handle()
                        .createQuery("SELECT name FROM pragma_table_info(:t)")
                        .bind("t", table.name())
                        .mapTo(String.class)
                        .list());
                assertThat(columns.subList(0, 2)).as(table.name()).containsExactly("row", "version");
                assertThat(columns.subList(2, columns.size()))
                        .as(table.name())
                        .isEqualTo(table.shape().names());
            });
            List<String> loose = db.read(r -> r.handle()
                    .createQuery("SELECT name FROM sqlite_schema WHERE type = 'table' AND name NOT LIKE 'sqlite_%'"
                            + " AND name NOT LIKE 'search%' AND sql NOT LIKE '%STRICT'")
                    .mapTo(String.class)
                    .list());
            assertThat(loose).isEmpty();
        }
    }
}
