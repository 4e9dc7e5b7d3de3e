package weekwright.forecast;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Reading;
import weekwright.base.Shape;
import weekwright.build.CrewMemberStore;
import weekwright.build.Emergency;
import weekwright.build.ModelSettings;
import weekwright.build.MoneySettings;
import weekwright.build.OrderSettings;
import weekwright.build.Project;
import weekwright.build.Publishing;
import weekwright.build.Settings;
import weekwright.build.SettingsStore;
import weekwright.build.StageStore;
import weekwright.build.TaskStore;
import weekwright.build.Weather;
import weekwright.db.Db;
import weekwright.db.Folder;
import weekwright.db.FolderRefused;
import weekwright.db.Table;

/** A small project in a real store, written row by row in the words of the plain files. */
public final class SmallProject implements AutoCloseable {
    /** A Wednesday. */
    public static final LocalDate TODAY = LocalDate.of(2026, 11, 25);

    public static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T08:00:00Z"), ZoneOffset.UTC);

    private final Db db;

    /** An empty folder becomes a project; settings are pairs such as {@code "reserve", "500"}, with their table before a dot. */
    public SmallProject(Path folder, String... settings) throws FolderRefused {
        db = new Folder(folder).create(CLOCK);
        Map<String, Map<String, String>> tables = new HashMap<>();
        tables.put(
                "project",
                new HashMap<>(Map.of(
                        "name", "Oak mill", "started", "2026-01-05", "currency", "EUR", "zone", "Europe/Berlin")));
        Map<String, String> given = pairs(settings);
        given.forEach((key, value) -> {
            int dot = key.indexOf('.');
            String table = dot < 0 ? "project" : key.substring(0, dot);
            tables.computeIfAbsent(table, name -> new HashMap<>()).put(key.substring(dot + 1), value);
        });
        db.write("test", write -> {
            SettingsStore.insert(
                    write,
                    new Settings(
                            parsed(Project.class, tables.get("project")),
                            parsed(Publishing.class, tables.getOrDefault("publishing", Map.of())),
                            parsed(Weather.class, tables.getOrDefault("weather", Map.of())),
                            parsed(OrderSettings.class, tables.getOrDefault("orders", Map.of())),
                            parsed(MoneySettings.class, tables.getOrDefault("money", Map.of())),
                            parsed(Emergency.class, tables.getOrDefault("emergency", Map.of())),
                            parsed(ModelSettings.class, tables.getOrDefault("model", Map.of()))));
            return null;
        });
    }

    /** One person, one stage and one task of eight hours. */
    public static SmallProject withOneTask(Path folder, String... settings) throws FolderRefused {
        SmallProject project = new SmallProject(folder, settings);
        project.add(
                CrewMemberStore.TABLE,
                "id=ilse name=Ilse trades=joiner mon=8 tue=8 wed=8 thu=8 fri=8 sat=4".split(" "));
        project.add(StageStore.TABLE, "id=pit name=Pit".split(" "));
        project.add(TaskStore.TABLE, "id=pit.1 stage=pit title=Dig kind=work low=6 likely=8 high=14".split(" "));
        return project;
    }

    public Db db() {
        return db;
    }

    /** Adds a row; cells are {@code column=text}. */
    public <R extends Record> SmallProject add(Table<R> table, String... cells) {
        Map<String, String> texts = new HashMap<>();
        for (String cell : cells) {
            int equals = cell.indexOf('=');
            texts.put(cell.substring(0, equals), cell.substring(equals + 1));
        }
        R row = parsed(table.shape(), texts);
        db.write("test", write -> table.insert(write, row));
        return this;
    }

    /** The basis as of a day. */
    public Basis basis(LocalDate asOf) {
        return db.read(read -> InputsBuilder.build(read, asOf));
    }

    /** The basis as of {@link #TODAY}. */
    public Basis basis() {
        return basis(TODAY);
    }

    @Override
    public void close() {
        db.close();
    }

    private static Map<String, String> pairs(String... words) {
        Map<String, String> pairs = new HashMap<>();
        for (int i = 0; i < words.length; i += 2) {
            pairs.put(words[i], words[i + 1]);
        }
        return pairs;
    }

    private static <R extends Record> R parsed(Class<R> type, Map<String, String> texts) {
        return parsed(Shape.of(type), texts);
    }

    private static <R extends Record> R parsed(Shape<R> shape, Map<String, String> texts) {
        Problems problems = new Problems();
        return shape.parse(texts, Reading.file(2), problems)
                .orElseThrow(() -> new IllegalArgumentException(
                        new ArrayList<>(problems.list())
                                        .stream().map(Problem::text).toList() + " in " + List.of(texts)));
    }
}
