package weekwright.build;

import weekwright.db.Table;

/** Where the crew are kept: the table {@code crew}. */
public final class CrewMemberStore {
    public static final Table<CrewMember> TABLE = new Table<>("crew", CrewMember.class);

    private CrewMemberStore() {}
}
