package weekwright.web.notes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import weekwright.base.Id;
import weekwright.build.CrewMemberStore;
import weekwright.build.HoursEntry;
import weekwright.build.HoursEntryStore;
import weekwright.build.StageStore;
import weekwright.build.TaskStore;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.episodes.EpisodeStore;
import weekwright.files.picture.PhotoFiles;
import weekwright.notes.Markdown;
import weekwright.notes.Note;
import weekwright.notes.NoteStore;
import weekwright.notes.Photo;
import weekwright.notes.PhotoStore;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.parts.Addresses;
import weekwright.web.parts.Choices;

/** One build note: its text and pictures, and beside them what the log says of that day. */
public final class NotePage implements Page {

    /**
     * @param html made by {@link Markdown}, safe to stand in the page
     * @param pictures those that stand under the text
     * @param within those that stand in the text
     * @param earlier id of the note before it, empty for the first
     */
    public record View(
            String id,
            String title,
            LocalDate date,
            String by,
            String html,
            List<Picture> pictures,
            List<Picture> within,
            List<Hours> hours,
            int minutes,
            List<Thing> things,
            String seenBy,
            String earlier,
            String later) {}

    /** @param place the attributes that keep its place until it is there */
    public record Picture(long row, String file, String caption, String alternative, String place) {
        static Picture of(Request request, Stored<Photo> photo, PhotoFiles.Size size) {
            return new Picture(
                    photo.row(),
                    photo.value().file(),
                    photo.value().caption(),
                    photo.value().alternative(),
                    Photos.place(request, photo.value().file(), size));
        }
    }

    /** Hours of that day. */
    public record Hours(String who, String what, int minutes) {}

    /** What the note belongs to, with its address. */
    public record Thing(String label, String text, String link) {}

    /** The note of the address. */
    static Stored<Note> note(Request request) {
        return request.read(read -> NoteStore.TABLE.find(read, request.id("id")))
                .orElseThrow(() -> new NotFound("There is no note " + request.part("id") + "."));
    }

    @Override
    public View show(Request request) {
        return request.read(read -> {
            Note note = note(request).value();
            List<Hours> hours = hours(read, note.date());
            List<Note> all = NoteStore.TABLE.values(read).stream()
                    .sorted(Comparator.comparing(Note::date))
                    .toList();
            int place = all.indexOf(note);
            Map<Boolean, List<Picture>> photos = pictures(
                    request,
                    note,
                    PhotoStore.TABLE.where(read, "note", note.id().value()));
            return new View(
                    note.id().value(),
                    note.title(),
                    note.date(),
                    note.author()
                            .flatMap(id -> CrewMemberStore.TABLE.find(read, id))
                            .map(member -> member.value().name())
                            .orElse(""),
                    Photos.inPlace(
                            request,
                            Markdown.html(
                                    note.text(),
                                    Addresses.links(read),
                                    request.settings().quotes())),
                    photos.get(false),
                    photos.get(true),
                    hours,
                    hours.stream().mapToInt(Hours::minutes).sum(),
                    things(read, note),
                    seenBy(note),
                    place > 0 ? all.get(place - 1).id().value() : "",
                    place + 1 < all.size() ? all.get(place + 1).id().value() : "");
        });
    }

    /** A note's pictures: true, those that stand in its text; false, those under it. */
    static Map<Boolean, List<Picture>> pictures(Request request, Note note, List<Stored<Photo>> photos) {
        Set<Photo> under = Set.copyOf(
                Markdown.under(note.text(), photos.stream().map(Stored::value).toList()));
        return photos.stream()
                .collect(Collectors.partitioningBy(
                        photo -> !under.contains(photo.value()),
                        Collectors.mapping(
                                photo -> Picture.of(request, photo, PhotoFiles.Size.PAGE), Collectors.toList())));
    }

    /** Who may read it, in words. */
    static String seenBy(Note note) {
        return switch (note.visibleOrDefault()) {
            case CREW -> "the crew only";
            case SUPPORTERS -> "supporters";
            case EVERYONE -> "everyone";
        };
    }

    private static List<Thing> things(Read read, Note note) {
        List<Thing> things = new ArrayList<>();
        note.stage()
                .flatMap(id -> StageStore.TABLE.find(read, id))
                .ifPresent(stage -> things.add(new Thing(
                        "Stage",
                        stage.value().name(),
                        "/build/stages/" + stage.value().id())));
        note.episode()
                .flatMap(id -> EpisodeStore.TABLE.find(read, id))
                .ifPresent(episode -> things.add(new Thing(
                        "Told in",
                        Choices.title(episode.value()),
                        "/episodes/" + episode.value().id())));
        for (String id : note.tasks().list()) {
            TaskStore.TABLE
                    .find(read, new Id(id))
                    .ifPresent(task -> things.add(new Thing(
                            "Task",
                            task.value().title(),
                            "/build/tasks/" + task.value().id())));
        }
        return things;
    }

    private static List<Hours> hours(Read read, LocalDate day) {
        List<Hours> lines = new ArrayList<>();
        for (Stored<HoursEntry> stored : HoursEntryStore.between(read, day, day)) {
            HoursEntry entry = stored.value();
            Optional<String> title = entry.task()
                    .flatMap(id -> TaskStore.TABLE.find(read, id))
                    .map(task -> task.value().title())
                    .or(() -> entry.episode()
                            .flatMap(id -> EpisodeStore.TABLE.find(read, id))
                            .map(episode -> Choices.title(episode.value())));
            String as = switch (entry.asOrDefault()) {
                case HANDS -> "";
                case CAMERA -> "filming ";
                case EDIT -> "editing ";
                case SHOP, OFFICE -> title.isPresent() ? "shop, " : "shop and office";
            };
            lines.add(new Hours(
                    CrewMemberStore.TABLE
                            .find(read, entry.crew())
                            .map(member -> member.value().name())
                            .orElse(entry.crew().value()),
                    as + title.orElse(""),
                    entry.hours().minutes() * entry.peopleOrDefault()));
        }
        return lines;
    }
}
