package weekwright.base;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/** Factors that are multiplied: a number and lengths, a volume and a density, a row and its spacing. */
record Product(List<Factor> factors, String text) {
    /** Whether a figure stands for itself, for the diameter or the girth of something round, or for a ball's diameter. */
    enum Form {
        PLAIN,
        ROUND,
        GIRTH,
        BALL
    }

    /**
     * One of them.
     *
     * @param value in {@code unit}
     * @param bare a figure without a unit: a number of pieces, or in the unit of the next figure
     * @param said as it was written
     */
    record Factor(Ratio value, Measure unit, boolean bare, boolean divides, Form form, String said) {
        Factor(Ratio value, Measure unit, boolean bare, boolean divides, Form form) {
            this(value, unit, bare, divides, form, "");
        }

        Factor saying(String text) {
            return new Factor(value, unit, bare, divides, form, text);
        }

        Measure kind() {
            int power = form == Form.BALL ? 3 : form == Form.PLAIN ? 1 : 2;
            int sign = divides ? -1 : 1;
            return new Measure(Ratio.ONE, unit.length() * power * sign, unit.mass() * sign);
        }

        Ratio metric() {
            Ratio plain = value.times(unit.factor());
            return switch (form) {
                case PLAIN -> plain;
                case ROUND -> plain.times(plain).times(Ratio.PI).dividedBy(Ratio.of("4"));
                case GIRTH -> plain.times(plain).dividedBy(Ratio.PI.times(Ratio.of("4")));
                case BALL -> plain.times(plain).times(plain).times(Ratio.PI).dividedBy(Ratio.of("6"));
            };
        }

        Factor in(Measure other) {
            return new Factor(value, other, false, divides, form, said + " " + other.word());
        }
    }

    /** A row of things at even distances: so many spaces that none is wider than asked, and one thing more than spaces. */
    static Factor row(Ratio length, Ratio spacing, boolean closed) {
        BigDecimal spaces = length.dividedBy(spacing).rounded(0, RoundingMode.CEILING);
        BigDecimal count = closed ? spaces : spaces.add(BigDecimal.ONE);
        return new Factor(new Ratio(count, BigDecimal.ONE), Measure.PIECE, false, false, Form.PLAIN);
    }

    /** Whether only the unit of the line says what a bare figure counts: one before a length, or several and nothing else. */
    boolean open() {
        if (factors.size() > 1 && factors.stream().allMatch(Factor::bare)) {
            return true;
        }
        for (int i = 0; i + 1 < factors.size(); i++) {
            if (factors.get(i).bare()
                    && !factors.get(i + 1).bare()
                    && factors.get(i + 1).unit().isLength()) {
                return true;
            }
        }
        return false;
    }

    /** What it is, where every bare figure is a number of pieces. */
    Measure kind() {
        return kind(factors);
    }

    private static Measure kind(List<Factor> factors) {
        int length = 0;
        int mass = 0;
        for (Factor factor : factors) {
            length += factor.kind().length();
            mass += factor.kind().mass();
        }
        return new Measure(Ratio.ONE, length, mass);
    }

    /**
     * In metres, kilograms or pieces.
     *
     * @param alone whether nothing is added to it, so that a refusal need not say which part is meant
     */
    Ratio in(Measure wanted, String unit, boolean alone) throws Refused {
        List<Factor> read = shared(wanted);
        Measure kind = kind(read);
        twice(read);
        if (!kind.sameKind(wanted)) {
            throw new Refused(
                    (alone ? "" : "has \"" + text + "\", which ") + "makes " + kind.kind() + ", and "
                            + (unit.isEmpty() ? "pieces are" : unit + " is") + " " + wanted.kind(),
                    factors.stream().allMatch(Factor::bare) && wanted.length() > 0
                            ? "write every length with its unit, such as 150 mm × 200 mm × 4.20 m"
                            : remedy(kind, wanted));
        }
        Ratio total = Ratio.ONE;
        for (Factor factor : read) {
            total = factor.divides() ? total.dividedBy(factor.metric()) : total.times(factor.metric());
        }
        return total;
    }

    /** Two bare figures before one in feet or metres are likelier inches or millimetres: asked, not guessed. */
    private void twice(List<Factor> read) throws Refused {
        for (int i = 0; i + 2 < read.size(); i++) {
            Factor last = read.get(i + 2);
            boolean large = !last.bare() && last.unit().isLarge();
            if (large && taken(read, i) && taken(read, i + 1)) {
                boolean metres = last.unit().equals(Measure.METRE);
                String small = metres ? "mm" : "in";
                String one = factors.get(i).said();
                String two = factors.get(i + 1).said();
                String word = last.unit().word();
                throw new Refused(
                        "has " + one + " × " + two + " before " + last.said() + ", which can be read as " + one + " "
                                + small + " × " + two + " " + small + " or as " + one + " " + word + " × " + two + " "
                                + word,
                        "write each with its unit, such as " + one + " " + small + " × " + two + " " + small + " × "
                                + last.said());
            }
        }
    }

    /** Whether a bare figure got the unit of the next. */
    private boolean taken(List<Factor> read, int at) {
        return factors.get(at).bare() && !read.get(at).bare();
    }

    /** Every figure with the unit that it was read in; empty where each has its own, or none is a length. */
    String readAs(Measure wanted) {
        List<Factor> read = shared(wanted);
        if (read.equals(factors)) {
            return "";
        }
        StringBuilder text = new StringBuilder();
        for (Factor factor : read) {
            text.append(text.isEmpty() ? "" : factor.divides() ? " ÷ " : " × ")
                    .append(factor.said())
                    .append(factor.bare() ? " pc" : "");
        }
        return text.toString();
    }

    private static String remedy(Measure kind, Measure wanted) {
        if (kind.mass() == 0 && wanted.mass() == 1) {
            return kind.length() == 3
                    ? "multiply by the density, such as × 7850 kg/m3 or × steel"
                    : "write length × width × height × density";
        }
        if (kind.mass() == 0 && wanted.mass() == 0 && kind.length() < wanted.length()) {
            return "write " + (wanted.length() - kind.length() == 1 ? "one length" : "two lengths")
                    + " more, such as × 4.20 m, or another unit";
        }
        if (kind.mass() == 0 && wanted.mass() == 0 && kind.length() > wanted.length() && wanted.length() > 0) {
            return "leave " + (kind.length() - wanted.length() == 1 ? "one length" : "two lengths")
                    + " out, divide by it, or write another unit";
        }
        return "write another unit, or divide by what one covers";
    }

    /**
     * Bare figures before a length are lengths in the same unit, as far as lengths are missing: 150 × 200 mm × 4.20 m makes
     * a volume, so 150 is in mm; 6 × 4.20 m makes a length, so 6 is a number of pieces.
     */
    private List<Factor> shared(Measure wanted) {
        List<Factor> read = new ArrayList<>(factors);
        int missing = wanted.length() - kind().length();
        for (int i = read.size() - 2; i >= 0 && missing > 0; i--) {
            Factor next = read.get(i + 1);
            Factor one = read.get(i);
            if (one.bare()
                    && !one.divides()
                    && !next.bare()
                    && !next.divides()
                    && next.unit().isLength()) {
                read.set(i, one.in(next.unit()));
                missing--;
            }
        }
        return read;
    }
}
