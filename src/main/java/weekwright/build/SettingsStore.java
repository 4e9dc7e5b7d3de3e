package weekwright.build;

import java.util.Optional;
import weekwright.db.Read;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Table;
import weekwright.db.Write;

/** Where the settings are kept: eight tables of one row each, named as the tables of {@code project.toml}. */
public final class SettingsStore {
    public static final Table<Project> PROJECT = new Table<>("project", Project.class);
    public static final Table<Publishing> PUBLISHING = new Table<>("publishing", Publishing.class);
    public static final Table<Weather> WEATHER = new Table<>("weather", Weather.class);
    public static final Table<OrderSettings> ORDERS = new Table<>("orders", OrderSettings.class);
    public static final Table<MoneySettings> MONEY = new Table<>("money", MoneySettings.class);
    public static final Table<Emergency> EMERGENCY = new Table<>("emergency", Emergency.class);
    public static final Table<ModelSettings> MODEL = new Table<>("model", ModelSettings.class);
    public static final Table<BuildLog> BUILD_LOG = new Table<>("build_log", BuildLog.class);

    private SettingsStore() {}

    /** The settings, or empty while the folder has no project yet. */
    public static Optional<Settings> find(Read read) {
        if (PROJECT.find(read, 1).isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Settings(
                one(read, PROJECT).value(),
                one(read, PUBLISHING).value(),
                one(read, WEATHER).value(),
                one(read, ORDERS).value(),
                one(read, MONEY).value(),
                one(read, EMERGENCY).value(),
                one(read, MODEL).value(),
                one(read, BUILD_LOG).value()));
    }

    /** The settings of a folder that has a project. */
    public static Settings get(Read read) {
        return find(read).orElseThrow();
    }

    /** The one row of a settings table, with its version. */
    public static <R extends Record> Stored<R> one(Read read, Table<R> table) {
        return table.find(read, 1).orElseThrow();
    }

    /** Writes the settings of a new project. */
    public static void insert(Write write, Settings settings) {
        PROJECT.insert(write, settings.project());
        PUBLISHING.insert(write, settings.publishing());
        WEATHER.insert(write, settings.weather());
        ORDERS.insert(write, settings.orders());
        MONEY.insert(write, settings.money());
        EMERGENCY.insert(write, settings.emergency());
        MODEL.insert(write, settings.model());
        BUILD_LOG.insert(write, settings.buildLog());
    }

    /** Sets one of the eight rows. */
    public static <R extends Record> Stored<R> update(Write write, Table<R> table, long version, R value) throws Stale {
        return table.update(write, 1, version, value);
    }
}
