package weekwright.campaign;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.Statement;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentSkipListSet;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.LockSupport;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import weekwright.files.Tidy;
import weekwright.testkit.CameraPicture;
import weekwright.testkit.Visitor;

/**
 * Minutes of what a crew and its visitors do at once: readers of all sheets and of the public log, hours twice a second (and the
 * forecasts that follow), a picture each ten seconds, a backup a minute, addresses that are none. Every five seconds it looks at
 * descriptors, threads, the write-ahead log and the heap after a collection. Linux. Arguments: minutes, "sample" or "ten"; 10 and
 * sample unless given.
 */
public final class Soak {
    private static final List<String> SHEETS = List.of(
            "/week",
            "/log",
            "/ahead",
            "/build",
            "/episodes",
            "/funds",
            "/notes",
            "/crew",
            "/search?words=oak",
            "/public/index.html",
            "/public/feed.xml",
            "/crew/history",
            "/funds/ledger",
            "/episodes/slots",
            "/build/stock",
            "/week/shots");
    private static final List<String> NONE = List.of(
            "/nowhere",
            "/build/tasks/none.such",
            "/photos/..%2fbuild.db",
            "/search?words=%00%27",
            "/log/entries/99999999/edit");
    private static final Pattern USED = Pattern.compile("used (\\d+)K");
    private static final int WAL_MOST = 16_000_000;

    private final LargeProject project;
    private final String origin;
    private final Path place;
    private final long end;
    private final Set<String> acknowledged = new ConcurrentSkipListSet<>();
    private final Set<String> faults = new ConcurrentSkipListSet<>();
    private final AtomicInteger answers = new AtomicInteger();
    private final List<long[]> looks = new ArrayList<>();

    private Soak(LargeProject project, String origin, Path place, long end) {
        this.project = project;
        this.origin = origin;
        this.place = place;
        this.end = end;
    }

    public static void main(String[] args) throws Exception {
        int minutes = args.length > 0 ? Integer.parseInt(args[0]) : 10;
        LargeProject project = LargeProject.of(args.length > 1 ? args[1] : "sample");
        Path folder = Files.createTempDirectory("weekwright-soak");
        Path place = folder.resolve("project");
        project.in(place);
        int port = ServerProcess.port();
        Path log = folder.resolve("server.log");
        try (ServerProcess server = ServerProcess.serve(project.heap(), place, port, log)) {
            Soak soak =
                    new Soak(project, "http://127.0.0.1:" + port, place, System.nanoTime() + minutes * 60_000_000_000L);
            soak.run(server);
            soak.judge(server, log);
            if (soak.faults.isEmpty()) {
                Tidy.remove(folder);
            } else {
                System.out.println("kept for a look: " + folder);
                System.exit(1);
            }
        }
    }

    private interface Step {
        void next(Visitor visitor, SplittableRandom random, int time);
    }

    private Thread every(int millis, String name, Step step) {
        Thread thread = new Thread(
                () -> {
                    Visitor visitor = new Visitor(origin);
                    visitor.setCookie("who", project.who());
                    SplittableRandom random = new SplittableRandom(name.hashCode());
                    for (int time = 0; System.nanoTime() < end; time++) {
                        try {
                            step.next(visitor, random, time);
                        } catch (AssertionError broken) {
                            faults.add(name + ": " + broken.getMessage());
                        }
                        LockSupport.parkNanos(millis * 1_000_000L);
                    }
                },
                name);
        thread.start();
        return thread;
    }

    private void answered(Visitor.Reply reply, int expected) {
        answers.incrementAndGet();
        if (expected == 0 ? reply.status() >= 500 : reply.status() != expected) {
            faults.add(reply.address() + " answered " + reply.status());
        }
    }

