package weekwright.web.funds;

import java.util.Optional;
import weekwright.files.csv.SheetCsv;
import weekwright.forecast.Forecast;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Fragment;
import weekwright.web.kit.Request;
import weekwright.web.parts.Outlook;

/** Open orders for a spreadsheet, in which no text runs as a formula. */
public final class OrdersSheet implements Fragment {
    @Override
    public Answer answer(Request request) {
        int digits = request.settings().moneyDigits();
        Formats formats = request.formats();
        Optional<Forecast> forecast = Outlook.forecast(request);
        SheetCsv csv = new SheetCsv(
                "Stands",
                "Item",
                "Quantity",
                "Supplier",
                "Task",
                "Order by or promised",
                "Still to pay",
                "Paid",
                "Call off by",
                "Next");
        request.read(read -> OpenOrders.of(read, forecast, formats))
                .forEach(line -> csv.text(line.ordered() ? "on order" : "to order")
                        .text(line.item())
                        .text(line.amount())
                        .text(line.supplier())
                        .text(line.task())
                        .figure(line.day().map(Object::toString).orElse(""))
                        .figure(line.toPay().text(digits))
                        .figure(line.paid().text(digits))
                        .figure(line.cancelBy().map(Object::toString).orElse(""))
                        .text(line.next())
                        .end());
        return Answer.sheet(csv.toString(), "orders-" + request.today() + ".csv");
    }
}
