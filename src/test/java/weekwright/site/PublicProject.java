package weekwright.site;

import java.time.LocalDate;
import weekwright.base.Id;
import weekwright.build.BuildLog;
import weekwright.build.CrewMember;
import weekwright.build.CrewMemberStore;
import weekwright.build.SettingsStore;
import weekwright.db.Db;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.funds.StockItem;
import weekwright.funds.StockItemStore;
import weekwright.notes.Note;
import weekwright.notes.NoteStore;
import weekwright.testkit.SmallProject;

/** The small project with notes of every kind, as of 25 November 2026; words in capitals must never be public. */
public final class PublicProject {
    public static final LocalDate TODAY = LocalDate.parse("2026-11-25");

    private PublicProject() {}

    public static void fill(Db db) {
        SmallProject.fill(db);
        note(
                db,
                "n.all",
                "Sill stones",
                "2026-11-09",
                "everyone",
                "Two of *nine* lie. [x](task:weir.2), [y](episode:ep.12).",
                "");
        note(db, "n.crew", "SECRET-CREW", "2026-11-10", "crew", "SECRET-CREW", "");
        note(db, "n.some", "SUPPORTERS-ONLY", "2026-11-11", "supporters", "SUPPORTERS-ONLY", "");
        note(db, "n.out", "Told already", "2026-10-16", "everyone", "Dug. [in](/build/tasks/weir.1)", "ep.10");
        note(db, "n.film", "SECRET-FILM", "2026-11-12", "everyone", "SECRET-FILM", "ep.11");
        db.write("test", write -> {
            NoteStore.TABLE.insert(
                    write,
                    SmallProject.of(
                            Note.class,
                            "id",
                            "n.later",
                            "title",
                            "SECRET-LATER",
                            "date",
                            "2026-11-13",
                            "visible",
                            "everyone",
                            "visible_from",
                            "2026-12-24",
                            "text",
                            "SECRET-LATER"));
            StockItemStore.TABLE.insert(
                    write,
                    SmallProject.of(
                            StockItem.class,
                            "id",
                            "s.1",
                            "item",
                            "Oak",
                            "from",
                            "SECRET-GIVER",
                            "place",
                            "SECRET-PLACE",
                            "credit",
                            "Oak: the upper farm"));
            return null;
        });
        db.write("test", write -> {
            Stored<CrewMember> bram =
                    CrewMemberStore.TABLE.find(write, new Id("bram")).orElseThrow();
            try {
                CrewMemberStore.TABLE.update(
                        write,
                        bram.row(),
                        bram.version(),
                        CrewMemberStore.TABLE.shape().with(bram.value(), "public_name", "B."));
            } catch (Stale e) {
                throw new IllegalStateException(e);
            }
            return null;
        });
    }

    private static void note(Db db, String id, String title, String date, String visible, String text, String episode) {
        db.write("test", write -> {
            NoteStore.TABLE.insert(
                    write,
                    SmallProject.of(
                            Note.class,
                            "id",
                            id,
                            "title",
                            title,
                            "date",
                            date,
                            "author",
                            id.equals("n.out") ? "bram" : "ilse",
                            "stage",
                            "weir",
                            "visible",
                            visible,
                            "episode",
                            episode,
                            "text",
                            text));
            return null;
        });
    }

    /** Switches columns of the build log: {@code "stages", "yes", "address", "https://…"}. */
    public static void switches(Db db, String... pairs) {
        db.write("test", write -> {
            Stored<BuildLog> old = SettingsStore.one(write, SettingsStore.BUILD_LOG);
            try {
                SettingsStore.update(
                        write, SettingsStore.BUILD_LOG, old.version(), SmallProject.of(BuildLog.class, pairs));
            } catch (Stale e) {
                throw new IllegalStateException(e);
            }
            return null;
        });
    }
}
