package weekwright.web.build;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import weekwright.base.Density;
import weekwright.base.Dimensions;
import weekwright.base.Problem;
import weekwright.base.Refused;
import weekwright.base.Rejected;
import weekwright.build.Project;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Request;

/**
 * The calculators of a material line: each turns its own fields into the dimensions of the line, in words that can be read and
 * changed there. What they make is worked out by {@link Dimensions} alone.
 */
final class Calculators {
    private static final List<String> FIELDS = List.of(
            "board_count",
            "board_thick",
            "board_wide",
            "board_long",
            "board_as",
            "log_count",
            "log_across",
            "log_long",
            "log_scale",
            "area",
            "area_cover",
            "weight_volume",
            "weight_of",
            "row_count",
            "row_long",
            "row_every",
            "row_closed",
            "sum");
    private static final List<String> ACTS = List.of("boards", "logs", "area", "weight", "row");
    private static final List<String> SCALES = List.of("doyle", "scribner", "international");
    private static final String HOPPUS = "hoppus";

    private final FormReader form;
    private final boolean imperial;

    private Calculators(Request request) {
        this.form = request.form();
        this.imperial = imperial(request);
    }

    /**
     * What the fields are chosen from.
     *
     * @param small the unit of a bare figure where boards are measured, {@code large} where rooms and logs are
     */
    record Lists(
            String small,
            String large,
            String area,
            String volume,
            List<Form.Choice> boards,
            List<Form.Choice> scales,
            List<Form.Choice> weights,
            boolean open) {}

    /**
     * What goes into the line.
     *
     * @param anyUnit whether the unit of the line stays where it fits
     */
    private record Filled(String dimensions, String unit, boolean anyUnit, String more) {}

    static boolean imperial(Request request) {
        return request.settings().units() == Project.Units.IMPERIAL;
    }

    static Lists lists(Request request, Form form) {
        boolean imperial = imperial(request);
        Form.Choice cubic = new Form.Choice("m3", "in cubic metres");
        Form.Choice feet = new Form.Choice("bf", "in board feet, as measured");
        Form.Choice tally = new Form.Choice("tally", "in board feet, at least an inch thick");
        return new Lists(
                imperial ? "in" : "mm",
                imperial ? "ft" : "m",
                imperial ? "ft2" : "m2",
                imperial ? "ft3" : "m3",
                imperial ? List.of(feet, tally, cubic) : List.of(cubic, feet, tally),
                List.of(
                        new Form.Choice("doyle", "Doyle, board feet"),
                        new Form.Choice("scribner", "Scribner, board feet"),
                        new Form.Choice("international", "International 1/4 inch, board feet"),
                        new Form.Choice(HOPPUS, "by the girth, Hoppus feet"),
                        new Form.Choice("girth", "by the girth, cubic metres")),
                Density.all().stream()
                        .map(one -> new Form.Choice(
                                one.name(),
                                one.name().replace('-', ' ') + ", " + one.perCubicMetre() + " kg/m³"
                                        + (one.remembered() ? " (from memory)" : "")))
                        .toList(),
                MaterialFields.open(
                        form, FIELDS.stream().filter(f -> !f.equals("sum")).toArray(String[]::new)));
    }

    /** Which of their buttons was pressed and refused; empty, as the form's chief act, for none. */
    static String act(Request request) {
        return ACTS.stream().filter(request::wasRefused).findFirst().orElse("");
    }

    /** Their fields go with the form of the line and are not kept. */
    static void ask(FormReader form) {
        FIELDS.forEach(form::text);
    }

    /** What a calculator's button fills in; empty where another button was pressed. */
    static Optional<Answer> pressed(Request request) throws Rejected {
        Calculators one = new Calculators(request);
        Map<String, Supplier<Optional<Filled>>> all = Map.of(
                "boards", one::boards, "logs", one::logs, "area", one::area, "weight", one::weight, "row", one::row);
        if (!all.containsKey(one.form.act())) {
            return Optional.empty();
        }
        Optional<Answer> answer = all.get(one.form.act()).get().flatMap(one::answer);
        Rejected.ifFaults(one.form.problems());
        return answer;
    }

    private Optional<Answer> answer(Filled filled) {
        String before = form.text("dimensions");
        boolean sum = form.ticked("sum") && !before.isEmpty();
        String text = sum ? before + " + " + filled.dimensions : filled.dimensions;
        try {
            Dimensions all = Dimensions.parse(text, form.reading());
            String unit = fitting(all, sum || filled.anyUnit ? form.text("unit") : filled.unit, filled.unit);
            all.make(unit);
            Map<String, List<String>> instead = new LinkedHashMap<>();
            instead.put("dimensions", List.of(all.text()));
            instead.put("unit", List.of(unit));
            instead.put("quantity", List.of());
            return Optional.of(
                    new Answer.Again(instead, "In the line now, not saved yet: " + all.said(unit) + "." + filled.more));
        } catch (Refused refused) {
            form.problems().add(Problem.fault("dimensions", text, refused));
            return Optional.empty();
        }
    }

    /** The first unit that the dimensions make. */
    private static String fitting(Dimensions dimensions, String first, String second) {
        try {
            if (!first.isEmpty()) {
                dimensions.make(first);
                return first;
            }
        } catch (Refused refused) {
            // the second is told where it does not fit either
        }
        return second;
    }

    /** Number of pieces, as it goes before the dimensions: "6 × ", or nothing. */
    private String count(String field) {
        Optional<Integer> count = form.read(field, Integer.class);
        if (count.filter(n -> n < 1).isPresent()) {
            form.fault(field, form.text(field), "is no number of pieces", "write 1 or more");
        }
        return count.filter(n -> n > 1).map(n -> n + " × ").orElse("");
    }

