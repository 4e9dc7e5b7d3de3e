package weekwright.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static weekwright.testkit.ProjectInputs.day;
import static weekwright.testkit.ProjectInputs.project;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.jgrapht.alg.shortestpath.BellmanFordShortestPath;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleDirectedWeightedGraph;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ProjectInputs;
import weekwright.testkit.Run;

/** Networks without scarce people: published tables, and the longest path of another library as oracle. Activities are waits. */
class NetworksTest {
    /** B. W. Taylor, Introduction to Management Science, solutions to chapter 8, with a dummy 4-5 of no days. */
    private static final int[][] SECOND_ARCS = {
        {1, 2, 8, 1},
        {1, 3, 10, 0},
        {1, 4, 9, 6},
        {2, 5, 6, 1},
        {2, 6, 4, 8},
        {3, 5, 5, 0},
        {4, 5, 0, 6},
        {4, 7, 7, 11},
        {5, 7, 12, 0},
        {5, 8, 15, 1},
        {6, 9, 18, 8},
        {7, 8, 4, 0},
        {8, 9, 7, 0}
    };

    /**
     * A textbook three-point network of 14 activities with all early starts and finishes printed (question in open circulation,
     * read at studyzin.com and wizedu.com): a, m, b; predecessors; printed ES and EF. Durations are six times as long here, so that
     * (a + 4 m + b) / 6 is whole.
     */
    private static final Object[][] THREE_POINT = {
        {"A", 5, 5, 7, "", 0, 5.33},
        {"B", 1, 2, 5, "", 0, 2.33},
        {"C", 5, 5, 5, "A", 5.33, 10.33},
        {"D", 4, 8, 13, "A", 5.33, 13.5},
        {"E", 1, 10, 17, "BC", 10.33, 20},
        {"F", 1, 5, 7, "D", 13.5, 18.17},
        {"G", 2, 6, 9, "D", 13.5, 19.33},
        {"H", 4, 4, 6, "EF", 20, 24.33},
        {"I", 2, 7, 10, "GH", 24.33, 31},
        {"J", 2, 4, 7, "I", 31, 35.17},
        {"K", 6, 10, 13, "I", 31, 40.83},
        {"L", 2, 6, 6, "J", 35.17, 40.5},
        {"M", 2, 2, 3, "K", 40.83, 43},
        {"N", 7, 7, 12, "LM", 43, 50.83},
    };

    private static ProjectInputs threePoint() {
        ProjectInputs project = project().horizonMonths(36);
        for (Object[] row : THREE_POINT) {
            String id = (String) row[0];
            project.task(id).stage("all").days(6 * (int) row[1], 6 * (int) row[2], 6 * (int) row[3]);
            for (char before : ((String) row[4]).toCharArray()) {
                project.link(id, String.valueOf(before), 1, 0);
            }
        }
        return project;
    }

    @Test
    void the_plan_of_the_three_point_network_has_the_printed_early_starts_and_finishes() {
        Run run = Run.of(threePoint());
        for (Object[] row : THREE_POINT) {
            int task = run.task((String) row[0]);
            assertThat(days(run.plan().start().get(task)))
                    .as("start of " + row[0])
                    .isEqualTo(Math.round(6 * ((Number) row[5]).doubleValue()));
            assertThat(days(run.plan().landing().get(task)))
                    .as("finish of " + row[0])
                    .isEqualTo(Math.round(6 * ((Number) row[6]).doubleValue()));
        }
    }

