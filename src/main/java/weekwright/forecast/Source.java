package weekwright.forecast;

import java.util.List;
import weekwright.build.Settings;
import weekwright.build.SettingsStore;
import weekwright.db.Read;
import weekwright.db.Table;

/** Where the records of a forecast come from: one view of a store, or plain files that were read and checked. */
public interface Source {
    Settings settings();

    /** The rows of a table in stored order. */
    <R extends Record> List<R> list(Table<R> table);

    /** One view of a store. */
    static Source of(Read read) {
        return new Source() {
            @Override
            public Settings settings() {
                return SettingsStore.get(read);
            }

            @Override
            public <R extends Record> List<R> list(Table<R> table) {
                return table.values(read);
            }
        };
    }
}
