package weekwright.build;

import weekwright.db.Table;

/** Where other hours of the crew are kept: the table {@code crew_hours}. */
public final class CrewHoursStore {
    public static final Table<CrewHours> TABLE = new Table<>("crew_hours", CrewHours.class);

    private CrewHoursStore() {}
}