    @Test
    void trials_of_the_three_point_network_land_later_than_its_expected_path() {
        // printed: 50.83 days and P(<= 55) 0.8944 for the expected path alone; where paths merge the true chance is
        // smaller
        // (100,000 beta-shaped runs of the same network, computed apart: mean 51.62, P(<= 53) 0.668 against 0.7414 for
        // the
        // expected path; lognormal durations lean more to the early side and lie between the two)
        int trials = 10_000;
        Run run = Run.of(threePoint(), trials);
        int[] landing = run.outcome().held.stageLanding[0];
        double mean = Arrays.stream(landing).map(NetworksTest::days).average().orElseThrow() / 6;
        assertThat(mean).isBetween(51.2, 52.1);
        double by53 = Arrays.stream(landing).filter(end -> days(end) <= 6 * 53).count() / (double) trials;
        assertThat(by53).isBetween(0.668, 0.7414);
        // every activity of the printed critical path lies on the chain more often than its rival beside it
        assertThat(run.outcome().critical[run.task("A")]).isEqualTo(trials);
        assertThat(run.outcome().critical[run.task("N")]).isEqualTo(trials);
        assertThat(run.outcome().critical[run.task("K")]).isGreaterThan(run.outcome().critical[run.task("J")]);
        assertThat(run.outcome().critical[run.task("E")]).isGreaterThan(run.outcome().critical[run.task("F")]);
    }

    @Test
    void the_printed_probability_of_three_critical_activities() {
        // means 3, 8, 6 and standard deviations 1, 2, 2: P(<= 20) = .84 (curioustab.com, item 64878); here forty times
        // as long,
        // with lognormal shape; low and high lie three deviations off the likely value
        ProjectInputs project = project().horizonMonths(60).chain("a", "b", "c");
        project.task("a")
                .days(0, 120, 240)
                .task("b")
                .days(80, 320, 560)
                .task("c")
                .days(0, 240, 480);
        int[] landing = Run.of(project, 5000).outcome().taskLanding[2];
        double by20 = Arrays.stream(landing)
                        .filter(end -> end != Outcome.LATER && days(end) <= 800)
                        .count()
                / 5000.0;
        assertThat(by20).isBetween(0.82, 0.87);
    }

    /** An arc network: i, j, days, printed total float. An arc follows all arcs that end where it begins. */
    private static ProjectInputs arcs(int[][] arcs) {
        ProjectInputs project = project();
        for (int[] arc : arcs) {
            project.task(name(arc)).stage("all").days(arc[2]);
            for (int[] before : arcs) {
                if (before[1] == arc[0]) {
                    project.link(name(arc), name(before), 1, 0);
                }
            }
        }
        return project;
    }

    private static String name(int[] arc) {
        return arc[0] + "-" + arc[1];
    }

    @Test
    void the_first_printed_arc_network_has_its_early_times_and_critical_path() {
        // B. W. Taylor, Introduction to Management Science, solutions to chapter 8: ES, EF and total float as printed
        int[][] arcs = {
            {1, 2, 7, 2, 0, 7},
            {1, 3, 10, 0, 0, 10},
            {2, 4, 6, 2, 7, 13},
            {3, 4, 5, 0, 10, 15},
            {3, 5, 4, 4, 10, 14},
            {4, 5, 3, 0, 15, 18},
            {5, 6, 2, 0, 18, 20}
        };
        Run run = Run.of(arcs(arcs));
        for (int[] arc : arcs) {
            int task = run.task(name(arc));
            assertThat(days(run.outcome().taskStart[task][0])).as(name(arc)).isEqualTo(arc[4]);
            assertThat(days(run.outcome().taskLanding[task][0])).as(name(arc)).isEqualTo(arc[5]);
            assertThat(run.outcome().critical[task]).as(name(arc)).isEqualTo(arc[3] == 0 ? 1 : 0);
        }
    }

    @Test
    void the_second_printed_arc_network_lasts_38_days_along_its_critical_path() {
        Run run = Run.of(arcs(SECOND_ARCS));
        assertThat(days(run.outcome().held.stageLanding[0][0])).isEqualTo(38);
        for (int[] arc : SECOND_ARCS) {
            assertThat(run.outcome().critical[run.task(name(arc))])
                    .as(name(arc))
                    .isEqualTo(arc[3] == 0 ? 1 : 0);
        }
    }

    @Test
    void the_printed_total_floats_are_what_an_arc_can_slip_without_moving_the_end() {
        for (int slipping = 0; slipping < SECOND_ARCS.length; slipping++) {
            for (int more = 0; more <= 1; more++) {
                int[][] slipped = Arrays.stream(SECOND_ARCS).map(int[]::clone).toArray(int[][]::new);
                slipped[slipping][2] += slipped[slipping][3] + more;
                assertThat(days(Run.of(arcs(slipped)).outcome().held.stageLanding[0][0]))
                        .as(name(SECOND_ARCS[slipping]))
                        .isEqualTo(38 + more);
            }
        }
    }

