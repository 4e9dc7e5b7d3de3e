package weekwright.worlds;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import weekwright.base.Rejected;
import weekwright.files.csv.PlainFiles;
import weekwright.files.csv.ReadResult;
import weekwright.forecast.Basis;
import weekwright.forecast.InputsBuilder;
import weekwright.worlds.Kind.Trait;

/** Writes a world as plain files, as its crew knows it on a day, and reads them as a forecast does. */
final class WorldFiles {
    private static final String[] NAMES = {"ilse", "tom", "wren"};
    private static final int[][] STATED = {{7, 7, 7, 7, 7, 4, 0}, {7, 7, 7, 7, 7, 0, 0}, {6, 0, 6, 0, 6, 0, 0}};
    private static final String[] CREW = {
        "ilse,Ilse,mason joiner smith,7,7,7,7,7,4,",
        "tom,Tom,joiner camera edit,7,7,7,7,7,,",
        "wren,Wren,smith mason camera,6,,6,,6,,"
    };

    private final World world;
    private final LocalDate day;
    private final Path folder;
    /** What is written of what is to come. */
    enum Told {
        /** What will be paid out is known, as the world is lived by it. */
        TRUTH,
        /** What the crew knows. */
        CREW,
        /** That without chances to fail and without marks at surges. */
        LESS
    }

    private final Told told;

    private WorldFiles(World world, LocalDate day, Path folder, Told told) {
        this.told = told;
        this.world = world;
        this.day = day;
        this.folder = folder;
    }

