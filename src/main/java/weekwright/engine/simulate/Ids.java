package weekwright.engine.simulate;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Positions of ids in a list of the inputs. */
final class Ids {
    private final String what;
    private final Map<String, Integer> position = new HashMap<>();

    private Ids(String what) {
        this.what = what;
    }

    /**
     * @param what singular name of the things for messages
     * @throws IllegalArgumentException if an id occurs twice
     */
    static <T> Ids of(String what, List<T> things, Function<T, String> id) {
        Ids ids = new Ids(what);
        for (int i = 0; i < things.size(); i++) {
            if (ids.position.put(id.apply(things.get(i)), i) != null) {
                throw new IllegalArgumentException("two of %s have the id %s".formatted(what, id.apply(things.get(i))));
            }
        }
        return ids;
    }

    /** @throws IllegalArgumentException if there is no such id */
    int at(String id) {
        Integer i = position.get(id);
        if (i == null) {
            throw new IllegalArgumentException("no %s has the id %s".formatted(what, id));
        }
        return i;
    }

    /** The position, or -1 if there is no such id. */
    int orNone(String id) {
        return position.getOrDefault(id, -1);
    }
}
