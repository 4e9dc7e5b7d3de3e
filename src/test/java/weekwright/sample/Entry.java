package weekwright.sample;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;

/** One line of hours.csv before it has an id; {@code pieces}, {@code spoiled} and {@code footage} 0 mean none. */
record Entry(
        LocalDate date,
        String crew,
        String task,
        String episode,
        String as,
        int minutes,
        int pieces,
        int spoiled,
        boolean filmed,
        int footage,
        String note) {
    static final String HEAD = "id,date,crew,people,task,episode,as,hours,pieces,spoiled,filmed,footage_minutes,note";

    List<String> cells(int number) {
        return List.of(
                String.format(Locale.ROOT, "h%04d", number),
                date.toString(),
                crew,
                "",
                task,
                episode,
                as,
                hours(minutes),
                some(pieces),
                some(spoiled),
                filmed ? "yes" : "",
                some(footage),
                note);
    }

    private static String some(int count) {
        return count == 0 ? "" : Integer.toString(count);
    }

    /** Hours in shortest form with at most two decimals: 90 minutes are 1.5. */
    private static String hours(int minutes) {
        String text = String.format(Locale.ROOT, "%.2f", minutes / 60.0);
        return text.replaceAll("0+$", "").replaceAll("\\.$", "");
    }
}
