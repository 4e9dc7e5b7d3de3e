package weekwright.history;

import java.util.Optional;
import java.util.function.BiFunction;
import weekwright.base.Id;
import weekwright.base.Shape;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.db.Table;

/**
 * A kind of thing that the crew keeps, in words.
 *
 * @param one in a sentence: {@code task}
 * @param many of them: {@code tasks}
 * @param kind the group it is listed under
 * @param naming how one of them is called, given the names of others; empty where the kind says it all
 */
public record Thing<R extends Record>(
        Table<R> table, String one, String many, Kind kind, BiFunction<Names, R, String> naming) {

    /** The groups by which changes are looked through, in the order of the sheets. */
    public enum Kind {
        BUILD("build"),
        HOURS("hours and days"),
        WEEK("week"),
        MATERIALS("materials and yard"),
        EPISODES("episodes"),
        FUNDS("money"),
        NOTES("notes"),
        CREW("crew and equipment"),
        LEVERS("kept levers"),
        SETTINGS("settings");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** {@code task "Set the sill stones"}, {@code settings of the project}. */
    String called(Names names, R value) {
        String name = naming.apply(names, value);
        return name.isEmpty() ? one : one + " “" + name + "”";
    }

    /** As above, of a row as a change record holds it. */
    public String called(Names names, String image) {
        return called(names, table.value(names.read(), image));
    }

    /** As above, of a row as it stands; empty when it does not. */
    public Optional<String> called(Names names, long row) {
        return table.find(names.read(), row).map(stored -> called(names, stored.value()));
    }

    /** What an id names here. */
    Optional<String> name(Names names, Id id) {
        return table.shape().field("id").isEmpty()
                ? Optional.empty()
                : table.find(names.read(), id).map(Stored::value).map(value -> naming.apply(names, value));
    }

    /** The id of a row that has one. */
    Optional<Id> id(R value) {
        return table.shape().field("id").flatMap(field -> field.value(value)).map(Id.class::cast);
    }

    Shape<R> shape() {
        return table.shape();
    }

    boolean stands(Read read, long row) {
        return table.find(read, row).isPresent();
    }
}
