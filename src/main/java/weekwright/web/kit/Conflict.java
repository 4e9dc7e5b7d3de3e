package weekwright.web.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Problems;
import weekwright.base.Shape;
import weekwright.db.Stale;
import weekwright.db.Stored;

/**
 * Two people changed the same thing: both versions, field by field, the own text kept.
 *
 * @param address where to save to, and where theirs is seen
 * @param fields those that differ
 * @param hidden everything that was typed, to be sent again over theirs
 * @param version of theirs
 */
public record Conflict(
        String address, List<Field> fields, List<Hidden> hidden, long version, String csrf, String answerKey) {

    /** One field that differs, as mine and as theirs; an empty text shows as nothing. */
    public record Field(String label, String mine, String theirs) {}

    /** A field to send again. */
    public record Hidden(String name, String value) {}

    /** Empty when the thing is gone. */
    static Optional<Conflict> of(Request request, Stale stale) {
        return stale.now().map(now -> of(request, now));
    }

    private static <R extends Record> Conflict of(Request request, Stored<R> now) {
        @SuppressWarnings("unchecked")
        Shape<R> shape = Shape.of((Class<R>) now.value().getClass());
        int digits = request.settings().moneyDigits();
        Map<String, String> theirs = shape.texts(now.value(), digits);
        List<Field> fields = new ArrayList<>();
        List<Hidden> hidden = new ArrayList<>();
        request.context().formParamMap().forEach((name, values) -> {
            if (name.equals("csrf") || name.equals("answer") || name.equals("version")) {
                return;
            }
            values.forEach(value -> hidden.add(new Hidden(name, value)));
            if (theirs.containsKey(name)) {
                String mine = canonical(shape.field(name).orElseThrow(), String.join(" ", values), request, digits);
                if (!mine.equals(theirs.get(name))) {
                    fields.add(new Field(name.replace('_', ' '), mine, theirs.get(name)));
                }
            }
        });
        return new Conflict(
                request.address(),
                List.copyOf(fields),
                List.copyOf(hidden),
                now.version(),
                request.csrf(),
                Keys.random());
    }

    /** The typed text as the store would give it back, so that 3:30 and 3.5 are no difference. */
    private static String canonical(Shape.Field field, String typed, Request request, int digits) {
        Optional<Object> value = field.parse(typed, request.settings().typed(), new Problems());
        return value.map(v -> v instanceof Optional<?> optional ? optional.isPresent() ? optional.get() : "" : v)
                .map(v -> v.equals("") || v.equals(false) ? "" : field.codec().text(v, digits))
                .orElse(typed.strip());
    }
}
