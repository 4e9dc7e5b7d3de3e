package weekwright.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import weekwright.base.Quantity;
import weekwright.db.Db;
import weekwright.db.Stored;
import weekwright.testkit.ServerFixture;

class SplitTaskTest {
    private static BigDecimal amount(Task task) {
        return task.pieces().isPresent()
                ? BigDecimal.valueOf(task.piecesOrDefault())
                : task.likely().map(Quantity::value).orElse(BigDecimal.ZERO);
    }

    @Test
    void the_parts_of_every_open_task_of_the_sample_come_to_the_whole_and_make_no_ring() throws Exception {
        try (ServerFixture server = ServerFixture.sample()) {
            Db db = server.db();
            int minutes = HoursRules.minutes(db.read(HoursEntryStore.TABLE::values));
            int split = 0;
            for (Stored<Task> shown : db.read(TaskStore.TABLE::list)) {
                Task whole = shown.value();
                BigDecimal rest = amount(whole).divide(BigDecimal.valueOf(3), 0, RoundingMode.HALF_UP);
                if (!whole.isOpen() || rest.signum() == 0 || rest.compareTo(amount(whole)) >= 0) {
                    continue;
                }
                List<Stored<HoursEntry>> hours = db.read(read -> HoursEntryStore.ofTask(read, whole.id()));
                Set<Long> last = hours.isEmpty()
                        ? Set.of()
                        : Set.of(hours.get(hours.size() - 1).row());
                int waited = db.read(read -> LinkStore.after(read, whole.id())).size();
                Stored<Task> second = db.write(
                        "test",
                        write -> SplitTask.split(
                                write,
                                Shown.of(shown),
                                new SplitTask.Parts(
                                        whole.title() + ", a",
                                        whole.title() + ", b",
                                        Optional.of(new Quantity(rest)),
                                        last)));
                Task first = db.read(read -> TaskStore.TABLE.find(read, shown.row()))
                        .orElseThrow()
                        .value();
                assertThat(amount(first).add(amount(second.value())))
                        .as(whole.title())
                        .isEqualByComparingTo(amount(whole));
                int waiting = db.read(read -> LinkStore.after(read, whole.id()).size()
                        + LinkStore.after(read, second.value().id()).size());
                assertThat(waiting).as(whole.title()).isEqualTo(waited + 1);
                split++;
            }
            assertThat(split).isGreaterThan(40);
            assertThat(LinkRules.ring(db.read(LinkStore.TABLE::values))).isEmpty();
            assertThat(HoursRules.minutes(db.read(HoursEntryStore.TABLE::values)))
                    .isEqualTo(minutes);
        }
    }
}
