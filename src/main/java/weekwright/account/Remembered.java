package weekwright.account;

import java.util.LinkedHashMap;
import java.util.Map;

/** A map that holds so many entries and forgets the one that was asked for longest ago. */
final class Remembered<V> extends LinkedHashMap<String, V> {
    private static final long serialVersionUID = 1L;

    private final int most;

    Remembered(int most) {
        super(16, 0.75f, true);
        this.most = most;
    }

    @Override
    protected boolean removeEldestEntry(Map.Entry<String, V> eldest) {
        return size() > most;
    }
}
