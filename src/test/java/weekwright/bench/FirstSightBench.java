package weekwright.bench;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import weekwright.testkit.BrowserFixture;
import weekwright.testkit.EveryPage;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

/**
 * What one page of every kind, the public build log's too, weighs and how soon it is there, over loopback, with nothing in the browser's cache and its processor
 * four times slower: compressed bytes of script and style (at most 60 KB), first contentful paint (at most 500 ms; the least of
 * some loads, since whatever else runs on the machine only adds to it), layout shift (none, the most of them) on a desk of 1,280
 * pixels and a phone of 390; and the bytes of the largest drawing of Ahead over three years (at most 150 KB). First on the sample,
 * then on {@link ThreeYears}. "over" marks what is above. Arguments: how often each page is loaded at each width (3), a regular
 * expression for the kinds' addresses (all).
 */
public final class FirstSightBench {
    private static final String NAME = "mill.example";
    private static final int TIMES_SLOWER = 4;
    private static final int[] WIDTHS = {0, 390};
    private static final int MOST_BYTES = 60 * 1024;
    private static final int MOST_MILLIS = 500;
    private static final int MOST_OF_A_DRAWING = 150_000;
    private static final String THREE_YEARS = "/ahead?from=2026-11-23&weeks=156&then=1";

    private final int loads;
    private final Pattern kinds;
    private final Map<String, List<Double>> most = new TreeMap<>();

    private FirstSightBench(int loads, Pattern kinds) {
        this.loads = loads;
        this.kinds = kinds;
    }

    public static void main(String[] args) {
        FirstSightBench bench = new FirstSightBench(
                args.length > 0 && !args[0].isEmpty() ? Integer.parseInt(args[0]) : 3,
                Pattern.compile(args.length > 1 ? args[1] : ""));
        try (ServerFixture sample = ServerFixture.sampleNamed(NAME).drawn()) {
            bench.measure("the sample", sample);
        }
        try (ServerFixture three = ServerFixture.sampleNamed(NAME)) {
            ThreeYears.fill(three.db());
            bench.measure("three years", three.drawn());
        }
    }

    private void measure(String project, ServerFixture server) {
        System.out.printf("%n%s%n%-44s %9s %19s %19s%n", project, "", "KB", "paint ms", "shift");
        System.out.printf("%-44s %9s %9s %9s %9s %9s%n", "kind of page", "sent", "desk", "phone", "desk", "phone");
        Map<String, String> addresses = EveryPage.addresses(server, server.as("ilse"));
        addresses.putAll(publicLog(server.as("ilse")));
        addresses.keySet().removeIf(kind -> !kinds.matcher(kind).find());
        try (BrowserFixture browser = BrowserFixture.at(server, NAME, "ilse")) {
            browser.withSight();
            browser.withoutCache();
            browser.slowed(TIMES_SLOWER);
            most.clear();
            for (String path : addresses.values()) {
                row(browser, path);
            }
            System.out.printf("%-44s %s%n", "the most of all", numbers(most, Collections::max));
            System.out.printf("%-44s %s%n", "the median of all", numbers(most, FirstSightBench::median));
            browser.open(THREE_YEARS);
            long drawing = ((Number) browser.sight("drawing")).longValue();
            System.out.printf(
                    "the largest drawing of %s: %,d bytes%s%n",
                    THREE_YEARS, drawing, drawing > MOST_OF_A_DRAWING ? "  over" : "");
        }
    }

    /** The build log's first page, and one page of each folder to which its links lead. */
    private static Map<String, String> publicLog(Visitor visitor) {
        String folder = "/public/";
        Map<String, String> kinds = new TreeMap<>(Map.of(folder + "index", folder + "index.html"));
        for (String link : visitor.get(folder + "index.html")
                .page()
                .select("a[href$=.html]")
                .eachAttr("href")) {
            kinds.putIfAbsent(folder + link.replaceFirst("(/.*)?(\\.html)?$", ""), folder + link);
        }
        return kinds;
    }

    private void row(BrowserFixture browser, String path) {
        double sent = 0;
        List<Double> paints = new ArrayList<>();
        List<Double> shifts = new ArrayList<>();
        for (int width : WIDTHS) {
            browser.device(false, width);
            // Uncounted: the window still takes its new width while this one is drawn.
            browser.open(path);
            List<Double> here = new ArrayList<>();
            double shift = 0;
            for (int i = 0; i < loads; i++) {
                browser.open(path);
                here.add(number(browser, "firstPaint"));
                shift = Math.max(shift, number(browser, "shift"));
                sent = number(browser, "paint");
            }
            paints.add(Collections.min(here));
            shifts.add(shift);
        }
        Map<String, List<Double>> row = new TreeMap<>();
        row.put("1 sent", List.of(sent / 1024));
        for (int i = 0; i < WIDTHS.length; i++) {
            row.put("2 paint " + i, List.of(paints.get(i)));
            row.put("3 shift " + i, List.of(shifts.get(i)));
        }
        row.forEach((what, one) ->
                most.computeIfAbsent(what, none -> new ArrayList<>()).addAll(one));
        boolean over = sent > MOST_BYTES || Collections.max(paints) > MOST_MILLIS || Collections.max(shifts) > 0;
        System.out.printf("%-44s %s%s%n", path, numbers(row, Collections::max), over ? "  over" : "");
    }

    private interface Of {
        double all(List<Double> values);
    }

    private static String numbers(Map<String, List<Double>> columns, Of of) {
        StringBuilder text = new StringBuilder();
        columns.forEach((what, values) -> text.append(String.format(
                Locale.ROOT,
                what.startsWith("3") ? "%9.4f " : what.startsWith("2") ? "%9.0f " : "%9.1f ",
                of.all(values))));
        return text.toString();
    }

    private static double number(BrowserFixture browser, String function) {
        return ((Number) browser.sight(function)).doubleValue();
    }

    private static double median(List<Double> values) {
        List<Double> sorted = values.stream().sorted().toList();
        return sorted.get(sorted.size() / 2);
    }
}
