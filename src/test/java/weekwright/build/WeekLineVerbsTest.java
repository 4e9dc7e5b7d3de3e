package weekwright.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static weekwright.testkit.OakMill.TODAY;
import static weekwright.testkit.OakMill.row;
import static weekwright.testkit.OakMill.task;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import weekwright.base.Rejected;
import weekwright.base.Words;
import weekwright.db.Db;
import weekwright.db.FolderRefused;
import weekwright.db.Stored;
import weekwright.history.UndoChange;
import weekwright.testkit.OakMill;

class WeekLineVerbsTest {
    @TempDir
    Path folder;

    private Db db;

    @BeforeEach
    void open() throws FolderRefused {
        db = OakMill.create(folder);
    }

    @AfterEach
    void close() {
        db.close();
    }

    private Stored<WeekLine> save(String... texts) throws Exception {
        return db.write("ilse", write -> {
            String[] all = Arrays.copyOf(texts, texts.length + 2);
            all[texts.length] = "id";
            all[texts.length + 1] = WeekLineStore.nextId(write).value();
            return SaveWeekLine.save(write, Optional.empty(), row(WeekLine.class, all), TODAY);
        });
    }

    private void hazard(String task, String hazards) throws Exception {
        db.write(
                "ilse",
                write -> SaveTask.save(
                        write,
                        Optional.of(OakMill.shown(db, TaskStore.TABLE, task)),
                        TaskStore.TABLE.shape().with(task(db, task), "hazards", Words.of(hazards.split(" "))),
                        List.of(),
                        TODAY));
    }

    @Test
    void a_line_of_any_work_is_kept_removed_and_brought_back() throws Exception {
        Stored<WeekLine> line = save("date", "2026-11-26", "crew", "ilse", "task", "shaft.2", "hours", "6");
        db.write("ilse", write -> {
            RemoveWeekLine.remove(write, Shown.of(line));
            return null;
        });
        assertThat(db.read(WeekLineStore.TABLE::count)).isZero();
        db.write("ilse", write -> UndoChange.undo(write, db.version(), TODAY));
        assertThat(OakMill.find(db, WeekLineStore.TABLE, "week.1").value()).isEqualTo(line.value());
    }

    @Test
    void rule_125_hot_work_needs_somebody_beside_whose_hours_are_free() throws Exception {
        hazard("shaft.3", "hot");
        save("date", "2026-11-26", "crew", "ilse", "task", "shaft.3", "hours", "6");
        save("date", "2026-11-27", "crew", "tomas", "kind", "edit", "text", "Cut", "hours", "6");
        assertThatThrownBy(() -> save("date", "2026-11-27", "crew", "ilse", "task", "shaft.3", "hours", "6"))
                .isInstanceOf(Rejected.class)
                .hasMessage(
                        "date: \"Shrink on the hoops\" needs another person beside, and on 27 November 2026 there is"
                                + " nobody free for it; choose a day on which there is, or another task");
    }

    @Test
    void rule_125_who_films_the_task_is_not_its_company() throws Exception {
        hazard("shaft.3", "hot");
        save("date", "2026-11-26", "crew", "tomas", "kind", "film", "task", "shaft.3", "hours", "8");
        assertThatThrownBy(() -> save("date", "2026-11-26", "crew", "ilse", "task", "shaft.3", "hours", "6"))
                .hasMessage(
                        "date: \"Shrink on the hoops\" needs another person beside, and on 26 November 2026 there is"
                                + " nobody free for it; choose a day on which there is, or another task");
    }

    @Test
    void rule_125_dusty_work_needs_somebody_at_work_that_day() throws Exception {
        hazard("shaft.2", "dust");
        save("date", "2026-11-27", "crew", "ilse", "task", "shaft.2", "hours", "6");
        assertThatThrownBy(() -> save("date", "2026-11-29", "crew", "ilse", "task", "shaft.2", "hours", "6"))
                .hasMessage(
                        "date: \"Arm mortises\" needs another person at work that day, and on 29 November 2026 there"
                                + " is nobody; choose a day on which there is, or another task");
    }

    @Test
    void rule_125_a_helper_is_kept_off_hazards_that_were_not_struck_out() throws Exception {
        hazard("shaft.2", "dust");
        assertThatThrownBy(() -> save("date", "2026-11-28", "crew", "wren", "task", "shaft.2", "hours", "6"))
                .hasMessageStartingWith(
                        "crew: \"Wren\" is kept off hardwood dust; name somebody else, or change under Crew what"
                                + " Wren is"
                                + " kept off");
    }

    @Test
    void rule_125_who_is_kept_off_the_hazards_does_not_film_there_either() throws Exception {
        hazard("shaft.2", "dust");
        assertThatThrownBy(() ->
                        save("date", "2026-11-28", "crew", "wren", "kind", "film", "task", "shaft.2", "hours", "6"))
                .hasMessage("crew: \"Wren\" is kept off hardwood dust; name somebody else, or change under Crew what"
                        + " Wren is kept off");
    }

    @Test
    void less_company_than_the_hazards_ask_for_needs_a_reason() {
        assertThatThrownBy(() -> db.write(
                        "ilse",
                        write -> SaveTask.save(
                                write,
                                Optional.of(OakMill.shown(db, TaskStore.TABLE, "shaft.3")),
                                row(
                                        Task.class,
                                        "id",
                                        "shaft.3",
                                        "stage",
                                        "shaft",
                                        "title",
                                        "Shrink on the hoops",
                                        "kind",
                                        "work",
                                        "likely",
                                        "28",
                                        "hazards",
                                        "hot",
                                        "company",
                                        "alone"),
                                List.of(),
                                TODAY)))
                .hasMessage("company_reason: is missing: alone is less company than by, which hot asks for; write why"
                        + " less is enough, or set company to by");
    }
}
