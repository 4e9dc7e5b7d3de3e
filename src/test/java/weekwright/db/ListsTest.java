package weekwright.db;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.build.Equipment;
import weekwright.build.EquipmentStore;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SmallProject;

class ListsTest {
    @TempDir
    Path folder;

    private static Equipment named(String id) {
        return SmallProject.of(Equipment.class, "id", id, "name", id);
    }

    private static List<String> names(Read read) {
        return EquipmentStore.TABLE.values(read).stream().map(Equipment::name).toList();
    }

    private static void add(Db db, String id) {
        db.write("test", write -> EquipmentStore.TABLE.insert(write, named(id)));
    }

    @Test
    void a_view_older_than_a_change_goes_on_seeing_what_stood_before_it() throws Exception {
        try (Db db = new Folder(folder).create(ServerFixture.CLOCK)) {
            add(db, "saw");
            assertThat(db.read(ListsTest::names)).containsExactly("saw");
            List<List<String>> seen = db.read(old -> {
                List<String> before = names(old);
                CompletableFuture.runAsync(() -> add(db, "forge")).join();
                List<String> fresh = CompletableFuture.supplyAsync(() -> db.read(ListsTest::names))
                        .join();
                return List.of(before, names(old), fresh);
            });
            assertThat(seen).containsExactly(List.of("saw"), List.of("saw"), List.of("saw", "forge"));
            assertThat(db.read(ListsTest::names)).containsExactly("saw", "forge");
        }
    }

    @Test
    void a_change_that_was_not_kept_is_not_seen() throws Exception {
        try (Db db = new Folder(folder).create(ServerFixture.CLOCK)) {
            add(db, "saw");
            db.read(ListsTest::names);
            try {
                db.write("test", write -> {
                    EquipmentStore.TABLE.insert(write, named("forge"));
                    assertThat(names(write)).containsExactly("saw", "forge");
                    throw new IllegalStateException("not kept");
                });
            } catch (IllegalStateException expected) {
                assertThat(expected).hasMessage("not kept");
            }
            assertThat(db.read(ListsTest::names)).containsExactly("saw");
            add(db, "hoist");
            assertThat(db.read(ListsTest::names)).containsExactly("saw", "hoist");
        }
    }
}
