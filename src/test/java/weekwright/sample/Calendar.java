package weekwright.sample;

import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;

/**
 * How many minutes each person of the sample really had on a day: the stated hours of crew.csv and crew-hours.csv, less
 * days off and stopped hours, less what every day eats. Wet days are drawn once, in spells.
 */
final class Calendar {
    private static final double[] LOST = {.2, .2, .14, .08, .06, .04, .04, .04, .06, .1, .16, .2};

    private final List<Map<String, String>> crew;
    private final List<Map<String, String>> seasons;
    private final List<Map<String, String>> off;
    private final List<Map<String, String>> stopped;
    private final Map<String, Integer> minutes = new HashMap<>();
    private final Map<LocalDate, Boolean> wet = new HashMap<>();

    Calendar(Path folder, Random random) {
        crew = Csv.read(folder.resolve("crew.csv"));
        seasons = Csv.read(folder.resolve("crew-hours.csv"));
        off = Csv.read(folder.resolve("days-off.csv"));
        stopped = Csv.read(folder.resolve("stopped.csv"));
        boolean was = false;
        for (LocalDate day = Diary.FIRST; !day.isAfter(Diary.LAST); day = day.plusDays(1)) {
            double chance = LOST[day.getMonthValue() - 1];
            was = random.nextDouble() < (was ? .5 : chance * .7);
            wet.put(day, was);
            for (Map<String, String> person : crew) {
                minutes.put(person.get("id") + day, real(person, day, random));
            }
        }
    }

    boolean wet(LocalDate day) {
        return wet.get(day);
    }

    /** Minutes of everyone who was there, in crew order; a fresh map. */
    Map<String, Integer> minutes(LocalDate day) {
        Map<String, Integer> there = new HashMap<>();
        for (Map<String, String> person : crew) {
            int open = minutes.get(person.get("id") + day);
            if (open > 0) {
                there.put(person.get("id"), open);
            }
        }
        return there;
    }

    private int real(Map<String, String> person, LocalDate day, Random random) {
        int stated = stated(person, day);
        int draw = random.nextInt(100);
        int eaten = 15 * random.nextInt(6);
        if (stated == 0 || draw < 5 && day.getDayOfWeek() != DayOfWeek.THURSDAY) {
            return 0;
        }
        int lost = stopped.stream()
                .filter(row -> row.get("crew").equals(person.get("id"))
                        && row.get("date").equals(day.toString()))
                .mapToInt(row -> (int) Math.round(Double.parseDouble(row.get("hours")) * 60))
                .sum();
        return Math.max(0, stated - lost - eaten) / 15 * 15;
    }

    private int stated(Map<String, String> person, LocalDate day) {
        if (!within(person, day)) {
            return 0;
        }
        String weekday = day.getDayOfWeek().name().substring(0, 3).toLowerCase(Locale.ROOT);
        String hours = person.get(weekday);
        for (Map<String, String> season : seasons) {
            if (season.get("crew").equals(person.get("id")) && within(season, day)) {
                hours = season.get(weekday);
            }
        }
        int stated = hours.isEmpty() ? 0 : (int) Math.round(Double.parseDouble(hours) * 60);
        for (Map<String, String> row : off) {
            boolean meant = row.get("crew").isEmpty() || row.get("crew").equals(person.get("id"));
            if (meant && within(row, day)) {
                stated = Math.min(stated, (int) Math.round(Double.parseDouble(row.get("hours")) * 60));
            }
        }
        return stated;
    }

    private static boolean within(Map<String, String> row, LocalDate day) {
        String from = row.get("from");
        String to = row.get("to");
        return (from.isEmpty() || !day.isBefore(LocalDate.parse(from)))
                && (to.isEmpty() || !day.isAfter(LocalDate.parse(to)));
    }
}
