package weekwright.fuzz;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import weekwright.base.Problem;
import weekwright.base.Refused;
import weekwright.files.ExportProject;
import weekwright.files.csv.PlainFiles;
import weekwright.files.csv.ReadResult;
import weekwright.files.picture.PictureFacts;
import weekwright.notes.Markdown;
import weekwright.testkit.CameraPicture;
import weekwright.testkit.OakMill;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;
import weekwright.web.Routes;

/**
 * Feeds readers and forms with mutations. What comes of it is a list of failures, each with the input that made it. Arguments of the
 * command: rounds (of each reader), seed; 20000 and 1 unless given.
 */
public final class Fuzz {
    private final Mutations mutations;
    private final int rounds;
    private final List<String> failures = new ArrayList<>();
    private final Map<String, Integer> outcomes = new TreeMap<>();

    Fuzz(long seed, int rounds) {
        mutations = new Mutations(seed);
        this.rounds = rounds;
    }

    public static void main(String[] args) throws Exception {
        int rounds = args.length > 0 ? Integer.parseInt(args[0]) : 20_000;
        long seed = args.length > 1 ? Long.parseLong(args[1]) : 1;
        Path folder = Files.createTempDirectory("weekwright-fuzz");
        List<String> failures = new ArrayList<>(new Fuzz(seed, rounds).markdown());
        failures.addAll(new Fuzz(seed, rounds).pictures());
        failures.addAll(new Fuzz(seed, rounds / 10).plainFiles(folder));
        failures.addAll(new Fuzz(seed, rounds / 10).forms());
        failures.forEach(System.out::println);
        System.out.println(rounds + " rounds, seed " + seed + ": " + failures.size() + " failures");
        System.exit(failures.isEmpty() ? 0 : 1);
    }

    /** How many were read, refused, or answered with each status. */
    Map<String, Integer> outcomes() {
        return outcomes;
    }

    /** Nothing fails, and nothing that runs comes out. */
    List<String> markdown() {
        byte[] seed = Mutations.corpus("note.md");
        for (int i = 0; i < rounds; i++) {
            String text = new String(mutations.of(seed), StandardCharsets.UTF_8);
            tried("Markdown", text, () -> markdownOf(text));
        }
        return failures;
    }

    /** Renders one note. @throws IllegalStateException when something that runs comes out */
    static void markdownOf(String text) {
        Document page = Jsoup.parseBodyFragment(Markdown.html(text));
        for (Element element : page.body().getAllElements()) {
            boolean runs = element.tagName().matches("script|style|iframe|object|embed|form|base|meta|link|svg")
                    || element.attributes().asList().stream()
                            .anyMatch(a -> a.getKey().startsWith("on"))
                    || element.attr("href").strip().matches("(?is)(javascript|data|vbscript):.*")
                    || element.attr("src").strip().matches("(?is)(javascript|data|https?):.*");
            if (runs) {
                throw new IllegalStateException("came out: " + element);
            }
        }
    }

    /** A picture is read or refused in words. */
    List<String> pictures() {
        List<byte[]> seeds = pictureSeeds();
        for (int i = 0; i < rounds; i++) {
            byte[] bytes = mutations.of(seeds.get(i % seeds.size()));
            tried(
                    "picture",
                    Base64.getEncoder().encodeToString(bytes),
                    () -> outcomes.merge(pictureOf(bytes) ? "read" : "refused", 1, Integer::sum));
        }
        return failures;
    }

    static List<byte[]> pictureSeeds() {
        BufferedImage image = new BufferedImage(24, 16, BufferedImage.TYPE_INT_RGB);
        return List.of(
                CameraPicture.jpeg(image, 6, "2026:11:09 07:30:00"),
                CameraPicture.bytes(image, "png"),
                CameraPicture.bytes(image, "jpg"));
    }

    /** Whether a picture is read, else refused in words. */
    static boolean pictureOf(byte[] bytes) throws IOException {
        try {
            PictureFacts.read(new ByteArrayInputStream(bytes));
            return true;
        } catch (Refused refused) {
            if (refused.getMessage() == null || refused.getMessage().isBlank()) {
                throw new IllegalStateException("refused without words");
            }
            return false;
        }
    }

    /** One file of a small project at a time: it is read, or its faults are told in words. */
    List<String> plainFiles(Path folder) throws Exception {
        Path files = folder.resolve("files");
        List<Path> all = project(files);
        for (int i = 0; i < rounds; i++) {
            Path file = all.get(mutations.next(all.size()));
            byte[] whole = Files.readAllBytes(file);
            byte[] bytes = mutations.of(whole);
            Files.write(file, bytes);
            tried(file.getFileName().toString(), new String(bytes, StandardCharsets.ISO_8859_1), () -> {
                outcomes.merge(filesOf(files) ? "read" : "refused", 1, Integer::sum);
            });
            Files.write(file, whole);
        }
        return failures;
    }

