package weekwright.web.build;

import weekwright.files.year.GiftSheet;
import weekwright.funds.Gift;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Fragment;
import weekwright.web.kit.Request;

/** The gifts register as a file for a spreadsheet, in which no text runs as a formula. */
public final class GiftsSheet implements Fragment {
    @Override
    public Answer answer(Request request) {
        return Answer.sheet(
                GiftSheet.of(request.read(Gift::all), request.settings()), "gifts-" + request.today() + ".csv");
    }
}
