package weekwright.web.crew;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Function;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.base.Shape;
import weekwright.build.ReferenceStore;
import weekwright.build.Shown;
import weekwright.db.Read;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Table;
import weekwright.db.Write;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/**
 * One kind of row that is kept under Crew, each on a form of its own: days off, other hours, stopped days, gatherings,
 * incidents, cautions.
 *
 * @param idWord first word of the ids; empty for rows without
 * @param columns those that its form carries
 * @param standIn what stands in for columns that cannot be read
 * @param rules those that the verb asks, too
 * @param back the page that lists it
 * @param name as in "The gathering is kept."
 */
record RowKind<R extends Record>(
        Table<R> table,
        String idWord,
        String[] columns,
        Function<Request, R> standIn,
        Rules<R> rules,
        Keep<R> keep,
        String back,
        String name) {
    /** What the rules say of such a row. */
    interface Rules<R extends Record> {
        Problems check(Read read, R row, LocalDate today);
    }

    /** The verb that writes it. */
    interface Keep<R> {
        void keep(Write write, Optional<Shown> shown, R row, Request request) throws Rejected, Stale;
    }

    Stored<R> row(Request request) {
        return request.read(read -> table.find(read, request.row("row")))
                .orElseThrow(() -> new NotFound("This entry is not there any more."));
    }

    Answer add(Request request) throws Exception {
        FormReader form = request.form();
        R draft = draft(request, form);
        return request.save(write -> {
            R row = draft;
            if (!idWord.isEmpty()) {
                row = table.shape().with(row, "id", ReferenceStore.unusedId(write, table.name(), idWord));
            }
            keep.keep(write, Optional.empty(), row, request);
            return Saved.to(back).saying("The " + name + " is kept.");
        });
    }

    /** What the form of a standing row posts: its change, or with {@code do=remove} its removal. */
    Answer change(Request request) throws Exception {
        FormReader form = request.form();
        Stored<R> old = row(request);
        if (form.act().equals("remove")) {
            return request.save(write -> {
                table.delete(write, old.row(), form.version());
                return Saved.to(back).saying("The " + name + " is removed.");
            });
        }
        R edited = onto(table.shape(), old.value(), draft(request, form), columns);
        return request.save(write -> {
            keep.keep(write, Optional.of(new Shown(old.row(), form.version())), edited, request);
            return Saved.to(back).saying("The " + name + " is kept.");
        });
    }

    /** What was typed, and every fault in it: of reading and of the rules. */
    private R draft(Request request, FormReader form) {
        R draft = form.draft(standIn.apply(request), columns);
        form.besides(() -> request.read(read -> rules.check(read, draft, request.today())));
        return draft;
    }

    /** A standing row with these columns of a draft. */
    private static <R extends Record> R onto(Shape<R> shape, R old, R draft, String... columns) {
        R row = old;
        for (String column : columns) {
            Shape.Field field = shape.field(column).orElseThrow();
            Optional<Object> value = field.value(draft);
            row = shape.with(row, column, field.optional() ? value : value.orElseThrow());
        }
        return row;
    }
}
