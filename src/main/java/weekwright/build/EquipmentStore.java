package weekwright.build;

import weekwright.db.Table;

/** Where equipment are kept: the table {@code equipment}. */
public final class EquipmentStore {
    public static final Table<Equipment> TABLE = new Table<>("equipment", Equipment.class);

    private EquipmentStore() {}
}
