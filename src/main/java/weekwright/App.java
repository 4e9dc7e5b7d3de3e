package weekwright;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.LongSupplier;
import weekwright.account.Entrance;
import weekwright.account.Passphrases;
import weekwright.build.SettingsStore;
import weekwright.db.Db;
import weekwright.db.Folder;
import weekwright.db.FolderRefused;
import weekwright.episodes.MondayEpisode;
import weekwright.files.backup.Backups;
import weekwright.files.picture.PhotoFiles;
import weekwright.forecast.Forecasts;
import weekwright.notes.Photo;
import weekwright.notes.PhotoStore;
import weekwright.render.Templates;

/**
 * Everything the program is made of while it serves one folder, built once. The folder may be empty: then there is no
 * project until one is made. Safe for use from several threads.
 */
public final class App implements AutoCloseable {
    private final Folder folder;
    private final Clock clock;
    private final LongSupplier nanos;
    private final Templates templates;
    private final boolean sample;
    private final AutoCloseable lock;
    private final Entrance entrance;
    private List<Daily> daily = List.of();
    private volatile String backupTrouble = "";
    private volatile boolean closing;
    private final int firstLook;
    private final int trials;
    private volatile Optional<Db> db = Optional.empty();
    private volatile Optional<Forecasts> forecasts = Optional.empty();

    /**
     * Takes the folder for this process and opens the project that may stand in it.
     *
     * @param sample whether it is a copy of the sample, which every page then says
     * @throws FolderRefused when the folder holds something else, is taken, or was written by a newer program
     */
    public App(Path folder, Clock clock, Templates templates, boolean sample) throws FolderRefused {
        this(new Folder(folder), clock, templates, sample);
    }

    /** As above in a folder whose backups may lie elsewhere. */
    public App(Folder folder, Clock clock, Templates templates, boolean sample) throws FolderRefused {
        this(
                folder,
                clock,
                System::nanoTime,
                templates,
                sample,
                Forecasts.FIRST_LOOK,
                Forecasts.TRIALS,
                Passphrases.ofFullCost());
    }

    /**
     * As above with other numbers of futures and another cost of passphrases.
     *
     * @param nanos a counter that nobody sets, for what has to wait
     * @param firstLook of the quick forecast
     * @param trials of the whole one
     */
    public App(
            Folder folder,
            Clock clock,
            LongSupplier nanos,
            Templates templates,
            boolean sample,
            int firstLook,
            int trials,
            Passphrases passphrases)
            throws FolderRefused {
        entrance = new Entrance(passphrases, clock, nanos);
        this.nanos = nanos;
        this.firstLook = firstLook;
        this.trials = trials;
        this.folder = folder;
        this.clock = clock;
        this.templates = templates;
        this.sample = sample;
        if (!this.folder.isProject() && !this.folder.isEmpty()) {
            this.folder.open(clock);
        }
        lock = this.folder.lock();
        try {
            if (this.folder.isProject()) {
                db = Optional.of(this.folder.open(clock));
            }
        } catch (FolderRefused refused) {
            close();
            throw refused;
        }
    }

    public Folder folder() {
        return folder;
    }

    public Clock clock() {
        return clock;
    }

    /** A counter that nobody sets, in nanoseconds. */
    public LongSupplier nanos() {
        return nanos;
    }

    public Templates templates() {
        return templates;
    }

    /** The door: who gets in, and how often somebody may try. */
    public Entrance entrance() {
        return entrance;
    }

    public boolean sample() {
        return sample;
    }

    /** The project's store; empty until there is a project with its settings. */
    public Optional<Db> project() {
        return forecasts().isPresent() ? db : Optional.empty();
    }

    /** The project's forecasts; empty until there is a project with its settings. */
    public Optional<Forecasts> forecasts() {
        if (forecasts.isEmpty()) {
            begin();
        }
        return forecasts;
    }

    /**
     * From now on a backup is made each day, on Mondays the episode of what was filmed in the week before, and the copies of
     * pictures that came by an import.
     */
    public synchronized void keepDays() {
        if (daily.isEmpty()) {
            daily = List.of(
                    new Daily("episode", this::episode),
                    new Daily("backup", this::backup),
                    new Daily("set of picture copies", this::copies));
        }
    }

    /** Makes the copies that pages and the build log show, of every picture that has none yet, so that nobody waits for them. */
    void copies() throws IOException {
        Optional<Db> store = project();
        if (store.isEmpty()) {
            return;
        }
        PhotoFiles photos = new PhotoFiles(folder.photos());
        for (Photo photo : store.get().read(PhotoStore.TABLE::values)) {
            if (closing) {
                return;
            }
            photos.copy(photo.file(), PhotoFiles.Size.PAGE);
        }
    }

    private void episode() {
        project().ifPresent(store -> {
            LocalDate today =
                    LocalDate.now(clock.withZone(store.read(SettingsStore::get).zone()));
            if (!store.read(read -> MondayEpisode.isMade(read, today))) {
                store.write("weekwright", write -> MondayEpisode.make(write, today));
            }
        });
    }

    /** Makes today's backup, if none is there; why it cannot be made is kept for the pages to say. */
    void backup() throws FolderRefused {
        Optional<Db> store = project();
        if (store.isEmpty()) {
            return;
        }
        try {
            new Backups(folder, store.get(), clock).daily();
            backupTrouble = "";
        } catch (FolderRefused | RuntimeException e) {
            backupTrouble = "Today's backup was not made: " + e.getMessage();
            throw e;
        }
    }

    /** Why today's backup could not be made, as a sentence; empty while all is well. */
    public String backupTrouble() {
        return backupTrouble;
    }

    private synchronized void begin() {
        boolean ready = db.isPresent() && db.get().read(SettingsStore::find).isPresent();
        if (forecasts.isEmpty() && ready) {
            int threads = Runtime.getRuntime().availableProcessors();
            forecasts = Optional.of(new Forecasts(db.get(), clock, threads, firstLook, trials));
        }
    }

    /**
     * Makes the project's store, empty as yet, or gives the one that a broken-off start left.
     *
     * @throws FolderRefused when the folder meanwhile holds something else
     */
    public synchronized Db create() throws FolderRefused {
        if (db.isEmpty()) {
            db = Optional.of(folder.create(clock));
        }
        return db.get();
    }

    @Override
    public void close() {
        closing = true;
        daily.forEach(Daily::close);
        forecasts.ifPresent(Forecasts::close);
        db.ifPresent(Db::close);
        try {
            lock.close();
        } catch (Exception e) {
            throw new IllegalStateException("the folder's lock cannot be given back", e);
        }
    }
}
