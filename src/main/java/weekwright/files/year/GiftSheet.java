package weekwright.files.year;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import weekwright.build.Settings;
import weekwright.files.csv.SheetCsv;
import weekwright.funds.Gift;

/** Gifts as a table for a spreadsheet, by day: the register's own file, and that of a year's folder. */
public final class GiftSheet {
    private GiftSheet() {}

    public static String of(List<Gift> gifts, Settings settings) {
        SheetCsv sheet = new SheetCsv(
                "date", "what", "quantity", "unit", "from", "value", "currency", "credit", "thanked", "entered as");
        gifts.stream()
                .sorted(Comparator.comparing(gift -> gift.day().orElse(LocalDate.MIN)))
                .forEach(gift -> sheet.figure(
                                gift.day().map(LocalDate::toString).orElse(""))
                        .text(gift.item())
                        .figure(gift.quantity().map(q -> q.text()).orElse(""))
                        .text(gift.unit())
                        .text(gift.from())
                        .figure(gift.value()
                                .map(money -> money.text(settings.moneyDigits()))
                                .orElse(""))
                        .figure(settings.project().currency())
                        .text(gift.credit())
                        .figure(gift.thanked().map(LocalDate::toString).orElse(""))
                        .text((gift.stock() ? "stock " : "material line ") + gift.id())
                        .end());
        return sheet.toString();
    }
}
