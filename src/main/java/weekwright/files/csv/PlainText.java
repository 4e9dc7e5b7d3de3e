package weekwright.files.csv;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import weekwright.notes.Note;
import weekwright.notes.NoteStore;
import weekwright.notes.Photo;
import weekwright.notes.PhotoStore;

/** A project as the texts of its plain files in canonical form (rule 100). */
public final class PlainText {
    private PlainText() {}

    /** The texts by file name: project.toml, every CSV file even without rows, a file for each build note. */
    public static Map<String, String> of(ProjectData data) {
        Map<String, String> texts = new LinkedHashMap<>();
        texts.put(ProjectToml.FILE, ProjectToml.write(data.settings()));
        FileTable.ALL.forEach(file -> texts.put(file.file(), csv(file, data)));
        List<Note> notes = data.list(NoteStore.TABLE);
        List<String> names = NoteFile.names(notes);
        Map<String, List<Photo>> photos = new LinkedHashMap<>();
        data.list(PhotoStore.TABLE)
                .forEach(photo -> photos.computeIfAbsent(photo.note().folded(), n -> new ArrayList<>())
                        .add(photo));
        for (int i = 0; i < notes.size(); i++) {
            Note note = notes.get(i);
            texts.put(
                    "notes/" + names.get(i),
                    NoteFile.write(note, photos.getOrDefault(note.id().folded(), List.of())));
        }
        return texts;
    }

    private static <R extends Record> String csv(FileTable<R> file, ProjectData data) {
        return RecordCsv.write(
                file.table().shape(), data.list(file.table()), data.settings().moneyDigits());
    }

    /** Writes the texts into an empty folder. */
    public static void write(ProjectData data, Path folder) throws IOException {
        for (Map.Entry<String, String> text : of(data).entrySet()) {
            Path file = folder.resolve(text.getKey());
            Files.createDirectories(file.getParent());
            Files.writeString(file, text.getValue(), StandardOpenOption.CREATE_NEW);
        }
    }
}
