package weekwright.sample;

import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/**
 * Lays the work of {@link Worked} over the calendar, day by day, as the crew of the sample would have logged it: within
 * each person's hours less days off and stopped hours, no task before what it follows, editing before the build, filming
 * beside it. Seeded: the same files give the same diary. Times are minutes in quarters of an hour.
 */
final class Diary {
    static final LocalDate FIRST = LocalDate.of(2025, 12, 15);
    static final LocalDate LAST = LocalDate.of(2026, 11, 24);

    private Random random = new Random(20261125);
    private final Map<String, Map<String, String>> tasks = new LinkedHashMap<>();
    private final List<Map<String, String>> links;
    private final Calendar calendar;
    private final Editing editing;
    private final List<Worked> jobs = Worked.all();
    private final Map<String, Integer> worked = new HashMap<>();
    private final Map<String, Integer> made = new HashMap<>();
    private final Map<String, LocalDate> started = new TreeMap<>();
    private final Map<String, LocalDate> done = new TreeMap<>();
    private final List<Entry> entries = new ArrayList<>();
    private final Remarks remarks = new Remarks();

    Diary(Path folder) {
        for (Map<String, String> row : Csv.read(folder.resolve("tasks.csv"))) {
            tasks.put(row.get("id"), row);
        }
        links = Csv.read(folder.resolve("links.csv"));
        calendar = new Calendar(folder, random);
        editing = new Editing(folder, calendar);
        for (LocalDate day = FIRST; !day.isAfter(LAST); day = day.plusDays(1)) {
            live(day);
        }
    }

    List<Entry> entries() {
        return entries;
    }

    Map<String, LocalDate> started() {
        return started;
    }

    Map<String, LocalDate> done() {
        return done;
    }

    private void live(LocalDate day) {
        random = new Random(20261125 + 7919 * day.toEpochDay());
        Map<String, Integer> left = calendar.minutes(day);
        List<Entry> today = new ArrayList<>();
        editing.on(day).forEach((episode, minutes) -> {
            left.merge("tomas", -minutes, Integer::sum);
            today.add(
                    new Entry(day, "tomas", "", episode, "edit", minutes, 0, 0, false, 0, remarks.edit(day, episode)));
        });
        shopAndOffice(day, left, today);
        waits(day);
        Map<String, Integer> most = new HashMap<>();
        for (String person : left.keySet()) {
            most.put(person, random.nextInt(20) < 11 && !person.equals("wren") ? 240 : 600);
        }
        for (Worked job : jobs) {
            if (!job.people().isEmpty() && workable(job, day)) {
                work(job, day, left, most, today);
            }
        }
        today.sort(Comparator.comparing(
                (Entry entry) -> List.of("ilse", "tomas", "wren").indexOf(entry.crew())));
        entries.addAll(today);
    }

    private void shopAndOffice(LocalDate day, Map<String, Integer> left, List<Entry> today) {
        if (day.getDayOfWeek() == DayOfWeek.FRIDAY && left.getOrDefault("ilse", 0) > 180) {
            int minutes = 60 + 15 * random.nextInt(5);
            left.merge("ilse", -minutes, Integer::sum);
            today.add(new Entry(day, "ilse", "", "", "shop", minutes, 0, 0, false, 0, remarks.shop(day)));
        }
        if (day.getDayOfWeek() == DayOfWeek.WEDNESDAY && left.getOrDefault("ilse", 0) > 240 && random.nextInt(10) < 5) {
            int minutes = 30 + 15 * random.nextInt(3);
            left.merge("ilse", -minutes, Integer::sum);
            today.add(new Entry(day, "ilse", "", "", "shop", minutes, 0, 0, false, 0, remarks.shop(day)));
        }
        boolean desk = day.getDayOfWeek() == DayOfWeek.MONDAY || day.getDayOfWeek() == DayOfWeek.FRIDAY;
        if (desk && left.getOrDefault("tomas", 0) >= 120) {
            int minutes = 45 + 15 * random.nextInt(4);
            left.merge("tomas", -minutes, Integer::sum);
            today.add(new Entry(day, "tomas", "", "", "office", minutes, 0, 0, false, 0, remarks.office(day)));
        }
    }

    private void waits(LocalDate day) {
        for (Worked job : jobs) {
            if (job.people().isEmpty() && !done.containsKey(job.task())) {
                LocalDate begun = started.get(job.task());
                if (begun == null && workable(job, day)) {
                    started.put(job.task(), day);
                } else if (begun != null
                        && !begun.plusDays(job.minutes() / 1440).isAfter(day)) {
                    done.put(job.task(), day);
                }
            }
        }
    }

    private boolean workable(Worked job, LocalDate day) {
        if (day.isBefore(job.from()) || worked.getOrDefault(job.task(), 0) >= job.minutes() || finished(job, day)) {
            return false;
        }
        Map<String, String> task = tasks.get(job.task());
        String opens = task.get("season_from");
        String today = day.toString().substring(5);
        if (!opens.isEmpty()) {
            String closes = task.get("season_to");
            boolean open = opens.compareTo(closes) <= 0
                    ? today.compareTo(opens) >= 0 && today.compareTo(closes) <= 0
                    : today.compareTo(opens) >= 0 || today.compareTo(closes) <= 0;
            if (!open) {
                return false;
            }
        }
        if (calendar.wet(day)
                && !task.get("outdoors").isEmpty()
                && !task.get("stage").equals("sluice")) {
            return false;
        }
        for (Map<String, String> link : links) {
            if (link.get("task").equals(job.task()) && !reached(link, day)) {
                return false;
            }
        }
        return true;
    }

