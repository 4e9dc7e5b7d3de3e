package weekwright.render.chart;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import weekwright.render.Formats;
import weekwright.render.chart.AheadPicture.Cash;
import weekwright.render.chart.AheadPicture.Model;
import weekwright.render.chart.AheadPicture.Pointers;

/**
 * The money alone, for Funds: what was, the fan if nothing more were bought, and the stair of what must be bought, over as
 * many weeks as wished. Wide it is 1208 pixels; narrow 300, with purchases numbered in the order of their table.
 */
public final class MoneyPicture {
    private final Cash cash;
    private final LocalDate today;
    private final Formats formats;
    private final int weeksBack;
    private final int weeks;

    /**
     * @param weeksBack how many weeks before today's the picture begins
     * @param weeks how many it shows altogether
     */
    public MoneyPicture(Cash cash, LocalDate today, Formats formats, int weeksBack, int weeks) {
        this.cash = cash;
        this.today = today;
        this.formats = formats;
        this.weeksBack = weeksBack;
        this.weeks = weeks;
    }

    /** All three; the style sheet shows the one that fits the screen. */
    public String drawings() {
        return wide() + draw("money-picture medium", "money-medium", 688, 300) + narrow();
    }

    public String wide() {
        return draw("money-picture wide", "money-wide", 1208, 300);
    }

    public String narrow() {
        return draw("money-picture narrow", "money-narrow", 300, 280);
    }

    private String draw(String kind, String id, double width, double height) {
        LocalDate first = today.minusWeeks(weeksBack).with(DayOfWeek.MONDAY);
        Model alone = new Model(
                today, DayOfWeek.MONDAY, List.of(), List.of(), List.of(), Optional.empty(), 0, cash, Pointers.NONE);
        AheadSheet sheet = new AheadSheet(first, weeks * 7, List.of(), alone);
        MoneyBand band = new MoneyBand(cash, first, today, sheet.days());
        double left = 4;
        double right = width - 4;
        Svg svg = new Svg(
                id,
                kind,
                width,
                height,
                "Money if nothing more were bought, against what must be paid, "
                        + formats.span(sheet.first(), sheet.last().minusDays(1)),
                "");
        TimeAxis.months(svg, sheet, left, right, height - 12);
        MoneyDrawing drawing = new MoneyDrawing(band, alone, formats, sheet, left, right, 52, height - 14, 36);
        drawing.drawShapes(svg);
        double at = left + sheet.today() * (right - left) / sheet.days();
        svg.line("today-line", at, 34, at, height - 8);
        if (width > 400) {
            drawing.drawLetters(svg, (letter, place) -> {});
        } else {
            drawing.drawNumbers(svg);
        }
        return svg.done();
    }
}
