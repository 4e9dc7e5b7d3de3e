package weekwright.campaign;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import weekwright.bench.TenYears;
import weekwright.db.Db;
import weekwright.db.Folder;
import weekwright.files.ImportProject;
import weekwright.files.SampleFiles;
import weekwright.site.PublicProject;

/** The two projects that are put under load: a copy of the sample, and ten years. Both with the public log open. */
enum LargeProject {
    SAMPLE("256m", "ilse"),
    TEN("768m", "hedda");

    private final String heap;
    private final String who;

    LargeProject(String heap, String who) {
        this.heap = heap;
        this.who = who;
    }

    /** By its name on the command line. */
    static LargeProject of(String name) {
        return name.equals("ten") ? TEN : SAMPLE;
    }

    /** What the server's heap may grow to. */
    String heap() {
        return heap;
    }

    /** Somebody of its crew. */
    String who() {
        return who;
    }

    /** Makes it in a new folder. */
    void in(Path place) throws Exception {
        Folder folder = new Folder(place);
        if (this == SAMPLE) {
            try (SampleFiles sample = SampleFiles.unpack()) {
                ImportProject.into(sample.folder(), folder, false, LocalDate.of(2026, 11, 25), Clock.systemUTC());
            }
        }
        try (Db db = this == SAMPLE ? folder.open(Clock.systemUTC()) : folder.create(Clock.systemUTC())) {
            if (this == TEN) {
                TenYears.fill(db);
            }
            PublicProject.switches(db, "open", "yes");
        }
    }
}
