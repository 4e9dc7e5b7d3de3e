package weekwright.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class LabelsTest {
    @Test
    void every_column_of_every_thing_has_a_label_and_no_label_is_left_over() {
        Map<String, Set<String>> columns = new TreeMap<>();
        Things.all()
                .forEach(thing -> columns.put(
                        thing.table().name(), new TreeSet<>(thing.shape().names())));
        Map<String, Set<String>> labels = new TreeMap<>();
        Labels.all().forEach((table, all) -> labels.put(table, new TreeSet<>(all.keySet())));
        assertThat(labels).isEqualTo(columns);
    }

    @Test
    void within_a_thing_no_two_columns_are_called_the_same() {
        Labels.all().forEach((table, all) -> assertThat(all.values()).as(table).doesNotHaveDuplicates());
    }

    @Test
    void a_column_without_a_label_is_told() {
        assertThatThrownBy(() -> Labels.of("tasks", "colour")).hasMessage("no label for tasks.colour");
    }
}
