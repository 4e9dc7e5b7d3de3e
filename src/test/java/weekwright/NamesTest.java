package weekwright;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.render.Templates;
import weekwright.testkit.ServerFixture;
import weekwright.web.Routes;
import weekwright.web.kit.PageName;

/** Address, page class, template and test of a page have one name; the addresses that are no pages stand apart. */
class NamesTest {
    private static final Path TEMPLATES = Path.of("templates");
    private static final Path CLASSES = Path.of("src/main/java");
    private static final Path TESTS = Path.of("src/test/java");

    @TempDir
    Path folder;

    private Routes routes() throws Exception {
        try (App app = new App(folder, ServerFixture.CLOCK, Templates.from(TEMPLATES), false)) {
            return new Routes(app);
        }
    }

    @Test
    void the_names_of_a_page_follow_from_its_address() {
        PageName name = PageName.of("/build/tasks/{id}/edit");
        assertThat(name.className()).isEqualTo("weekwright.web.build.BuildTaskEditPage");
        assertThat(name.template()).isEqualTo("build/build-task-edit");
        assertThat(PageName.of("/log").className()).isEqualTo("weekwright.web.log.LogPage");
        assertThat(PageName.of("/build/days-off/{row}").template()).isEqualTo("build/build-days-off");
        assertThat(PageName.of("/log/entries/{row}").template()).isEqualTo("log/log-entry");
    }

    @Test
    void every_address_has_its_page_its_template_and_its_test() throws Exception {
        List<String> missing = new ArrayList<>();
        for (Routes.Line line : routes().pages()) {
            PageName name = PageName.of(line.path());
            String is = line.page().getClass().getName();
            if (!is.equals(name.className())) {
                missing.add(line.path() + " is answered by " + is + ", its name has to be " + name.className());
            }
            Path template = TEMPLATES.resolve(name.template() + ".peb");
            if (!Files.exists(template)) {
                missing.add(line.path() + " has no template " + template);
            }
            Path test = TESTS.resolve(name.className().replace('.', '/') + "Test.java");
            if (!Files.exists(test)) {
                missing.add(line.path() + " has no test " + test);
            }
            boolean view = Stream.of(line.page().getClass().getDeclaredClasses())
                    .anyMatch(nested ->
                            nested.isRecord() && nested.getSimpleName().equals("View"));
            if (!view) {
                missing.add(line.path() + " has no record View in " + is);
            }
        }
        assertThat(missing).isEmpty();
    }

    @Test
    void no_page_template_or_test_is_left_over() throws Exception {
        Set<String> classes = routes().pages().stream()
                .map(line -> PageName.of(line.path()).className())
                .collect(Collectors.toSet());
        Set<String> templates = routes().pages().stream()
                .map(line -> PageName.of(line.path()).template())
                .collect(Collectors.toSet());
        List<String> left = new ArrayList<>();
        for (Path file : files(TEMPLATES, ".peb")) {
            String name = without(TEMPLATES, file, ".peb");
            if (!name.equals("layout")
                    && !name.startsWith("parts/")
                    && !name.startsWith("site/")
                    && !templates.contains(name)) {
                left.add(file + " belongs to no address");
            }
        }
        for (Path file : files(CLASSES.resolve("weekwright/web"), "Page.java")) {
            String name = without(CLASSES, file, ".java").replace('/', '.');
            if (!name.startsWith("weekwright.web.kit.") && !classes.contains(name)) {
                left.add(file + " belongs to no address");
            }
        }
        for (Path file : files(TESTS.resolve("weekwright/web"), "PageTest.java")) {
            String name = without(TESTS, file, "Test.java").replace('/', '.');
            if (!classes.contains(name)) {
                left.add(file + " belongs to no address");
            }
        }
        assertThat(left).isEmpty();
    }

    @Test
    void no_address_stands_twice() throws Exception {
        Routes routes = routes();
        List<String> all = new ArrayList<>();
        routes.pages().forEach(line -> all.add(line.path()));
        routes.others().forEach(other -> all.add(other.path()));
        assertThat(all).doesNotHaveDuplicates();
    }

    private static Set<Path> files(Path under, String ending) throws IOException {
        try (Stream<Path> files = Files.walk(under)) {
            return files.filter(file -> file.toString().endsWith(ending))
                    .collect(Collectors.toCollection(TreeSet::new));
        }
    }

    private static String without(Path under, Path file, String ending) {
        String name = under.relativize(file).toString().replace('\\', '/');
        return name.substring(0, name.length() - ending.length());
    }
}
