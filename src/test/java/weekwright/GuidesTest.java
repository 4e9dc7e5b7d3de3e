package weekwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.cli.CommandLines;
import weekwright.cli.Terminal;
import weekwright.testkit.PlainProject;
import weekwright.testkit.ServerFixture;
import weekwright.web.Routes;

/**
 * What README and DEVELOPERS tell to type can be typed: the program's own commands are run here where that is quick, else their
 * options are looked up; of Maven's the goals, the properties and the main classes. What neither is stands in a list.
 */
class GuidesTest {
    private static final Path README = Path.of("README.md");
    private static final Path DEVELOPERS = Path.of("DEVELOPERS.md");
    private static final Pattern FENCED = Pattern.compile("(?s)\n```\\w*\n(.*?)\n```");
    private static final Pattern INLINE = Pattern.compile("(?s)`([^`]+)`");
    private static final Pattern JAR = Pattern.compile("-jar \\S*weekwright\\.jar (.*)");
    private static final Pattern OPTION = Pattern.compile("--[a-z][a-z-]*");
    private static final Set<String> OURS = Set.of(
            "serve",
            "passphrase",
            "check",
            "import",
            "export",
            "backup",
            "restore",
            "publish",
            "forecast",
            "replay",
            "week");

    /** Programs of the machine: shown how, and no part of this one. */
    private static final Set<String> OF_THE_MACHINE = Set.of(
            "openssl", "systemctl", "journalctl", "useradd", "systemd-analyze", "setpriv", "unshare", "mount", "cc");

    /** Programs that another one of the list starts. */
    private static final Set<String> STARTED_BY_OTHERS = Set.of("campaign.NormalServer");

    private static final Set<String> PHASES = Set.of("compile", "test-compile", "test", "package", "verify", "clean");

    @TempDir
    Path temp;

    private record Run(int status, String out, String err) {}

