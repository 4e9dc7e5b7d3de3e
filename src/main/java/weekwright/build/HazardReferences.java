package weekwright.build;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the rules on a hazard stand, as in {@code words/hazard-references.txt}: those that were looked at and those told
 * from memory apart; the latter without numbers. Not complete; limits are left out. Local codes and qualified people come
 * first.
 */
public final class HazardReferences {
    private static final List<String[]> ALL = read();

    private HazardReferences() {}

    /** Those of a hazard that were looked at; may be empty. */
    public static List<String> seen(String code) {
        return of(code, "seen");
    }

    /** Those told from memory: to be looked up before anybody relies on them; may be empty. */
    public static List<String> fromMemory(String code) {
        return of(code, "memory");
    }

    private static List<String> of(String code, String how) {
        return ALL.stream()
                .filter(line -> line[0].equals(code) && line[2].equals(how))
                .map(line -> line[1])
                .toList();
    }

    private static List<String[]> read() {
        List<String[]> all = new ArrayList<>();
        try (InputStream in = HazardReferences.class.getResourceAsStream("/words/hazard-references.txt")) {
            new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .map(line -> line.split("\t"))
                    .forEach(all::add);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return List.copyOf(all);
    }
}
