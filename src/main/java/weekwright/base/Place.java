package weekwright.base;

import java.util.Map;

/**
 * Where a row stands in a plain file.
 *
 * @param file its name, empty for a row out of the store
 * @param line physical line of its start, from 1; 0 for a row out of the store
 * @param columns the line of each column where they stand on lines of their own, as before a build note
 */
public record Place(String file, int line, Map<String, Integer> columns) {
    public static final Place NONE = new Place("", 0);

    public Place {
        columns = Map.copyOf(columns);
    }

    public Place(String file, int line) {
        this(file, line, Map.of());
    }

    /** The problem at this place. */
    public Problem of(Problem problem) {
        return problem.at(file, columns.getOrDefault(problem.column(), line));
    }
}
