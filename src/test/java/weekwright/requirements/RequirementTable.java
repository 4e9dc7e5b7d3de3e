package weekwright.requirements;

import com.tngtech.archunit.core.domain.JavaAnnotation;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import weekwright.testkit.Requirement;

/**
 * The requirements of OWASP ASVS 5.0.0 that the project looks at ({@code src/test/resources/requirements.txt}: numbers, in our words,
 * and a reason where one is not met or does not apply), with the tests that stand for each. As a program it writes the table into
 * DEVELOPERS.md.
 */
public final class RequirementTable {
    static final Path GUIDE = Path.of("DEVELOPERS.md");
    private static final Path LIST = Path.of("src/test/resources/requirements.txt");
    private static final String BEGIN = "<!-- requirements: written by RequirementTable -->\n";
    private static final String END = "<!-- end of requirements -->\n";

    /** One line of the list. */
    record Line(List<String> numbers, String words, Optional<String> reason) {}

    private final List<Line> lines;
    private final Map<String, Set<String>> tests;

    private RequirementTable(List<Line> lines, Map<String, Set<String>> tests) {
        this.lines = lines;
        this.tests = tests;
    }

    public static void main(String[] args) throws IOException {
        String guide = Files.readString(GUIDE);
        Files.writeString(GUIDE, before(guide) + BEGIN + read().markdown() + END + after(guide));
    }

    static RequirementTable read() throws IOException {
        List<Line> lines = new ArrayList<>();
        for (String line : Files.readAllLines(LIST)) {
            if (!line.isBlank() && !line.startsWith("#")) {
                String[] parts = line.split("\\s*\\|\\s*", 3);
                lines.add(new Line(
                        List.of(parts[0].split(" ")),
                        parts[1],
                        parts.length > 2 ? Optional.of(parts[2]) : Optional.empty()));
            }
        }
        return new RequirementTable(lines, annotated());
    }

    private static Map<String, Set<String>> annotated() {
        Path own;
        try {
            own = Path.of(RequirementTable.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI());
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
        Map<String, Set<String>> tests = new TreeMap<>();
        for (JavaClass type : new ClassFileImporter().importPath(own)) {
            type.tryGetAnnotationOfType(Requirement.class.getName())
                    .ifPresent(annotation -> add(tests, annotation, type));
            for (JavaMethod method : type.getMethods()) {
                method.tryGetAnnotationOfType(Requirement.class.getName())
                        .ifPresent(annotation -> add(tests, annotation, type));
            }
        }
        return tests;
    }

    private static void add(Map<String, Set<String>> tests, JavaAnnotation<?> annotation, JavaClass type) {
        for (Object number : (Object[]) annotation.get("value").orElseThrow()) {
            tests.computeIfAbsent((String) number, n -> new TreeSet<>()).add(type.getSimpleName());
        }
    }

    /** Numbers without a test and without a reason, with both, twice in the list, or in a test alone. */
    List<String> faults() {
        List<String> faults = new ArrayList<>();
        Set<String> listed = new TreeSet<>();
        for (Line line : lines) {
            for (String number : line.numbers()) {
                if (!listed.add(number)) {
                    faults.add(number + " stands in the list twice");
                }
                if (tests.containsKey(number) == line.reason().isPresent()) {
                    faults.add(number
                            + (line.reason().isPresent()
                                    ? " has a reason and a test"
                                    : " has neither a test nor a reason"));
                }
            }
        }
        tests.keySet().stream()
                .filter(number -> !listed.contains(number))
                .forEach(number -> faults.add(number + " is named by a test and is not in the list"));
        return faults;
    }

    String markdown() {
        StringBuilder table = new StringBuilder("| ASVS 5.0.0 | in our words | held by, or why not |\n|---|---|---|\n");
        for (Line line : lines) {
            String held = line.reason()
                    .orElseGet(() -> line.numbers().stream()
                            .flatMap(number -> tests.getOrDefault(number, Set.of()).stream())
                            .distinct()
                            .sorted()
                            .collect(Collectors.joining(", ")));
            table.append("| ")
                    .append(String.join(", ", line.numbers()))
                    .append(" | ")
                    .append(line.words())
                    .append(" | ")
                    .append(held)
                    .append(" |\n");
        }
        return table.toString();
    }

    /** What stands in the guide between its two marks. */
    static String inGuide(String guide) {
        return guide.substring(before(guide).length() + BEGIN.length(), guide.indexOf(END));
    }

    private static String before(String guide) {
        return guide.substring(0, mark(guide, BEGIN));
    }

    private static String after(String guide) {
        return guide.substring(mark(guide, END) + END.length());
    }

    private static int mark(String guide, String mark) {
        int at = guide.indexOf(mark);
        if (at < 0) {
            throw new IllegalStateException("the guide has no line " + Arrays.toString(mark.split("\n")));
        }
        return at;
    }
}