    private boolean finished(Worked job, LocalDate day) {
        LocalDate end = done.get(job.task());
        return end != null && !end.isAfter(day);
    }

    private boolean reached(Map<String, String> link, LocalDate day) {
        String after = link.get("after");
        double share = link.get("share").isEmpty() ? 1 : Double.parseDouble(link.get("share"));
        if (share < 1) {
            for (Worked job : jobs) {
                if (job.task().equals(after)) {
                    return done.containsKey(after)
                            || worked.getOrDefault(after, 0) >= Math.ceil(share * job.minutes() / job.share()) + 30;
                }
            }
            return false;
        }
        LocalDate end = done.get(after);
        if (end == null) {
            return false;
        }
        boolean wait = tasks.get(after).get("kind").equals("wait");
        int days = link.get("wait_high").isEmpty() ? (wait ? 0 : 1) : Integer.parseInt(link.get("wait_likely"));
        return !day.isBefore(end.plusDays(days));
    }

    private void work(
            Worked job, LocalDate day, Map<String, Integer> left, Map<String, Integer> most, List<Entry> today) {
        Map<String, String> task = tasks.get(job.task());
        List<String> there = job.people().stream()
                .filter(person -> left.getOrDefault(person, 0) >= (job.together() ? 60 : 30))
                .toList();
        if (there.isEmpty() || job.together() && there.size() < job.people().size()) {
            return;
        }
        boolean filmed = films(task);
        boolean operator = filmed
                && (task.get("camera").equals("operator") || task.get("camera").equals("once"));
        for (String person : there) {
            int open = job.minutes() - worked.getOrDefault(job.task(), 0);
            int kept = operator && person.equals("tomas") && left.get(person) >= 150 ? 75 : 0;
            int chunk = Math.min(open, Math.min(left.get(person) - kept, most.get(person)));
            if (open - chunk < 45) {
                chunk = Math.min(open, left.get(person) - kept);
            }
            if (chunk < 15) {
                continue;
            }
            left.merge(person, -chunk, Integer::sum);
            worked.merge(job.task(), chunk, Integer::sum);
            started.putIfAbsent(job.task(), day);
            boolean last = worked.get(job.task()) >= job.minutes();
            int pieces = pieces(job, task);
            int spoiled = pieces > 2 && random.nextInt(4) == 0 ? 1 : 0;
            int footage = filmed && !operator ? 5 + 5 * random.nextInt(8) : 0;
            today.add(new Entry(
                    day,
                    person,
                    job.task(),
                    "",
                    "",
                    chunk,
                    pieces,
                    spoiled,
                    filmed,
                    footage,
                    remarks.task(job.task(), last && job.share() == 1)));
            filmed = filmed && operator;
            if (last && job.share() == 1) {
                done.put(job.task(), day);
            }
        }
        boolean pickup = !operator && there.contains("ilse") && random.nextInt(4) == 0;
        camera(job, task, day, left, operator || pickup, today);
    }

    private boolean films(Map<String, String> task) {
        return switch (task.get("camera")) {
            case "once" -> true;
            case "operator" -> random.nextInt(10) < 6;
            case "fixed" -> random.nextInt(10) < 7;
            default -> false;
        };
    }

    private void camera(
            Worked job,
            Map<String, String> task,
            LocalDate day,
            Map<String, Integer> left,
            boolean operator,
            List<Entry> today) {
        if (operator && left.getOrDefault("tomas", 0) >= 60) {
            int minutes = Math.min(left.get("tomas"), 60 + 15 * random.nextInt(6));
            left.merge("tomas", -minutes, Integer::sum);
            int footage = minutes / 2 - minutes / 2 % 5 + 5 * random.nextInt(3);
            today.add(new Entry(
                    day,
                    "tomas",
                    job.task(),
                    "",
                    "camera",
                    minutes,
                    0,
                    0,
                    true,
                    footage,
                    remarks.camera(task.get("id"))));
        }
    }

    /** Pieces finished by now less those logged before: hours grow as the unit model of learning says. */
    private int pieces(Worked job, Map<String, String> task) {
        if (task.get("pieces").isEmpty()) {
            return 0;
        }
        int all = Integer.parseInt(task.get("pieces"));
        int wanted = (int) Math.round(all * job.share());
        double power = Math.log(Double.parseDouble(task.get("learning")) / 100) / Math.log(2);
        double[] sum = new double[wanted + 1];
        for (int k = 1; k <= wanted; k++) {
            sum[k] = sum[k - 1] + Math.pow(k, power);
        }
        double reached = sum[wanted] * worked.get(job.task()) / job.minutes() + 1e-9;
        int count = 0;
        while (count < wanted && sum[count + 1] <= reached) {
            count++;
        }
        int before = made.getOrDefault(job.task(), 0);
        made.put(job.task(), count);
        return count - before;
    }

    /** The text of hours.csv. */
    String text() {
        List<List<String>> rows = new ArrayList<>();
        for (Entry entry : entries) {
            rows.add(entry.cells(rows.size() + 1));
        }
        return Csv.text(Entry.HEAD, rows);
    }
}
