package weekwright.web.start;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import weekwright.base.Rejected;
import weekwright.db.Db;
import weekwright.db.Folder;
import weekwright.db.FolderRefused;
import weekwright.files.ImportProject;
import weekwright.files.SampleFiles;
import weekwright.files.csv.PlainFiles;
import weekwright.files.csv.ReadResult;

/** The empty folder that is served, and how a project comes into it. */
public final class NewProject {
    private final Folder folder;
    private final NewStore store;

    /** Makes the folder's empty store, or gives the one that a broken-off start left. */
    @FunctionalInterface
    public interface NewStore {
        Db create() throws FolderRefused;
    }

    public NewProject(Folder folder, NewStore store) {
        this.folder = folder;
        this.store = store;
    }

    Folder folder() {
        return folder;
    }

    Db create() throws FolderRefused {
        return store.create();
    }

    /**
     * Brings plain files in, all of them or nothing.
     *
     * @return how many remarks there are on them
     * @throws Rejected with every fault and remark, if there is any fault
     */
    int importFiles(Path files, LocalDate today, Clock clock) throws Rejected, FolderRefused {
        ReadResult read = PlainFiles.read(files, today);
        if (read.data().isEmpty()) {
            throw new Rejected(read.problems());
        }
        ImportProject.into(read.data().get(), folder, create(), clock);
        return read.remarks().size();
    }

    void copySample(Clock clock) throws Rejected, FolderRefused, IOException {
        try (SampleFiles sample = SampleFiles.unpack()) {
            importFiles(sample.folder(), LocalDate.now(clock), clock);
        }
    }
}