    private Optional<Dimensions> length(String field, boolean small) {
        return measured(
                field,
                text -> Dimensions.length(
                        text, small ? (imperial ? "in" : "mm") : imperial ? "ft" : "m", form.reading()));
    }

    private interface Reader {
        Dimensions read(String text) throws Refused;
    }

    private Optional<Dimensions> measured(String field, Reader reader) {
        String text = form.neededText(field);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            return Optional.of(reader.read(text));
        } catch (Refused refused) {
            form.problems().add(Problem.fault(field, text, refused));
            return Optional.empty();
        }
    }

    private Optional<Filled> boards() {
        String count = count("board_count");
        Optional<Dimensions> thick = length("board_thick", true);
        Optional<Dimensions> wide = length("board_wide", true);
        Optional<Dimensions> large = length("board_long", false);
        String as = chosen("board_as", List.of("m3", "bf", "tally"));
        if (form.problems().hasFaults()) {
            return Optional.empty();
        }
        String board = thick.orElseThrow() + " × " + wide.orElseThrow() + " × " + large.orElseThrow();
        if (as.equals("m3")) {
            return Optional.of(new Filled(count + board, "m3", false, ""));
        }
        String both =
                " As measured " + made(count + board) + " board feet; at least an inch thick, as hardwood is often"
                        + " tallied, " + made(count + "tally " + board) + ".";
        return Optional.of(new Filled(count + (as.equals("tally") ? "tally " : "") + board, "bf", false, both));
    }

    /** One of the words that the list offers. */
    private String chosen(String field, List<String> words) {
        String word = form.text(field);
        if (!words.contains(word)) {
            form.fault(
                    field, word, word.isEmpty() ? "is missing" : "is not one of those here", "choose one of the list");
        }
        return word;
    }

    private String made(String text) {
        return make(text, "bf");
    }

    private String make(String text, String unit) {
        try {
            return Dimensions.parse(text, form.reading()).make(unit).amount().text();
        } catch (Refused refused) {
            return "too many";
        }
    }

    private Optional<Filled> logs() {
        String count = count("log_count");
        Optional<Dimensions> across = length("log_across", true);
        Optional<Dimensions> large = length("log_long", false);
        String scale = chosen("log_scale", List.of("doyle", "scribner", "international", HOPPUS, "girth"));
        if (form.problems().hasFaults()) {
            return Optional.empty();
        }
        String log = across.orElseThrow() + " × " + large.orElseThrow();
        if (!SCALES.contains(scale)) {
            String text = count + "girth " + log;
            return Optional.of(new Filled(
                    text,
                    scale.equals(HOPPUS) ? "hft" : "m3",
                    false,
                    " " + make(text, "hft") + " Hoppus feet, " + make(text, "m3") + " m³ in all."));
        }
        try {
            // a log out of all bounds is told at its own field
            Dimensions.parse(scale + " " + log, form.reading());
        } catch (Refused refused) {
            form.problems().add(Problem.fault("log_across", form.text("log_across"), refused));
            return Optional.empty();
        }
        List<String> said = SCALES.stream()
                .map(one -> Formats.sentence(one) + " " + made(count + one + " " + log))
                .toList();
        return Optional.of(new Filled(
                count + scale + " " + log,
                "bf",
                false,
                " By the three scales in board feet: " + String.join(", ", said) + "."));
    }

    /** Something that makes this unit and that more can be multiplied to. */
    private Dimensions product(String text, String unit) throws Refused {
        Dimensions read = Dimensions.in(text, unit, form.reading());
        if (read.text().contains("+")) {
            throw new Refused("is a sum", "work out one part after the other, and tick that it is added");
        }
        read.make(unit);
        return read;
    }

    private Optional<Filled> area() {
        Optional<Dimensions> area = measured("area", text -> product(text, imperial ? "ft2" : "m2"));
        Optional<Dimensions> cover = measured("area_cover", text -> {
            Dimensions read = Dimensions.in(text, imperial ? "in" : "mm", form.reading());
            if (!read.isOneLength() && !read.isOneArea()) {
                throw new Refused("is neither one width nor one area", "write such as 150 mm, or 0.05 m2");
            }
            return read;
        });
        if (area.isEmpty() || cover.isEmpty()) {
            return Optional.empty();
        }
        String unit = cover.get().isOneArea() ? "pc" : imperial ? "ft" : "m";
        return Optional.of(new Filled(area.get() + " ÷ " + cover.get(), unit, true, ""));
    }

    private Optional<Filled> weight() {
        Optional<Dimensions> volume = measured("weight_volume", text -> product(text, imperial ? "ft3" : "m3"));
        List<String> names = Density.all().stream().map(Density::name).toList();
        String of = chosen("weight_of", names);
        return volume.isEmpty() || form.problems().hasFaults()
                ? Optional.empty()
                : Optional.of(new Filled(volume.get() + " × " + of, imperial ? "lb" : "kg", true, ""));
    }

    private Optional<Filled> row() {
        String count = count("row_count");
        Optional<Dimensions> length = length("row_long", false);
        Optional<Dimensions> every = length("row_every", true);
        boolean closed = form.ticked("row_closed");
        if (form.problems().hasFaults()) {
            return Optional.empty();
        }
        String text = count + (closed ? "around " : "") + length.orElseThrow() + " every " + every.orElseThrow();
        return Optional.of(new Filled(text, "pc", true, ""));
    }
}