    /** Writes a small project as plain files and lists those of text. */
    static List<Path> project(Path files) throws Exception {
        try (ServerFixture small = ServerFixture.small()) {
            ExportProject.into(small.db(), small.app().folder(), files);
        }
        try (Stream<Path> walk = Files.walk(files)) {
            return walk.filter(Files::isRegularFile)
                    .filter(file -> file.toString().matches(".*\\.(csv|toml|md)"))
                    .sorted(Comparator.comparing(Path::toString))
                    .toList();
        }
    }

    /** Whether a project is read, else its faults are told in words. */
    static boolean filesOf(Path files) throws IOException {
        ReadResult read = PlainFiles.read(files, OakMill.TODAY);
        for (Problem problem : read.problems()) {
            if (problem.text().isBlank()) {
                throw new IllegalStateException("a fault without words");
            }
        }
        return read.data().isPresent();
    }

    /** Every form there is, and the page that reads a bank's file: nothing answers 500. */
    List<String> forms() throws Exception {
        try (ServerFixture server = ServerFixture.small()) {
            Visitor ilse = server.as("ilse");
            List<String> paths = new ArrayList<>();
            for (Routes.Line line : new Routes(server.app()).pages()) {
                if (line.posts()
                        && !line.path().startsWith("/account")
                        && !line.path().startsWith("/crew/log-ins")
                        && !line.path().startsWith("/start")) {
                    paths.add(line.path()
                            .replace("/episodes/{id}", "/episodes/ep.12")
                            .replace("/stages/{id}", "/stages/weir")
                            .replace("/tasks/{id}", "/tasks/weir.2")
                            .replace("/materials/{id}", "/materials/mat.1")
                            .replace("/members/{id}", "/members/bram")
                            .replace("/levels/{id}", "/levels/plank")
                            .replace("/slots/{day}", "/slots/2026-12-04")
                            .replace("{month}", "2026-10")
                            .replace("{row}", "1")
                            .replaceAll("\\{[a-z]+}", "none.such"));
                }
            }
            for (int i = 0; i < rounds / 4; i++) {
                byte[] bytes = mutations.of(Mutations.corpus("bank.csv"));
                Visitor.Form form = ilse.form(ilse.get("/funds/files/new"));
                answered(
                        "/funds/files/new",
                        new String(bytes, StandardCharsets.ISO_8859_1),
                        () -> form.attach("file", "bank.csv", bytes).send());
            }
            for (int i = 0; i < rounds; i++) {
                form(ilse, paths.get(mutations.next(paths.size())));
            }
            if (ilse.get("/week").status() != 200) {
                failures.add("the project does not open any more");
            }
        }
        return failures;
    }

    private void form(Visitor visitor, String path) {
        Visitor.Reply page = visitor.get(path);
        if (page.status() >= 500) {
            failures.add("GET " + path + " answered " + page.status());
        }
        Element chosen = page.status() == 200 ? page.page().selectFirst("main form[method=post]") : null;
        if (chosen == null) {
            return;
        }
        Visitor.Form form = visitor.form(page);
        List<Element> fields = chosen.select("input[name], textarea[name], select[name], button[name]");
        StringBuilder sent = new StringBuilder();
        for (int i = mutations.next(3); i >= 0; i--) {
            Element field = fields.get(mutations.next(fields.size()));
            String name = field.attr("name");
            if (!List.of("csrf", "answer").contains(name) && !field.attr("type").equals("file")) {
                String value = field.tagName().equals("button") ? field.val() : mutations.text();
                form.with(name, value);
                sent.append(name).append('=').append(value).append(' ');
            }
        }
        answered(path, sent.toString(), form::send);
    }

    private interface Sending {
        Visitor.Reply send();
    }

    private void answered(String path, String input, Sending sending) {
        tried(path, input, () -> {
            int status = sending.send().status();
            outcomes.merge(String.valueOf(status), 1, Integer::sum);
            if (status >= 500) {
                throw new IllegalStateException("answered " + status);
            }
        });
    }

    private interface Work {
        void run() throws IOException;
    }

    private void tried(String what, String input, Work work) {
        try {
            work.run();
        } catch (IOException | RuntimeException | StackOverflowError | OutOfMemoryError failure) {
            StackTraceElement[] at = failure.getStackTrace();
            failures.add(what + ": " + failure + (at.length > 0 ? " at " + at[0] : "") + " for <"
                    + input.substring(0, Math.min(600, input.length())) + ">");
        }
    }
}