    private void run(ServerProcess server) throws Exception {
        List<Thread> all = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            all.add(every(
                    50,
                    "reader " + i,
                    (visitor, random, time) -> answered(visitor.get(SHEETS.get(random.nextInt(SHEETS.size()))), 200)));
        }
        all.add(every(500, "hours", this::hours));
        all.add(every(
                2_000,
                "strangers",
                (visitor, random, time) -> answered(visitor.get(NONE.get(random.nextInt(NONE.size()))), 0)));
        all.add(every(10_000, "pictures", this::picture));
        all.add(every(
                60_000,
                "backups",
                (visitor, random, time) ->
                        answered(visitor.form(visitor.get("/crew/backups")).press("make"), 303)));
        while (System.nanoTime() < end) {
            look(server);
            LockSupport.parkNanos(5_000_000_000L);
        }
        for (Thread one : all) {
            one.join();
        }
        look(server);
    }

    private void hours(Visitor visitor, SplittableRandom random, int time) {
        String mark = "soak " + time;
        Visitor.Reply page = visitor.get("/log");
        String task = project == LargeProject.TEN
                ? "t1950"
                : page.page().selectFirst("form[data-log] input[name=task]").val();
        Visitor.Reply reply = visitor.form(page, "form[data-log]")
                .with("task", task)
                .with(
                        "date",
                        LocalDate.now(ZoneOffset.UTC)
                                .minusDays(1 + random.nextInt(200))
                                .toString())
                .with("hours", "0:01")
                .with("note", mark)
                .send();
        if (reply.status() == 303) {
            acknowledged.add(mark);
        } else if (reply.status() != 422) {
            faults.add("hours were answered " + reply.status());
        }
        answers.incrementAndGet();
    }

    private void picture(Visitor visitor, SplittableRandom random, int time) {
        Visitor.Reply notes = visitor.get("/notes");
        String note = notes.page().select("main a[href]").eachAttr("href").stream()
                .filter(link -> link.matches("/notes/[a-z]+[.]?[0-9]+"))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no note"));
        byte[] jpeg = CameraPicture.bytes(new BufferedImage(1_200, 900, BufferedImage.TYPE_INT_RGB), "jpg");
        answered(
                visitor.form(visitor.get(note + "/pictures/new"))
                        .attach("pictures", "a.jpg", jpeg)
                        .with("shows", "A stone")
                        .send(),
                303);
    }

    /** Descriptors, threads, bytes of the log, kilobytes of heap after a collection. */
    private void look(ServerProcess server) throws Exception {
        Path process = Path.of("/proc/" + server.pid());
        Path wal = place.resolve("build.db-wal");
        jcmd(server, "GC.run");
        long heap = 0;
        Matcher used = USED.matcher(jcmd(server, "GC.heap_info"));
        while (used.find()) {
            heap += Long.parseLong(used.group(1));
        }
        looks.add(new long[] {
            count(process.resolve("fd")), count(process.resolve("task")), Files.exists(wal) ? Files.size(wal) : 0, heap
        });
    }

    private static long count(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.count();
        }
    }

    private static String jcmd(ServerProcess server, String command) throws Exception {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "jcmd").toString(),
                        String.valueOf(server.pid()),
                        command)
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        process.waitFor();
        // the classes' own memory is no heap
        int classes = said.indexOf("Metaspace");
        return classes < 0 ? said : said.substring(0, classes);
    }

    private long leastHeap(int from, int to) {
        return looks.subList(from, to).stream().mapToLong(look -> look[3]).min().orElseThrow();
    }

    private void judge(ServerProcess server, Path log) throws Exception {
        long[] early = looks.get(looks.size() / 4);
        long[] late = looks.get(looks.size() - 1);
        // what is kept, whatever a forecast that is being drawn holds at the moment of one look
        long heapBefore = leastHeap(looks.size() / 4, looks.size() / 2);
        long heapAfter = leastHeap(looks.size() * 3 / 4, looks.size());
        long wal = looks.stream().mapToLong(look -> look[2]).max().orElseThrow();
        System.out.printf(
                Locale.ROOT,
                "%d answers, %d hours acknowledged; after a quarter and at the end: descriptors %d, %d; threads %d,"
                        + " %d; least heap of the second and the last quarter %.1f, %.1f MB; write-ahead log at most %.1f"
                        + " MB%n",
                answers.get(),
                acknowledged.size(),
                early[0],
                late[0],
                early[1],
                late[1],
                heapBefore / 1e3,
                heapAfter / 1e3,
                wal / 1e6);
        if (late[0] > early[0] + 5 || late[1] > early[1] + 5) {
            faults.add("descriptors or threads grew");
        }
        if (heapAfter > heapBefore * 1.2 + 2_000) {
            faults.add("the heap grew");
        }
        if (wal > WAL_MOST) {
            faults.add("the write-ahead log grew to " + wal);
        }
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + place.resolve("build.db"));
                Statement statement = connection.createStatement()) {
            Set<String> there = new TreeSet<>();
            try (ResultSet rows = statement.executeQuery("SELECT note FROM hours WHERE note LIKE 'soak %'")) {
                while (rows.next()) {
                    if (!there.add(rows.getString(1))) {
                        faults.add(rows.getString(1) + " is there twice");
                    }
                }
            }
            if (!there.containsAll(acknowledged)) {
                faults.add("acknowledged hours are missing");
            }
            try (ResultSet check = statement.executeQuery("PRAGMA integrity_check")) {
                if (!check.getString(1).equals("ok")) {
                    faults.add("integrity_check: " + check.getString(1));
                }
            }
        }
        long begun = System.nanoTime();
        int status = server.stop();
        if (status != 143 || System.nanoTime() - begun > 5_000_000_000L) {
            faults.add("it did not end cleanly within 5 s: status " + status);
        }
        Files.readAllLines(log).stream()
                .filter(line -> line.contains(" ERROR "))
                .forEach(faults::add);
        System.out.println(faults.isEmpty() ? "no faults" : "faults: " + faults);
    }
}
