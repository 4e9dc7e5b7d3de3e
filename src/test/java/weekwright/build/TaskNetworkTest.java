package weekwright.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.jgrapht.alg.shortestpath.BellmanFordShortestPath;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleDirectedWeightedGraph;
import org.junit.jupiter.api.Test;
import weekwright.testkit.SmallProject;

class TaskNetworkTest {
    private static Task task(String id) {
        return SmallProject.of(Task.class, "id", id, "stage", "s", "title", id, "kind", "work");
    }

    private static Link link(String task, String after, String share, String wait) {
        return SmallProject.of(Link.class, "task", task, "after", after, "share", share, "wait_likely", wait);
    }

    private static List<String> ids(TaskNetwork network) {
        return network.order().stream().map(task -> task.id().value()).toList();
    }

    @Test
    void each_task_stands_after_all_that_it_follows_and_chains_stay_together() {
        TaskNetwork network = TaskNetwork.of(
                List.of(task("d"), task("a"), task("b"), task("c")),
                List.of(link("d", "c", "", ""), link("c", "a", "", ""), link("d", "x", "", "")));
        assertThat(ids(network)).containsExactly("a", "c", "d", "b");
        assertThat(network.arcs()).hasSize(2);
    }

    @Test
    void shares_and_waits_count_in_the_longest_way() {
        TaskNetwork network = TaskNetwork.of(
                List.of(task("a"), task("b"), task("c"), task("d")),
                List.of(
                        link("b", "a", "0.5", ""),
                        link("c", "a", "", "4"),
                        link("d", "b", "", ""),
                        link("d", "c", "", "")));
        Map<String, Double> days = Map.of("a", 10.0, "b", 8.0, "c", 1.0, "d", 2.0);
        TaskNetwork.Longest longest = network.longest(task -> days.get(task.id().value()));
        // by hand: a, four days' wait, c, d: 10 + 4 + 1 + 2 against 5 + 8 + 2 through b
        assertThat(longest.days()).isEqualTo(17);
        assertThat(longest.places().stream().map(ids(network)::get)).containsExactly("a", "c", "d");
    }

    @Test
    void an_empty_stage_has_no_way() {
        assertThat(TaskNetwork.of(List.of(), List.of()).longest(task -> 1))
                .isEqualTo(new TaskNetwork.Longest(List.of(), 0));
    }

    /** Oracle: JGraphT's Bellman-Ford on negated lengths, from a source to a sink. */
    @Test
    void the_longest_way_of_random_networks_is_as_long_as_another_program_finds() {
        Random random = new Random(20261125);
        for (int round = 0; round < 60; round++) {
            int size = 2 + random.nextInt(14);
            List<Task> tasks = new ArrayList<>();
            double[] days = new double[size];
            SimpleDirectedWeightedGraph<Integer, DefaultWeightedEdge> graph =
                    new SimpleDirectedWeightedGraph<>(DefaultWeightedEdge.class);
            graph.addVertex(-1);
            graph.addVertex(size);
            for (int i = 0; i < size; i++) {
                tasks.add(task("t" + i));
                days[i] = random.nextInt(20);
                graph.addVertex(i);
                graph.setEdgeWeight(graph.addEdge(-1, i), 0);
                graph.setEdgeWeight(graph.addEdge(i, size), -days[i]);
            }
            List<Link> links = new ArrayList<>();
            for (int to = 1; to < size; to++) {
                for (int from = 0; from < to; from++) {
                    if (random.nextInt(4) == 0) {
                        int wait = random.nextInt(5);
                        links.add(link("t" + to, "t" + from, "", String.valueOf(wait)));
                        graph.setEdgeWeight(graph.addEdge(from, to), -days[from] - wait);
                    }
                }
            }
            TaskNetwork.Longest longest = TaskNetwork.of(tasks, links)
                    .longest(task -> days[Integer.parseInt(task.id().value().substring(1))]);
            double oracle = -new BellmanFordShortestPath<>(graph).getPathWeight(-1, size);
            assertThat(longest.days()).as("round %s", round).isEqualTo(oracle);
        }
    }
}
