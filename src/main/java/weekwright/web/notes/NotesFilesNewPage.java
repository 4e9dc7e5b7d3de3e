package weekwright.web.notes;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Rejected;
import weekwright.files.KeptFiles;
import weekwright.files.TakeNotes;
import weekwright.files.csv.PlainFiles;
import weekwright.files.csv.TextFile;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.kit.Upload;

/** Reads notes back from Markdown files that were changed outside: each a new version, all of them or none. */
public final class NotesFilesNewPage implements Page {
    private static final String FIELD = "files";
    private static final int MOST_AT_ONCE = 50;

    public record View(Form form) {}

    @Override
    public View show(Request request) {
        return new View(request.form(""));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        List<Problem> faults = new ArrayList<>();
        Map<String, String> texts = texts(request, form, faults);
        KeptFiles photos = new KeptFiles(request.project().folder().photos());
        return request.save(write -> {
            try {
                TakeNotes.Done done =
                        TakeNotes.take(write, texts, file -> photos.find(file).isPresent());
                if (faults.isEmpty()) {
                    return Saved.to("/notes").saying(said(done));
                }
            } catch (Rejected e) {
                e.problems().forEach(problem -> faults.add(ofFile(problem)));
            }
            throw new Rejected(faults);
        });
    }

    /** A problem of a file, its place in front, at the field that the file came by. */
    private static Problem ofFile(Problem problem) {
        return Problem.fault(FIELD, "", problem.text(), "");
    }

    private static Map<String, String> texts(Request request, FormReader form, List<Problem> faults)
            throws IOException {
        // without a script some browsers send the name of the file as a text field
        form.text(FIELD);
        List<Upload> uploads = request.uploads(FIELD);
        if (uploads.isEmpty()) {
            form.fault(FIELD, "", "is missing", "choose one or more notes ending in .md");
        } else if (uploads.size() > MOST_AT_ONCE) {
            form.fault(FIELD, uploads.size() + " files", "are too many at once", "send " + MOST_AT_ONCE + " at a time");
            return Map.of();
        }
        Map<String, String> texts = new LinkedHashMap<>();
        Problems found = new Problems();
        for (Upload upload : uploads) {
            if (upload.bytes() > PlainFiles.MOST_NOTE_BYTES) {
                form.fault(FIELD, upload.name(), "is larger than 1 MB", "split it");
                continue;
            }
            try (InputStream in = upload.content().get()) {
                TextFile.decoded(in.readAllBytes(), upload.name(), found).ifPresent(text -> {
                    if (texts.putIfAbsent(upload.name(), text) != null) {
                        form.fault(FIELD, upload.name(), "came twice", "send it once");
                    }
                });
            }
        }
        found.faults().forEach(fault -> faults.add(ofFile(fault)));
        return texts;
    }

    private static String said(TakeNotes.Done done) {
        List<String> parts = new ArrayList<>();
        if (done.changed() > 0) {
            parts.add(Formats.counted(done.changed(), "note has a new version", "notes have new versions"));
        }
        if (done.added() > 0) {
            parts.add(Formats.counted(done.added(), "note is new", "notes are new"));
        }
        if (done.same() > 0) {
            parts.add(Formats.counted(done.same(), "was as it stands here", "were as they stand here"));
        }
        return Formats.sentence(Formats.list(parts)) + ".";
    }
}
