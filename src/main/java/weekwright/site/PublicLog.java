package weekwright.site;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import weekwright.base.Id;
import weekwright.build.BuildLog;
import weekwright.build.CrewMemberStore;
import weekwright.build.Project;
import weekwright.build.Settings;
import weekwright.build.SettingsStore;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.episodes.Episode;
import weekwright.episodes.EpisodeStore;
import weekwright.episodes.SlotCalendar;
import weekwright.files.NamedLinks;
import weekwright.funds.MaterialStore;
import weekwright.funds.StockItemStore;
import weekwright.notes.Note;
import weekwright.notes.NoteLinks;
import weekwright.notes.NoteStore;
import weekwright.notes.Photo;
import weekwright.notes.PhotoStore;
import weekwright.render.Formats;

/**
 * Everything that the public may read of a project, and what supporters may read besides; nothing else leaves the store for
 * the build log. Holds no hours of people, days off, addresses or times of
 * day, and no amount but what the next purchase costs. Immutable.
 *
 * @param key what the ids of the feed are made from
 * @param address where the log stands in public, ending in a slash; empty where that is not known
 * @param notes those for everyone, newest first
 * @param supporters those for supporters, with the ones for everyone, newest first; empty without a link
 * @param token of the supporters' link
 * @param landing when the stage in hand is done, a sentence; empty where that is not shown
 * @param nextFilm the first day on which an episode is planned; empty where episodes are not shown or none is planned soon
 * @param thanks credits in their order
 * @param moved why that date moved, a sentence; empty where that is not shown or not known
 * @param rung the next purchase; empty where that is not shown
 * @param pledge where the spent money went; empty where that is not shown
 */
