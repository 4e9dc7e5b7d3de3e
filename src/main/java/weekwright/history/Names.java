package weekwright.history;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.db.Read;

/** What ids name, in one view of the store; each is looked up once. Used by one thread. */
public final class Names {
    private final Read read;
    private final Map<String, String> known = new HashMap<>();

    public Names(Read read) {
        this.read = read;
    }

    Read read() {
        return read;
    }

    /** The name of what an id names in a table; the id itself where it is not there any more. */
    public String of(String table, Id id) {
        String key = table + " " + id.folded();
        String name = known.get(key);
        if (name == null) {
            name = Things.of(table)
                    .name(this, id)
                    .filter(text -> !text.isEmpty())
                    .orElse(id.value());
            known.put(key, name);
        }
        return name;
    }

    String of(String table, Optional<Id> id, String orElse) {
        return id.map(one -> of(table, one)).orElse(orElse);
    }

    /** Who made a change: a person of the crew by name, a command by what it is. */
    public String who(String who) {
        return switch (who) {
            case "crew" -> "the crew";
            case "import" -> "the import";
            case "weekwright" -> "the program itself";
            default -> who.matches("[A-Za-z0-9._-]{1,40}") ? of("crew", new Id(who)) : who;
        };
    }
}
