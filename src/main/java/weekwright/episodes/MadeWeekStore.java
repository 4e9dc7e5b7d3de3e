package weekwright.episodes;

import java.time.LocalDate;
import weekwright.db.Read;
import weekwright.db.Write;

/** Mondays of which an episode was made by itself: the table {@code made_weeks}, which has no history. */
final class MadeWeekStore {
    private MadeWeekStore() {}

    static boolean has(Read read, LocalDate monday) {
        return read.handle()
                        .createQuery("SELECT count(*) FROM made_weeks WHERE monday = :monday")
                        .bind("monday", monday.toString())
                        .mapTo(Integer.class)
                        .one()
                > 0;
    }

    static void add(Write write, LocalDate monday) {
        write.handle().execute("INSERT INTO made_weeks (monday) VALUES (?)", monday.toString());
    }
}
