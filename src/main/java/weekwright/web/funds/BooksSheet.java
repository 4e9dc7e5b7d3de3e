package weekwright.web.funds;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import weekwright.files.csv.RecordCsv;
import weekwright.funds.LedgerEntryStore;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Fragment;
import weekwright.web.kit.Request;

/** The books as a file for a spreadsheet, in which no text runs as a formula. */
public final class BooksSheet implements Fragment {
    @Override
    public Answer answer(Request request) {
        String csv = request.read(read -> RecordCsv.forSpreadsheet(
                LedgerEntryStore.TABLE.shape(),
                LedgerEntryStore.TABLE.values(read),
                request.settings().moneyDigits()));
        return new Answer.Body(
                200,
                "text/csv; charset=utf-8",
                csv.getBytes(StandardCharsets.UTF_8),
                Map.of(
                        "Cache-Control",
                        "no-store",
                        "Content-Disposition",
                        "attachment; filename=\"books-" + request.today() + ".csv\""));
    }
}
