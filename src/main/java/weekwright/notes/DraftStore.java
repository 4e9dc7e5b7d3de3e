package weekwright.notes;

import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import weekwright.base.Id;
import weekwright.db.Read;
import weekwright.db.Write;

/**
 * Where drafts are kept: the table {@code note_draft}, one for each person and note. They are no part of the project, raise
 * no version and never touch the note itself.
 */
public final class DraftStore {
    private DraftStore() {}

    /** @param note empty for a new one */
    public static Optional<Draft> find(Read read, Id crew, Optional<Id> note) {
        return read.handle()
                .createQuery("SELECT at, version, fields FROM note_draft WHERE crew = :crew AND note = :note")
                .bind("crew", crew.value())
                .bind("note", key(note))
                .mapToMap()
                .findOne()
                .map(row -> new Draft(
                        Instant.parse((String) row.get("at")),
                        ((Number) row.get("version")).longValue(),
                        fields((String) row.get("fields"))));
    }

    public static void keep(Write write, Id crew, Optional<Id> note, long version, Map<String, List<String>> fields) {
        write.handle()
                .createUpdate("INSERT INTO note_draft (crew, note, at, version, fields)"
                        + " VALUES (:crew, :note, :at, :version, :fields) ON CONFLICT (crew, note) DO UPDATE"
                        + " SET at = excluded.at, version = excluded.version, fields = excluded.fields")
                .bind("crew", crew.value())
                .bind("note", key(note))
                .bind("at", write.at().toString())
                .bind("version", version)
                .bind("fields", text(fields))
                .execute();
    }

    public static void drop(Write write, Id crew, Optional<Id> note) {
        write.handle()
                .createUpdate("DELETE FROM note_draft WHERE crew = :crew AND note = :note")
                .bind("crew", crew.value())
                .bind("note", key(note))
                .execute();
    }

    private static String key(Optional<Id> note) {
        return note.map(Id::value).orElse("");
    }

    private static String text(Map<String, List<String>> fields) {
        return fields.entrySet().stream()
                .flatMap(
                        field -> field.getValue().stream().map(value -> encoded(field.getKey()) + "=" + encoded(value)))
                .collect(Collectors.joining("&"));
    }

    private static Map<String, List<String>> fields(String text) {
        Map<String, List<String>> fields = new LinkedHashMap<>();
        for (String pair : text.split("&")) {
            int cut = pair.indexOf('=');
            if (cut > 0) {
                fields.computeIfAbsent(decoded(pair.substring(0, cut)), name -> new ArrayList<>())
                        .add(decoded(pair.substring(cut + 1)));
            }
        }
        return fields;
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    private static String decoded(String text) {
        return URLDecoder.decode(text, StandardCharsets.UTF_8);
    }
}
