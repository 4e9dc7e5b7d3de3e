package weekwright.campaign;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import weekwright.files.Tidy;
import weekwright.testkit.Visitor;

/**
 * Answers in a second and the 99th percentile of their times, over loopback, from a server process whose heap is bounded; client and
 * server share the machine. Each row is warmed up for ten seconds. The demands are ten times what three people and a film's 5,000 visitors in ten minutes ask for (no
 * source). Arguments: seconds of each row, "sample" or "ten", a part of a row's name; 20, ten and all rows unless given.
 */
public final class Load {
    private static final int WARM_SECONDS = 10;

    /** Over which hours are entered, so that no day gets more than a busy crew's. */
    private static final int DAYS = 300;

    private final int seconds;
    private final LargeProject project;
    private final int port;
    private final String part;

    private Load(int seconds, LargeProject project, int port, String part) {
        this.seconds = seconds;
        this.project = project;
        this.port = port;
        this.part = part;
    }

    /** What somebody sends again and again. */
    private interface Step {
        byte[] request(int time);
    }

    /** Makes the step of one connection. */
    private interface Steps {
        Step of(int connection);
    }

    public static void main(String[] args) throws Exception {
        int seconds = args.length > 0 ? Integer.parseInt(args[0]) : 20;
        LargeProject project = LargeProject.of(args.length > 1 ? args[1] : "ten");
        Path folder = Files.createTempDirectory("weekwright-load");
        Path place = folder.resolve("project");
        Path log = folder.resolve("server.log");
        project.in(place);
        int port = ServerProcess.port();
        try (ServerProcess server = started(project, place, port, log, "start to first page")) {
            new Load(seconds, project, port, args.length > 2 ? args[2] : "").rows();
            System.out.printf("heap at most %s; memory of the process at most %s%n", project.heap(), highest(server));
            command(
                    project,
                    log,
                    10,
                    "backup",
                    place.toString(),
                    folder.resolve("copy.zip").toString());
            command(
                    project,
                    log,
                    10,
                    "export",
                    place.toString(),
                    folder.resolve("files").toString());
            command(
                    project,
                    log,
                    20,
                    "import",
                    folder.resolve("files").toString(),
                    folder.resolve("again").toString());
        }
        AtTheDoor.lock(place, project.who());
        try (ServerProcess server = started(project, place, port, log, "the same after kill -9")) {
            new AtTheDoor(port, project.who()).rows();
            server.stop();
        }
        Tidy.remove(folder);
    }

    private static ServerProcess started(LargeProject project, Path place, int port, Path log, String what)
            throws Exception {
        long begun = System.nanoTime();
        ServerProcess server = ServerProcess.serve(project.heap(), place, port, log);
        new Visitor("http://127.0.0.1:" + port).get("/account");
        System.out.printf(Locale.ROOT, "%-28s %.1f s%n", what, (System.nanoTime() - begun) / 1e9);
        return server;
    }

    /** A command beside the server that serves the same folder. */
    private static void command(LargeProject project, Path log, int demanded, String... words) throws Exception {
        long begun = System.nanoTime();
        int status = ServerProcess.run(project.heap(), log, words);
        double took = (System.nanoTime() - begun) / 1e9;
        System.out.printf(
                Locale.ROOT,
                "%-28s %.1f s  (at most %d s)%s%n",
                words[0],
                took,
                demanded,
                status != 0 ? "  void: exit " + status : took > demanded ? "  short" : "");
    }

    /** What the process held of memory at most, as Linux tells it. */
    static String highest(ServerProcess server) throws Exception {
        Path status = Path.of("/proc/" + server.pid() + "/status");
        return Files.exists(status)
                ? Files.readAllLines(status).stream()
                        .filter(line -> line.startsWith("VmHWM"))
                        .findFirst()
                        .orElse("unknown")
                        .replaceAll("\\s+", " ")
                : "unknown";
    }

