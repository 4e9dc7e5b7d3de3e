package weekwright.build;

import java.util.List;
import weekwright.base.Id;
import weekwright.db.Read;
import weekwright.db.Table;
import weekwright.db.Write;

/** Where crew members are kept: the table {@code crew}. */
public final class CrewMemberStore {
    public static final Table<CrewMember> TABLE = new Table<>("crew", CrewMember.class);

    private CrewMemberStore() {}

    /** A free id made of a person's first name. */
    public static Id nextId(Read read, String name) {
        return Ids.word(name.strip().replaceFirst("\\s.*", ""), TABLE.ids(read));
    }

    /** Takes log-ins, sessions and secret links from those who are no longer of the crew. */
    public static void forgetAccessOfMissing(Write write) {
        for (String table : List.of("log_in", "session", "secret_link", "start_code")) {
            write.handle()
                    .execute("DELETE FROM " + table + " WHERE crew IS NOT NULL AND crew NOT IN (SELECT id FROM crew)");
        }
    }
}
