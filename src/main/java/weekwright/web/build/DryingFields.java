package weekwright.web.build;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Dimensions;
import weekwright.base.Problem;
import weekwright.base.Quantity;
import weekwright.base.Refused;
import weekwright.base.Rejected;
import weekwright.build.Said;
import weekwright.funds.Drying;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Request;

/** The calculator of a stock item: by species, thickness and the day of stacking it fills in the days until it is dry. */
final class DryingFields {
    private static final List<String> FIELDS = List.of("dry_species", "dry_thick", "dry_months");
    private static final String ACT = "dry";
    private static final String SOUTH = "south";

    private DryingFields() {}

    /**
     * What the fields are chosen from.
     *
     * @param unit of a bare thickness
     */
    record Lists(List<Form.Choice> species, List<Form.Choice> months, String unit, boolean open) {}

    static Lists lists(Request request, Form form) {
        boolean missing = form.value("moisture").equals("wet")
                && form.value("ready_likely").isEmpty();
        return new Lists(
                Drying.TABLE.stream()
                        .map(one -> new Form.Choice(
                                one.key(),
                                one.name() + ", an inch in " + one.shortest() + " to " + one.longest() + " days"))
                        .toList(),
                List.of(new Form.Choice("north", "April to September"), new Form.Choice(SOUTH, "October to March")),
                unit(request),
                missing || MaterialFields.open(form, "dry_species", "dry_thick"));
    }

    private static String unit(Request request) {
        return Calculators.imperial(request) ? "in" : "mm";
    }

    /** As {@link Calculators#act}. */
    static String act(Request request) {
        return request.wasRefused(ACT) ? ACT : "";
    }

    /** Their fields go with the form of the item and are not kept. */
    static void ask(FormReader form) {
        FIELDS.forEach(form::text);
    }

    /** What the calculator's button fills in; empty where another was pressed. */
    static Optional<Answer> pressed(Request request) throws Rejected {
        FormReader form = request.form();
        if (!form.act().equals(ACT)) {
            return Optional.empty();
        }
        Optional<LocalDate> since = form.needed("since", LocalDate.class);
        Optional<Drying.Species> species = species(form);
        Optional<Quantity> inches = inches(form, unit(request));
        boolean south = form.text("dry_months").equals(SOUTH);
        Rejected.ifFaults(form.problems());
        Drying.Days days = Drying.of(species.orElseThrow(), inches.orElseThrow().value(), since.orElseThrow(), south);
        Map<String, List<String>> instead = new LinkedHashMap<>();
        instead.put("ready_low", List.of(String.valueOf(days.low())));
        instead.put("ready_likely", List.of(String.valueOf(days.likely())));
        instead.put("ready_high", List.of(String.valueOf(days.high())));
        instead.put("moisture", List.of("wet"));
        instead.put("dry_species", List.of(species.get().key()));
        LocalDate stacked = since.get();
        return Optional.of(new Answer.Again(
                instead,
                "Filled in, not saved yet: stacked on " + Said.day(stacked) + ", "
                        + species.get().name()
                        + " of that thickness is likely dry about " + Said.day(stacked.plusDays(days.likely()))
                        + ", at best " + Said.day(stacked.plusDays(days.low())) + ", at worst "
                        + Said.day(stacked.plusDays(days.high())) + "."));
    }

    /** The one that was chosen, else what the item's species says. */
    private static Optional<Drying.Species> species(FormReader form) {
        String key = form.text("dry_species");
        Optional<Drying.Species> found = key.isEmpty() ? Drying.meant(form.text("species")) : Drying.find(key);
        if (found.isEmpty()) {
            form.fault(
                    "dry_species",
                    key,
                    key.isEmpty() ? "is missing" : "is not one of those here",
                    "choose the one that dries most like it, or write the days yourself");
        }
        return found;
    }

    private static Optional<Quantity> inches(FormReader form, String unit) {
        String text = form.neededText("dry_thick");
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            Quantity inches =
                    Dimensions.length(text, unit, form.reading()).make("in").amount();
            if (inches.value().signum() == 0) {
                throw new Refused("is no thickness", "write it with its unit, such as 50 mm or 2 in");
            }
            if (inches.value().compareTo(Drying.MOST_INCHES) > 0) {
                throw new Refused("is over 6 in, for which nothing is said here", "write the days yourself");
            }
            return Optional.of(inches);
        } catch (Refused refused) {
            form.problems().add(Problem.fault("dry_thick", text, refused));
            return Optional.empty();
        }
    }
}
