package weekwright.base;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the text of {@link Dimensions}: figures, units and words, one product after the other. */
final class DimensionParser {
    private static final Pattern FIGURE = Pattern.compile(
            "([0-9]+) +([0-9]+)/([0-9]+)(?![0-9.,])|([0-9]+)/([0-9]+)(?![0-9.,])|[0-9]+(?:[.,][0-9]+)?");
    private static final Pattern UNIT =
            Pattern.compile("\\p{L}+[23²³]?(?:/\\p{L}+[23²³]?)?|['′\"″]", Pattern.UNICODE_CHARACTER_CLASS);
    /** A unit that runs into the sign after it: 200mmx4.20m. */
    private static final Pattern BEFORE_TIMES = Pattern.compile("(\\p{L}+[23²³]?)[xX][23]?");

    private static final Pattern WORD = Pattern.compile("[\\p{L}]+(?:-[\\p{L}]+)*");
    private static final Map<String, Product.Form> ACROSS =
            Map.of("round", Product.Form.ROUND, "girth", Product.Form.GIRTH, "ball", Product.Form.BALL);
    private static final String EXAMPLE = "write such as 6 × 150 × 200 mm × 4.20 m";
    private static final int MOST_PRODUCTS = 30;

    private final String text;
    private final Reading reading;
    private final StringBuilder said = new StringBuilder();
    private int at;

    private DimensionParser(String text, Reading reading) {
        this.text = text;
        this.reading = reading;
    }

    static List<Product> read(String text, Reading reading) throws Refused {
        String plain = text.replace("¼", " 1/4")
                .replace("½", " 1/2")
                .replace("¾", " 3/4")
                .strip();
        DimensionParser parser = new DimensionParser(plain, reading);
        List<Product> products = new ArrayList<>();
        do {
            products.add(parser.product());
        } while (parser.take("+"));
        if (parser.at < plain.length()) {
            throw parser.unreadable();
        }
        if (products.size() > MOST_PRODUCTS) {
            throw new Refused("has more than " + MOST_PRODUCTS + " parts", "put the rest on another line");
        }
        return products;
    }

    private Product product() throws Refused {
        said.setLength(0);
        List<Product.Factor> factors = new ArrayList<>();
        factors.add(saidFactor(false));
        while (true) {
            if (takeTimes()) {
                said.append(" × ");
                factors.add(saidFactor(false));
            } else if (take("÷") || take("/")) {
                said.append(" ÷ ");
                factors.add(saidFactor(true));
            } else {
                return new Product(factors, said.toString());
            }
        }
    }

    private Product.Factor saidFactor(boolean divides) throws Refused {
        int from = said.length();
        Product.Factor factor = factor(divides);
        return factor.saying(said.substring(from));
    }

    private Product.Factor factor(boolean divides) throws Refused {
        String word = peekWord();
        Optional<LogRule> rule = LogRule.find(word);
        if (rule.isPresent() && !divides) {
            return log(rule.get(), word);
        }
        Optional<Ratio> density = Density.of(word);
        if (density.isPresent()) {
            takeWord(word);
            return new Product.Factor(density.get(), new Measure(Ratio.ONE, -3, 1), false, divides, Product.Form.PLAIN);
        }
        if (word.equals("around") && !divides) {
            takeWord(word);
            said.append(' ');
            return row(length(), true);
        }
        if (word.equals("tally") && !divides) {
            return tally();
        }
        Product.Form form = ACROSS.get(word);
        if (form != null) {
            takeWord(word);
            said.append(' ');
            return new Product.Factor(length(), Measure.METRE, false, divides, form);
        }
        return figure(divides);
    }

    /** A figure with its unit; feet and inches belong together, and a spacing makes a row of it. */
    private Product.Factor figure(boolean divides) throws Refused {
        Ratio value = number();
        Optional<Measure> unit = unit();
        if (unit.isEmpty()) {
            nothingElse();
            zero(value, divides);
            return new Product.Factor(value, Measure.PIECE, true, divides, Product.Form.PLAIN);
        }
        Measure measure = unit.get();
        if (measure.equals(Measure.FOOT) && nextIsFigure()) {
            said.append(' ');
            Ratio inches = number();
            if (!unit().filter(Measure.INCH::equals).isPresent()) {
                throw new Refused("has a figure after the feet that is not in inches", "write such as 5 ft 6 in");
            }
            value = value.plus(inches.dividedBy(Ratio.of("12")));
        }
        if (measure.isLength() && !divides && peekWord().equals("every")) {
            return row(value.times(measure.factor()), false);
        }
        nothingElse();
        zero(value, divides);
        return new Product.Factor(value, measure, false, divides, Product.Form.PLAIN);
    }

    private static void zero(Ratio value, boolean divides) throws Refused {
        if (divides && value.signum() == 0) {
            throw new Refused("divides by 0", "write how much one covers");
        }
    }

    private Product.Factor row(Ratio length, boolean closed) throws Refused {
        if (!peekWord().equals("every")) {
            throw new Refused("has no spacing after around", "write such as around 24 ft every 6 in");
        }
        said.append(' ');
        takeWord("every");
        said.append(' ');
        Ratio spacing = length();
        if (spacing.signum() == 0) {
            throw new Refused("has a spacing of 0", "write a spacing over 0");
        }
        return Product.row(length, spacing, closed);
    }

    private Product.Factor log(LogRule rule, String word) throws Refused {
        takeWord(word);
        said.append(' ');
        Ratio inches = length().dividedBy(Measure.INCH.factor());
        if (!takeTimes()) {
            throw new Refused("has no length after the log's diameter", "write such as " + word + " 12 in × 16 ft");
        }
        said.append(" × ");
        Ratio feet = length().dividedBy(Measure.FOOT.factor());
        if (feet.compare(Ratio.of("200")) > 0 || inches.compare(Ratio.of("200")) > 0) {
            throw new Refused("names a log over 200 ft or 200 in", "look at its units");
        }
        return new Product.Factor(rule.boardFeet(inches, feet), Measure.BOARD_FOOT, false, false, Product.Form.PLAIN);
    }