    @Test
    void the_third_printed_network_lasts_41_days() {
        // a course note, "Network Construction - Critical Path Method": path lengths 35, 41, 30, 39, 38; critical
        // ABFIKLN
        String network =
                "A2; B10(A); C13(A); D12(A); E12(B); F7(B); G10(D); H16(D); I6(F); J12(CG); K5(I); L8(EK); M5(H); N3(JLM)";
        ProjectInputs project = project();
        for (String part : network.split("; ")) {
            String id = part.substring(0, 1);
            int open = part.indexOf('(');
            project.task(id).stage("all").days(Integer.parseInt(part.substring(1, open < 0 ? part.length() : open)));
            if (open >= 0) {
                for (char before : part.substring(open + 1, part.length() - 1).toCharArray()) {
                    project.link(id, String.valueOf(before), 1, 0);
                }
            }
        }
        Run run = Run.of(project);
        assertThat(days(run.outcome().held.stageLanding[0][0])).isEqualTo(41);
        for (char id = 'A'; id <= 'N'; id++) {
            assertThat(run.outcome().critical[run.task(String.valueOf(id))])
                    .as(String.valueOf(id))
                    .isEqualTo("ABFIKLN".indexOf(id) >= 0 ? 1 : 0);
        }
    }

    @Test
    void a_lag_is_added_to_the_early_finish_and_the_larger_counts_where_paths_merge() {
        // a planning handbook (constructionmanuals.tpub.com/14233, p. 44): early start of the next = early finish +
        // lag; at a
        // merge the larger. A4 B6 C5, A-C with 3 days between, B-C without
        ProjectInputs project = project().link("C", "A", 1, 3).link("C", "B", 1, 0);
        project.task("A").days(4).task("B").days(6).task("C").days(5);
        Run run = Run.of(project);
        assertThat(days(run.outcome().taskStart[2][0])).isEqualTo(7);
        assertThat(days(run.outcome().taskLanding[2][0])).isEqualTo(12);
    }

    @Test
    void random_networks_land_by_the_longest_path_that_jgrapht_finds() {
        Random random = new Random(20270301);
        for (int round = 0; round < 60; round++) {
            int n = 3 + random.nextInt(20);
            ProjectInputs project = project().horizonMonths(60);
            SimpleDirectedWeightedGraph<Integer, DefaultWeightedEdge> graph =
                    new SimpleDirectedWeightedGraph<>(DefaultWeightedEdge.class);
            int[] days = new int[n];
            // node 2t begins task t and 2t + 1 ends it; lengths are negative, so that the shortest path is the longest
            graph.addVertex(-1);
            for (int t = 0; t < n; t++) {
                days[t] = random.nextInt(15);
                project.task("t" + t).stage("all").days(days[t]);
                graph.addVertex(2 * t);
                graph.addVertex(2 * t + 1);
                graph.setEdgeWeight(graph.addEdge(-1, 2 * t), 0);
                graph.setEdgeWeight(graph.addEdge(2 * t, 2 * t + 1), -days[t]);
                for (int before = 0; before < t; before++) {
                    if (random.nextInt(4) == 0) {
                        int wait = random.nextInt(3) == 0 ? random.nextInt(9) : 0;
                        project.link("t" + t, "t" + before, 1, wait);
                        graph.setEdgeWeight(graph.addEdge(2 * before + 1, 2 * t), -wait);
                    }
                }
            }
            var paths = new BellmanFordShortestPath<>(graph).getPaths(-1);
            Run run = Run.of(project);
            for (int t = 0; t < n; t++) {
                assertThat(days(run.outcome().taskLanding[t][0]))
                        .as("network %d, task %d of %s", round, t, List.of(Arrays.toString(days)))
                        .isEqualTo((int) Math.round(-paths.getWeight(2 * t + 1)));
            }
        }
    }

    private static int days(int date) {
        return date - day(ProjectInputs.TODAY);
    }
}
