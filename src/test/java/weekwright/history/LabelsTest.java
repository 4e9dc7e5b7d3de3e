package weekwright.history;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class LabelsTest {
    @Test
    void no_label_is_left_over_and_none_says_what_the_column_s_own_name_says() {
        Set<String> columns = new TreeSet<>();
        Things.all()
                .forEach(thing -> thing.shape()
                        .names()
                        .forEach(column -> columns.add(thing.table().name() + "." + column)));
        Set<String> leftOver = new TreeSet<>();
        Set<String> needless = new TreeSet<>();
        Labels.all()
                .forEach((table, all) -> all.forEach((column, label) -> {
                    if (!columns.contains(table + "." + column)) {
                        leftOver.add(table + "." + column);
                    }
                    if (label.equals(Labels.plain(column))) {
                        needless.add(table + "." + column);
                    }
                }));
        assertThat(leftOver)
                .as("lines of words/labels.txt that belong to no column")
                .isEmpty();
        assertThat(needless)
                .as("lines of words/labels.txt that say no more than the column's name")
                .isEmpty();
    }

    @Test
    void within_a_thing_no_two_columns_are_called_the_same() {
        Things.all()
                .forEach(thing -> assertThat(thing.shape().names().stream()
                                .map(column -> Labels.of(thing.table().name(), column)))
                        .as(thing.table().name())
                        .doesNotHaveDuplicates());
    }

    @Test
    void a_column_is_called_by_its_label_or_by_its_own_name() {
        assertThat(Labels.of("tasks", "story_told")).isEqualTo("Nothing more to tell in it");
        assertThat(Labels.of("tasks", "season_from")).isEqualTo("Season from");
        assertThat(Labels.of("tasks", "colour")).isEqualTo("Colour");
    }
}
