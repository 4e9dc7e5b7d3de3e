package weekwright.history;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class LabelsTest {
    @Test
    void every_column_of_every_thing_has_a_label_and_no_label_is_left_over() {
        Set<String> columns = new TreeSet<>();
        Things.all()
                .forEach(thing -> thing.shape()
                        .names()
                        .forEach(column -> columns.add(thing.table().name() + "." + column)));
        Set<String> labels = new TreeSet<>();
        Labels.all().forEach((table, all) -> all.keySet().forEach(column -> labels.add(table + "." + column)));
        Set<String> without = new TreeSet<>(columns);
        without.removeAll(labels);
        assertThat(without).as("columns without a line in words/labels.txt").isEmpty();
        labels.removeAll(columns);
        assertThat(labels)
                .as("lines of words/labels.txt that belong to no column")
                .isEmpty();
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