    /** What a forecast of that day is made from. */
    static Basis basis(World world, int day, Told told) {
        try {
            Path folder = Files.createTempDirectory("world");
            try {
                LocalDate date = LocalDate.ofEpochDay(day);
                new WorldFiles(world, date, folder, told).write();
                ReadResult read = PlainFiles.read(folder, date);
                return InputsBuilder.build(
                        read.data().orElseThrow(() -> new IllegalStateException(new Rejected(read.problems()))), date);
            } finally {
                for (Path file : list(folder)) {
                    Files.delete(file);
                }
                Files.delete(folder);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Path> list(Path folder) throws IOException {
        try (var files = Files.list(folder)) {
            return files.toList();
        }
    }

    private void write() throws IOException {
        settings();
        List<String> rows = new ArrayList<>();
        for (int p = 0; p < world.people; p++) {
            rows.add(CREW[p]);
        }
        file("crew", "id,name,trades,mon,tue,wed,thu,fri,sat,sun", rows);
        rows.clear();
        for (int s = 0; s < world.stages; s++) {
            rows.add("s%d,Stage %d,%d".formatted(s, s + 1, s + 1));
        }
        file("stages", "id,name,order", rows);
        tasks();
        lines();
        films();
        stopped();
        rows.clear();
        int n = 0;
        for (World.Hours entry : world.hours) {
            rows.add("h%05d,%s,%s,%s,%s,%s,%s"
                    .formatted(
                            ++n,
                            date(entry.day()),
                            NAMES[entry.person()],
                            entry.task(),
                            entry.episode(),
                            entry.as(),
                            hours(entry.minutes())));
        }
        file("hours", "id,date,crew,task,episode,as,hours", rows);
        rows.clear();
        if (world.pledges == null) {
            rows.add("r1,Pledges and rent,%s,25,month,2024-01-15,".formatted(money(world.income)));
        } else if (told == Told.TRUTH) {
            for (Pledges.Payout one : world.pledges.payouts) {
                if (one.day() > day.toEpochDay()) {
                    rows.add("r%d,Pledges,%s,0,year,%s,%s"
                            .formatted(one.day(), money(one.amount()), date(one.day()), date(one.day())));
                }
            }
        } else {
            supporters();
        }
        file("regular", "id,name,amount,spread,every,from,to", rows);
    }

    private void supporters() throws IOException {
        List<String> rows = new ArrayList<>();
        for (int i = 0; i < Pledges.AMOUNT.length; i++) {
            rows.add("l%d,Level %d,%s,month,0,0,0,%d"
                    .formatted(i, i + 1, money(Pledges.AMOUNT[i]), Pledges.PAYOUT_DAYS));
        }
        file("pledge-levels", "id,name,amount,charged,fee_percent,fee_fixed,declined,payout_days", rows);
        rows.clear();
        for (Pledges.Month month : world.pledges.months) {
            if (month.over(day) || month.under(day)) {
                Pledges.Month one = month.over(day) ? month : world.pledges.counted(month, day);
                rows.add("%tY-%<tm,l%d,%d,%d,%d,%s"
                        .formatted(
                                one.first(),
                                one.level(),
                                one.start(),
                                one.joined(),
                                one.left(),
                                one.surge() && told == Told.CREW ? "yes" : ""));
            }
        }
        file("supporters", "month,level,start,joined,left,surge", rows);
    }

    /** Hours in which somebody was there and had nothing to work on: the crew writes them down as waiting for material. */
    private void stopped() throws IOException {
        Map<Integer, int[]> worked = new HashMap<>();
        for (World.Hours entry : world.hours) {
            worked.computeIfAbsent(entry.day(), key -> new int[NAMES.length])[entry.person()] += entry.minutes();
        }
        List<String> rows = new ArrayList<>();
        for (LocalDate date = World.START;
                date.isBefore(day) && world.kind.is(Trait.TURNOUT);
                date = date.plusDays(1)) {
            int at = (int) date.toEpochDay();
            for (int p = 0; p < world.people; p++) {
                int there = (int) (60 * STATED[p][date.getDayOfWeek().getValue() - 1] * world.given(p, at));
                int idle = there - worked.getOrDefault(at, new int[NAMES.length])[p];
                if (idle >= 15) {
                    rows.add("x%05d,%s,%s,%s,material".formatted(rows.size(), date, NAMES[p], hours(idle)));
                }
            }
        }
        file("stopped", "id,date,crew,hours,reason", rows);
    }

    private void settings() throws IOException {
        String model = world.kind.is(Trait.TURNOUT) && world.kind.learned() ? "" : "turnout = 1\n";
        model += world.kind.is(Trait.WAVES) && !world.kind.learned() ? "joining_drift = 0.1\n" : "";
        model += world.kind.is(Trait.CLUMPS) && !world.kind.learned() ? "late_together = false\n" : "";
        model += world.kind.is(Trait.FOUND) && world.kind.learned() ? "" : "found_share = 0\n";
        Files.writeString(folder.resolve("project.toml"), """
            format = 1
            name = "World"
            started = "%1$s"
            currency = "EUR"
            zone = "Europe/Berlin"
            reserve = 500
            opening_date = "%1$s"
            opening_cash = "%2$s"
            horizon_months = 48

            [publishing]
            weekday = "friday"
            first = "2024-01-12"
            early_days = 1
            edit_low = 4
            edit_likely = 7
            edit_high = 14

            [weather]
            lost = [0.4, 0.4, 0.3, 0.25, 0.2, 0.15, 0.15, 0.15, 0.2, 0.3, 0.4, 0.45]
            spell_days = 2.5

            [model]
            %3$s\
            """.formatted(World.START, money(world.cash), model));
    }

    private void tasks() throws IOException {
        List<String> rows = new ArrayList<>();
        List<String> links = new ArrayList<>();
        for (World.Task task : world.tasks) {
            if (task.hidden) {
                continue;
            }
            rows.add(String.format(
                    Locale.ROOT,
                    "%s,s%d,Piece %s,%s,%s,%s,%s,%s,%s,%s,%s,%s,%s,%s,%s,%s",
                    task.id,
                    task.stage,
                    task.id,
                    task.wait ? "wait" : "work",
                    number(task.estimate[0]),
                    number(task.estimate[1]),
                    number(task.estimate[2]),
                    task.trade,
                    task.outdoors ? "yes" : "",
                    task.camera,
                    task.fail > 0 && told != Told.LESS ? task.fail : "",
                    task.fail > 0 && told != Told.LESS ? task.redo : "",
                    task.redoOf,
                    date(task.added),
                    date(task.started),
                    date(task.done)));
            for (World.Link link : task.links) {
                String wait = link.waitDays() == null
                        ? ",,"
                        : "%d,%d,%d".formatted(link.waitDays()[0], link.waitDays()[1], link.waitDays()[2]);
                links.add(
                        "%s,%s,%s,%s".formatted(task.id, world.tasks.get(link.after()).id, number(link.share()), wait));
            }
        }
        file(
                "tasks",
                "id,stage,title,kind,low,likely,high,trades,outdoors,camera,fail,redo,redo_of,added,started,done",
                rows);
        file("links", "task,after,share,wait_low,wait_likely,wait_high", links);
    }

    private void lines() throws IOException {
        List<String> rows = new ArrayList<>();
        for (World.Line line : world.lines) {
            if (world.tasks.get(line.task).hidden) {
                continue;
            }
            rows.add("%s,%s,Oak,1,pc,%d,%d,%d,bought,%d,%d,%d,%s,%s"
                    .formatted(
                            line.id,
                            world.tasks.get(line.task).id,
                            line.price[0],
                            line.price[1],
                            line.price[2],
                            line.lead[0],
                            line.lead[1],
                            line.lead[2],
                            date(line.ordered),
                            date(line.received)));
        }
        file(
                "materials",
                "id,task,item,quantity,unit,price_low,price_likely,price_high,source,lead_low,lead_likely,lead_high,ordered,received",
                rows);
    }

    private void films() throws IOException {
        List<String> rows = new ArrayList<>();
        List<String> tells = new ArrayList<>();
        for (World.Film film : world.films) {
            boolean side = film.task == World.NEVER;
            rows.add("%s,%d,%s,Film,%s,%s,%s"
                    .formatted(
                            film.id,
                            rows.size() + 1,
                            date(film.slot),
                            side ? "side,5,0.5,0.5,0.75" : "build,15,,,",
                            date(film.cut),
                            date(film.published)));
            if (!side) {
                tells.add("%s,%s,1".formatted(film.id, world.tasks.get(film.task).id));
            }
        }
        file("episodes", "id,number,slot,title,kind,minutes,edit_low,edit_likely,edit_high,cut,published", rows);
        file("tells", "episode,task,share", tells);
    }

    private void file(String name, String header, List<String> rows) throws IOException {
        Files.writeString(
                folder.resolve(name + ".csv"), header + "\n" + String.join("\n", rows) + (rows.isEmpty() ? "" : "\n"));
    }

    private static String date(int day) {
        return day == World.NEVER ? "" : LocalDate.ofEpochDay(day).toString();
    }

    private static String number(double value) {
        return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
    }

    private static String hours(int minutes) {
        return String.format(Locale.ROOT, "%.2f", minutes / 60.0);
    }

    private static String money(long minor) {
        return String.format(Locale.ROOT, "%.2f", minor / 100.0);
    }
}
