package weekwright.base;

import java.util.Locale;
import java.util.Optional;

/**
 * Board feet in a log by one of three scales, from its diameter in inches at the small end, inside the bark, and its
 * length in feet. Doyle: (D − 4)² L / 16. Scribner, by its formula: (0.79 D² − 2 D − 4) L / 16. International 1/4 inch: the
 * sum of 0.904762 (0.22 d² − 0.71 d) over sections of 4 feet, d rising by half an inch in each (Michigan Compiled Laws
 * 290.401, 1941); what is left under 4 feet counts by its share with the diameter of the small end (as in the volume
 * library of the United States Forest Service, scrib.f). Nothing is rounded here; a printed table may round.
 */
enum LogRule {
    DOYLE,
    SCRIBNER,
    INTERNATIONAL;

    static Optional<LogRule> find(String word) {
        for (LogRule rule : values()) {
            if (rule.name().toLowerCase(Locale.ROOT).equals(word)) {
                return Optional.of(rule);
            }
        }
        return Optional.empty();
    }

    Ratio boardFeet(Ratio inches, Ratio feet) {
        return switch (this) {
            case DOYLE -> {
                Ratio less = inches.minus(Ratio.of("4"));
                yield notUnder(
                        less.signum() <= 0 ? Ratio.ZERO : less.times(less).times(feet), "16");
            }
            case SCRIBNER ->
                notUnder(
                        Ratio.of("0.79")
                                .times(inches)
                                .times(inches)
                                .minus(inches.times(Ratio.of("2")))
                                .minus(Ratio.of("4"))
                                .times(feet),
                        "16");
            case INTERNATIONAL -> international(inches, feet);
        };
    }

    private static Ratio notUnder(Ratio total, String divisor) {
        return total.signum() < 0 ? Ratio.ZERO : total.dividedBy(Ratio.of(divisor));
    }

    private static Ratio international(Ratio inches, Ratio feet) {
        Ratio four = Ratio.of("4");
        if (inches.compare(four) < 0) {
            return Ratio.ZERO;
        }
        Ratio total = Ratio.ZERO;
        Ratio rest = feet;
        Ratio diameter = inches;
        while (rest.compare(four) >= 0) {
            total = total.plus(section(diameter));
            diameter = diameter.plus(Ratio.of("0.5"));
            rest = rest.minus(four);
        }
        return rest.signum() == 0 ? total : total.plus(section(inches).times(rest.dividedBy(four)));
    }

    private static Ratio section(Ratio d) {
        return Ratio.of("0.904762")
                .times(Ratio.of("0.22").times(d).times(d).minus(Ratio.of("0.71").times(d)));
    }
}
