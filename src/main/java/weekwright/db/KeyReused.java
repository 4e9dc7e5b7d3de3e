package weekwright.db;

/** The same answer key came with other contents; nothing was done. */
public final class KeyReused extends Exception {
    private static final long serialVersionUID = 1L;

    public KeyReused(String key) {
        super("the key " + key + " was used for another entry", null, false, false);
    }
}
