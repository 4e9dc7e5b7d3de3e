package weekwright.build;

import weekwright.base.Id;
import weekwright.db.Read;
import weekwright.db.Table;

/** Where crew members are kept: the table {@code crew}. */
public final class CrewMemberStore {
    public static final Table<CrewMember> TABLE = new Table<>("crew", CrewMember.class);

    private CrewMemberStore() {}

    /** A free id made of a person's first name. */
    public static Id nextId(Read read, String name) {
        return Ids.word(name.strip().replaceFirst("\\s.*", ""), TABLE.ids(read));
    }
}
