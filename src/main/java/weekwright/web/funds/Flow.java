package weekwright.web.funds;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Money;
import weekwright.render.Form;
import weekwright.web.kit.FormReader;

/** An amount as people type it: without a sign, and whether it comes in or goes out. */
final class Flow {
    private Flow() {}

    static List<Form.Choice> choices() {
        return List.of(new Form.Choice("out", "goes out"), new Form.Choice("in", "comes in"));
    }

    /** The amount of the form with its sign: minus where money goes out. */
    static Optional<Money> read(FormReader form) {
        Optional<Money> amount = form.needed("amount", Money.class);
        String way = form.neededText("way");
        if (!way.isEmpty() && !way.equals("in") && !way.equals("out")) {
            form.fault("way", way, "is neither in nor out", "choose one of the two");
        }
        if (amount.isPresent() && amount.get().isNegative()) {
            form.fault(
                    "amount",
                    form.text("amount"),
                    "is under 0",
                    "write it without the sign, and choose whether it comes in or goes out");
        }
        return amount.map(money -> way.equals("out") ? money.negated() : money);
    }

    /** A standing row's form, with its amount parted into these two. */
    static Form parted(Form form, Money amount, int digits) {
        Map<String, List<String>> values = new LinkedHashMap<>(form.values());
        Money size = amount.isNegative() ? amount.negated() : amount;
        values.put("amount", List.of(size.text(digits)));
        values.put("way", List.of(amount.isNegative() ? "out" : "in"));
        return new Form(form.csrf(), form.answerKey(), form.version(), values, form.errors());
    }
}
