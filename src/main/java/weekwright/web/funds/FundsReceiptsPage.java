package weekwright.web.funds;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import weekwright.base.FileKind;
import weekwright.base.Problem;
import weekwright.base.Rejected;
import weekwright.files.KeptFiles;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.kit.Upload;
import weekwright.web.parts.ReceiptField;

/** Receipts that came first and are typed in later: pictures in, one after the other into the books. */
public final class FundsReceiptsPage implements Page {
    private static final int MOST_AT_ONCE = 20;

    /** @param picture whether a browser shows it */
    public record Line(String file, boolean picture) {}

    /** @param thrown the form of each line's button */
    public record View(Form form, Form thrown, List<Line> lines) {}

    @Override
    public View show(Request request) {
        KeptFiles files = ReceiptField.files(request);
        List<Line> lines = request.read(read -> ReceiptField.waiting(read, request)).stream()
                .map(name -> new Line(
                        name,
                        files.find(name).filter(FundsReceiptsPage::isPicture).isPresent()))
                .toList();
        return new View(request.form(""), request.form("throw"), lines);
    }

    private static boolean isPicture(Path file) {
        try {
            return KeptFiles.kind(file).filter(FileKind::isPicture).isPresent();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        return form.act().equals("throw") ? throwAway(request, form) : add(request, form);
    }

    private static Answer add(Request request, FormReader form) throws Exception {
        form.text("receipt");
        List<Upload> sent = request.uploads("receipt");
        if (sent.isEmpty()) {
            form.fault("receipt", "", "is missing", "choose or take a picture");
        } else if (sent.size() > MOST_AT_ONCE) {
            form.fault(
                    "receipt", sent.size() + " files", "are too many at once", "send " + MOST_AT_ONCE + " at a time");
        }
        List<ReceiptField.Checked> good = ReceiptField.checked(form, sent);
        return request.save(write -> {
            List<String> names = new ArrayList<>();
            good.forEach(file -> names.add(ReceiptField.keep(request, file)));
            return Saved.to("/funds/receipts")
                    .saying(Formats.sentence(Formats.counted(names.size(), "receipt is", "receipts are"))
                            + " kept. Type in what was paid whenever there is time.");
        });
    }

    private static Answer throwAway(Request request, FormReader form) throws Exception {
        String name = form.text("file");
        boolean sure = form.ticked("sure");
        return request.save(write -> {
            if (!ReceiptField.waiting(write, request).contains(name)) {
                throw new Rejected(
                        Problem.fault("", name, "does not wait any more", "look whether it is in the books already"));
            }
            if (!sure) {
                throw new Rejected(Problem.fault("", name, "cannot be brought back", "tick that you are sure"));
            }
            ReceiptField.files(request).remove(name);
            return Saved.to("/funds/receipts").saying("The receipt is thrown away.");
        });
    }
}
