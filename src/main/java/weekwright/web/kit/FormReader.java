package weekwright.web.kit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import weekwright.base.Codec;
import weekwright.base.Id;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Reading;
import weekwright.base.Refused;
import weekwright.base.Rejected;
import weekwright.base.Shape;

/**
 * Reads a posted form into values. Every refusal becomes a fault on its field, all of them at once; a field that comes
 * twice, or that nobody asked for, is a fault too. Call {@link #check} before the values are used.
 */
public final class FormReader {
    /** Fields of every form: keys, row version, and which of the page's buttons was pressed. */
    static final Set<String> KEYS = Set.of("csrf", "answer", "version", "do");

    private final Map<String, List<String>> posted;
    private final Reading reading;
    private final Set<String> asked = new HashSet<>();
    private final Problems problems = new Problems();

    FormReader(Map<String, List<String>> posted, Reading reading) {
        this.posted = posted;
        this.reading = reading;
    }

    /** For a button that stands in a form whose fields do not matter to it, such as Delete: whatever is sent passes. */
    public FormReader ignoringFields() {
        asked.addAll(posted.keySet());
        return this;
    }

    /** Which of the page's buttons was pressed: the value of {@code do}; empty for the chief one. */
    public String act() {
        return first("do");
    }

    /** The text of a field, stripped; empty where nothing was typed. */
    public String text(String name) {
        asked.add(name);
        List<String> all = posted.getOrDefault(name, List.of());
        if (all.size() > 1) {
            problems.fault(name, "", "was sent twice", "send it once");
        }
        return all.isEmpty() ? "" : all.get(0).strip();
    }

    /** The text of a field exactly as it was typed, for passphrases and for lines whose place counts. */
    public String exact(String name) {
        text(name);
        return first(name);
    }

    /** All texts of a field that may come several times, such as boxes to tick; empty ones left out. */
    public List<String> texts(String name) {
        asked.add(name);
        return posted.getOrDefault(name, List.of()).stream()
                .map(String::strip)
                .filter(text -> !text.isEmpty())
                .toList();
    }

    /** Whether a field was sent at all, even with nothing in it; asks for nothing. */
    public boolean has(String name) {
        return posted.containsKey(name);
    }

    /** Whether a box was ticked. */
    public boolean ticked(String name) {
        return !text(name).isEmpty();
    }

    /** A value of a type that has a codec, or empty: nothing was typed, or it was refused and a fault added. */
    public <T> Optional<T> read(String name, Class<T> type) {
        return read(name, type, reading);
    }

