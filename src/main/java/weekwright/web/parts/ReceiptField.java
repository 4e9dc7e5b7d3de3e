package weekwright.web.parts;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import weekwright.base.FileKind;
import weekwright.base.Rejected;
import weekwright.db.Db;
import weekwright.db.Read;
import weekwright.db.Stale;
import weekwright.files.KeptFiles;
import weekwright.funds.LedgerEntry;
import weekwright.funds.LedgerEntryStore;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.kit.Upload;

/** The receipt of a form: a file that comes with it, or one that waits already; faults stay at its field. */
public final class ReceiptField {
    private static final String FIELD = "receipt";
    private static final String WAITING = "waiting";
    private static final String OFF = "no_receipt";

    private final Request request;
    private final Optional<Checked> upload;
    private final String waiting;
    private final boolean off;
    private String name = "";

    /** A file whose kind is known. */
    public record Checked(Upload upload, FileKind kind) {}

    private ReceiptField(Request request, Optional<Checked> upload, String waiting, boolean off) {
        this.request = request;
        this.upload = upload;
        this.waiting = waiting;
        this.off = off;
    }

    /** The receipts of the project's folder. */
    public static KeptFiles files(Request request) {
        return new KeptFiles(request.project().folder().receipts());
    }

    /** Reads the fields. */
    public static ReceiptField read(Request request, FormReader form) {
        // without a script some browsers send the name of the file as a text field
        form.text(FIELD);
        List<Upload> sent = request.uploads(FIELD);
        if (sent.size() > 1) {
            form.fault(FIELD, "", "is more than one file", "send one, and the others on the page of waiting receipts");
        }
        String waiting = form.text(WAITING);
        if (!waiting.isEmpty() && files(request).find(waiting).isEmpty()) {
            form.fault(FIELD, waiting, "does not wait any more", "look whether it is typed in already");
        }
        return new ReceiptField(request, checked(form, sent).stream().findFirst(), waiting, form.ticked(OFF));
    }

    /** Those of the files that can be kept; a fault for each of the others. */
    public static List<Checked> checked(FormReader form, List<Upload> sent) {
        List<Checked> good = new ArrayList<>();
        for (Upload upload : sent) {
            Optional<FileKind> kind = kind(upload);
            if (upload.bytes() > KeptFiles.MOST_BYTES) {
                form.fault(FIELD, upload.name(), "is larger than 25 MB", "photograph it once more in a smaller size");
            } else if (upload.bytes() == 0) {
                form.fault(FIELD, upload.name(), "is empty", "choose the picture once more");
            } else if (kind.isEmpty()) {
                form.fault(FIELD, upload.name(), "is no JPEG, PNG, WebP or PDF inside", "save it as one of these");
            } else {
                good.add(new Checked(upload, kind.get()));
            }
        }
        return good;
    }

    private static Optional<FileKind> kind(Upload upload) {
        try (InputStream in = upload.content().get()) {
            return FileKind.of(in.readNBytes(FileKind.HEAD));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Saves the form's row; where it is refused, the file that came with it waits and goes on with the form. */
    public Answer save(Db.Work<Saved, ? extends Exception> work) throws Exception {
        return saving(() -> request.save(work));
    }

    /** As {@link #save} for all that a page does with its form. */
    public Answer saving(Callable<Answer> work) throws Exception {
        try {
            return work.call();
        } catch (Rejected | Stale e) {
            if (upload.isPresent()) {
                request.carry(WAITING, kept());
            }
            throw e;
        }
    }

    /** Whether a file came or waits. */
    public boolean given() {
        return upload.isPresent() || !waiting.isEmpty();
    }

    /** Keeps the file. The name that the row is to hold, which held {@code before} so far. */
    public String keep(String before) {
        if (upload.isPresent()) {
            return kept();
        }
        if (!waiting.isEmpty()) {
            return waiting;
        }
        return off ? "" : before;
    }

    /** Whether the row was typed in from a receipt that waited. */
    public boolean waited() {
        return !waiting.isEmpty();
    }

    private String kept() {
        if (name.isEmpty()) {
            name = keep(request, upload.orElseThrow());
        }
        return name;
    }

    /** Keeps a file; its name from now on. */
    public static String keep(Request request, Checked file) {
        try (InputStream in = file.upload().content().get()) {
            return files(request).keep(in, file.kind(), request.today());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Receipts that no row of the books names. */
    public static List<String> waiting(Read read, Request request) {
        Set<String> named = LedgerEntryStore.TABLE.values(read).stream()
                .map(LedgerEntry::receipt)
                .collect(Collectors.toSet());
        return files(request).names().stream()
                .filter(name -> !named.contains(name))
                .toList();
    }
}