    private static Run run(String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Terminal terminal = new Terminal(
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                false,
                PlainProject.CLOCK,
                2,
                new Terminal.Secrets() {
                    @Override
                    public Optional<String> line(String question) {
                        return Optional.of("oak pegs and tallow");
                    }

                    @Override
                    public boolean typed() {
                        return false;
                    }
                });
        int status = CommandLines.run(terminal, arguments);
        return new Run(status, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    /** Every line of the fenced parts and every word or words between backticks, on one line. */
    private static List<String> snippets(Path guide) throws IOException {
        String text = Files.readString(guide);
        List<String> all = new ArrayList<>();
        Matcher fenced = FENCED.matcher(text);
        while (fenced.find()) {
            all.addAll(fenced.group(1).lines().toList());
        }
        INLINE.matcher(fenced.replaceAll("\n"))
                .results()
                .map(found -> found.group(1).replaceAll("\\s+", " ").strip())
                .forEach(all::add);
        return all;
    }

    private static List<String> snippets() throws IOException {
        List<String> all = new ArrayList<>(snippets(README));
        all.addAll(snippets(DEVELOPERS));
        return all;
    }

    /** The arguments of the program's own commands: after the jar's name, or as they stand. */
    private static List<String> own() throws IOException {
        List<String> own = new ArrayList<>();
        for (String snippet : snippets()) {
            Matcher jar = JAR.matcher(snippet);
            String arguments = jar.find() ? jar.group(1) : snippet.replaceFirst("^weekwright ", "");
            String first = arguments.split(" ")[0];
            boolean command = OURS.contains(first)
                    && (arguments.contains(" ") || jar.reset().find());
            if (command) {
                own.add(arguments);
            }
        }
        return own;
    }

    private static Set<String> options(String command) {
        Run help = run(command, "--help");
        assertThat(help.status()).as(command).isZero();
        return new TreeSet<>(
                OPTION.matcher(help.out()).results().map(MatchResult::group).toList());
    }

    @Test
    void every_option_of_every_command_of_the_program_is_known_to_it() throws IOException {
        assertThat(own())
                .contains("serve my-mill", "check FILES", "forecast sample-project --today 2026-11-25 --json")
                .hasSizeGreaterThan(20);
        for (String arguments : own()) {
            String command = arguments.split(" ")[0];
            assertThat(options(command))
                    .as(arguments)
                    .containsAll(OPTION.matcher(arguments)
                            .results()
                            .map(MatchResult::group)
                            .toList());
        }
    }

    @Test
    void the_table_of_commands_has_every_command_with_every_option() throws IOException {
        List<String> rows = snippets(README).stream()
                .filter(snippet -> snippet.matches("[a-z]+ (\\[?FOLDER|FILES?)\\b.*"))
                .toList();
        assertThat(rows).extracting(row -> row.split(" ")[0]).containsAll(OURS);
        for (String row : rows) {
            String command = row.split(" ")[0];
            Set<String> told = new TreeSet<>(
                    OPTION.matcher(row).results().map(MatchResult::group).toList());
            told.add("--help");
            assertThat(told).as(row).isEqualTo(options(command));
        }
    }

    /** In the order of the text; names of what is made stand in a folder of the test. */
    @Test
    void the_commands_over_the_sample_do_what_they_say() throws IOException {
        List<String> ran = new ArrayList<>();
        Matcher fenced = FENCED.matcher(Files.readString(README));
        while (fenced.find()) {
            for (String line : fenced.group(1).lines().toList()) {
                Matcher jar = JAR.matcher(line);
                if (!line.startsWith("java -jar ") || !jar.find()) {
                    continue;
                }
                List<String> arguments = new ArrayList<>(Arrays.stream(
                                jar.group(1).split(" "))
                        .map(word -> word.startsWith("my-") ? temp.resolve(word).toString() : word)
                        .toList());
                if (arguments.get(0).equals("forecast")) {
                    arguments.addAll(List.of("--trials", "50"));
                }
                Run run = run(arguments.toArray(String[]::new));
                assertThat(run.status()).as(line + run.err()).isZero();
                ran.add(arguments.get(0));
            }
        }
        assertThat(ran)
                .containsExactly("check", "forecast", "week", "import", "export", "backup", "restore", "publish");
        assertThat(temp.resolve("my-files/project.toml"))
                .hasSameTextualContentAs(Path.of("sample-project/project.toml"));
        assertThat(temp.resolve("my-mill-again/build.db")).exists();
        assertThat(temp.resolve("my-site/index.html")).exists();
        assertThat(run("passphrase", temp.resolve("my-mill").toString(), "Ilse").out())
                .isEqualTo("The passphrase of Ilse is set.\n");
    }

    @Test
    void what_maven_is_told_is_in_the_build_and_every_main_class_is_there() throws Exception {
        String pom = Files.readString(Path.of("pom.xml"));
        List<String> told = snippets().stream()
                .filter(snippet -> snippet.contains("mvn ") || snippet.startsWith("-D"))
                .toList();
        assertThat(told).hasSizeGreaterThan(15);
        for (String line : told) {
            for (String word : line.replaceAll("\"[^\"]*\"", "x").split("[ ;&]+")) {
                if (word.matches("[a-z]+:[A-Za-z-]+")) {
                    String plugin = word.substring(0, word.indexOf(':'));
                    // the dependency plugin is Maven's own and is called once by hand
                    assertThat(plugin.equals("dependency")
                                    || pom.contains(plugin + "-maven-plugin")
                                    || pom.contains("<artifactId>" + plugin + "-maven</artifactId>"))
                            .as(line)
                            .isTrue();
                } else if (word.matches("[a-z-]+") && line.startsWith("mvn") && !line.contains("&&")) {
                    assertThat(PHASES.contains(word) || word.equals("mvn") || word.equals("-q"))
                            .as(line + ": " + word)
                            .isTrue();
                }
            }
        }
        for (String guide : List.of(Files.readString(README), Files.readString(DEVELOPERS))) {
            for (MatchResult found : Pattern.compile("\\bweekwright(?:\\.[a-z]+)+\\.([A-Z][A-Za-z]+)\\b")
                    .matcher(guide)
                    .results()
                    .toList()) {
                Class<?> type = Class.forName(found.group());
                // JMH has a main class of its own
                if (!found.group(1).equals("EngineBench")) {
                    assertThat(type.getMethod("main", String[].class))
                            .as(found.group())
                            .isNotNull();
                }
            }
        }
    }

    @Test
    void every_other_command_is_one_of_the_machine() throws IOException {
        List<String> unknown = snippets().stream()
                .filter(snippet -> snippet.matches("[a-z.][a-z./-]* (-|[a-z]+ ?-).*"))
                .filter(snippet -> {
                    String first = snippet.split(" ")[0];
                    return !OURS.contains(first)
                            && !OF_THE_MACHINE.contains(first)
                            && !Set.of("mvn", "java", "time", "weekwright").contains(first);
                })
                .toList();
        assertThat(unknown).isEmpty();
    }

    /** Files and folders that the guide names are there, classes too; what a build makes is left out. */
    @Test
    void every_path_and_class_that_the_guide_for_developers_names_is_there() throws IOException {
        Set<String> classes = new TreeSet<>();
        for (Path root : List.of(Path.of("src/main/java"), Path.of("src/test/java"))) {
            try (Stream<Path> files = Files.walk(root)) {
                files.map(file -> file.getFileName().toString())
                        .filter(name -> name.endsWith(".java"))
                        .forEach(name -> classes.add(name.substring(0, name.length() - 5)));
            }
        }
        List<Path> roots = Stream.of("", "src/main/java/weekwright", "src/test/java/weekwright", "src/main/resources")
                .map(Path::of)
                .toList();
        List<String> missing = new ArrayList<>();
        for (String snippet : snippets(DEVELOPERS)) {
            if (snippet.matches("[A-Z][a-z]+[A-Z][A-Za-z]*(\\.[a-z][A-Za-z]*)?")) {
                if (!classes.contains(snippet.replaceFirst("\\..*", ""))) {
                    missing.add(snippet);
                }
            } else if (snippet.matches("[a-z][a-z-]*(/[A-Za-z0-9_.-]+)+") && !snippet.startsWith("target/")) {
                boolean there = roots.stream()
                        .anyMatch(root -> Files.exists(root.resolve(snippet))
                                || Files.exists(root.resolve(snippet.replaceFirst("\\.[a-z]+$", "") + ".java")));
                if (!there) {
                    missing.add(snippet);
                }
            }
        }
        assertThat(missing).isEmpty();
    }

    @Test
    void every_page_that_the_guides_name_has_an_address() throws IOException {
        Set<String> paths = new TreeSet<>();
        try (ServerFixture server = ServerFixture.smallWithTemplatesOnDisk()) {
            Routes routes = new Routes(server.app());
            routes.pages().forEach(line -> paths.add(line.path()));
            routes.others().forEach(other -> paths.add(other.path()));
        }
        List<String> dead = snippets().stream()
                .filter(snippet ->
                        snippet.matches("/(account|ahead|week|log|build|episodes|funds|notes|crew|public|reach)\\b.*"))
                .filter(snippet -> !paths.contains(snippet))
                .toList();
        assertThat(dead).isEmpty();
    }

    @Test
    void the_pictures_are_few_small_there_and_said_in_words() throws IOException {
        List<MatchResult> pictures = Pattern.compile("!\\[([^\\]]*)\\]\\(([^)]*)\\)")
                .matcher(Files.readString(README))
                .results()
                .toList();
        assertThat(pictures).hasSizeBetween(3, 6);
        Set<Path> shown = new TreeSet<>();
        for (MatchResult picture : pictures) {
            Path file = Path.of(picture.group(2));
            shown.add(file);
            assertThat(picture.group(1)).as(file.toString()).hasSizeGreaterThan(20);
            assertThat(Files.size(file)).as(file.toString()).isLessThan(60 * 1024);
            assertThat(ImageIO.read(file.toFile()).getColorModel().getPixelSize())
                    .as(file.toString())
                    .isLessThanOrEqualTo(8);
        }
        try (Stream<Path> files = Files.list(Path.of("src/main/pictures"))) {
            assertThat(files).containsExactlyInAnyOrderElementsOf(shown);
        }
    }

    /** A stranger reads some 240 words a minute. */
    @Test
    void the_readme_is_read_in_ten_minutes_and_opens_with_the_job() throws IOException {
        String text = Files.readString(README);
        assertThat(text).startsWith("# weekwright\n\nWeekwright is for a crew of two or three who hand-build");
        assertThat(text.replaceAll("(?s)\n```.*?\n```", "").split("\\s+")).hasSizeLessThan(2_400);
    }

    /** Figures are measured once and told twice. */
    @Test
    void every_figure_that_the_readme_tells_as_measured_stands_in_the_guide_for_developers() throws IOException {
        String text = Files.readString(README);
        String measured = text.substring(text.indexOf("## What was measured"), text.indexOf("## Limits"));
        String guide = Files.readString(DEVELOPERS);
        List<String> figures = Pattern.compile("\\d[\\d,.]*\\d")
                .matcher(measured)
                .results()
                .map(MatchResult::group)
                .toList();
        assertThat(figures)
                .hasSizeGreaterThan(15)
                .allSatisfy(figure -> assertThat(guide).contains(figure));
    }

    @Test
    void the_table_of_what_was_measured_has_every_program_that_measures_and_no_figure_that_the_text_has_not()
            throws Exception {
        String guide = Files.readString(DEVELOPERS);
        int begin = guide.indexOf("## All that was measured");
        String table = guide.substring(begin, guide.indexOf("\n## ", begin));
        String text = guide.replace(table, "");
        Set<String> named = new TreeSet<>();
        for (MatchResult found : Pattern.compile("`((?:[a-z]+\\.)+[A-Z][A-Za-z]+)`")
                .matcher(table)
                .results()
                .toList()) {
            named.add(found.group(1));
        }
        Set<String> programs = new TreeSet<>(Set.of("engine.simulate.EngineBench"));
        for (String folder : List.of("bench", "campaign", "fuzz")) {
            try (Stream<Path> files = Files.list(Path.of("src/test/java/weekwright", folder))) {
                for (Path file : files.toList()) {
                    boolean measures = Files.readString(file).contains("public static void main(String");
                    String name = folder + "." + file.getFileName().toString().replace(".java", "");
                    if (measures && !STARTED_BY_OTHERS.contains(name)) {
                        programs.add(name);
                    }
                }
            }
        }
        assertThat(named).isEqualTo(programs);
        List<String> figures = Pattern.compile("(?m)^\\|[^|]*\\|([^|]*)\\|")
                .matcher(table)
                .results()
                .flatMap(row -> Pattern.compile("\\d(?:[\\d,.]*\\d)?")
                        .matcher(row.group(1))
                        .results())
                .map(MatchResult::group)
                .toList();
        assertThat(figures)
                .hasSizeGreaterThan(20)
                .allSatisfy(figure -> assertThat(text).contains(figure));
    }
}
