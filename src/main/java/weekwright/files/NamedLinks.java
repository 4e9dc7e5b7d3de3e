package weekwright.files;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import weekwright.base.Id;
import weekwright.build.StageStore;
import weekwright.build.TaskStore;
import weekwright.db.Read;
import weekwright.episodes.EpisodeStore;
import weekwright.funds.MaterialStore;
import weekwright.notes.NoteLinks;

/** What the references of notes point to in a project, by the names of today. */
public final class NamedLinks {
    private NamedLinks() {}

    /** @param address where a thing is seen; empty for nowhere, then its name stands as plain text */
    public static NoteLinks of(Read read, BiFunction<NoteLinks.Kind, Id, String> address) {
        return (kind, id) -> (switch (kind) {
                    case TASK ->
                        TaskStore.TABLE.find(read, id).map(one -> one.value().title());
                    case STAGE ->
                        StageStore.TABLE.find(read, id).map(one -> one.value().name());
                    case EPISODE ->
                        EpisodeStore.TABLE.find(read, id).map(one -> one.value().title());
                    case MATERIAL ->
                        MaterialStore.TABLE
                                .find(read, id)
                                .map(one -> one.value().item());
                })
                .map(name -> new NoteLinks.Target(name, address.apply(kind, id)));
    }

    /** The same names, all read at once, for use when the view of the store is gone. */
    public static NoteLinks kept(Read read) {
        Map<String, String> names = new HashMap<>();
        TaskStore.TABLE.values(read).forEach(one -> names.put(key(NoteLinks.Kind.TASK, one.id()), one.title()));
        StageStore.TABLE.values(read).forEach(one -> names.put(key(NoteLinks.Kind.STAGE, one.id()), one.name()));
        EpisodeStore.TABLE.values(read).forEach(one -> names.put(key(NoteLinks.Kind.EPISODE, one.id()), one.title()));
        MaterialStore.TABLE.values(read).forEach(one -> names.put(key(NoteLinks.Kind.MATERIAL, one.id()), one.item()));
        return (kind, id) -> Optional.ofNullable(names.get(key(kind, id))).map(name -> new NoteLinks.Target(name, ""));
    }

    private static String key(NoteLinks.Kind kind, Id id) {
        return kind + " " + id.folded();
    }
}