    private void rows() throws Exception {
        row("public log", 8, 200, 500, 60, asking("/public/index.html"));
        row("feed", 8, 200, 500, 60, asking("/public/feed.xml"));
        row("feed that a reader has", 8, 304, 1000, 60, known("/public/feed.xml"));
        row("Week", 4, 200, 60, 200, asking("/week"));
        row("Log", 4, 200, 60, 200, asking("/log"));
        row("Ahead", 4, 200, 60, 200, asking("/ahead"));
        row("hours saved", 4, 303, 50, 250, this::hours);
        row("hours saved by one", 1, 303, 0, 100, this::hours);
        row("Week while a forecast runs", 4, 200, 0, 500, asking("/week"));
    }

    private String cookies() {
        return "Cookie: who=" + project.who() + "\r\n";
    }

    private Steps asking(String path) {
        byte[] request = Wire.get(port, path, cookies());
        return connection -> time -> request;
    }

    private Steps known(String path) {
        String tag = new Visitor("http://127.0.0.1:" + port).get(path).header("etag");
        byte[] request = Wire.get(port, path, "If-None-Match: " + tag + "\r\n");
        return connection -> time -> request;
    }

    /** A minute each time on another day, from a page of the log that stays open as on a phone; each entry has a key of its own. */
    private Step hours(int connection) {
        Visitor visitor = new Visitor("http://127.0.0.1:" + port);
        visitor.setCookie("who", project.who());
        Visitor.Reply page = visitor.get("/log");
        Visitor.Form form = visitor.form(page, "form[data-log]").with("hours", "0:01");
        form.with(
                "task",
                project == LargeProject.TEN
                        ? "t1950"
                        : page.page()
                                .selectFirst("form[data-log] input[name=task]")
                                .val());
        String key = form.value("answer");
        LocalDate today = LocalDate.parse(form.value("date"));
        String begin = key.substring(0, key.length() - 8);
        return time -> Wire.post(
                port,
                "/log",
                "Cookie: " + visitor.cookies() + "\r\n",
                form.with("answer", begin + String.format(Locale.ROOT, "%08d", time))
                        .with("date", today.minusDays(time % DAYS).toString())
                        .body());
    }

    private void row(String what, int connections, int status, int demanded, int millis, Steps steps) throws Exception {
        if (!what.contains(part)) {
            return;
        }
        ExecutorService clients = Executors.newFixedThreadPool(connections);
        long warm = System.nanoTime() + WARM_SECONDS * 1_000_000_000L;
        long end = warm + seconds * 1_000_000_000L;
        List<Future<List<Long>>> all = new ArrayList<>();
        for (int i = 0; i < connections; i++) {
            Step step = steps.of(i);
            all.add(clients.submit(() -> client(warm, end, step, status)));
        }
        List<Long> times = new ArrayList<>();
        for (Future<List<Long>> one : all) {
            times.addAll(one.get());
        }
        clients.shutdown();
        long failed = times.stream().filter(time -> time < 0).count();
        List<Long> sorted = times.stream().filter(time -> time >= 0).sorted().toList();
        if (sorted.isEmpty()) {
            System.out.printf(Locale.ROOT, "%-28s nothing answered as it should, %d failed%n", what, failed);
            return;
        }
        double rate = sorted.size() / (double) seconds;
        double high = sorted.get(sorted.size() * 99 / 100) / 1e6;
        System.out.printf(
                Locale.ROOT,
                "%-28s %7.0f/s  median %6.1f ms  p99 %6.1f ms  (%s, p99 at most %d ms)%s%s%n",
                what,
                rate,
                sorted.get(sorted.size() / 2) / 1e6,
                high,
                demanded == 0 ? "any rate" : "at least " + demanded + "/s",
                millis,
                rate < demanded || high > millis ? "  short" : "",
                failed > 0 ? "  void: " + failed + " failed" : "");
    }

    private List<Long> client(long warm, long end, Step step, int status) throws IOException {
        List<Long> times = new ArrayList<>();
        try (Wire wire = new Wire(port)) {
            int time = 0;
            for (long begun = System.nanoTime(); begun < end; begun = System.nanoTime()) {
                boolean done = wire.ask(step.request(time++)) == status;
                if (begun >= warm) {
                    times.add(done ? System.nanoTime() - begun : -1);
                }
            }
        }
        return times;
    }
}
