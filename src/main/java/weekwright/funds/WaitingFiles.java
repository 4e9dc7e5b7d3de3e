package weekwright.funds;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Files that were sent and are not in the books yet, with what stands in them. They stay in this program's memory alone: such a
 * file can name supporters, of whom nothing is ever written down. They are gone once they are entered, thrown away, a day old,
 * or the program stops. Safe for use from several threads.
 */
public final class WaitingFiles {
    /** What is older is forgotten when the next one comes. */
    private static final Duration KEPT = Duration.ofDays(1);

    /** The oldest is forgotten when one more comes. */
    private static final int MOST = 6;

    private final Map<String, Kept> files = new LinkedHashMap<>();

    /** A file with its bytes, which nobody changes. */
    public record Kept(WaitingFile file, byte[] bytes) {}

    public synchronized void add(WaitingFile file, byte[] bytes) {
        Instant old = file.at().minus(KEPT);
        files.values().removeIf(kept -> kept.file().at().isBefore(old));
        while (files.size() >= MOST) {
            files.remove(files.keySet().iterator().next());
        }
        files.put(file.key(), new Kept(file, bytes));
    }

    /** All of them, the newest first. */
    public synchronized List<WaitingFile> list() {
        List<WaitingFile> all =
                new ArrayList<>(files.values().stream().map(Kept::file).toList());
        Collections.reverse(all);
        return all;
    }

    public synchronized Optional<Kept> find(String key) {
        return Optional.ofNullable(files.get(key));
    }

    /** Remembers as whose file it is read. */
    public synchronized void readAs(String key, String source) {
        files.computeIfPresent(key, (k, kept) -> {
            WaitingFile file = kept.file();
            return new Kept(new WaitingFile(file.key(), file.name(), source, file.at()), kept.bytes());
        });
    }

    /** Takes one out; empty where it does not wait. */
    public synchronized Optional<Kept> take(String key) {
        return Optional.ofNullable(files.remove(key));
    }

    /** Lets one wait again that was taken out and could not be entered. */
    public synchronized void putBack(Kept kept) {
        files.put(kept.file().key(), kept);
    }
}
