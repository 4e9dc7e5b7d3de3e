package weekwright.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.base.Hours;
import weekwright.base.Reading;
import weekwright.db.Db;
import weekwright.db.Folder;
import weekwright.files.csv.ProjectData;
import weekwright.testkit.PlainProject;

class RoundTripTest {
    @TempDir
    Path temp;

    private PlainProject small() {
        return PlainProject.in(temp.resolve("files"));
    }

    /** Every file of a folder by its path in it; text as text, so that a difference can be read. */
    static Map<String, String> files(Path folder) throws Exception {
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                String name = folder.relativize(file).toString().replace('\\', '/');
                files.put(name, new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1));
            }
        }
        return files;
    }

    private void importThenExportIsEqual(PlainProject project) throws Exception {
        try (Db db = project.imported(temp.resolve("project"))) {
            ExportProject.into(db, new Folder(temp.resolve("project")), temp.resolve("exported"));
        }
        assertSame(files(temp.resolve("exported")), files(project.folder()));
    }

    private static void assertSame(Map<String, String> actual, Map<String, String> expected) {
        assertThat(actual.keySet()).isEqualTo(expected.keySet());
        expected.forEach((name, text) -> assertThat(actual.get(name)).as(name).isEqualTo(text));
    }

    @Test
    void rule_100_import_then_export_gives_the_same_bytes_for_files_in_canonical_form() throws Exception {
        importThenExportIsEqual(small());
    }

    @Test
    void rule_100_export_then_import_gives_an_equal_project_in_every_table() throws Exception {
        Path first = temp.resolve("project");
        Path second = temp.resolve("second");
        ProjectData before;
        ProjectData after;
        try (Db db = small().imported(first)) {
            ExportProject.into(db, new Folder(first), temp.resolve("exported"));
            before = db.read(read -> ProjectData.of(read, first).orElseThrow());
        }
        ImportProject.into(temp.resolve("exported"), new Folder(second), false, PlainProject.TODAY, PlainProject.CLOCK);
        try (Db db = new Folder(second).open(PlainProject.CLOCK)) {
            after = db.read(read -> ProjectData.of(read, second).orElseThrow());
        }
        assertThat(after.settings()).isEqualTo(before.settings());
        ProjectData.tables().forEach(table -> {
            assertThat(before.list(table)).as(table.name()).isNotEmpty();
            assertThat(after.list(table)).as(table.name()).isEqualTo(before.list(table));
        });
        assertSame(files(second.resolve("photos")), files(first.resolve("photos")));
    }

    @Test
    void rule_100_semicolons_a_byte_order_mark_line_feeds_and_other_column_order_are_read_and_written_canonically()
            throws Exception {
        PlainProject small = small();
        Map<String, String> canonical = files(small.folder());
        small.file("links.csv", "x");
        small.bytes(
                "links.csv",
                ("\ufeffafter;task;wait_high;wait_low;wait_likely;share\npiers.1;piers.2;;;;\n\n"
                                + "\"piers.2\";deck.2;;;;\rdeck.1;deck.2;;;;1.000\r\ndeck.2;deck.3;2.0;1;01;")
                        .getBytes(StandardCharsets.UTF_8));
        try (Db db = small.imported(temp.resolve("project"))) {
            ExportProject.into(db, new Folder(temp.resolve("project")), temp.resolve("exported"));
        }
        assertSame(files(temp.resolve("exported")), canonical);
    }

    @Test
    void rule_101_every_whole_minute_of_a_day_comes_back_from_two_decimals() throws Exception {
        for (int minutes = 1; minutes <= 24 * 60; minutes++) {
            String text = new Hours(minutes).text();
            assertThat(Hours.parse(text, Reading.file(2)).minutes()).isEqualTo(minutes);
        }
    }

    @Test
    void rule_107_money_has_the_digits_of_its_currency() throws Exception {
        PlainProject yen = small().change("project.toml", "EUR", "JPY")
                .change("project.toml", "\"500.00\"", "\"500\"")
                .change("project.toml", "\"2000.00\"", "\"2000\"");
        yen.file(
                "crew.csv",
                yen.text("crew.csv").replace("12.50", "1250").strip().split("\r\n"));
        yen.file(
                "equipment.csv",
                yen.text("equipment.csv").replace("350.00", "35000").strip().split("\r\n"));
        yen.file(
                "gatherings.csv",
                yen.text("gatherings.csv").replace("60.00", "6000").strip().split("\r\n"));
        yen.file(
                "stock.csv",
                yen.text("stock.csv").replace("20.00", "2000").strip().split("\r\n"));
        yen.file(
                "ledger.csv",
                yen.text("ledger.csv").replace(".00", "00").strip().split("\r\n"));
        yen.file(
                "regular.csv",
                yen.text("regular.csv").replace(".00", "00").strip().split("\r\n"));
        yen.file(
                "pledge-levels.csv",
                yen.text("pledge-levels.csv")
                        .replace("5.00", "500")
                        .replace("0.30", "30")
                        .strip()
                        .split("\r\n"));
        yen.file(
                "statements.csv",
                yen.text("statements.csv").replace(".00", "00").strip().split("\r\n"));
        importThenExportIsEqual(yen);
    }

    @Test
    void letters_of_all_scripts_quotes_bars_and_line_breaks_come_back_as_they_were() throws Exception {
        PlainProject small = small().change("stages.csv", "Oak deck", "\"Deck; \"\"oak\"\", 梁 und Gelände 🪵 =1+1\"")
                .change("shots.csv", "Chips fly from the axe", "-45 $ {{ x }} <b>")
                .change("notes/2026-05-29-the-last-stone.md", "| The last stone |", "| A bar \\| and a \\\\ here |")
                .change("project.toml", "\"112\"", "\"112, or \\\"the bell\\\" \\\\ north\"");
        importThenExportIsEqual(small);
    }

    @Test
    void two_notes_of_one_day_with_one_title_get_files_of_their_own() throws Exception {
        PlainProject small = small();
        String note = small.text("notes/2026-05-29-the-last-stone.md");
        small.remove("notes/2026-05-29-the-last-stone.md");
        small.bytes("notes/2026-05-29-the-last-stone-n1.md", note.getBytes(StandardCharsets.UTF_8));
        small.file(
                "notes/2026-05-29-the-last-stone-n2.md",
                "---",
                "id: n2",
                "title: The last stone!",
                "date: 2026-05-29",
                "---");
        importThenExportIsEqual(small);
    }

    @Test
    void an_export_overwrites_nothing() throws Exception {
        PlainProject small = small();
        Map<String, String> before = files(small.folder());
        try (Db db = small.imported(temp.resolve("project"))) {
            Assertions.assertThatThrownBy(
                            () -> ExportProject.into(db, new Folder(temp.resolve("project")), small.folder()))
                    .hasMessage(small.folder()
                            + " is not empty, and an export overwrites nothing. Name a new or empty folder.");
        }
        assertSame(files(small.folder()), before);
    }
}
