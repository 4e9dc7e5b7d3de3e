package weekwright.forecast;

import java.util.List;
import weekwright.build.WeekLine;
import weekwright.build.WeekLineStore;
import weekwright.db.Read;
import weekwright.db.Stored;

/** The crew's own week lines with their rows. */
final class OwnLine {
    private OwnLine() {}

    static List<Stored<WeekLine>> all(Read read) {
        return WeekLineStore.TABLE.list(read);
    }
}
