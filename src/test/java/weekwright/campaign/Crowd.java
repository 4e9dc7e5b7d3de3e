package weekwright.campaign;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.concurrent.CountDownLatch;
import weekwright.testkit.CameraPicture;
import weekwright.testkit.Visitor;

/**
 * Several clients that write through HTTP at once: hours, costs, build notes, pictures, changes of a task. Each write bears a mark
 * of its own and a key; what was acknowledged is remembered, and what was not is sent once more with the same key.
 */
final class Crowd {
    private static final byte[] PICTURE =
            CameraPicture.bytes(new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB), "png");
    private static final int DAYS_BACK = 300;

    /** What is written, and where. */
    enum Kind {
        HOURS("/log", "form[data-log]"),
        COST("/funds/costs/new", "main form[method=post]"),
        NOTE("/notes/new", "main form[method=post]"),
        PICTURE("/notes/n.0/pictures/new", "main form[method=post]"),
        TASK("/build/tasks/weir.%d/edit", "main form[method=post]");

        private final String path;
        private final String css;

        Kind(String path, String css) {
            this.path = path;
            this.css = css;
        }
    }

    /** One write: its mark and the form that holds it. */
    private record Write(Kind kind, String mark, Visitor.Form form) {}

    private final List<Client> clients = new ArrayList<>();
    private final LocalDate today = LocalDate.now(ZoneOffset.UTC).minusDays(1);

    /** So many clients of the server at that address. */
    Crowd(String origin, int clients, long seed) {
        for (int i = 0; i < clients; i++) {
            this.clients.add(new Client(i, origin, new SplittableRandom(seed + i)));
        }
    }

    /** Begins to write; the latch is counted down with each acknowledgement, and to nothing when a client ends. */
    List<Thread> begin(CountDownLatch acknowledgements) {
        return clients.stream()
                .map(client -> {
                    Thread thread = new Thread(() -> client.run(acknowledgements), "client " + client.number);
                    thread.start();
                    return thread;
                })
                .toList();
    }

    /** Sends what had no answer once more. */
    void sendAgain() {
        clients.forEach(Client::sendAgain);
    }

    /** The marks of all that was acknowledged, by kind. */
    Map<Kind, List<String>> acknowledged() {
        Map<Kind, List<String>> all = new EnumMap<>(Kind.class);
        for (Kind kind : Kind.values()) {
            all.put(kind, new ArrayList<>());
        }
        clients.forEach(client ->
                client.acknowledged.forEach((mark, kind) -> all.get(kind).add(mark)));
        return all;
    }

    /**
     * Forgets what was acknowledged and lost, so that it is not counted in each round after; then what had no answer is forgotten
     * too, for its forms speak of a state that is gone.
     */
    void forget(Collection<String> marks) {
        clients.forEach(client -> marks.forEach(client.acknowledged::remove));
        if (!marks.isEmpty()) {
            clients.forEach(client -> client.open.clear());
        }
    }

    /** Answers that are neither an acknowledgement nor a broken connection. */
    List<String> faults() {
        return clients.stream().flatMap(client -> client.faults.stream()).toList();
    }

    int unanswered() {
        return clients.stream().mapToInt(client -> client.unanswered).sum();
    }

    private final class Client {
        private final int number;
        private final Visitor visitor;
        private final SplittableRandom random;
        private final Map<String, Kind> acknowledged = new LinkedHashMap<>();
        private final List<Write> open = new ArrayList<>();
        private final List<String> faults = new ArrayList<>();
        private int unanswered;
        private int written;

        Client(int number, String origin, SplittableRandom random) {
            this.number = number;
            this.random = random;
            visitor = new Visitor(origin);
            visitor.setCookie("who", "ilse");
        }

        void run(CountDownLatch acknowledgements) {
            Map<Kind, Visitor.Reply> pages = new EnumMap<>(Kind.class);
            try {
                while (faults.isEmpty()) {
                    Write write = next(pages);
                    open.add(write);
                    settle(write, write.form().send());
                    acknowledgements.countDown();
                }
            } catch (AssertionError broken) {
                if (!(broken.getCause() instanceof IOException)) {
                    faults.add(String.valueOf(broken.getMessage()));
                }
            }
            while (acknowledgements.getCount() > 0) {
                acknowledgements.countDown();
            }
        }

        void sendAgain() {
            for (Write write : List.copyOf(open)) {
                unanswered++;
                settle(write, write.form().send());
            }
        }

        private void settle(Write write, Visitor.Reply reply) {
            open.remove(write);
            if (reply.status() == 303) {
                acknowledged.put(write.mark(), write.kind());
            } else {
                faults.add(write.mark() + " was answered " + reply.status() + ": " + reply.troubles());
            }
        }

        private Write next(Map<Kind, Visitor.Reply> pages) {
            Kind kind = Kind.values()[random.nextInt(Kind.values().length)];
            String path = String.format(kind.path, number);
            // a task's form carries its version, so it is asked anew each time
            Visitor.Reply page =
                    kind == Kind.TASK ? visitor.get(path) : pages.computeIfAbsent(kind, k -> visitor.get(path));
            String mark = "mark " + number + " " + written++;
            Visitor.Form form = visitor.form(page, kind.css)
                    .with("answer", Long.toHexString(random.nextLong()) + Long.toHexString(random.nextLong()) + "key");
            String day = today.minusDays(random.nextInt(DAYS_BACK)).toString();
            switch (kind) {
                case HOURS ->
                    form.with("task", "weir." + number)
                            .with("date", day)
                            .with("hours", "0:01")
                            .with("note", mark);
                case COST ->
                    form.with("amount", "12.50")
                            .with("date", day)
                            .with("kind", "other-cost")
                            .with("note", mark);
                case NOTE -> form.with("title", mark).with("date", day).with("text", "The third stone.");
                case PICTURE -> form.attach("pictures", "stone.png", PICTURE).with("shows", mark);
                case TASK -> form.with("title", mark);
            }
            return new Write(kind, mark, form);
        }
    }
}