    /** A board as hardwood is often tallied: stock thinner than an inch is counted as an inch thick. */
    private Product.Factor tally() throws Refused {
        takeWord("tally");
        said.append(' ');
        Ratio thick = length();
        Ratio board = thick.compare(Measure.INCH.factor()) < 0 ? Measure.INCH.factor() : thick;
        for (int i = 0; i < 2; i++) {
            if (!takeTimes()) {
                throw new Refused("has no width and length after tally", "write such as tally 3/4 in × 8 in × 10 ft");
            }
            said.append(" × ");
            board = board.times(length());
        }
        Ratio feet = board.dividedBy(Measure.BOARD_FOOT.factor());
        return new Product.Factor(feet, Measure.BOARD_FOOT, false, false, Product.Form.PLAIN);
    }

    /** A length in metres. */
    private Ratio length() throws Refused {
        int from = at;
        Ratio value = number();
        Optional<Measure> unit = unit();
        if (unit.isEmpty() || !unit.get().isLength()) {
            throw new Refused(
                    "has \"" + text.substring(from, at).strip() + "\" where a length must stand",
                    "write it with its unit, such as 150 mm or 6 in");
        }
        if (unit.get().equals(Measure.FOOT) && nextIsFigure()) {
            said.append(' ');
            Ratio inches = number();
            unit();
            value = value.plus(inches.dividedBy(Ratio.of("12")));
        }
        return value.times(unit.get().factor());
    }

    private Ratio number() throws Refused {
        skip();
        Matcher figure = FIGURE.matcher(text).region(at, text.length());
        if (!figure.lookingAt()) {
            throw unreadable();
        }
        at = figure.end();
        if (figure.group(2) != null) {
            said.append(figure.group(1))
                    .append(' ')
                    .append(figure.group(2))
                    .append('/')
                    .append(figure.group(3));
            return decimal(figure.group(1)).plus(share(figure.group(2), figure.group(3)));
        }
        if (figure.group(4) != null) {
            said.append(figure.group());
            return share(figure.group(4), figure.group(5));
        }
        Ratio value = decimal(figure.group());
        said.append(figure.group().replace(',', '.'));
        return value;
    }

    private Ratio share(String over, String under) throws Refused {
        Ratio divisor = decimal(under);
        if (divisor.signum() == 0) {
            throw new Refused("divides by 0", "write a fraction such as 3/4");
        }
        return decimal(over).dividedBy(divisor);
    }

    private Ratio decimal(String figure) throws Refused {
        try {
            // 1.250 m is a metre and a quarter; only a comma before three figures has two readings
            Reading how = figure.contains(".") ? Reading.file(0) : reading;
            return new Ratio(Decimals.parse(figure, how, "a number", "12 or 2.5"), BigDecimal.ONE);
        } catch (Refused refused) {
            throw new Refused("has " + figure + ", which " + refused.rule(), refused.remedy());
        }
    }

    private Optional<Measure> unit() throws Refused {
        skip();
        Matcher found = UNIT.matcher(text).region(at, text.length());
        if (!found.lookingAt()) {
            return Optional.empty();
        }
        String word = found.group();
        if (word.matches("[xX][23]?")
                || Density.of(peekWord()).isPresent()
                || peekWord().equals("every")) {
            return Optional.empty();
        }
        Matcher before = BEFORE_TIMES.matcher(word);
        if (Measure.find(word).isEmpty() && before.matches()) {
            word = before.group(1);
        }
        Optional<Measure> unit = Measure.find(word);
        if (unit.isEmpty()) {
            throw new Refused(
                    "has the unit \"" + word + "\", which is not known",
                    "write mm, cm, m, in, ft, yd, their squares and cubes such as m2, l, bf, kg, lb, pc, or two such as"
                            + " kg/m3");
        }
        at += word.length();
        String plain = word.contains("/")
                ? Measure.plain(word.substring(0, word.indexOf('/'))) + "/"
                        + Measure.plain(word.substring(word.indexOf('/') + 1))
                : Measure.plain(word);
        said.append(' ').append(plain);
        return unit;
    }

    /** After a figure comes a sign or the end; two figures side by side mean nothing. */
    private void nothingElse() throws Refused {
        skip();
        if (at < text.length() && "+×÷*/xX".indexOf(text.charAt(at)) < 0) {
            throw unreadable();
        }
    }

    private boolean nextIsFigure() {
        skip();
        return at < text.length() && Character.isDigit(text.charAt(at));
    }

    private String peekWord() {
        skip();
        Matcher word = WORD.matcher(text).region(at, text.length());
        return word.lookingAt() ? word.group().toLowerCase(Locale.ROOT) : "";
    }

    private void takeWord(String word) {
        at += word.length();
        said.append(word);
    }

    private boolean takeTimes() {
        return take("×") || take("*") || take("x") || take("X");
    }

    private boolean take(String sign) {
        skip();
        if (!text.startsWith(sign, at)) {
            return false;
        }
        at += sign.length();
        return true;
    }

    private void skip() {
        while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
            at++;
        }
    }

    private Refused unreadable() {
        String rest = text.substring(at).strip();
        return rest.isEmpty()
                ? new Refused("breaks off where a figure must stand", EXAMPLE)
                : new Refused(
                        "cannot be read from \"" + (rest.length() > 20 ? rest.substring(0, 20) + "…" : rest) + "\" on",
                        EXAMPLE);
    }
}
