package weekwright.files.csv;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import weekwright.base.Nearest;
import weekwright.base.Place;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Reading;
import weekwright.base.Rows;
import weekwright.base.Shape;
import weekwright.build.Settings;
import weekwright.build.TaskStore;
import weekwright.db.AllRows;
import weekwright.db.Table;
import weekwright.funds.LedgerEntryStore;
import weekwright.notes.Note;
import weekwright.notes.NoteStore;
import weekwright.notes.Photo;
import weekwright.notes.PhotoStore;

/**
 * Reads a whole project from plain files and checks all of it. Only {@code project.toml} has to be there; other files that
 * are not there read as empty. Nothing is written.
 */
public final class PlainFiles {
    private static final int MOST_BYTES = 40_000_000;
    public static final int MOST_NOTE_BYTES = 1_000_000;
    private static final int MOST_TOML_BYTES = 1_000_000;
    private static final String NOTES = "notes";
    private static final Set<String> LEFT_ALONE = Set.of("README.md", "README.txt", "README");

    private final Path folder;
    private final LocalDate today;
    private final Problems problems = new Problems();
    private final KnownIds ids = new KnownIds(problems);
    private final AllRows rows = new AllRows();

    private PlainFiles(Path folder, LocalDate today) {
        this.folder = folder;
        this.today = today;
    }

    /**
     * Reads and checks.
     *
     * @param today for what looks ahead: whether anybody can do a task in the next 12 months, slots that are past
     */
    public static ReadResult read(Path folder, LocalDate today) {
        return new PlainFiles(folder, today).read();
    }

    private ReadResult read() {
        Set<String> names = names();
        if (problems.hasFaults()) {
            return new ReadResult(problems.list(), Optional.empty());
        }
        extraFiles(names);
        Optional<Settings> settings = settings(names);
        int digits = settings.map(Settings::moneyDigits).orElse(2);
        FileTable.ALL.forEach(file -> readTable(file, names, digits));
        readNotes();
        boolean rowsWhole = !problems.hasFaults();
        FileTable.ALL.forEach(file -> ids(file.table()));
        ids(NoteStore.TABLE);
        ids.references(PhotoStore.TABLE, rows.of(PhotoStore.TABLE));
        ids.equipment(rows.of(TaskStore.TABLE));
        ids.tasksOf(rows.of(NoteStore.TABLE));
        Pictures.photos(folder, rows.of(PhotoStore.TABLE), problems);
        Pictures.receipts(folder, rows.of(LedgerEntryStore.TABLE), problems);
        across(settings, rowsWhole);
        Optional<ProjectData> data =
                problems.hasFaults() ? Optional.empty() : settings.map(read -> new ProjectData(read, rows, folder));
        return new ReadResult(sorted(), data);
    }

    private Set<String> names() {
        if (!Files.isDirectory(folder)) {
            String rule = Files.exists(folder) ? "is a file, not a folder" : "is not there";
            problems.add(Problem.fault("", "", rule, "name the folder of the plain files")
                    .at(folder.toString(), 0));
            return Set.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            Set<String> names = new LinkedHashSet<>();
            files.map(file -> file.getFileName().toString()).sorted().forEach(names::add);
            return names;
        } catch (IOException e) {
            problems.add(Problem.fault("", "", "cannot be read", "give this program the right to read it")
                    .at(folder.toString(), 0));
            return Set.of();
        }
    }

    private void extraFiles(Set<String> names) {
        List<String> known =
                new ArrayList<>(List.of(ProjectToml.FILE, NOTES, Pictures.PHOTOS, Pictures.RECEIPTS, Pictures.DRAWING));
        FileTable.ALL.forEach(file -> known.add(file.file()));
        for (String name : names) {
            if (!known.contains(name) && !name.startsWith(".") && !LEFT_ALONE.contains(name)) {
                List<String> near = Nearest.to(name, known, 1);
                problems.add(Problem.remark(
                                "",
                                "",
                                "is no file of a project and is not read",
                                near.isEmpty() || names.contains(near.get(0)) ? "" : "name it " + near.get(0))
                        .at(name, 0));
            }
        }
    }

