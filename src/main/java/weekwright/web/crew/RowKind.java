package weekwright.web.crew;

import java.util.Map;
import java.util.Optional;
import weekwright.base.Rejected;
import weekwright.build.ReferenceStore;
import weekwright.build.Shown;
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
 * @param back the page that lists it
 * @param name as in "The gathering is kept."
 */
record RowKind<R extends Record>(
        Table<R> table, Class<R> type, String idWord, String[] columns, Keep<R> keep, String back, String name) {
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
        Optional<R> read = form.record(type, idWord.isEmpty() ? Map.of() : Map.of("id", "new"), columns);
        return request.save(write -> {
            R row = read.orElseThrow();
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
        Optional<R> edited = form.edited(old.value(), columns);
        return request.save(write -> {
            keep.keep(write, Optional.of(new Shown(old.row(), form.version())), edited.orElseThrow(), request);
            return Saved.to(back).saying("The " + name + " is changed.");
        });
    }
}
