package weekwright.forecast;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Supplier;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import weekwright.engine.simulate.Stopped;

/**
 * The track record, made beside the pages, once for each state of a project and day. Only the newest is held; a change or a new day
 * ends the one being made. Safe for use from several threads.
 */
public final class Records {
    private static final Logger LOG = LoggerFactory.getLogger("weekwright.forecast");

    private record Key(long version, LocalDate day) {}

    private Key wanted;
    private Key madeFor;
    private Key failed;
    private TrackRecord made;
    private int done;
    private int of;

    /**
     * What there is to show.
     *
     * @param shown the newest that is finished; of an earlier state of the project while {@code making} and where that {@code
     *     failed}
     */
    public record Look(Optional<TrackRecord> shown, boolean making, boolean failed, int done, int of) {}

    /** Begins one where it is missing; {@code asked} is called for it within this call. */
    public synchronized Look look(long version, LocalDate day, Supplier<Replay.Asked> asked) {
        Key key = new Key(version, day);
        if (!key.equals(wanted)) {
            Replay.Asked what = asked.get();
            wanted = key;
            done = 0;
            of = what.fridays().size();
            Thread thread = new Thread(() -> make(key, what), "track record");
            thread.setDaemon(true);
            thread.start();
        }
        boolean broke = key.equals(failed);
        return new Look(Optional.ofNullable(made), !key.equals(madeFor) && !broke, broke, done, of);
    }

    private void make(Key key, Replay.Asked what) {
        try {
            TrackRecord record = Replay.run(what, 1, count -> told(key, count));
            finished(key, record);
        } catch (Stopped e) {
            // another state of the project is wanted by now
        } catch (RuntimeException | Error e) {
            LOG.error("track record of {} failed, project version {}", key.day, key.version, e);
            failed(key);
        }
    }

    private synchronized void failed(Key key) {
        failed = key;
    }

    private synchronized boolean told(Key key, int count) {
        done = key.equals(wanted) ? count : done;
        return key.equals(wanted);
    }

    private synchronized void finished(Key key, TrackRecord record) {
        if (key.equals(wanted)) {
            madeFor = key;
            made = record;
        }
    }
}
