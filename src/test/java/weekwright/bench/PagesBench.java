package weekwright.bench;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;
import weekwright.web.Routes;

/**
 * Every page, a save and a search on the real server with ten years of data, over loopback: median and 99th percentile in
 * milliseconds after a warm-up. Pages whose address needs an id that the data has none of are left out and named.
 */
public final class PagesBench {
    private static final int WARM = 40;
    private static final int TIMES = 100;

    private PagesBench() {}

    public static void main(String[] args) throws Exception {
        long begun = System.nanoTime();
        try (ServerFixture server = ServerFixture.of(TenYears::fill)) {
            System.out.printf("ten years written in %.1f s%n", (System.nanoTime() - begun) / 1e9);
            Visitor hedda = server.as("hedda");
            waitForForecast(hedda);
            List<String> leftOut = new ArrayList<>();
            for (Routes.Line line : new Routes(server.app()).pages()) {
                String path = path(line.path());
                if (path.contains("{") || path.startsWith("/start") || path.startsWith("/account")) {
                    leftOut.add(line.path());
                    continue;
                }
                measure(path, () -> expect(hedda.get(path), 200));
            }
            String query = "/search?words=" + URLEncoder.encode("oak bra", StandardCharsets.UTF_8);
            measure(query, () -> expect(hedda.get(query), 200));
            save(hedda);
            System.out.println("left out: " + String.join(" ", leftOut));
        }
    }

    private static String path(String pattern) {
        for (Map.Entry<String, String> example : TenYears.examples().entrySet()) {
            if (pattern.startsWith(example.getKey() + "{")) {
                return pattern.replaceFirst("\\{[a-z]+}", example.getValue());
            }
        }
        return pattern;
    }

    /** A forecast running beside would be measured too. */
    private static void waitForForecast(Visitor visitor) throws InterruptedException {
        long begun = System.nanoTime();
        while (visitor.get("/ahead").text().contains("being drawn") && System.nanoTime() - begun < 300e9) {
            Thread.sleep(500);
        }
        System.out.printf("forecast drawn in %.1f s%n", (System.nanoTime() - begun) / 1e9);
    }

    private static void save(Visitor visitor) {
        List<Visitor.Form> forms = new ArrayList<>();
        for (int i = 0; i < WARM + TIMES; i++) {
            forms.add(visitor.form(visitor.get("/log"), "main form[method=post]")
                    .with("task", "t1950")
                    .with("who", "hedda")
                    .with("hours", "0.1"));
        }
        int[] next = {0};
        measure("POST /log", () -> expect(forms.get(next[0]++).send(), 303));
    }

    private static void expect(Visitor.Reply reply, int status) {
        if (reply.status() != status) {
            throw new IllegalStateException(reply.address() + " answered " + reply.status() + ": " + reply.text());
        }
    }

    private static void measure(String name, Runnable work) {
        for (int i = 0; i < WARM; i++) {
            work.run();
        }
        double[] millis = new double[TIMES];
        for (int i = 0; i < TIMES; i++) {
            long begun = System.nanoTime();
            work.run();
            millis[i] = (System.nanoTime() - begun) / 1e6;
        }
        Arrays.sort(millis);
        double median = millis[TIMES / 2];
        double high = millis[TIMES * 99 / 100];
        System.out.printf(
                "%-44s median %7.1f  p99 %7.1f%s%n", name, median, high, median > 100 || high > 250 ? "  over" : "");
    }
}
