package weekwright.web.crew;

import java.util.ArrayList;
import java.util.List;
import weekwright.build.Project;
import weekwright.build.SaveSettings;
import weekwright.build.SettingsStore;
import weekwright.db.Stored;
import weekwright.db.Table;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** The settings of the project, a form for each table of {@code project.toml}. */
public final class CrewSettingsPage implements Page {
    private static final List<Table<? extends Record>> TABLES = List.of(
            SettingsStore.PROJECT,
            SettingsStore.PUBLISHING,
            SettingsStore.WEATHER,
            SettingsStore.ORDERS,
            SettingsStore.MONEY,
            SettingsStore.EMERGENCY,
            SettingsStore.MODEL,
            SettingsStore.BUILD_LOG);

    /** One form a table. */
    public record View(List<Part> parts) {}

    /** A table with its keys. */
    public record Part(String name, String title, Form form, List<SettingsKeys.Key> keys) {}

    @Override
    public View show(Request request) {
        return request.read(read -> {
            List<Part> parts = new ArrayList<>();
            for (SettingsKeys.Part part : SettingsKeys.PARTS) {
                Stored<? extends Record> row = SettingsStore.one(read, table(part.name()));
                parts.add(new Part(part.name(), part.title(), request.form(part.name(), row), part.keys()));
            }
            return new View(parts);
        });
    }

    private static Table<? extends Record> table(String name) {
        return TABLES.stream()
                .filter(table -> table.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new NotFound("There are no settings " + name + "."));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        String act = request.form().act();
        SettingsKeys.Part part = SettingsKeys.PARTS.stream()
                .filter(one -> one.name().equals(act))
                .findFirst()
                .orElseThrow(() -> new NotFound("There are no settings " + act + "."));
        return save(request, part, table(act));
    }

    private static <R extends Record> Answer save(Request request, SettingsKeys.Part part, Table<R> table)
            throws Exception {
        FormReader form = request.form();
        R old = request.read(read -> SettingsStore.one(read, table)).value();
        R draft = form.draft(old, part.columns());
        if (draft instanceof Project project
                && !project.equals(old)
                && project.started().isAfter(request.today())) {
            form.fault("started", project.started().toString(), "is after today", "write today or the day it began");
        }
        form.besides(() -> request.read(read -> SaveSettings.check(read, draft)));
        return request.save(write -> {
            SaveSettings.save(write, table, form.version(), draft);
            return Saved.to("/crew/settings").saying("Settings kept: " + part.title() + ".");
        });
    }
}
