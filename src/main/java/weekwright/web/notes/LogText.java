package weekwright.web.notes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Codec;
import weekwright.base.Id;
import weekwright.base.Quantity;
import weekwright.build.HoursEntry;
import weekwright.build.HoursEntryStore;
import weekwright.build.StageStore;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.episodes.EpisodeStore;
import weekwright.episodes.Shot;
import weekwright.episodes.ShotStore;
import weekwright.funds.LedgerEntry;
import weekwright.funds.LedgerEntryStore;
import weekwright.funds.Material;
import weekwright.funds.MaterialStore;
import weekwright.render.Formats;

/** The beginning of a note out of the log of a day or a week, as Markdown that its writer edits. */
final class LogText {
    private final Read read;
    private final LocalDate from;
    private final LocalDate to;
    private final Formats formats;
    private final List<String> lines = new ArrayList<>();
    private final Map<String, Id> tasks = new LinkedHashMap<>();

    /**
     * @param text empty when nothing was logged
     * @param tasks those worked on, in the order of their hours entries
     */
    record Start(String text, List<Id> tasks) {}

    /** Hours and pieces of one line. */
    private static final class Sum {
        private int minutes;
        private int pieces;
    }

    private LogText(Read read, LocalDate from, LocalDate to, Formats formats) {
        this.read = read;
        this.from = from;
        this.to = to;
        this.formats = formats;
    }

    /** @param to included */
    static Start of(Read read, LocalDate from, LocalDate to, boolean money, Formats formats) {
        LogText text = new LogText(read, from, to, formats);
        text.hours();
        text.landed();
        text.materials();
        text.shots();
        if (money) {
            text.money();
        }
        return new Start(String.join("\n", text.lines), List.copyOf(text.tasks.values()));
    }

    private boolean within(Optional<LocalDate> day) {
        return day.map(d -> !d.isBefore(from) && !d.isAfter(to)).orElse(false);
    }

    private void head(String words) {
        if (!lines.isEmpty()) {
            lines.add("");
        }
        lines.add("## " + words);
        lines.add("");
    }

    private void list(String head, List<String> items) {
        if (!items.isEmpty()) {
            head(head);
            items.forEach(item -> lines.add("- " + item));
        }
    }

    private void hours() {
        Map<String, Sum> sums = new LinkedHashMap<>();
        Sum all = new Sum();
        for (Stored<HoursEntry> stored : HoursEntryStore.between(read, from, to)) {
            HoursEntry entry = stored.value();
            Sum sum = sums.computeIfAbsent(what(entry), words -> new Sum());
            sum.minutes += entry.hours().minutes() * entry.peopleOrDefault();
            sum.pieces += entry.pieces().orElse(0);
            all.minutes += entry.hours().minutes() * entry.peopleOrDefault();
            all.pieces += entry.pieces().orElse(0);
            entry.task().ifPresent(task -> tasks.putIfAbsent(task.folded(), task));
        }
        if (sums.isEmpty()) {
            return;
        }
        boolean pieces = all.pieces > 0;
        head("Hours");
        lines.add(pieces ? "| What | Hours | Pieces |" : "| What | Hours |");
        lines.add(pieces ? "| --- | ---: | ---: |" : "| --- | ---: |");
        sums.forEach((what, sum) -> lines.add(row(what, sum, pieces)));
        if (sums.size() > 1) {
            lines.add("| **Together** | **" + Formats.hours(all.minutes) + "** |" + (pieces ? " |" : ""));
        }
    }

    private static String row(String what, Sum sum, boolean pieces) {
        String made = sum.pieces == 0 ? "" : Integer.toString(sum.pieces);
        return "| " + what + " | " + Formats.hours(sum.minutes) + " |" + (pieces ? " " + made + " |" : "");
    }

    private String what(HoursEntry entry) {
        Optional<String> of = entry.task()
                .flatMap(id -> TaskStore.TABLE.find(read, id))
                .map(task -> task(task.value()))
                .or(() -> entry.episode()
                        .flatMap(id -> EpisodeStore.TABLE.find(read, id))
                        .map(one -> reference(
                                "episode", one.value().title(), one.value().id())));
        return switch (entry.asOrDefault()) {
            case HANDS -> of.orElse("Shop and office");
            case CAMERA -> "Filming" + of.map(words -> " " + words).orElse("");
            case EDIT -> "Editing" + of.map(words -> " " + words).orElse("");
            case SHOP, OFFICE -> "Shop and office";
        };
    }

    private void landed() {
        List<String> items = new ArrayList<>();
        for (Task task : TaskStore.TABLE.values(read)) {
            if (within(task.done())) {
                items.add(task(task) + " is done.");
            }
        }
        StageStore.inOrder(read).forEach(stage -> {
            List<Task> its = TaskStore.ofStage(read, stage.value().id()).stream()
                    .map(Stored::value)
                    .filter(task -> task.dropped().isEmpty())
                    .toList();
            boolean whole = its.stream().allMatch(task -> task.done().isPresent());
            if (whole && its.stream().anyMatch(task -> within(task.done()))) {
                items.add("The stage "
                        + reference("stage", stage.value().name(), stage.value().id()) + " has landed.");
            }
        });
        list("What landed", items);
    }

    private void materials() {
        List<String> items = new ArrayList<>();
        for (Material line : MaterialStore.TABLE.values(read)) {
            if (within(line.received())) {
                items.add(material(line) + " came in.");
            }
            boolean used = TaskStore.TABLE
                    .find(read, line.task())
                    .map(task -> within(task.value().done()))
                    .orElse(false);
            if (used && !within(line.received())) {
                items.add(material(line) + " built in.");
            }
        }
        list("Materials", items);
    }

    private static String material(Material line) {
        String much = line.quantity()
                .map(Quantity::text)
                .map(text -> (text + " " + line.unit()).strip() + " ")
                .orElse("");
        return escaped(much) + reference("material", line.item(), line.id());
    }

    private void shots() {
        list(
                "Filmed",
                ShotStore.TABLE.values(read).stream()
                        .filter(shot -> within(shot.captured()))
                        .map(Shot::what)
                        .map(LogText::escaped)
                        .toList());
    }

    private void money() {
        Map<String, Long> sums = new LinkedHashMap<>();
        for (LedgerEntry entry : LedgerEntryStore.TABLE.values(read)) {
            if (within(Optional.of(entry.date())) && entry.amount().minor() < 0) {
                switch (entry.kind()) {
                    case MATERIAL, EQUIPMENT, WAGES, REGULAR, OTHER_COST ->
                        sums.merge(
                                Codec.word(entry.kind()).replace('-', ' '),
                                -entry.amount().minor(),
                                Long::sum);
                    default -> {}
                }
            }
        }
        list(
                "Spent",
                sums.entrySet().stream()
                        .map(sum -> Formats.sentence(sum.getKey()) + ": " + escaped(formats.money(sum.getValue())))
                        .toList());
    }

    private static String task(Task task) {
        return reference("task", task.title(), task.id());
    }

    private static String reference(String kind, String name, Id id) {
        return "[" + escaped(name) + "](" + kind + ":" + id + ")";
    }

    /** Text that Markdown shows as it is. */
    private static String escaped(String text) {
        return text.replaceAll("[\\\\\\[\\]|*_`<>#~]", "\\\\$0");
    }
}
