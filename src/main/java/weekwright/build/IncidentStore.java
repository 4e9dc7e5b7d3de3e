package weekwright.build;

import weekwright.db.Table;

/** Where incidents are kept: the table {@code incidents}. */
public final class IncidentStore {
    public static final Table<Incident> TABLE = new Table<>("incidents", Incident.class);

    private IncidentStore() {}
}
