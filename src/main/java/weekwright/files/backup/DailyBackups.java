package weekwright.files.backup;

import java.util.Optional;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import weekwright.db.FolderRefused;

/** Makes a backup of each day by itself, on a thread of its own; what fails is logged and tried again. */
public final class DailyBackups implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(DailyBackups.class);
    private static final long LOOK_MILLIS = 10 * 60_000;

    private final Supplier<Optional<Backups>> backups;
    private final Thread worker;
    private boolean closed;

    /** @param backups of the project; empty as long as there is none */
    public DailyBackups(Supplier<Optional<Backups>> backups) {
        this.backups = backups;
        worker = new Thread(this::work, "backups");
        worker.setDaemon(true);
        worker.start();
    }

    private void work() {
        do {
            try {
                Optional<Backups> there = backups.get();
                if (there.isPresent()) {
                    there.get().daily();
                }
            } catch (FolderRefused | RuntimeException e) {
                LOG.warn("today's backup was not made: {}", e.getMessage());
            }
        } while (waited());
    }

    private synchronized boolean waited() {
        try {
            if (!closed) {
                wait(LOOK_MILLIS);
            }
            return !closed;
        } catch (InterruptedException e) {
            return false;
        }
    }

    /** Lets a backup that is being made be finished. */
    @Override
    public void close() {
        synchronized (this) {
            closed = true;
            notifyAll();
        }
        try {
            worker.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
