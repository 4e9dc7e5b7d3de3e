package weekwright.bench;

import java.time.LocalDate;
import weekwright.build.Link;
import weekwright.build.LinkStore;
import weekwright.build.Stage;
import weekwright.build.StageStore;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Db;
import weekwright.db.Write;
import weekwright.episodes.Episode;
import weekwright.episodes.EpisodeStore;
import weekwright.episodes.Tell;
import weekwright.episodes.TellStore;
import weekwright.funds.Material;
import weekwright.funds.MaterialStore;
import weekwright.testkit.SmallProject;

/** More of a mill than the sample has: twenty stages behind its own, a purchase for every second task, an episode for every week. */
final class ThreeYears {
    private static final int STAGES = 20;
    private static final int TASKS = 8;
    private static final int WEEKS = 156;
    private static final LocalDate FIRST = LocalDate.of(2027, 3, 5);

    private ThreeYears() {}

    /** Writes it into the store that holds a copy of the sample. */
    static void fill(Db db) {
        db.write("made", write -> {
            build(write);
            film(write);
            return null;
        });
    }

    private static void build(Write write) {
        String before = "";
        for (int stage = 0; stage < STAGES; stage++) {
            StageStore.TABLE.insert(
                    write,
                    SmallProject.of(Stage.class, "id", "y" + stage, "name", "Floor and walls, part " + (stage + 1)));
            for (int i = 0; i < TASKS; i++) {
                String task = task(stage * TASKS + i);
                TaskStore.TABLE.insert(
                        write,
                        SmallProject.of(
                                Task.class,
                                "id",
                                task,
                                "stage",
                                "y" + stage,
                                "title",
                                "Posts and boards of bay " + (i + 1),
                                "kind",
                                "work",
                                "low",
                                "30",
                                "likely",
                                "40",
                                "high",
                                "60",
                                "trades",
                                "joiner",
                                "camera",
                                "fixed",
                                "story_minutes",
                                "16"));
                if (!before.isEmpty()) {
                    LinkStore.TABLE.insert(write, SmallProject.of(Link.class, "task", task, "after", before));
                }
                before = task;
                if (i % 2 == 0) {
                    MaterialStore.TABLE.insert(
                            write,
                            SmallProject.of(
                                    Material.class,
                                    "id",
                                    "m." + task,
                                    "task",
                                    task,
                                    "item",
                                    "Oak boards for bay " + (i + 1),
                                    "quantity",
                                    "30",
                                    "unit",
                                    "m",
                                    "price_likely",
                                    "18",
                                    "source",
                                    "bought",
                                    "supplier",
                                    "the sawmill",
                                    "lead_likely",
                                    "21"));
                }
            }
        }
    }

    private static String task(int number) {
        return "y." + number;
    }

    private static void film(Write write) {
        for (int week = 0; week < WEEKS; week++) {
            String episode = "y" + week;
            EpisodeStore.TABLE.insert(
                    write,
                    SmallProject.of(
                            Episode.class,
                            "id",
                            episode,
                            "number",
                            String.valueOf(58 + week),
                            "slot",
                            FIRST.plusWeeks(week).toString(),
                            "title",
                            "Boards, week " + (week + 1),
                            "kind",
                            "build",
                            "minutes",
                            "16"));
            TellStore.TABLE.insert(write, SmallProject.of(Tell.class, "episode", episode, "task", task(week)));
        }
    }
}
