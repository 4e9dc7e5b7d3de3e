package weekwright.history;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weekwright.base.Codec;
import weekwright.base.Hours;
import weekwright.base.Id;
import weekwright.base.Money;
import weekwright.base.Shape;
import weekwright.base.Words;
import weekwright.build.HazardCodes;
import weekwright.db.History;
import weekwright.render.Formats;

/** Values of rows in words: hours, money and days as everywhere, ids by what they name. Used by one thread. */
public final class ValueWords {
    private final Names names;
    private final Formats formats;

    public ValueWords(Names names, Formats formats) {
        this.names = names;
        this.formats = formats;
    }

    /** What a change did to the fields of its row: those that differ, in the order of the columns. */
    public List<FieldChange> fields(History.Change change) {
        return fields(Things.of(change.thing()), change.before(), change.after());
    }

    private <R extends Record> List<FieldChange> fields(
            Thing<R> thing, Optional<String> beforeImage, Optional<String> afterImage) {
        Optional<R> before = beforeImage.map(image -> thing.table().value(names.read(), image));
        Optional<R> after = afterImage.map(image -> thing.table().value(names.read(), image));
        List<FieldChange> changes = new ArrayList<>();
        for (Shape.Field field : thing.shape().fields()) {
            String was = before.map(row -> text(field, row)).orElse("");
            String is = after.map(row -> text(field, row)).orElse("");
            if (!was.equals(is)) {
                changes.add(new FieldChange(Labels.of(thing.table().name(), field.name()), was, is));
            }
        }
        return changes;
    }

    /** A field of a row in words; empty where nothing stands in it, and for a plain no. */
    public String text(Shape.Field field, Record row) {
        Optional<Object> value = field.value(row);
        return !field.optional() && value.equals(Optional.of(false))
                ? ""
                : value.map(one -> words(field, one)).orElse("");
    }

    /** A word of a list: {@code Trestles: 2} for {@code trestle:2}, a hazard by its title. */
    private String word(String column, String word) {
        return switch (column) {
            case "equipment" -> {
                String[] halves = word.split(":", 2);
                yield names.of("equipment", new Id(halves[0])) + (halves.length == 1 ? "" : ": " + halves[1]);
            }
            case "tasks" -> names.of("tasks", new Id(word));
            case "hazards", "not_for" -> HazardCodes.title(word).orElse(word);
            default -> word;
        };
    }

    private String words(Shape.Field field, Object value) {
        if (value instanceof Id id && field.ref().isPresent()) {
            return names.of(field.ref().get(), id);
        }
        if (value instanceof Hours hours) {
            return Formats.hoursShort(hours.minutes());
        }
        if (value instanceof Money money) {
            return formats.moneyExact(money.minor());
        }
        if (value instanceof LocalDate day) {
            return formats.dateLong(day);
        }
        if (value instanceof YearMonth month) {
            return Formats.monthYear(month.atDay(1));
        }
        if (value instanceof Boolean yes) {
            return yes ? "yes" : "no";
        }
        if (value instanceof Enum<?> word) {
            return Codec.word(word).replace('-', ' ');
        }
        if (value instanceof Words words) {
            return String.join(
                    ", ",
                    words.list().stream().map(word -> word(field.name(), word)).toList());
        }
        return field.codec().text(value, 0);
    }
}
