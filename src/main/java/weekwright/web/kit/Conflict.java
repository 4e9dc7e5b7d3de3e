package weekwright.web.kit;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import weekwright.base.Id;
import weekwright.base.Problems;
import weekwright.base.Refused;
import weekwright.base.Shape;
import weekwright.build.LinkStore;
import weekwright.db.History;
import weekwright.db.Read;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Table;
import weekwright.episodes.TellStore;
import weekwright.history.Labels;
import weekwright.history.Names;
import weekwright.history.Things;
import weekwright.history.ValueWords;
import weekwright.render.Formats;

/**
 * Two people changed the same thing: both versions, field by field and in words, the own text kept.
 *
 * @param who changed it last, by name; the same person may have it open twice
 * @param when in the project's zone, in words
 * @param address where to save to, and where theirs is seen
 * @param fields those that differ
 * @param hidden everything that was typed, to be sent again over theirs
 * @param version of theirs
 */
public record Conflict(
        String who,
        String when,
        String address,
        List<Field> fields,
        List<Hidden> hidden,
        long version,
        String csrf,
        String answerKey) {

    /** One field that differs: as it was when the form was loaded, as mine and as theirs; an empty text shows as nothing. */
    public record Field(String label, String seen, String mine, String theirs) {}

    /** A field to send again. */
    public record Hidden(String name, String value) {}

    /**
     * What a form keeps together with its row in rows of another table.
     *
     * @param thing the table of the row
     * @param prefix of the numbered fields that name the others
     * @param owner column that names the row
     * @param other column that names the others, tasks all of them
     */
    private record Beside(String thing, String label, String prefix, Table<?> table, String owner, String other) {
        /** The names of mine and theirs, where they are not the same ones. */
        Optional<Field> differing(Request request, Read read, String of, Record theirs, Names names) {
            if (!thing.equals(of)
                    || request.context().formParamMap().keySet().stream().noneMatch(name -> name.startsWith(prefix))) {
                return Optional.empty();
            }
            TreeSet<String> mine = new TreeSet<>();
            request.context().formParamMap().forEach((name, texts) -> {
                if (name.startsWith(prefix) && !texts.get(0).isBlank()) {
                    mine.add(named(texts.get(0).strip(), names));
                }
            });
            TreeSet<String> stand = new TreeSet<>();
            Id id = (Id) Shape.of(theirs.getClass())
                    .field("id")
                    .orElseThrow()
                    .value(theirs)
                    .orElseThrow();
            for (Stored<?> row : table.where(read, owner, id.value())) {
                Shape.of(row.value().getClass())
                        .field(other)
                        .flatMap(field -> field.value(row.value()))
                        .ifPresent(value -> stand.add(named(value.toString(), names)));
            }
            return mine.equals(stand)
                    ? Optional.empty()
                    : Optional.of(new Field(label, "", String.join(", ", mine), String.join(", ", stand)));
        }

        private static String named(String id, Names names) {
            try {
                return names.of("tasks", Id.parse(id));
            } catch (Refused refused) {
                return id;
            }
        }
    }

    private static final List<Beside> BESIDE = List.of(
            new Beside("tasks", "Follows", "after.", LinkStore.TABLE, "task", "after"),
            new Beside("episodes", "Tells", "task.", TellStore.TABLE, "episode", "task"));

    /** Empty when the thing is gone. */
    static Optional<Conflict> of(Request request, Stale stale) {
        return stale.now().map(now -> request.read(read -> of(request, read, stale, now)));
    }

    private static Conflict of(Request request, Read read, Stale stale, Stored<?> now) {
        Record theirs = now.value();
        Record seen = History.image(
                        read, stale.thing(), stale.row(), request.form().version())
                .map(image -> (Record) Things.of(stale.thing()).table().value(read, image))
                .orElse(theirs);
        Record mine = stale.mine().orElseGet(() -> typed(request, seen));
        int digits = request.settings().moneyDigits();
        Names names = new Names(read);
        ValueWords words = new ValueWords(names, request.formats());
        List<Field> fields = Shape.of(theirs.getClass()).fields().stream()
                .filter(field -> !field.text(mine, digits).equals(field.text(theirs, digits)))
                .map(field -> new Field(
                        Labels.of(stale.thing(), field.name()),
                        words.text(field, seen),
                        words.text(field, mine),
                        words.text(field, theirs)))
                .collect(Collectors.toCollection(ArrayList::new));
        for (Beside beside : BESIDE) {
            beside.differing(request, read, stale.thing(), theirs, names).ifPresent(fields::add);
        }
        Optional<History.Change> last = History.last(read, stale.thing(), stale.row());
        return new Conflict(
                last.map(change -> change.who().equalsIgnoreCase(request.who()) ? "you" : names.who(change.who()))
                        .orElse("somebody else"),
                last.map(change -> Formats.moment(LocalDateTime.ofInstant(
                                change.at(), request.settings().zone())))
                        .orElse(""),
                request.address(),
                fields,
                hidden(request),
                now.version(),
                request.csrf(),
                Keys.random());
    }

    /** What was seen with what was typed for its columns, as far as that can be read: for a button that found theirs first. */
    private static <R extends Record> R typed(Request request, R seen) {
        @SuppressWarnings("unchecked")
        Shape<R> shape = Shape.of((Class<R>) seen.getClass());
        R mine = seen;
        for (Shape.Field field : shape.fields()) {
            List<String> sent = request.context().formParamMap().get(field.name());
            if (sent != null) {
                Optional<Object> value =
                        field.parse(String.join(" ", sent), request.settings().typed(), new Problems());
                mine = value.isPresent() ? shape.with(mine, field.name(), value.get()) : mine;
            }
        }
        return mine;
    }

    private static List<Hidden> hidden(Request request) {
        List<Hidden> hidden = new ArrayList<>();
        request.context().formParamMap().forEach((name, values) -> {
            if (!name.equals("csrf") && !name.equals("answer") && !name.equals("version")) {
                values.forEach(value -> hidden.add(new Hidden(name, value)));
            }
        });
        return List.copyOf(hidden);
    }
}
