package weekwright.funds;

import weekwright.db.Table;

/** Where materials are kept: the table {@code materials}. */
public final class MaterialStore {
    public static final Table<Material> TABLE = new Table<>("materials", Material.class);

    private MaterialStore() {}
}
