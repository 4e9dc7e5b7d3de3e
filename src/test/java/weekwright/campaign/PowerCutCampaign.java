package weekwright.campaign;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.locks.LockSupport;
import weekwright.files.Tidy;

/**
 * Cuts the power of a server that several clients write to: the process is killed, and of its database that image is taken which was
 * surely on the disk ({@code src/test/c/synced.c}). A second image has some of the rest too, sector by sector at random, as a drive
 * may have written it. Each must hold every acknowledged write and fit together; the next round goes on from the first. It models
 * writes lost and torn that were not synced, not a drive that says it synced and did not. Arguments: rounds, seed, and "normal" for
 * the planted breach; 200 and 1 unless given.
 */
public final class PowerCutCampaign {
    private static final int CLIENTS = 4;
    private static final int FEWEST_ACKNOWLEDGED = 8;
    private static final int MOST_ACKNOWLEDGED = 60;
    private static final long MOST_NANOS = 20_000_000;
    private static final int SECTOR = 512;
    private static final List<String> FILES = List.of("build.db", "build.db-wal");

    private PowerCutCampaign() {}

    /**
     * What came of it.
     *
     * @param cutsWithLoss rounds in which something acknowledged was lost
     */
    record Tally(int rounds, int acknowledged, int lost, int cutsWithLoss, List<String> faults) {}

    public static void main(String[] args) throws Exception {
        int rounds = args.length > 0 ? Integer.parseInt(args[0]) : 200;
        long seed = args.length > 1 ? Long.parseLong(args[1]) : 1;
        boolean normal = args.length > 2 && args[2].equals("normal");
        if (!Shim.possible()) {
            System.out.println("skipped: " + Shim.HOW);
            return;
        }
        long begun = System.nanoTime();
        Path folder = Files.createTempDirectory("weekwright-power");
        Tally tally = run(folder, rounds, seed, normal, true);
        System.out.printf(
                Locale.ROOT,
                "%d power cuts, seed %d, synchronous=%s, %.0f s: %d writes acknowledged, %d lost in %d cuts; faults"
                        + " %s%n",
                tally.rounds(),
                seed,
                normal ? "NORMAL" : "FULL",
                (System.nanoTime() - begun) / 1e9,
                tally.acknowledged(),
                tally.lost(),
                tally.cutsWithLoss(),
                tally.faults());
        if (tally.faults().isEmpty() && tally.lost() > 0 == normal) {
            Tidy.remove(folder);
        } else {
            System.out.println("kept for a look: " + folder);
            System.exit(1);
        }
    }

    /** Runs it in an empty folder; it ends with the first fault of what is there, and counts what is lost. */
    static Tally run(Path folder, int rounds, long seed, boolean normal, boolean atRandom) throws Exception {
        return new Run(folder.toRealPath(), seed, normal, atRandom).rounds(rounds);
    }

    private static final class Run {
        private final Path project;
        private final Path synced;
        private final Path mixed;
        private final Path log;
        private final Shim shim;
        private final String main;
        private final boolean atRandom;
        private final SplittableRandom random;
        private final Crowd crowd;
        private final int port;
        private final List<String> faults = new ArrayList<>();
        private int lost;
        private int cutsWithLoss;

        Run(Path folder, long seed, boolean normal, boolean atRandom) throws Exception {
            project = folder.resolve("project");
            this.atRandom = atRandom;
            synced = Files.createDirectory(folder.resolve("synced"));
            mixed = Files.createDirectory(folder.resolve("mixed"));
            log = folder.resolve("server.log");
            shim = Shim.in(folder);
            main = normal ? NormalServer.class.getName() : "weekwright.Main";
            random = new SplittableRandom(seed);
            port = ServerProcess.port();
            crowd = new Crowd("http://127.0.0.1:" + port, CLIENTS, seed);
            CampaignProject.in(project, CLIENTS);
        }

        Tally rounds(int rounds) throws Exception {
            int acknowledged = 0;
            int done = 0;
            while (done < rounds && faults.isEmpty()) {
                acknowledged += untilTheCut();
                mix();
                Set<String> gone = new LinkedHashSet<>(look(synced));
                gone.addAll(look(mixed));
                lost += gone.size();
                cutsWithLoss += gone.isEmpty() ? 0 : 1;
                crowd.forget(gone);
                copy(synced, project);
                faults.addAll(crowd.faults());
                done++;
                if (done % 20 == 0) {
                    System.out.printf(Locale.ROOT, "%d cuts, %d acknowledged, %d lost%n", done, acknowledged, lost);
                }
            }
            return new Tally(done, acknowledged, lost, cutsWithLoss, faults);
        }

        /** What lies there as a round begins is on the disk. */
        private int untilTheCut() throws Exception {
            copy(project, synced);
            int before = count();
            try (ServerProcess server =
                    ServerProcess.serve(main, project, port, log, shim.environment(project, synced))) {
                crowd.sendAgain();
                CountDownLatch acknowledgements =
                        new CountDownLatch(FEWEST_ACKNOWLEDGED + random.nextInt(MOST_ACKNOWLEDGED));
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
            return count() - before;
        }

        private int count() {
            return crowd.acknowledged().values().stream().mapToInt(List::size).sum();
        }

        /** The synced image with each sector that differs taken from the live files or not, at random. */
        private void mix() throws IOException {
            copy(synced, mixed);
            for (String name : FILES) {
                byte[] live = bytes(project.resolve(name));
                byte[] sure = bytes(synced.resolve(name));
                if (live.length == 0) {
                    continue;
                }
                byte[] both = Arrays.copyOf(sure, Math.max(sure.length, live.length));
                for (int at = 0; at < live.length; at += SECTOR) {
                    if (random.nextBoolean()) {
                        System.arraycopy(live, at, both, at, Math.min(SECTOR, live.length - at));
                    }
                }
                Files.write(mixed.resolve(name), both);
            }
        }

        private List<String> look(Path image) throws Exception {
            try (Kept kept = new Kept(image, project.resolve("photos"))) {
                faults.addAll(kept.faults());
                return kept.lost(crowd.acknowledged());
            }
        }
    }

    /** Nobody has either open. */
    private static void copy(Path from, Path to) throws IOException {
        for (String name : List.of("build.db", "build.db-wal", "build.db-shm")) {
            Files.deleteIfExists(to.resolve(name));
        }
        for (String name : FILES) {
            if (Files.exists(from.resolve(name))) {
                Files.copy(from.resolve(name), to.resolve(name), StandardCopyOption.REPLACE_EXISTING);
            }
        }
    }

    private static byte[] bytes(Path file) throws IOException {
        try {
            return Files.readAllBytes(file);
        } catch (NoSuchFileException none) {
            return new byte[0];
        }
    }
}
