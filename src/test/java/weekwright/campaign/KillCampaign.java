package weekwright.campaign;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.locks.LockSupport;
import weekwright.files.Tidy;

/**
 * Starts the server, writes through HTTP from several clients, kills it with signal 9 at random moments, starts it again, sends
 * what had no answer once more, and looks: every acknowledged write is there, none is doubled, the database is whole, version and
 * change log agree. Every fifth round it is killed once more while it starts. Arguments: rounds, seed; 200 and 1 unless given.
 */
public final class KillCampaign {
    private static final String MAIN = "weekwright.Main";
    private static final int CLIENTS = 4;
    private static final int MOST_ACKNOWLEDGED = 60;
    private static final long MOST_NANOS = 20_000_000;
    private static final int MOST_START_MILLIS = 3_000;

    private KillCampaign() {}

    /** What came of it. */
    record Tally(int rounds, int acknowledged, int unanswered, List<String> lost, List<String> faults) {}

    public static void main(String[] args) throws Exception {
        int rounds = args.length > 0 ? Integer.parseInt(args[0]) : 200;
        long seed = args.length > 1 ? Long.parseLong(args[1]) : 1;
        long begun = System.nanoTime();
        Path folder = Files.createTempDirectory("weekwright-kill");
        Tally tally = run(folder, rounds, seed, true);
        System.out.printf(
                Locale.ROOT,
                "%d kills, seed %d, %.0f s: %d writes acknowledged, %d of them only when sent again; lost %s; faults"
                        + " %s%n",
                tally.rounds(),
                seed,
                (System.nanoTime() - begun) / 1e9,
                tally.acknowledged(),
                tally.unanswered(),
                tally.lost(),
                tally.faults());
        if (tally.lost().isEmpty() && tally.faults().isEmpty()) {
            Tidy.remove(folder);
        } else {
            System.out.println("kept for a look: " + folder);
            System.exit(1);
        }
    }

    /**
     * Runs it in an empty folder.
     *
     * @param atRandom whether the moment of a kill is drawn by time too, else by the count of acknowledgements alone
     */
    static Tally run(Path folder, int rounds, long seed, boolean atRandom) throws Exception {
        Path project = folder.resolve("project");
        Path log = folder.resolve("server.log");
        CampaignProject.in(project, CLIENTS);
        int port = ServerProcess.port();
        Crowd crowd = new Crowd("http://127.0.0.1:" + port, CLIENTS, seed);
        SplittableRandom random = new SplittableRandom(seed);
        List<String> faults = new ArrayList<>();
        List<String> lost = new ArrayList<>();
        int done = 0;
        while (done < rounds && faults.isEmpty() && lost.isEmpty()) {
            try (ServerProcess server = ServerProcess.serve(MAIN, project, port, log, Map.of())) {
                crowd.sendAgain();
                look(project, crowd, lost, faults);
                CountDownLatch acknowledgements = new CountDownLatch(1 + random.nextInt(MOST_ACKNOWLEDGED));
                List<Thread> clients = crowd.begin(acknowledgements);
                acknowledgements.await();
                if (atRandom) {
                    LockSupport.parkNanos(random.nextLong(MOST_NANOS));
                }
                server.kill();
                for (Thread client : clients) {
                    client.join();
                }
            }
            done++;
            if (done % 5 == 0) {
                whileStarting(project, port, log, atRandom ? random.nextInt(MOST_START_MILLIS) : 0);
            }
            if (done % 20 == 0) {
                System.out.printf(
                        Locale.ROOT,
                        "%d kills, %d writes acknowledged%n",
                        done,
                        crowd.acknowledged().values().stream()
                                .mapToInt(List::size)
                                .sum());
            }
        }
        try (ServerProcess server = ServerProcess.serve(MAIN, project, port, log, Map.of())) {
            crowd.sendAgain();
            look(project, crowd, lost, faults);
            if (server.stop() != 143) {
                faults.add("told to end, it did not end as it should");
            }
        }
        faults.addAll(crowd.faults());
        Files.readAllLines(log).stream().filter(line -> line.contains("ERROR")).forEach(faults::add);
        int acknowledged =
                crowd.acknowledged().values().stream().mapToInt(List::size).sum();
        return new Tally(done, acknowledged, crowd.unanswered(), lost, faults);
    }

    private static void whileStarting(Path project, int port, Path log, int millis) throws Exception {
        try (ServerProcess server = ServerProcess.begin(MAIN, ServerProcess.arguments(project, port), log, Map.of())) {
            if (server.ends(millis)) {
                throw new IOException("it did not start again; see " + log);
            }
        }
    }

    private static void look(Path project, Crowd crowd, List<String> lost, List<String> faults) throws Exception {
        try (Kept kept = new Kept(project, project.resolve("photos"))) {
            lost.addAll(kept.lost(crowd.acknowledged()));
            faults.addAll(kept.faults());
        }
    }
}
