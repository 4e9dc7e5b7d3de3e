package weekwright.testkit;

import static weekwright.testkit.ProjectInputs.project;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import weekwright.engine.Inputs;
import weekwright.engine.Outcome;
import weekwright.engine.plan.Plan;
import weekwright.engine.simulate.FixedWork;

/** Projects of fixed days that need equipment in quantity: made, read, turned into inputs, and their schedules validated. */
public final class FixedProjects {
    private FixedProjects() {}

    /** Random work; of three tasks about two follow an earlier one, and some links have a wait. */
    public static FixedWork random(long seed, int tasks, int kinds) {
        SplittableRandom random = new SplittableRandom(seed);
        int[] days = IntStream.range(0, tasks).map(t -> 1 + random.nextInt(6)).toArray();
        int[] quantity =
                IntStream.range(0, kinds).map(q -> 3 + random.nextInt(4)).toArray();
        int[][] need = new int[kinds][tasks];
        for (int q = 0; q < kinds; q++) {
            for (int t = 0; t < tasks; t++) {
                need[q][t] = random.nextInt(quantity[q] + 1);
            }
        }
        List<int[]> links = new ArrayList<>();
        for (int t = 1; t < tasks; t++) {
            if (random.nextInt(3) > 0) {
                links.add(new int[] {random.nextInt(t), t, random.nextInt(4) == 0 ? 2 : 0});
            }
        }
        return work(days, need, quantity, links);
    }

    private static FixedWork work(int[] days, int[][] need, int[] quantity, List<int[]> links) {
        return new FixedWork(
                days,
                need,
                quantity,
                links.stream().mapToInt(l -> l[0]).toArray(),
                links.stream().mapToInt(l -> l[1]).toArray(),
                links.stream().mapToInt(l -> l[2]).toArray());
    }

    /** The lines of a standard instance ({@code .sm}, Kolisch &amp; Sprecher 1996), one mode each. */
    public static FixedWork read(List<String> lines) {
        List<int[]> links = new ArrayList<>();
        List<int[]> requests = new ArrayList<>();
        int[] quantity = {};
        String part = "";
        for (String line : lines) {
            String text = line.strip();
            if (text.isEmpty() || !Character.isDigit(text.charAt(0))) {
                part = text.startsWith("PRECEDENCE") || text.startsWith("REQUESTS") || text.startsWith("RESOURCEAV")
                        ? text.substring(0, 3)
                        : part;
                continue;
            }
            int[] cells = Arrays.stream(text.split("\\s+"))
                    .mapToInt(Integer::parseInt)
                    .toArray();
            switch (part) {
                case "PRE" -> {
                    for (int i = 3; i < cells.length; i++) {
                        links.add(new int[] {cells[0] - 1, cells[i] - 1, 0});
                    }
                }
                case "REQ" -> requests.add(cells);
                case "RES" -> quantity = cells;
                default -> {}
            }
        }
        int[][] need = new int[quantity.length][requests.size()];
        int[] days = new int[requests.size()];
        for (int t = 0; t < days.length; t++) {
            days[t] = requests.get(t)[2];
            for (int q = 0; q < quantity.length; q++) {
                need[q][t] = requests.get(t)[3 + q];
            }
        }
        return work(days, need, quantity, links);
    }

    /** As a project of one stage whose tasks t0, t1 … are waits. */
    public static ProjectInputs of(FixedWork work) {
        ProjectInputs project = project();
        for (int q = 0; q < work.quantity().length; q++) {
            project.equipment("q" + q, work.quantity()[q]);
        }
        for (int t = 0; t < work.days().length; t++) {
            ProjectInputs.Task task = project.task("t" + t).days(work.days()[t]);
            for (int q = 0; q < work.quantity().length; q++) {
                if (work.need()[q][t] > 0) {
                    task.needs("q" + q, work.need()[q][t]);
                }
            }
        }
        for (int l = 0; l < work.from().length; l++) {
            project.link("t" + work.to()[l], "t" + work.from()[l], 1, work.waitDays()[l]);
        }
        return project;
    }

    /** First days by task, from 0, that the dispatch comes to. */
    public static int[] starts(Inputs inputs, Plan plan) {
        return plan.start().stream()
                .mapToInt(day -> day == Outcome.LATER ? day : day - inputs.asOf())
                .toArray();
    }

    /** The day on which all is over. */
    public static int end(FixedWork work, int[] start) {
        return IntStream.range(0, start.length)
                .map(t -> start[t] + work.days()[t])
                .max()
                .orElse(0);
    }

    /** What a schedule breaks: links and their waits, quantities of equipment on each day. */
    public static List<String> broken(FixedWork work, int[] start) {
        List<String> broken = new ArrayList<>();
        for (int l = 0; l < work.from().length; l++) {
            int from = work.from()[l];
            int to = work.to()[l];
            if (start[to] < start[from] + work.days()[from] + work.waitDays()[l]) {
                broken.add("t" + to + " begins before t" + from + " is over");
            }
        }
        for (int q = 0; q < work.quantity().length; q++) {
            int[] used = new int[end(work, start) + 1];
            for (int t = 0; t < start.length; t++) {
                for (int day = start[t]; day < start[t] + work.days()[t]; day++) {
                    used[day] += work.need()[q][t];
                }
            }
            int most = Arrays.stream(used).max().orElse(0);
            if (most > work.quantity()[q]) {
                broken.add(most + " of q" + q + " are used, " + work.quantity()[q] + " there are");
            }
        }
        return broken;
    }

    /** Days of the longest path through the links. */
    public static int longestPath(FixedWork work) {
        int[] start = new int[work.days().length];
        for (boolean changed = true; changed; ) {
            changed = false;
            for (int l = 0; l < work.from().length; l++) {
                int from = work.from()[l];
                int day = start[from] + work.days()[from] + work.waitDays()[l];
                if (day > start[work.to()[l]]) {
                    start[work.to()[l]] = day;
                    changed = true;
                }
            }
        }
        return end(work, start);
    }
}
