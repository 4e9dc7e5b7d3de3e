package weekwright.bench;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import me.tongfei.progressbar.ProgressBar;
import weekwright.worlds.Kind;
import weekwright.worlds.Lived;
import weekwright.worlds.Tally;

/**
 * Whether forecasts keep their word on made-up projects whose truth is known: {@code weekwright.bench.KnownWorldsBench [worlds [seed
 * [kind [threads]]]]}, 100 worlds of every kind from seed 1 if not given, two threads; {@code kind} is a part of the name of one kind.
 */
public final class KnownWorldsBench {
    private static final int TRIALS = 1000;

    private KnownWorldsBench() {}

    public static void main(String[] arguments) throws InterruptedException {
        int worlds = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 100;
        long seed = arguments.length > 1 ? Long.parseLong(arguments[1]) : 1;
        String part = arguments.length > 2 ? arguments[2] : "";
        int threadCount = arguments.length > 3 ? Integer.parseInt(arguments[3]) : 2;
        List<Kind> kinds =
                Kind.all().stream().filter(kind -> kind.name().contains(part)).toList();
        try (ProgressBar bar = new ProgressBar("worlds", (long) worlds * kinds.size())) {
            for (Kind kind : kinds) {
                Tally tally = new Tally();
                AtomicInteger next = new AtomicInteger();
                Thread[] threads = new Thread[threadCount];
                for (int i = 0; i < threadCount; i++) {
                    threads[i] = new Thread(() -> {
                        for (int w = next.getAndIncrement(); w < worlds; w = next.getAndIncrement()) {
                            tally.add(new Lived(kind, seed, w, TRIALS));
                            bar.step();
                        }
                    });
                    threads[i].start();
                }
                for (Thread thread : threads) {
                    thread.join();
                }
                System.out.println(kind.name() + ": " + tally.text());
            }
        }
    }
}
