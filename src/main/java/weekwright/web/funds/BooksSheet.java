package weekwright.web.funds;

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
        return Answer.sheet(csv, "books-" + request.today() + ".csv");
    }
}
