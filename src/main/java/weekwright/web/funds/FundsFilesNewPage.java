package weekwright.web.funds;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.base.Refused;
import weekwright.base.Text;
import weekwright.db.Read;
import weekwright.funds.BankSource;
import weekwright.funds.BankSourceStore;
import weekwright.funds.WaitingFile;
import weekwright.funds.WaitingFiles;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.kit.Upload;

/** Takes a bank's or a pay-out service's file, sent or pasted; it waits until its rows are entered. */
public final class FundsFilesNewPage implements Page {
    private static final int MOST_BYTES = 5_000_000;
    private static final int NAME_MOST = 100;
    private static final String PASTED = "pasted rows";
    private static final int HEAD = 8;
    private static final int KEY_BITS = 100;
    private static final SecureRandom RANDOM = new SecureRandom();

    public record View(Form form, List<Form.Choice> sources) {}

    private final WaitingFiles waiting;

    public FundsFilesNewPage(WaitingFiles waiting) {
        this.waiting = waiting;
    }

    @Override
    public View show(Request request) {
        return request.read(read -> new View(request.form(""), sources(read)));
    }

    private static List<Form.Choice> sources(Read read) {
        return BankSourceStore.TABLE.values(read).stream()
                .map((BankSource source) -> new Form.Choice(source.id().value(), source.name()))
                .toList();
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        // without a script some browsers send the name of the file as a text field
        form.text("file");
        List<Upload> sent = request.uploads("file");
        String pasted = form.text("text");
        Optional<Id> source = form.oneOf("source", request.read(BankSourceStore.TABLE::ids));
        if (sent.isEmpty() && pasted.isEmpty()) {
            form.fault("file", "", "is missing", "choose the file, or paste its rows");
        } else if (sent.size() + (pasted.isEmpty() ? 0 : 1) > 1) {
            form.fault("file", "", "is more than one", "send one file, or the pasted rows alone");
        }
        String name = sent.isEmpty() ? PASTED : name(sent.get(0).name());
        byte[] bytes = sent.isEmpty() ? pasted.getBytes(StandardCharsets.UTF_8) : content(form, sent.get(0), name);
        if (sent.isEmpty() && bytes.length > MOST_BYTES) {
            form.fault("text", "", large(bytes.length), "paste a shorter time, such as one year");
        }
        return request.save(write -> {
            String key = new BigInteger(KEY_BITS, RANDOM).toString(Character.MAX_RADIX);
            waiting.add(new WaitingFile(key, name, source.map(Id::value).orElse(""), write.at()), bytes);
            return Saved.to("/funds/files/" + key);
        });
    }

    private static byte[] content(FormReader form, Upload upload, String name) {
        if (upload.bytes() > MOST_BYTES) {
            form.fault("file", name, large(upload.bytes()), "download a shorter time, such as one year");
            return new byte[0];
        }
        try (InputStream in = upload.content().get()) {
            byte[] bytes = in.readAllBytes();
            if (bytes.length == 0) {
                form.fault("file", name, "is empty", "download it once more");
            }
            kind(bytes)
                    .ifPresent(kind ->
                            form.fault("file", name, "is " + kind + ", not text", "download it as CSV, and send that"));
            return bytes;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String large(long bytes) {
        return "is " + String.format(Locale.ROOT, "%.1f", bytes / 1e6) + " MB, and at most 5 MB are read";
    }

    /** What a file is by its first bytes, where they are those of no text. */
    private static Optional<String> kind(byte[] bytes) {
        String head = new String(bytes, 0, Math.min(HEAD, bytes.length), StandardCharsets.ISO_8859_1);
        return head.startsWith("PK\u0003\u0004") || head.startsWith("\u00d0\u00cf\u0011\u00e0")
                ? Optional.of("a spreadsheet or an archive")
                : head.startsWith("%PDF")
                        ? Optional.of("a PDF")
                        : head.startsWith("\u0089PNG") || head.startsWith("\u00ff\u00d8\u00ff")
                                ? Optional.of("a picture")
                                : Optional.empty();
    }

    /** The last part of the name that was sent, as one line of text. */
    private static String name(String sent) {
        String last = sent.substring(Math.max(sent.lastIndexOf('/'), sent.lastIndexOf('\\')) + 1);
        try {
            String clean = Text.checked(last.strip(), false);
            return clean.isEmpty()
                    ? PASTED
                    : clean.substring(
                            0,
                            clean.offsetByCodePoints(0, Math.min(NAME_MOST, clean.codePointCount(0, clean.length()))));
        } catch (Refused refused) {
            return "file";
        }
    }
}
