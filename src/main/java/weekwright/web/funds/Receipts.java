package weekwright.web.funds;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import weekwright.base.FileKind;
import weekwright.files.KeptFiles;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Fragment;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Request;
import weekwright.web.parts.ReceiptField;

/** The receipts of the project's folder: pictures to look at, documents to keep; what a file is its first bytes tell. */
public final class Receipts implements Fragment {
    @Override
    public Answer answer(Request request) {
        String name = request.part("file");
        Path file = ReceiptField.files(request)
                .find(name)
                .orElseThrow(() -> new NotFound("There is no receipt of that name."));
        try {
            FileKind kind =
                    KeptFiles.kind(file).orElseThrow(() -> new NotFound("This receipt is no picture and no PDF."));
            String disposition = kind.isPicture() ? "inline" : "attachment; filename=\"receipt." + kind.ending() + "\"";
            return new Answer.Body(
                    200,
                    kind.type(),
                    Files.readAllBytes(file),
                    Map.of("Cache-Control", "private, no-cache", "Content-Disposition", disposition));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
