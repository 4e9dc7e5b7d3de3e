package weekwright.campaign;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import weekwright.account.LogInStore;
import weekwright.account.Passphrases;
import weekwright.base.Id;
import weekwright.db.Db;
import weekwright.db.Folder;
import weekwright.testkit.Visitor;

/** Log-ins with passphrases of full cost: one after the other, then many at once while others read. */
final class AtTheDoor {
    private static final String PASSPHRASE = "nine wet stones on the sill";
    private static final int ONE_BY_ONE = 20;
    private static final int AT_ONCE = 50;
    private static final int READERS = 3;
    private static final int WARM = 100;

    private final int port;
    private final String who;

    AtTheDoor(int port, String who) {
        this.port = port;
        this.who = who;
    }

    /** Gives them a passphrase, while it is not served. */
    static void lock(Path place, String who) throws Exception {
        try (Db db = new Folder(place).open(Clock.systemUTC())) {
            String hash = Passphrases.ofFullCost().hash(PASSPHRASE);
            db.write("campaign", write -> {
                LogInStore.set(write, new Id(who), hash);
                return null;
            });
        }
    }

    void rows() throws Exception {
        long begun = System.nanoTime();
        Visitor in = null;
        for (int i = 0; i < ONE_BY_ONE; i++) {
            in = new Visitor("http://127.0.0.1:" + port);
            if (logIn(in) != 303) {
                throw new IllegalStateException("the passphrase was not taken");
            }
        }
        double rate = ONE_BY_ONE * 1e9 / (System.nanoTime() - begun);
        System.out.printf(
                Locale.ROOT,
                "%-28s %7.1f/s  (at least 2/s)%s%n",
                "log-in, page and post",
                rate,
                rate < 2 ? "  short" : "");
        byte[] week = Wire.get(port, "/week", "Cookie: " + in.cookies() + "\r\n");
        try (Wire wire = new Wire(port)) {
            for (int i = 0; i < WARM; i++) {
                wire.ask(week);
            }
        }
        atOnce(week);
    }

    private void atOnce(byte[] week) throws Exception {
        ExecutorService clients = Executors.newFixedThreadPool(AT_ONCE + READERS);
        List<Future<Integer>> tries = new ArrayList<>();
        for (int i = 0; i < AT_ONCE; i++) {
            tries.add(clients.submit(() -> logIn(new Visitor("http://127.0.0.1:" + port))));
        }
        List<Future<List<Long>>> readers = new ArrayList<>();
        for (int i = 0; i < READERS; i++) {
            readers.add(clients.submit(() -> read(week, tries)));
        }
        Map<Integer, Integer> statuses = new TreeMap<>();
        for (Future<Integer> one : tries) {
            statuses.merge(one.get(), 1, Integer::sum);
        }
        List<Long> times = new ArrayList<>();
        for (Future<List<Long>> one : readers) {
            times.addAll(one.get());
        }
        clients.shutdown();
        times.sort(null);
        double high = times.get(times.size() * 99 / 100) / 1e6;
        boolean refused = statuses.keySet().stream().anyMatch(status -> status >= 500 && status != 503);
        System.out.printf(
                Locale.ROOT,
                "%-28s answers %s; Week meanwhile p99 %.1f ms  (no 5xx but 503, at most 500 ms)%s%n",
                AT_ONCE + " log-ins at once",
                statuses,
                high,
                refused || high > 500 ? "  short" : "");
    }

    private List<Long> read(byte[] week, List<Future<Integer>> until) throws IOException {
        List<Long> times = new ArrayList<>();
        try (Wire wire = new Wire(port)) {
            do {
                long begun = System.nanoTime();
                if (wire.ask(week) != 200) {
                    throw new IllegalStateException("Week was not answered");
                }
                times.add(System.nanoTime() - begun);
            } while (!until.stream().allMatch(Future::isDone));
        }
        return times;
    }

    private int logIn(Visitor visitor) {
        return visitor.form(visitor.get("/account/log-in"))
                .with("name", who)
                .with("passphrase", PASSPHRASE)
                .send()
                .status();
    }
}
