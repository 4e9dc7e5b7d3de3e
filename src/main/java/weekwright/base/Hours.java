package weekwright.base;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A length of working time in whole minutes, 0 or more. Text in files is decimal hours with at most two places
 * ({@code 3.5}); every whole minute comes back from it. People may also type {@code 3,5}, {@code 3:30}, {@code 3¼} or
 * {@code 3 ½}.
 */
public record Hours(int minutes) implements Comparable<Hours> {
    public static final Hours ZERO = new Hours(0);

    private static final String REMEDY = "write 3.5 or 3:30";
    private static final Pattern CLOCK = Pattern.compile("([0-9]{1,6}):([0-9]{1,2})");
    private static final Pattern QUARTERS = Pattern.compile("([0-9]{0,6}) ?([¼½¾])");
    /** A lifetime of one person's work; anything above is a slip of the finger. */
    private static final int MOST_MINUTES = 60_000_000;

    public Hours {
        if (minutes < 0 || minutes > MOST_MINUTES) {
            throw new IllegalArgumentException("minutes out of range: " + minutes);
        }
    }

    public static Hours parse(String text, Reading reading) throws Refused {
        String plain = text.strip();
        if (reading.typed()) {
            Matcher clock = CLOCK.matcher(plain);
            if (clock.matches()) {
                int rest = Integer.parseInt(clock.group(2));
                if (rest > 59) {
                    throw new Refused("has more than 59 minutes after the colon", REMEDY);
                }
                return ofMinutes(60L * Integer.parseInt(clock.group(1)) + rest);
            }
            Matcher quarters = QUARTERS.matcher(plain);
            if (quarters.matches()) {
                int whole = quarters.group(1).isEmpty() ? 0 : Integer.parseInt(quarters.group(1));
                return ofMinutes(60L * whole + 15L * (1 + "¼½¾".indexOf(quarters.group(2))));
            }
        }
        return ofDecimal(Decimals.parse(plain, reading, "hours", reading.typed() ? "3.5 or 3:30" : "3.5"));
    }

    /** Decimal hours to the nearest whole minute, halves up (0.34 is 20 minutes). */
    public static Hours ofDecimal(BigDecimal hours) throws Refused {
        if (hours.signum() < 0) {
            throw new Refused("is less than nothing", "write hours from 0 up");
        }
        BigDecimal minutes = hours.multiply(BigDecimal.valueOf(60)).setScale(0, RoundingMode.HALF_UP);
        if (minutes.compareTo(BigDecimal.valueOf(MOST_MINUTES)) > 0) {
            throw new Refused("is too large", "write at most 1000000 hours");
        }
        return new Hours(minutes.intValueExact());
    }

    private static Hours ofMinutes(long minutes) throws Refused {
        if (minutes > MOST_MINUTES) {
            throw new Refused("is too large", "write at most 1000000 hours");
        }
        return new Hours((int) minutes);
    }

    /** Decimal hours with at most two places in shortest form: 210 minutes are {@code 3.5}, 20 are {@code 0.33}. */
    public String text() {
        return Decimals.text(BigDecimal.valueOf(minutes).divide(BigDecimal.valueOf(60), 2, RoundingMode.HALF_UP));
    }

    public Hours plus(Hours other) {
        return new Hours(Math.addExact(minutes, other.minutes));
    }

    @Override
    public int compareTo(Hours other) {
        return Integer.compare(minutes, other.minutes);
    }

    @Override
    public String toString() {
        return text();
    }
}
