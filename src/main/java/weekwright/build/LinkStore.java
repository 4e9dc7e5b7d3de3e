package weekwright.build;

import weekwright.db.Table;

/** Where links are kept: the table {@code links}. */
public final class LinkStore {
    public static final Table<Link> TABLE = new Table<>("links", Link.class);

    private LinkStore() {}
}
