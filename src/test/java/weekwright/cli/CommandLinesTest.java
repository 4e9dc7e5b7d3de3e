package weekwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import weekwright.testkit.PlainProject;
import weekwright.testkit.Requirement;

/** Exit statuses and whole messages; the commands run in this process with their streams caught. */
class CommandLinesTest {
    @TempDir
    Path temp;

    private record Run(int status, String out, String err) {}

    private List<String> typed = List.of();

    private Run run(String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int status = CommandLines.run(
                new Terminal(
                        new PrintStream(out, true, StandardCharsets.UTF_8),
                        new PrintStream(err, true, StandardCharsets.UTF_8),
                        false,
                        PlainProject.CLOCK,
                        2,
                        new Lines(typed)),
                arguments);
        return new Run(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    /** What is typed at the terminal, line by line; asked once where there is one line. */
    private static final class Lines implements Terminal.Secrets {
        private final Iterator<String> lines;
        private final boolean twice;

        Lines(List<String> lines) {
            this.lines = lines.iterator();
            twice = lines.size() > 1;
        }

        @Override
        public Optional<String> line(String question) {
            return lines.hasNext() ? Optional.of(lines.next()) : Optional.empty();
        }

        @Override
        public boolean typed() {
            return twice;
        }
    }

    private Path project() {
        Path folder = temp.resolve("project");
        run("import", files().toString(), folder.toString());
        return folder;
    }

    private Run typing(List<String> lines, String... arguments) {
        typed = lines;
        return run(arguments);
    }

    @Test
    @Requirement({"6.4.3"})
    void a_passphrase_is_set_by_name_or_id_asked_once_or_twice() {
        String folder = project().toString();
        assertThat(typing(List.of("oak pegs and tallow"), "passphrase", folder, "ANN"))
                .isEqualTo(new Run(0, "The passphrase of Ann is set.\n", ""));
        assertThat(typing(List.of("oak pegs and tallow", "oak pegs and tallow"), "passphrase", folder, "Ann"))
                .isEqualTo(new Run(0, "The passphrase of Ann is set.\n", ""));
        assertThat(typing(List.of("oak pegs and tallow", "oak pegs and tallov"), "passphrase", folder, "Ann"))
                .isEqualTo(new Run(1, "", "The two are not the same. Nothing was changed.\n"));
    }

    @Test
    void a_bad_passphrase_and_an_unknown_name_are_refused_without_naming_the_passphrase() {
        String folder = project().toString();
        assertThat(typing(List.of("oak pegs"), "passphrase", folder, "ann"))
                .isEqualTo(new Run(
                        1,
                        "",
                        "passphrase: is too short; take 15 characters or more: four or five words that nobody would"
                                + " expect together\n"));
        Run nobody = typing(List.of("oak pegs and tallow"), "passphrase", folder, "greta");
        assertThat(nobody.status()).isEqualTo(1);
        assertThat(nobody.err()).startsWith("\"greta\" is nobody of the crew. Name one of: ");
    }

    @Test
    void other_devices_are_let_in_only_when_somebody_of_the_crew_has_a_log_in() {
        Path folder = project();
        assertThat(run("serve", folder.toString(), "--port", "0", "--host", "0.0.0.0"))
                .isEqualTo(new Run(
                        2,
                        "",
                        "--host 0.0.0.0 lets other devices in, and nobody with access crew has a log-in yet. Make one"
                                + " first: weekwright passphrase " + folder + " NAME\n"));
        assertThat(run("serve", folder.toString(), "--port", "0", "--behind-proxy"))
                .isEqualTo(new Run(
                        2,
                        "",
                        "--behind-proxy lets other devices in, and nobody with access crew has a log-in yet. Make one"
                                + " first: weekwright passphrase " + folder + " NAME\n"));
    }

    private Path files() {
        Path files = temp.resolve("files");
        if (!Files.exists(files)) {
            PlainProject.in(files);
        }
        return files;
    }

    private static List<Path> list(Path folder) throws IOException {
        try (var all = Files.list(folder)) {
            return all.toList();
        }
    }

    @Test
    void replay_says_how_past_ranges_held_as_text_and_as_json() throws Exception {
        Run text = run("replay", files().toString(), "--today", "2026-11-25");
        assertThat(text.err()).isEmpty();
        assertThat(text.status()).isZero();
        assertThat(text.out())
                .startsWith("Track record\n")
                .contains("Plain files have no history")
                .contains("How far off, in days\n")
                .contains("The plan as one date: ranked score ");
        Run json = run("replay", files().toString(), "--today", "2026-11-25", "--json");
        JsonNode told = new ObjectMapper().readTree(json.out());
        assertThat(told.fieldNames()).toIterable().containsExactly("fridays", "coverage80", "n", "crps", "pinball");
        assertThat(told.get("crps").fieldNames()).toIterable().containsExactly("model", "plan", "velocity", "likely");
        assertThat(told.get("fridays").get(0).get("date").asText()).isEqualTo("2026-05-08");
        assertThat(told.get("fridays").get(0).get("stages").get(0).fieldNames())
                .toIterable()
                .containsExactly("id", "p10", "p50", "p90", "landed");
        // and the same again
        assertThat(run("replay", files().toString(), "--today", "2026-11-25", "--json"))
                .isEqualTo(json);
        assertThat(run("replay", temp.resolve("nowhere").toString()).status()).isEqualTo(1);
    }

    @Test
    void without_a_command_the_usage_is_wrong() {
        assertThat(run()).isEqualTo(new Run(2, "", "Name a command. See: weekwright --help\n"));
    }

    @Test
    void help_lists_every_command_and_is_no_error() {
        Run help = run("--help");
        assertThat(help.status()).isZero();
        assertThat(help.err()).isEmpty();
        assertThat(help.out())
                .contains("serve", "check", "import", "export", "backup", "restore", "forecast", "week", "passphrase");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"serve", "check", "import", "export", "backup", "restore", "forecast", "week", "passphrase"})
    void every_command_has_its_help(String command) {
        Run help = run(command, "--help");
        assertThat(help.status()).isZero();
        assertThat(help.err()).isEmpty();
        assertThat(help.out()).startsWith("Usage: weekwright " + command + " ");
    }

    @Test
    void an_unknown_option_is_one_sentence_with_a_hint() {
        assertThat(run("forecast", "here", "--todey", "2026-11-25"))
                .isEqualTo(new Run(
                        2,
                        "",
                        "weekwright forecast does not know the option --todey; did you mean --today? See: weekwright"
                                + " forecast --help\n"));
        assertThat(run("week", "here", "--xyzzy"))
                .isEqualTo(new Run(
                        2, "", "weekwright week does not know the option --xyzzy. See: weekwright week --help\n"));
    }

    @Test
    void money_that_is_gone_is_not_said_to_last_until_yesterday() throws Exception {
        Path ledger = files().resolve("ledger.csv");
        Files.writeString(
                ledger,
                Files.readString(ledger).replaceFirst("92\\.00,payout,,100\\.00,8\\.00", "-99999.00,other-cost,,,"));
        Run run = run("forecast", files().toString(), "--today", "2026-11-25", "--trials", "50");
        assertThat(run.out())
                .contains(
                        "As things go it lasts not even today; if pledges stopped today and nothing more were ordered,"
                                + " not even today (four in five).");
    }

    @Test
    void an_unknown_command_is_one_sentence() {
        Run run = run("fly");
        assertThat(run.status()).isEqualTo(2);
        assertThat(run.err()).isEqualTo("weekwright does not know fly. See: weekwright --help\n");
    }

    @Test
    void a_missing_folder_is_named() {
        assertThat(run("forecast"))
                .isEqualTo(
                        new Run(2, "", "weekwright forecast needs FOLDER-or-FILES. See: weekwright forecast --help\n"));
    }

    @Test
    void a_date_that_is_none_and_a_number_out_of_bounds_are_wrong_usage() {
        Run date = run("forecast", files().toString(), "--today", "2026-02-30");
        assertThat(date.status()).isEqualTo(2);
        assertThat(date.err())
                .isEqualTo("--today \"2026-02-30\" is not a date; write it like 2026-11-25. See: weekwright forecast"
                        + " --help\n");
        assertThat(run("forecast", files().toString(), "--trials", "0"))
                .isEqualTo(new Run(2, "", "--trials 0 is not possible; give a number from 1 to 1000000\n"));
        Run word = run("forecast", files().toString(), "--trials", "many");
        assertThat(word.status()).isEqualTo(2);
        assertThat(word.err()).isEqualTo("--trials \"many\" is not a whole number. See: weekwright forecast --help\n");
    }

    @Test
    void a_folder_that_is_no_project_is_refused_in_a_sentence() throws Exception {
        Path other = Files.createDirectory(temp.resolve("other"));
        assertThat(run("forecast", other.toString()))
                .isEqualTo(new Run(
                        1,
                        "",
                        other
                                + " is no project: it has neither a database nor project.toml. Name a project's"
                                + " folder, or a folder of plain files.\n"));
        Path nowhere = temp.resolve("nowhere");
        assertThat(run("week", nowhere.toString()))
                .isEqualTo(new Run(1, "", nowhere + " does not exist. Name a folder that does.\n"));
        Path file = Files.writeString(temp.resolve("letter.txt"), "hello");
        assertThat(run("check", file.toString()))
                .isEqualTo(new Run(1, "", file + " is a file, not a folder. Name the folder.\n"));
    }

    @Test
    void check_says_that_there_are_no_faults() {
        assertThat(run("check", files().toString())).isEqualTo(new Run(0, "No faults.\n", ""));
    }

    @Test
    void a_fault_goes_to_standard_error_with_its_place_and_status_1() throws Exception {
        Path crew = files().resolve("crew.csv");
        Files.writeString(crew, Files.readString(crew).replaceFirst("\r\n", ",shoe\r\n"));
        Run run = run("check", files().toString());
        assertThat(run.status()).isEqualTo(1);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .startsWith("crew.csv line 1: \"shoe\" is not a column of crew.csv; ")
                .endsWith("\n4 faults.\n");
        Run forecast = run("forecast", files().toString());
        assertThat(forecast.status()).isEqualTo(1);
        assertThat(forecast.out()).isEmpty();
        assertThat(forecast.err()).startsWith("crew.csv line 1: ");
    }

    @Test
    void import_then_export_gives_the_same_files_and_a_second_import_is_refused() throws Exception {
        Path folder = temp.resolve("project");
        Path back = temp.resolve("back");
        assertThat(run("import", files().toString(), folder.toString()))
                .isEqualTo(new Run(0, "Imported into " + folder + ".\n", ""));
        assertThat(run("export", folder.toString(), back.toString()))
                .isEqualTo(new Run(0, "Exported into " + back + ".\n", ""));
        for (Path file : list(files())) {
            if (Files.isRegularFile(file)) {
                assertThat(back.resolve(file.getFileName())).hasSameBinaryContentAs(file);
            }
        }
        Run again = run("import", files().toString(), folder.toString());
        assertThat(again.status()).isEqualTo(1);
        assertThat(again.err())
                .isEqualTo(
                        folder + " holds a project already. Name a new or empty folder, or say --replace to replace the"
                                + " project after a backup of it.\n");
        assertThat(run("import", files().toString(), folder.toString(), "--replace")
                        .out())
                .isEqualTo(folder + " holds the same project already. Nothing was changed.\n");
    }

    @Test
    void plain_files_and_their_project_give_the_same_forecast_and_nothing_is_left_behind() throws Exception {
        Path folder = temp.resolve("project");
        run("import", files().toString(), folder.toString());
        String[] options = {"--today", "2026-11-25", "--trials", "50", "--seed", "3", "--json"};
        Run plain = run(with("forecast", files(), options));
        Run project = run(with("forecast", folder, options));
        assertThat(plain.status()).isZero();
        assertThat(plain.out()).isEqualTo(project.out());
        JsonNode json = new ObjectMapper().readTree(plain.out());
        assertThat(json.get("asOf").asText()).isEqualTo("2026-11-25");
        assertThat(json.get("trials").asInt()).isEqualTo(50);
        assertThat(json.get("seed").asInt()).isEqualTo(3);
    }

    @Test
    void rule_109_without_a_day_it_is_today_in_the_projects_zone() throws Exception {
        Run run = run("forecast", files().toString(), "--trials", "1", "--json");
        assertThat(new ObjectMapper().readTree(run.out()).get("asOf").asText()).isEqualTo("2026-11-25");
    }

    @Test
    void the_forecast_reads_as_sentences() {
        Run run = run("forecast", files().toString(), "--trials", "50");
        assertThat(run.status()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.out().lines().toList())
                .contains("Stages", "Episodes", "Orders", "Money")
                .contains("  50 futures drawn, seed 1, up to 25 November 2029.")
                .contains("  Pledges are usually taxable income; ask somebody qualified where you live.");
    }

    @Test
    void the_week_is_seven_days_from_monday_as_text_and_as_json() throws Exception {
        Run text = run("week", files().toString(), "--today", "2026-11-25");
        assertThat(text.status()).isZero();
        assertThat(text.out()).contains("Monday 23 November\n", "Sunday 29 November\n");
        JsonNode json = new ObjectMapper()
                .readTree(run("week", files().toString(), "--today", "2026-11-25", "--json")
                        .out());
        assertThat(json.get("week").asText()).isEqualTo("2026-W48");
        assertThat(json.get("days")).hasSize(7);
        assertThat(json.get("days").get(0).get("date").asText()).isEqualTo("2026-11-23");
    }

    @Test
    void serve_needs_a_folder_or_the_sample_and_not_both() {
        String message = "weekwright serve needs a FOLDER or --sample, one of them. See: weekwright serve --help\n";
        assertThat(run("serve")).isEqualTo(new Run(2, "", message));
        assertThat(run("serve", "--sample", files().toString())).isEqualTo(new Run(2, "", message));
        assertThat(run("serve", files().toString(), "--port", "70000"))
                .isEqualTo(new Run(2, "", "--port 70000 is not possible; give a number from 0 to 65535\n"));
    }

    @Test
    void a_certificate_needs_its_key_and_both_are_read_before_anything_is_served() throws Exception {
        assertThat(run("serve", files().toString(), "--tls-cert", "mill.pem"))
                .isEqualTo(new Run(2, "", "--tls-cert and --tls-key belong together. See: weekwright serve --help\n"));
        Path text = Files.writeString(temp.resolve("letter.txt"), "hello");
        assertThat(run(
                        "serve",
                        temp.resolve("new").toString(),
                        "--tls-cert",
                        text.toString(),
                        "--tls-key",
                        text.toString()))
                .isEqualTo(new Run(
                        1,
                        "",
                        text + " holds no certificate. Name a file of PEM text that begins with"
                                + " \"-----BEGIN CERTIFICATE-----\".\n"));
    }

    @Test
    void serve_refuses_a_folder_that_is_no_project() throws Exception {
        Path other = Files.createDirectory(temp.resolve("other"));
        Files.writeString(other.resolve("letter.txt"), "hello");
        Run run = run("serve", other.toString(), "--port", "0");
        assertThat(run.status()).isEqualTo(1);
        assertThat(run.err()).startsWith(other + " is no project folder: it has no build.db.");
    }

    @Test
    void a_backup_is_made_and_brought_back_and_neither_overwrites_anything() throws Exception {
        Path folder = project();
        Path file = temp.resolve("bridge.zip");
        Path back = temp.resolve("back");
        assertThat(run("backup", folder.toString(), file.toString()))
                .isEqualTo(new Run(0, "Backed up into " + file + " and checked: version 2, 2 pictures.\n", ""));
        assertThat(run("backup", folder.toString(), file.toString()))
                .isEqualTo(new Run(
                        1,
                        "",
                        file + " is there already, and a backup overwrites nothing. Name a file that is not there"
                                + " yet.\n"));
        assertThat(run("restore", file.toString(), back.toString()))
                .isEqualTo(new Run(
                        0, "Restored into " + back + ": version 2 as of 2026-11-25T09:00:00Z, 2 pictures.\n", ""));
        assertThat(run("restore", file.toString(), back.toString()))
                .isEqualTo(new Run(
                        1,
                        "",
                        back + " holds a project already, and a restore overwrites nothing. Name a new or empty"
                                + " folder.\n"));
        assertThat(run("restore", file.toString(), files().toString()))
                .isEqualTo(new Run(
                        1,
                        "",
                        files() + " is not empty, and a restore overwrites nothing. Name a new or empty folder.\n"));
        Path nowhere = temp.resolve("nowhere.zip");
        assertThat(run("restore", nowhere.toString(), temp.resolve("third").toString()))
                .isEqualTo(new Run(1, "", nowhere + " does not exist. Name a backup's file.\n"));
        assertThat(run("restore", folder.toString(), temp.resolve("third").toString()))
                .isEqualTo(new Run(1, "", folder + " is a folder, not a file. Name the backup's file.\n"));
        assertThat(run("restore"))
                .isEqualTo(new Run(2, "", "weekwright restore needs FILE. See: weekwright restore --help\n"));
    }

    private static String[] with(String command, Path place, String... options) {
        String[] all = new String[options.length + 2];
        all[0] = command;
        all[1] = place.toString();
        System.arraycopy(options, 0, all, 2, options.length);
        return Arrays.copyOf(all, all.length);
    }

    @Test
    void the_build_log_is_published_and_again_writes_only_what_changed() {
        String folder = project().toString();
        Path site = temp.resolve("site");
        Run first = run("publish", folder, site.toString());
        assertThat(first.status()).isZero();
        assertThat(first.out())
                .matches("Published into " + site + ": \\d+ files written, 0 as they were, 0 removed\\.\\n");
        assertThat(site.resolve("index.html")).exists();
        Run again = run("publish", folder, site.toString());
        assertThat(again.out())
                .matches("Published into " + site + ": 0 files written, \\d+ as they were, 0 removed\\.\\n");
        assertThat(run("publish", folder, folder))
                .isEqualTo(new Run(
                        1,
                        "",
                        folder + " holds something else than a build log, and nothing of it is overwritten. Name a new"
                                + " or empty folder, or the one that was published into before.\n"));
    }
}
