package weekwright.web.funds;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Map;
import weekwright.files.year.YearFolder;
import weekwright.funds.TaxYear;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Fragment;
import weekwright.web.kit.Request;
import weekwright.web.parts.ReceiptField;

/** The folder of a tax year; written whole before the first byte is sent, so that what is cut short is no folder. */
public final class YearZip implements Fragment {
    @Override
    public Answer answer(Request request) {
        TaxYear year = FundsYearsPage.year(request);
        try {
            Path file = Files.createTempFile("weekwright-year-", ".zip");
            try {
                try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file))) {
                    request.read(read -> {
                        try {
                            YearFolder.write(read, year, request.today(), ReceiptField.files(request), out);
                        } catch (IOException e) {
                            throw new UncheckedIOException(e);
                        }
                        return year;
                    });
                }
                return new Answer.Stream(
                        "application/zip",
                        Files.newInputStream(file, StandardOpenOption.DELETE_ON_CLOSE),
                        Map.of(
                                "Cache-Control",
                                "no-store",
                                "Content-Disposition",
                                "attachment; filename=\"year-" + year.name() + ".zip\""));
            } catch (IOException | RuntimeException e) {
                Files.deleteIfExists(file);
                throw e;
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
