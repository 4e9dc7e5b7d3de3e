package weekwright.base;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How long a piece of film runs, in whole seconds, 0 or more. Text in files is decimal minutes with at most two places
 * ({@code 4.5}); every whole second comes back from it. People may also type {@code 4,5} or {@code 4:30}.
 */
public record RunTime(int seconds) implements Comparable<RunTime> {
    public static final RunTime ZERO = new RunTime(0);

    private static final String EXAMPLE = "4.5 or 4:30";
    private static final Pattern CLOCK = Pattern.compile("([0-9]{1,4}):([0-9]{1,2})");
    private static final int MINUTE = 60;
    private static final int MOST_MINUTES = 1000;

    public RunTime {
        if (seconds < 0) {
            throw new IllegalArgumentException("seconds out of range: " + seconds);
        }
    }

    public static RunTime parse(String text, Reading reading) throws Refused {
        String plain = text.strip();
        Matcher clock = CLOCK.matcher(plain);
        if (reading.typed() && clock.matches()) {
            int rest = Integer.parseInt(clock.group(2));
            if (rest >= MINUTE) {
                throw new Refused("has more than 59 seconds after the colon", "write " + EXAMPLE);
            }
            return ofSeconds(BigDecimal.valueOf((long) MINUTE * Integer.parseInt(clock.group(1)) + rest));
        }
        BigDecimal minutes = Decimals.parse(plain, reading, "a length in minutes", reading.typed() ? EXAMPLE : "4.5");
        if (!reading.typed() && minutes.stripTrailingZeros().scale() > 2) {
            throw new Refused("has more than two decimal places", "write at most two");
        }
        return ofSeconds(minutes.multiply(BigDecimal.valueOf(MINUTE)).setScale(0, RoundingMode.HALF_UP));
    }

    private static RunTime ofSeconds(BigDecimal seconds) throws Refused {
        if (seconds.signum() < 0) {
            throw new Refused("is less than nothing", "write minutes from 0 up");
        }
        if (seconds.compareTo(BigDecimal.valueOf((long) MINUTE * MOST_MINUTES)) > 0) {
            throw new Refused("is too long", "write at most " + MOST_MINUTES + " minutes");
        }
        return new RunTime(seconds.intValueExact());
    }

    /** Minutes of film as they are wanted of an episode, to the nearest second. */
    public static RunTime ofMinutes(Quantity minutes) {
        return new RunTime(minutes.value()
                .multiply(BigDecimal.valueOf(MINUTE))
                .setScale(0, RoundingMode.HALF_UP)
                .intValueExact());
    }

    public RunTime plus(RunTime other) {
        return new RunTime(Math.addExact(seconds, other.seconds));
    }

    /** Decimal minutes in shortest form: 270 seconds are {@code 4.5}, 260 are {@code 4.33}. */
    public String text() {
        return Decimals.text(BigDecimal.valueOf(seconds).divide(BigDecimal.valueOf(MINUTE), 2, RoundingMode.HALF_UP));
    }

    /** As people write it: {@code 4:30}, and {@code 4} where no second is over. */
    public String clock() {
        int rest = seconds % MINUTE;
        return seconds / MINUTE + (rest == 0 ? "" : (rest < 10 ? ":0" : ":") + rest);
    }

    @Override
    public int compareTo(RunTime other) {
        return Integer.compare(seconds, other.seconds);
    }

    @Override
    public String toString() {
        return text();
    }
}
