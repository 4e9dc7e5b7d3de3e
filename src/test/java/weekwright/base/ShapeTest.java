package weekwright.base;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ShapeTest {
    enum Colour {
        IRON_GALL,
        MADDER
    }

    record Sample(
            Id id,
            @Bounds(min = 1, max = 9) Optional<Integer> hands,
            @Bounds(min = 0.01, max = 24) Hours hours,
            Optional<Money> cost,
            Optional<Colour> colour,
            Optional<LocalDate> day,
            boolean filmed,
            Words trades,
            String title,
            @Lines String note,
            @Column("for") Optional<Quantity> whom) {}

    private static final Shape<Sample> SHAPE = Shape.of(Sample.class);

    private static List<String> refused(Map<String, String> texts) {
        Problems problems = new Problems();
        assertThat(SHAPE.parse(texts, Reading.file(2), problems)).isEmpty();
        return problems.list().stream().map(Problem::text).toList();
    }

    @Test
    void columns_are_the_components_with_underscores_for_capitals() {
        assertThat(SHAPE.names())
                .containsExactly(
                        "id", "hands", "hours", "cost", "colour", "day", "filmed", "trades", "title", "note", "for");
    }

    @Test
    void a_row_goes_through_texts_and_stored_values_and_comes_back_equal() {
        Map<String, String> texts = Map.ofEntries(
                Map.entry("id", "wheel.12"),
                Map.entry("hands", "2"),
                Map.entry("hours", "7.5"),
                Map.entry("cost", "12.50"),
                Map.entry("colour", "iron-gall"),
                Map.entry("day", "2026-02-28"),
                Map.entry("filmed", "yes"),
                Map.entry("trades", "joiner smith"),
                Map.entry("title", "Rims"),
                Map.entry("note", "one\ntwo"),
                Map.entry("for", "0.25"));
        Problems problems = new Problems();
        Sample row = SHAPE.parse(texts, Reading.file(2), problems).orElseThrow();
        assertThat(problems.list()).isEmpty();
        assertThat(SHAPE.texts(row, 2)).isEqualTo(texts);
        assertThat(SHAPE.fromStored(SHAPE.toStored(row))).isEqualTo(row);
    }

    @Test
    void nothing_stays_nothing() {
        Sample row = SHAPE.parse(Map.of("id", "a", "hours", "1"), Reading.file(2), new Problems())
                .orElseThrow();
        assertThat(SHAPE.texts(row, 2).values()).containsExactly("a", "", "1", "", "", "", "", "", "", "", "");
        assertThat(SHAPE.fromStored(SHAPE.toStored(row))).isEqualTo(row);
    }

    @Test
    void all_faults_of_a_row_are_told_at_once() {
        assertThat(refused(Map.of("id", "a b", "hands", "x", "hours", "25", "colour", "red", "day", "2026-02-29")))
                .containsExactly(
                        "id: \"a b\" is not an id; use at most 40 letters, digits, - _ and . only",
                        "hands: \"x\" is not a whole number; write digits only, such as 3",
                        "hours: \"25\" is over 24; write 0.01 to 24",
                        "colour: \"red\" is not a known word here; write one of iron-gall, madder",
                        "day: \"2026-02-29\" is not a day of the calendar; write a day that exists, such as"
                                + " 2026-02-28");
    }

    @Test
    void a_word_with_a_capital_as_phones_begin_it_is_the_word() {
        Sample row = SHAPE.parse(
                        Map.of("id", "a", "hours", "1", "colour", "Iron-Gall"), Reading.file(2), new Problems())
                .orElseThrow();
        assertThat(SHAPE.texts(row, 2)).containsEntry("colour", "iron-gall");
    }

    @Test
    void what_has_to_be_given_is_asked_for() {
        assertThat(refused(Map.of("id", "a"))).containsExactly("hours: is missing; it has to be given");
    }

    @ParameterizedTest
    @CsvSource({"29.2.2024", "02/03/2026", "2026-3-5", "+10000-01-01", "-0001-01-01"})
    void a_date_is_written_year_month_day(String text) {
        assertThat(refused(Map.of("id", "a", "hours", "1", "day", text)))
                .containsExactly("day: \"" + text + "\" is not a date; write year-month-day, such as 2026-03-05");
    }

    @Test
    void text_that_is_no_text_is_refused_with_its_place() {
        assertThat(refused(Map.of("id", "a", "hours", "1", "title", "a\u0000b", "note", "ok\n\u0007")))
                .containsExactly(
                        "title: \"a\u0000b\" has a character that is no text at character 2; take it out",
                        "note: \"ok\n\u0007\" has a character that is no text at character 4; take it out");
        assertThat(refused(Map.of("id", "a", "hours", "1", "title", "a\nb")))
                .containsExactly("title: \"a\nb\" has a line break or tab at character 2; write it on one line");
    }

    @Test
    void a_name_in_composed_or_taken_apart_letters_is_the_same_name() throws Refused {
        assertThat(Text.checked("Mu\u0308hle", false)).isEqualTo("M\u00fchle");
        assertThat(Text.checked("\u200B\u202Eoak\uFEFF", false)).isEqualTo("oak");
    }

    @Test
    void rule_111_the_next_free_id_is_proposed_regardless_of_case() {
        assertThat(Id.next("Wheel", List.of(new Id("wheel.1"), new Id("WHEEL.2"))))
                .isEqualTo(new Id("wheel.3"));
        assertThat(Id.next("Wheel pit!", List.of())).isEqualTo(new Id("wheel-pit.1"));
        assertThat(Id.next("…", List.of())).isEqualTo(new Id("x.1"));
    }
}
