package weekwright.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.base.FileKind;

class KeptFilesTest {
    private static final int PEOPLE = 4;
    private static final int FILES = 40;

    @TempDir
    Path folder;

    /** Sent at the same moment, each file gets a name of its own and stays what it is. */
    @Test
    void files_that_come_at_once_never_take_each_others_place() throws Exception {
        KeptFiles kept = new KeptFiles(folder);
        LocalDate day = LocalDate.of(2026, 11, 25);
        CyclicBarrier together = new CyclicBarrier(PEOPLE);
        ExecutorService people = Executors.newFixedThreadPool(PEOPLE);
        List<Future<List<String>>> sent = new ArrayList<>();
        for (int i = 0; i < PEOPLE; i++) {
            byte person = (byte) i;
            sent.add(people.submit(() -> {
                List<String> names = new ArrayList<>();
                for (int file = 0; file < FILES; file++) {
                    together.await();
                    names.add(kept.keep(new ByteArrayInputStream(new byte[] {person}), FileKind.PNG, day));
                }
                return names;
            }));
        }
        Set<String> all = new HashSet<>();
        for (int i = 0; i < PEOPLE; i++) {
            for (String name : sent.get(i).get()) {
                assertThat(all.add(name)).as(name).isTrue();
                assertThat(Files.readAllBytes(folder.resolve(name))).containsExactly(i);
            }
        }
        people.shutdown();
        assertThat(kept.names()).hasSize(PEOPLE * FILES);
    }
}
