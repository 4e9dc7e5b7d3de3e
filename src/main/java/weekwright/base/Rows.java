package weekwright.base;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * The rows of one table, each with its place in a plain file, so that rules over many rows can say where they found
 * something. Rows out of the store have no place.
 *
 * @param list in stored order
 * @param places of each row
 */
public record Rows<R extends Record>(List<R> list, List<Place> places) {
    public Rows {
        list = List.copyOf(list);
        places = List.copyOf(places);
        if (places.size() != list.size()) {
            throw new IllegalArgumentException(list.size() + " rows with " + places.size() + " places");
        }
    }

    /** Rows without places, as they come out of the store. */
    public static <R extends Record> Rows<R> of(List<R> list) {
        return new Rows<>(list, Collections.nCopies(list.size(), Place.NONE));
    }

    public static <R extends Record> Rows<R> none() {
        return of(List.of());
    }

    public int size() {
        return list.size();
    }

    public R get(int index) {
        return list.get(index);
    }

    /** The problem with the place of a row. */
    public Problem placed(int index, Problem problem) {
        return places.get(index).of(problem);
    }

    public void fault(Problems problems, int index, String column, String read, String rule, String remedy) {
        problems.add(placed(index, Problem.fault(column, read, rule, remedy)));
    }

    public void remark(Problems problems, int index, String column, String read, String rule, String remedy) {
        problems.add(placed(index, Problem.remark(column, read, rule, remedy)));
    }

    /** How a row is named beside another one: {@code line 14}, or its id where rows have no place. */
    public String place(int index, Object orElse) {
        int line = places.get(index).line();
        return line == 0 ? String.valueOf(orElse) : "line " + line;
    }

    /** The rows by a key; of rows with the same key the first. */
    public <K> Map<K, R> by(Function<R, K> key) {
        Map<K, R> map = new HashMap<>();
        list.forEach(row -> map.putIfAbsent(key.apply(row), row));
        return map;
    }

    /** Calls with each index of a later row whose key an earlier row has, and the index of that earlier row. */
    public <K> void twice(Function<R, Optional<K>> key, Twice found) {
        Map<K, Integer> first = new HashMap<>();
        for (int i = 0; i < list.size(); i++) {
            int index = i;
            key.apply(list.get(i)).ifPresent(k -> {
                Integer earlier = first.putIfAbsent(k, index);
                if (earlier != null) {
                    found.at(index, earlier);
                }
            });
        }
    }

    /** Told where the same key stands twice. */
    @FunctionalInterface
    public interface Twice {
        void at(int later, int earlier);
    }

    /** The ids as texts, for offering the nearest. */
    public List<String> texts(Function<R, Id> id) {
        List<String> texts = new ArrayList<>(list.size());
        list.forEach(row -> texts.add(id.apply(row).value()));
        return texts;
    }
}