public record PublicLog(
        String key,
        String project,
        String currency,
        LocalDate today,
        String address,
        String lead,
        List<Entry> notes,
        List<Entry> supporters,
        Optional<String> token,
        List<PublicStage> stages,
        boolean showsStages,
        String landing,
        List<Film> episodes,
        Optional<LocalDate> nextFilm,
        List<String> thanks,
        boolean showsDrawing,
        String moved,
        Optional<PublicMoney.Rung> rung,
        List<PublicMoney.Share> pledge,
        Project.Quotes quotes) {

    /** A film further ahead than this is not promised. */
    private static final int FILM_WEEKS = 4;

    /**
     * A note that may be read.
     *
     * @param by as the author agreed to be named; empty otherwise
     * @param film that tells it, where episodes are shown
     * @param since the day from which on it could be read
     * @param links what its references show
     */
    public record Entry(
            Note note,
            String by,
            Optional<PublicStage> stage,
            Optional<Film> film,
            LocalDate since,
            List<Photo> photos,
            NoteLinks links) {}

    /** An episode that is out. */
    public record Film(Id id, String title, LocalDate out, String address) {}

    public static PublicLog of(Read read, LocalDate today) {
        Settings settings = SettingsStore.get(read);
        BuildLog shown = settings.buildLog();
        Formats formats = new Formats(settings.project().currency(), today);
        List<PublicStage> stages = PublicStage.all(read);
        List<Film> films = films(read, today);
        List<Entry> all = entries(read, today, stages, films, BuildLog.on(shown.episodes()));
        Optional<String> token = SupportersLinkStore.find(read);
        String address = shown.address();
        return new PublicLog(
                SupportersLinkStore.project(read),
                settings.project().name(),
                settings.project().currency(),
                today,
                address.isEmpty() || address.endsWith("/") ? address : address + "/",
                shown.lead(),
                all.stream()
                        .filter(entry -> entry.note().visibleOrDefault() == Note.Visible.EVERYONE)
                        .toList(),
                token.isEmpty() ? List.of() : all,
                token,
                stages,
                BuildLog.on(shown.stages()),
                BuildLog.on(shown.landing()) ? PublicStage.landing(read, stages, formats, settings.moneyDigits()) : "",
                BuildLog.on(shown.episodes()) ? films : List.of(),
                BuildLog.on(shown.episodes()) ? nextFilm(read, today) : Optional.empty(),
                BuildLog.on(shown.thanks()) ? thanks(read) : List.of(),
                BuildLog.on(shown.drawing()),
                BuildLog.on(shown.moved()) ? PublicStage.moved(read, stages, formats) : "",
                BuildLog.on(shown.rung())
                        ? PublicMoney.rung(read, stages, formats, settings.moneyDigits())
                        : Optional.empty(),
                BuildLog.on(shown.pledge()) ? PublicMoney.pledge(read, stages) : List.of(),
                settings.quotes());
    }

    private static List<Film> films(Read read, LocalDate today) {
        return EpisodeStore.TABLE.values(read).stream()
                .filter(one -> isOut(one, today))
                .map(one -> new Film(
                        one.id(),
                        one.number().map(n -> "Episode " + n + ", ").orElse("") + one.title(),
                        one.published().orElseThrow(),
                        one.address()))
                .sorted(Comparator.comparing(Film::out).reversed())
                .toList();
    }

    /** The day alone: what is told on it stays with the crew until it is out. */
    private static Optional<LocalDate> nextFilm(Read read, LocalDate today) {
        return SlotCalendar.of(read, today, today.plusWeeks(FILM_WEEKS)).stream()
                .filter(slot -> slot.episode().isPresent() && slot.skipped().isEmpty())
                .map(SlotCalendar.Slot::day)
                .findFirst();
    }

    private static boolean isOut(Episode episode, LocalDate today) {
        return episode.published().map(day -> !day.isAfter(today)).orElse(false);
    }

    private static List<Entry> entries(
            Read read, LocalDate today, List<PublicStage> stages, List<Film> films, boolean showsFilms) {
        NoteLinks named = NamedLinks.kept(read);
        NoteLinks links = (kind, id) -> kind != NoteLinks.Kind.EPISODE
                        || films.stream().anyMatch(film -> film.id().same(id))
                ? named.find(kind, id)
                : named.find(kind, id).map(target -> new NoteLinks.Target("an episode to come", ""));
        List<Entry> entries = new ArrayList<>();
        for (Note note : NoteStore.TABLE.values(read)) {
            Optional<Film> film = note.episode()
                    .flatMap(id ->
                            films.stream().filter(one -> one.id().same(id)).findFirst());
            Optional<LocalDate> since = since(note, film);
            if (note.visibleOrDefault() == Note.Visible.CREW
                    || since.map(day -> day.isAfter(today)).orElse(true)) {
                continue;
            }
            entries.add(new Entry(
                    note,
                    note.author()
                            .flatMap(id -> CrewMemberStore.TABLE.find(read, id))
                            .map(member -> member.value().publicName())
                            .orElse(""),
                    note.stage()
                            .flatMap(id -> stages.stream()
                                    .filter(one -> one.id().same(id))
                                    .findFirst()),
                    showsFilms ? film : Optional.empty(),
                    since.get(),
                    PhotoStore.TABLE.where(read, "note", note.id().value()).stream()
                            .map(Stored::value)
                            .toList(),
                    links));
        }
        entries.sort(Comparator.comparing((Entry entry) -> entry.note().date()).reversed());
        return List.copyOf(entries);
    }

    /** From when on a note may be read: the day said, else with its film, else its own day; empty: its film is not out. */
    private static Optional<LocalDate> since(Note note, Optional<Film> film) {
        if (note.visibleFrom().isPresent()) {
            return Optional.of(latest(note.visibleFrom().get(), note.date()));
        }
        if (note.episode().isPresent()) {
            return film.map(one -> latest(one.out(), note.date()));
        }
        return Optional.of(note.date());
    }

    private static LocalDate latest(LocalDate one, LocalDate other) {
        return one.isAfter(other) ? one : other;
    }

    /** The credits that were agreed, each once, whoever gave. */
    private static List<String> thanks(Read read) {
        TreeSet<String> credits = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
        MaterialStore.TABLE
                .values(read)
                .forEach(line -> credits.add(line.credit().strip()));
        StockItemStore.TABLE
                .values(read)
                .forEach(item -> credits.add(item.credit().strip()));
        credits.remove("");
        return List.copyOf(credits);
    }

    /** The stages that a reader meets: all where they are shown, else those that a note for everyone is about. */
    List<PublicStage> pagesOfStages() {
        return stages.stream()
                .filter(stage -> showsStages || !notesOf(stage).isEmpty())
                .toList();
    }

    boolean hasPage(PublicStage stage) {
        return pagesOfStages().stream().anyMatch(one -> one.id().same(stage.id()));
    }

    /** Years in which there are notes for everyone, newest first. */
    SortedSet<Integer> years() {
        SortedSet<Integer> years = new TreeSet<>(Comparator.reverseOrder());
        notes.forEach(entry -> years.add(entry.note().date().getYear()));
        return years;
    }

    List<Entry> notesOf(PublicStage stage) {
        return notes.stream()
                .filter(entry ->
                        entry.stage().map(its -> its.id().same(stage.id())).orElse(false))
                .toList();
    }

    List<Entry> notesOf(Film film) {
        return notes.stream()
                .filter(entry ->
                        entry.film().map(its -> its.id().same(film.id())).orElse(false))
                .toList();
    }
}
