package weekwright.sample;

import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;

/**
 * When the sample's episodes were cut: counted back from the day before the slot over the editor's real days, at most
 * four hours a day, Sundays never.
 */
final class Editing {
    private static final int MOST = 240;

    private final Map<LocalDate, Map<String, Integer>> days = new HashMap<>();
    private final Map<LocalDate, Integer> used = new HashMap<>();

    Editing(Path folder, Calendar calendar) {
        Random random = new Random(45);
        List<Map<String, String>> episodes = Csv.read(folder.resolve("episodes.csv"));
        for (Map<String, String> episode : episodes) {
            int wanted = 15 * (int) Math.round((11 + 2.5 * random.nextDouble() + 3 * random.nextDouble()) * 4);
            if (!episode.get("published").isEmpty()) {
                LocalDate slot = LocalDate.parse(episode.get("slot"));
                back(episode.get("id"), slot.minusDays(1), slot.minusDays(16), wanted, calendar);
            } else if (!episode.get("rough_cut").isEmpty()) {
                LocalDate last = LocalDate.parse(episode.get("rough_cut"));
                back(episode.get("id"), last, last.minusDays(8), wanted / 30 * 15, calendar);
            }
        }
    }

    /** Minutes edited on that day, by episode id. */
    Map<String, Integer> on(LocalDate day) {
        return days.getOrDefault(day, Map.of());
    }

    private void back(String episode, LocalDate from, LocalDate to, int wanted, Calendar calendar) {
        int left = wanted;
        for (LocalDate day = from;
                left > 0 && !day.isBefore(to) && !day.isBefore(Diary.FIRST);
                day = day.minusDays(1)) {
            int open = Math.min(MOST, calendar.minutes(day).getOrDefault("tomas", 0)) - used.getOrDefault(day, 0);
            boolean friday = day.getDayOfWeek() == DayOfWeek.FRIDAY;
            int chunk = Math.min(left, friday ? Math.min(open, 120) : open);
            if (left - chunk < 45) {
                chunk = Math.min(left, open);
            }
            if (chunk >= 30) {
                left -= chunk;
                used.merge(day, chunk, Integer::sum);
                days.computeIfAbsent(day, any -> new LinkedHashMap<>()).put(episode, chunk);
            }
        }
    }
}
