package weekwright.web.build;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Words;
import weekwright.build.HazardCodes;
import weekwright.build.HazardWords;
import weekwright.build.SaveTasks;
import weekwright.build.TaskHazards;
import weekwright.build.TaskStore;
import weekwright.db.Read;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;

/**
 * Hazards that the titles of a table of tasks propose (rule 119), as on the form of one task: they are ticked above the
 * table, which comes once more so that somebody looks. What was proposed once, or by the title that stood, is not proposed
 * again. A proposal is {@code row:code}.
 */
final class RowHazards {
    private static final String PROPOSED = "proposed";
    private static final String TICKED = "hazard";

    private RowHazards() {}

    /** One proposal as the page shows it. */
    public record Line(String value, String label, boolean ticked) {}

    /** The table once more with what is proposed; empty where nothing new is. */
    static Optional<Answer> proposal(FormReader form, Read read, List<SaveTasks.Row> rows) {
        List<String> before = form.texts(PROPOSED);
        List<String> ticked = new ArrayList<>(form.texts(TICKED));
        List<String> all = new ArrayList<>(before);
        for (SaveTasks.Row row : rows) {
            for (String code : codes(read, row)) {
                String one = row.number() + ":" + code;
                if (!before.contains(one)) {
                    all.add(one);
                    ticked.add(one);
                }
            }
        }
        if (all.size() == before.size()) {
            return Optional.empty();
        }
        int fresh = all.size() - before.size();
        return Optional.of(new Answer.Again(
                Map.of(PROPOSED, all, TICKED, ticked),
                "Not saved yet: the titles speak of " + Formats.count(fresh, "danger") + ", ticked above the table now."
                        + " Take out what is not so, then save."));
    }

    private static List<String> codes(Read read, SaveTasks.Row row) {
        if (!row.task().isWork()) {
            return List.of();
        }
        List<String> codes = new ArrayList<>(HazardWords.of(row.task().title()));
        row.shown()
                .flatMap(shown -> TaskStore.TABLE.find(read, shown.row()))
                .ifPresent(old -> codes.removeAll(HazardWords.of(old.value().title())));
        codes.removeAll(TaskHazards.of(read, row.task()));
        return codes;
    }

    /** The rows with the hazards that are ticked. */
    static List<SaveTasks.Row> ticked(FormReader form, List<SaveTasks.Row> rows) {
        form.texts(PROPOSED);
        List<String> ticked = form.texts(TICKED);
        return rows.stream()
                .map(row -> {
                    List<String> codes = new ArrayList<>(row.task().hazards().list());
                    ticked.stream()
                            .filter(one -> one.startsWith(row.number() + ":"))
                            .map(one -> one.substring(one.indexOf(':') + 1))
                            .filter(code -> HazardCodes.isKnown(code) && !codes.contains(code))
                            .forEach(codes::add);
                    return new SaveTasks.Row(
                            row.number(),
                            row.shown(),
                            TaskStore.TABLE.shape().with(row.task(), "hazards", new Words(codes)),
                            row.after(),
                            row.afterRows());
                })
                .toList();
    }

    /** What the page shows above the table. */
    static List<Line> shown(Form form) {
        Map<String, Line> lines = new LinkedHashMap<>();
        for (String one : form.values().getOrDefault(PROPOSED, List.of())) {
            String[] parts = one.split(":", 2);
            if (parts.length == 2 && parts[0].matches("[0-9]{1,4}") && HazardCodes.isKnown(parts[1])) {
                lines.put(
                        one,
                        new Line(
                                one,
                                "Row " + (Integer.parseInt(parts[0]) + 1) + ", " + form.value("title." + parts[0])
                                        + ": "
                                        + HazardCodes.title(parts[1]).orElse(parts[1]),
                                form.holds(TICKED, one)));
            }
        }
        return List.copyOf(lines.values());
    }
}
