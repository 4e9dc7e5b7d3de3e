package weekwright;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** What is done once a day by itself, on a thread of its own: looked at every ten minutes; what fails is logged and tried again. */
final class Daily implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Daily.class);
    private static final long LOOK_MILLIS = 10 * 60_000;

    private final String name;
    private final Work work;
    private final Thread worker;
    private boolean closed;

    /** Finds out by itself whether there is anything to do today. */
    interface Work {
        void run() throws Exception;
    }

    /** @param name of what is made: {@code backup} */
    Daily(String name, Work work) {
        this.name = name;
        this.work = work;
        worker = new Thread(this::loop, name);
        worker.setDaemon(true);
        worker.start();
    }

    private void loop() {
        do {
            try {
                work.run();
            } catch (Exception e) {
                LOG.warn("today's {} was not made: {}", name, e.getMessage());
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

    /** Lets what is being made be finished. */
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
