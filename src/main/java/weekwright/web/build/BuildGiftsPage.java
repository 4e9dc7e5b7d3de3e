package weekwright.web.build;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Money;
import weekwright.funds.Gift;
import weekwright.funds.ThankGiver;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** The gifts register: who is still to be thanked, then all that was given, with its worth. */
public final class BuildGiftsPage implements Page {
    /**
     * @param owed those of whom nobody has thanked the giver yet
     * @param unvalued how many have no worth written down
     */
    public record View(Form thank, List<Line> owed, List<Line> all, Money sum, long unvalued, LocalDate today) {}

    /** @param key what the form calls it */
    public record Line(
            String key,
            String link,
            String item,
            String amount,
            String from,
            Optional<LocalDate> day,
            Optional<Money> value,
            String credit,
            Optional<LocalDate> thanked) {}

    @Override
    public View show(Request request) {
        Form thank = request.form("thank", Map.of("thanked", request.today().toString()));
        return request.read(read -> {
            List<Line> all = Gift.all(read).stream().map(BuildGiftsPage::line).toList();
            return new View(
                    thank,
                    all.stream().filter(line -> line.thanked().isEmpty()).toList(),
                    all,
                    all.stream().flatMap(line -> line.value().stream()).reduce(Money.ZERO, Money::plus),
                    all.stream().filter(line -> line.value().isEmpty()).count(),
                    request.today());
        });
    }

    private static Line line(Gift gift) {
        return new Line(
                key(gift),
                gift.stock() ? "/build/stock/" + gift.id() + "/edit" : "/build/materials/" + gift.id(),
                gift.item(),
                gift.amount(),
                gift.from(),
                gift.day(),
                gift.value(),
                gift.credit(),
                gift.thanked());
    }

    private static String key(Gift gift) {
        return (gift.stock() ? "stock:" : "line:") + gift.id();
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        String key = form.neededText("gift");
        Optional<LocalDate> day = form.needed("thanked", LocalDate.class);
        return request.save(write -> {
            Gift gift = Gift.all(write).stream()
                    .filter(one -> key(one).equals(key))
                    .findFirst()
                    .orElseThrow(() -> new NotFound("There is no such gift."));
            ThankGiver.thank(write, gift, day.orElseThrow(), request.today());
            return Saved.to("/build/gifts")
                    .saying((gift.from().isEmpty() ? "The giver" : Formats.sentence(gift.from())) + " was thanked for "
                            + gift.item() + " on " + Formats.dayMonthLong(day.get()) + ".");
        });
    }
}
