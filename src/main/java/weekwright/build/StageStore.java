package weekwright.build;

import java.util.Comparator;
import java.util.List;
import weekwright.base.Id;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.db.Table;

/** Where stages are kept: the table {@code stages}. */
public final class StageStore {
    public static final Table<Stage> TABLE = new Table<>("stages", Stage.class);

    private StageStore() {}

    /** All stages in the order of the build: by {@code order}, a stage without one by its row. */
    public static List<Stored<Stage>> inOrder(Read read) {
        return TABLE.list(read).stream()
                .sorted(Comparator.comparingLong((Stored<Stage> stage) ->
                        stage.value().order().map(Integer::longValue).orElse(stage.row())))
                .toList();
    }

    /** A free id made of the first word of a stage's name. */
    public static Id nextId(Read read, String name) {
        return Ids.word(name, TABLE.ids(read));
    }
}
