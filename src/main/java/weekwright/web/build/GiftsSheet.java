package weekwright.web.build;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Map;
import weekwright.files.csv.SheetCsv;
import weekwright.funds.Gift;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Fragment;
import weekwright.web.kit.Request;

/** The gifts register as a file for a spreadsheet, in which no text runs as a formula. */
public final class GiftsSheet implements Fragment {
    @Override
    public Answer answer(Request request) {
        int digits = request.settings().moneyDigits();
        String currency = request.settings().project().currency();
        SheetCsv sheet =
                new SheetCsv("date", "what", "quantity", "unit", "from", "value", "currency", "credit", "thanked");
        for (Gift gift : request.read(Gift::all)) {
            sheet.figure(gift.day().map(LocalDate::toString).orElse(""))
                    .text(gift.item())
                    .figure(gift.quantity().map(q -> q.text()).orElse(""))
                    .text(gift.unit())
                    .text(gift.from())
                    .figure(gift.value().map(money -> money.text(digits)).orElse(""))
                    .figure(currency)
                    .text(gift.credit())
                    .figure(gift.thanked().map(LocalDate::toString).orElse(""))
                    .end();
        }
        return new Answer.Body(
                200,
                "text/csv; charset=utf-8",
                sheet.toString().getBytes(StandardCharsets.UTF_8),
                Map.of(
                        "Cache-Control",
                        "no-store",
                        "Content-Disposition",
                        "attachment; filename=\"gifts-" + request.today() + ".csv\""));
    }
}