    /** As above, read in another way: a form may bring the currency with it. */
    public <T> Optional<T> read(String name, Class<T> type, Reading reading) {
        String text = text(name);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(Codec.of(type).parse(text, reading));
        } catch (Refused refused) {
            problems.add(Problem.fault(name, text, refused));
            return Optional.empty();
        }
    }

    /** As {@link #read}, and nothing typed is a fault. */
    public <T> Optional<T> needed(String name, Class<T> type) {
        if (text(name).isEmpty()) {
            problems.fault(name, "", "is missing", "it has to be given");
            return Optional.empty();
        }
        return read(name, type);
    }

    /** A text that must be there; empty when it was not, then a fault was added. */
    public String neededText(String name) {
        String text = text(name);
        if (text.isEmpty()) {
            problems.fault(name, "", "is missing", "it has to be given");
        }
        return text;
    }

    /** An id that must be one of those shown. */
    public Optional<Id> oneOf(String name, List<Id> known) {
        Optional<Id> id = read(name, Id.class);
        if (id.isPresent() && known.stream().noneMatch(k -> k.same(id.get()))) {
            problems.fault(name, id.get().value(), "is not one of those here", "choose one of the list");
            return Optional.empty();
        }
        return id;
    }

    /**
     * A whole record from fields named as its columns, checked by the record's own bounds.
     *
     * @param fixed texts of columns that the form does not carry, by column; columns in neither are empty
     * @param columns those that the form carries
     */
    public <R extends Record> Optional<R> record(Class<R> type, Map<String, String> fixed, String... columns) {
        Map<String, String> texts = new LinkedHashMap<>(fixed);
        for (String column : columns) {
            texts.put(column, text(column));
        }
        return Shape.of(type).parse(texts, reading, problems);
    }

    /** A record with some of its columns set from fields of those names; the others stay. */
    public <R extends Record> Optional<R> edited(R old, String... columns) {
        int before = problems.faults().size();
        R row = draft(old, columns);
        return problems.faults().size() == before ? Optional.of(row) : Optional.empty();
    }

    /** As above, and a column that was refused stays as it is in the stand-in: for {@link #besides}. */
    public <R extends Record> R draft(R standIn, String... columns) {
        @SuppressWarnings("unchecked")
        Shape<R> shape = Shape.of((Class<R>) standIn.getClass());
        R row = standIn;
        for (String column : columns) {
            Shape.Field field = shape.field(column).orElseThrow(() -> new IllegalArgumentException(column));
            Optional<Object> value = field.parse(text(column), reading, problems);
            if (value.isPresent()) {
                row = shape.with(row, column, value.get());
            }
        }
        return row;
    }

    /**
     * Where something was refused in reading, adds what the rules find in the draft, so that all is told at once; of a
     * column that was refused already nothing more is said.
     *
     * @param rules those that the verb asks, too
     */
    public void besides(Supplier<Problems> rules) {
        if (!problems.hasFaults()) {
            return;
        }
        Set<String> told = problems.faults().stream().map(Problem::column).collect(Collectors.toSet());
        rules.get().faults().stream()
                .filter(fault -> !told.contains(fault.column()))
                .forEach(problems::add);
    }

    /** A field that is named otherwise than its column, read with the column's bounds; empty where it was refused. */
    public Optional<Object> column(String name, Class<? extends Record> type, String column) {
        Shape.Field field = Shape.of(type).field(column).orElseThrow(() -> new IllegalArgumentException(column));
        Problems found = new Problems();
        Optional<Object> value = field.parse(text(name), reading, found);
        found.list().forEach(p -> problems.fault(name, p.read(), p.rule(), p.remedy()));
        return field.optional() ? value.flatMap(v -> (Optional<?>) v) : value;
    }

    /** As above, of a whole number. */
    public Optional<Integer> whole(String name, Class<? extends Record> type, String column) {
        return column(name, type, column).map(Integer.class::cast);
    }

    /** As above, of a text; refused or empty, it is the empty text. */
    public String text(String name, Class<? extends Record> type, String column) {
        return column(name, type, column).map(String.class::cast).orElse("");
    }

    /** The version of the row as it was shown; 0 where the form edits none. */
    public long version() {
        String text = first("version");
        return text.matches("[0-9]{1,15}") ? Long.parseLong(text) : 0;
    }

    /** How texts are read here: typed, with the digits of the project's currency. */
    public Reading reading() {
        return reading;
    }

    public void fault(String name, String read, String rule, String remedy) {
        problems.fault(name, read, rule, remedy);
    }

    public Problems problems() {
        return problems;
    }

    /** @throws Rejected with every fault found, those of fields that nobody asked for among them */
    public void check() throws Rejected {
        List<String> strangers = new ArrayList<>(posted.keySet());
        strangers.removeAll(asked);
        strangers.removeAll(KEYS);
        for (String name : strangers) {
            problems.fault("", name, "is not a field of this form", "load the page again and fill it in");
        }
        for (String key : KEYS) {
            if (posted.getOrDefault(key, List.of()).size() > 1) {
                problems.fault("", key, "was sent twice", "load the page again and fill it in");
            }
        }
        Rejected.ifFaults(problems);
    }

    /** The names of all fields that were sent or asked for; never the empty name. */
    Set<String> fields() {
        Set<String> all = new HashSet<>(posted.keySet());
        all.addAll(asked);
        all.remove("");
        return all;
    }

    private String first(String name) {
        List<String> all = posted.getOrDefault(name, List.of());
        return all.isEmpty() ? "" : all.get(0);
    }
}