    private Optional<Settings> settings(Set<String> names) {
        if (!names.contains(ProjectToml.FILE)) {
            problems.add(Problem.fault(
                            "", "", "is missing", "write one with at least format, name, started, currency and zone")
                    .at(ProjectToml.FILE, 0));
            return Optional.empty();
        }
        return TextFile.read(folder.resolve(ProjectToml.FILE), ProjectToml.FILE, MOST_TOML_BYTES, problems)
                .flatMap(text -> ProjectToml.read(text, problems));
    }

    private <R extends Record> void readTable(FileTable<R> file, Set<String> names, int digits) {
        RecordCsv.Result<R> result = RecordCsv.Result.none();
        if (names.contains(file.file())) {
            Shape<R> shape = file.table().shape();
            result = TextFile.read(folder.resolve(file.file()), file.file(), MOST_BYTES, problems)
                    .map(text ->
                            RecordCsv.read(shape, file.file(), text, Reading.file(digits), file.rule(digits), problems))
                    .orElse(new RecordCsv.Result<>(Rows.none(), List.of(), false));
        }
        rows.put(file.table(), result.rows());
        ids.add(file.table().name(), file.file(), result.ids(), result.whole());
    }

    private void readNotes() {
        List<Note> notes = new ArrayList<>();
        List<Place> places = new ArrayList<>();
        List<Photo> photos = new ArrayList<>();
        List<Place> photoPlaces = new ArrayList<>();
        List<String> noteIds = new ArrayList<>();
        boolean whole = true;
        for (String name : noteFiles()) {
            String file = NOTES + "/" + name;
            Optional<String> text = TextFile.read(folder.resolve(NOTES).resolve(name), file, MOST_NOTE_BYTES, problems);
            whole &= text.isPresent();
            if (text.isPresent()) {
                NoteFile.Result result = NoteFile.read(file, text.get(), problems);
                result.note().ifPresent(note -> {
                    notes.add(note);
                    places.add(result.place());
                });
                photos.addAll(result.photos());
                photoPlaces.addAll(result.photoPlaces());
                result.id().ifPresent(noteIds::add);
                whole &= result.id().isPresent();
            }
        }
        rows.put(NoteStore.TABLE, new Rows<>(notes, places));
        rows.put(PhotoStore.TABLE, new Rows<>(photos, photoPlaces));
        ids.add(NoteStore.TABLE.name(), NOTES + "/", noteIds, whole);
    }

    /** The notes' files in the order of their names without the ending, which is the order of {@link NoteFile#names}. */
    private List<String> noteFiles() {
        List<String> files = new ArrayList<>();
        for (String name : Pictures.names(folder.resolve(NOTES))) {
            if (name.endsWith(".md")) {
                files.add(name);
            } else {
                problems.add(Problem.remark("", "", "is no build note and is not read", "name it DATE-slug.md")
                        .at(NOTES + "/" + name, 0));
            }
        }
        files.sort(Comparator.comparing(name -> name.substring(0, name.length() - 3)));
        return files;
    }

    private <R extends Record> void ids(Table<R> table) {
        ids.twice(table, rows.of(table));
        ids.references(table, rows.of(table));
    }

    /** Where rows are missing because they had faults, remarks would mislead and are left out. */
    private void across(Optional<Settings> settings, boolean rowsWhole) {
        ProjectRules.check(settings, rows, today).list().stream()
                .filter(problem -> problem.isFault() || rowsWhole)
                .forEach(problems::add);
    }

    /** File by file in the order of reading, and within a file by line. */
    private List<Problem> sorted() {
        List<String> order = new ArrayList<>(List.of(ProjectToml.FILE));
        FileTable.ALL.forEach(file -> order.add(file.file()));
        record Key(Problem problem, int file) {}
        return problems.list().stream()
                .map(problem -> new Key(problem, order.indexOf(problem.file())))
                .sorted(Comparator.comparingInt((Key key) -> key.file() < 0 ? order.size() : key.file())
                        .thenComparing(key -> key.problem().file())
                        .thenComparingInt(key -> key.problem().line()))
                .map(Key::problem)
                .toList();
    }
}
