package weekwright.campaign;

import java.nio.file.Path;
import java.time.Clock;
import weekwright.build.CrewMember;
import weekwright.build.CrewMemberStore;
import weekwright.build.SettingsStore;
import weekwright.build.Stage;
import weekwright.build.StageStore;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Db;
import weekwright.db.Folder;
import weekwright.db.FolderRefused;
import weekwright.notes.Note;
import weekwright.notes.NoteStore;
import weekwright.testkit.SmallProject;

/** A project that is right on any day: begun in 1990, one person, a stage with a task for each client, a build note. */
final class CampaignProject {
    private CampaignProject() {}

    /** Makes it in a new folder. */
    static void in(Path folder, int tasks) throws FolderRefused {
        try (Db db = new Folder(folder).create(Clock.systemUTC())) {
            db.write("crew", write -> {
                SettingsStore.insert(write, SmallProject.publishing("weekday", "friday"));
                CrewMemberStore.TABLE.insert(
                        write,
                        SmallProject.of(
                                CrewMember.class,
                                "id",
                                "ilse",
                                "name",
                                "Ilse",
                                "trades",
                                "mason",
                                "mon",
                                "8",
                                "access",
                                "crew"));
                StageStore.TABLE.insert(write, SmallProject.of(Stage.class, "id", "weir", "name", "Weir"));
                for (int i = 0; i < tasks; i++) {
                    TaskStore.TABLE.insert(
                            write,
                            SmallProject.of(
                                    Task.class,
                                    "id",
                                    "weir." + i,
                                    "stage",
                                    "weir",
                                    "title",
                                    "Stones",
                                    "kind",
                                    "work",
                                    "low",
                                    "4",
                                    "likely",
                                    "6",
                                    "high",
                                    "9",
                                    "trades",
                                    "mason"));
                }
                NoteStore.TABLE.insert(
                        write,
                        SmallProject.of(
                                Note.class,
                                "id",
                                "n.0",
                                "title",
                                "Sill stones",
                                "date",
                                "2020-05-04",
                                "author",
                                "ilse",
                                "stage",
                                "weir",
                                "visible",
                                "crew",
                                "text",
                                "Two of nine lie."));
                return null;
            });
        }
    }
}
