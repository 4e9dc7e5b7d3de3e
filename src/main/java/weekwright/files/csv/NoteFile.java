package weekwright.files.csv;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import weekwright.base.Nearest;
import weekwright.base.Place;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Reading;
import weekwright.base.Shape;
import weekwright.notes.Note;
import weekwright.notes.NoteRules;
import weekwright.notes.Photo;

/**
 * One build note as a file {@code notes/DATE-slug.md}: lines {@code key: value} between two lines {@code ---}, with a line
 * {@code photo: file | caption | alternative text} for each picture, then the text in Markdown. A bar inside a caption is
 * written {@code \|}.
 */
public final class NoteFile {
    private static final Shape<Note> NOTE = Shape.of(Note.class);
    private static final Shape<Photo> PHOTO = Shape.of(Photo.class);
    private static final Pattern NAME = Pattern.compile("([0-9]{4}-[0-9]{2}-[0-9]{2})-[^/]+\\.md");
    private static final Pattern DATE = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");
    private static final String FENCE = "---";
    private static final List<String> KEYS =
            NOTE.names().stream().filter(name -> !name.equals("text")).toList();
    private static final int MOST_SLUG = 60;

    private NoteFile() {}

    /**
     * What was read of one file.
     *
     * @param note empty when a fault was added
     * @param id the text of the id, whatever else was wrong
     */
    public record Result(
            Optional<Note> note, Place place, List<Photo> photos, List<Place> photoPlaces, Optional<String> id) {}

    /** @param file as the problems call it: {@code notes/2026-03-05-oak.md} */
    public static Result read(String file, String text, Problems problems) {
        Problems found = new Problems();
        Map<String, String> texts = new HashMap<>();
        Map<String, Integer> lines = new HashMap<>();
        List<Photo> photos = new ArrayList<>();
        List<Place> photoPlaces = new ArrayList<>();
        List<String> all = List.of(text.split("\r\n|\r|\n", -1));
        int end = 1;
        while (end < all.size() && !all.get(end).stripTrailing().equals(FENCE)) {
            end++;
        }
        if (!all.get(0).stripTrailing().equals(FENCE) || end == all.size()) {
            Problem fault = all.get(0).stripTrailing().equals(FENCE)
                    ? Problem.fault("", "", "opens a header that is never closed", "write a line --- after it")
                    : Problem.fault("", "", "has no lines between two lines ---", "begin the note with them");
            problems.add(fault.at(file, 1));
            return new Result(Optional.empty(), new Place(file, 1), List.of(), List.of(), Optional.empty());
        }
        for (int i = 1; i < end; i++) {
            Place place = new Place(file, i + 1);
            String line = all.get(i);
            int colon = line.indexOf(':');
            String key = colon < 0 ? line.strip() : line.substring(0, colon).strip();
            String value = colon < 0 ? "" : line.substring(colon + 1).strip();
            if (line.isBlank()) {
                continue;
            }
            if (key.equals("photo") && colon > 0) {
                photo(texts.getOrDefault("id", ""), value, place, found).ifPresent(photo -> {
                    photos.add(photo);
                    photoPlaces.add(place);
                });
            } else if (colon < 0 || !KEYS.contains(key)) {
                String rule = colon < 0 ? "is no line key: value" : "is not a key of a build note";
                String remedy = Nearest.remedy(key, KEYS, "write one of " + String.join(", ", KEYS) + ", photo");
                found.add(place.of(Problem.fault("", key, rule, remedy)));
            } else if (texts.putIfAbsent(key, value) != null) {
                found.add(place.of(Problem.fault(key, value, "stands twice", "keep one of the lines")));
            } else {
                lines.put(key, i + 1);
            }
        }
        texts.put("text", String.join("\n", all.subList(end + 1, all.size())));
        lines.put("text", end + 2);
        Place place = new Place(file, 1, lines);
        Optional<Note> note =
                RecordCsv.row(NOTE, texts, Reading.file(0), RecordCsv.keeping(NoteRules::check), place, found);
        name(file, texts, place, found);
        problems.addAll(found.list());
        Optional<String> id = Optional.ofNullable(texts.get("id"));
        return new Result(found.hasFaults() ? Optional.empty() : note, place, photos, photoPlaces, id);
    }

    private static Optional<Photo> photo(String note, String value, Place place, Problems found) {
        List<String> parts = parts(value);
        if (parts.size() > 3) {
            found.add(place.of(Problem.fault(
                    "photo", value, "has more than three parts", "write file | caption | alternative text")));
            return Optional.empty();
        }
        if (note.isEmpty()) {
            found.add(place.of(Problem.fault("photo", value, "stands before the id", "write the line id: first")));
            return Optional.empty();
        }
        Map<String, String> texts = new HashMap<>(Map.of("note", note, "file", parts.get(0)));
        texts.put("caption", parts.size() > 1 ? parts.get(1) : "");
        texts.put("alternative", parts.size() > 2 ? parts.get(2) : "");
        return RecordCsv.row(PHOTO, texts, Reading.file(0), RecordCsv.keeping(NoteRules::check), place, found);
    }

    private static List<String> parts(String value) {
        List<String> parts = new ArrayList<>();
        StringBuilder part = new StringBuilder();
        for (int i = 0; i < value.length(); i++) {
            char c = value.charAt(i);
            if (c == '\\' && i + 1 < value.length() && "|\\".indexOf(value.charAt(i + 1)) >= 0) {
                part.append(value.charAt(++i));
            } else if (c == '|') {
                parts.add(part.toString().strip());
                part.setLength(0);
            } else {
                part.append(c);
            }
        }
        parts.add(part.toString().strip());
        return parts;
    }

    /** Compares the file's name with what the header says, also when the rest of the header is at fault. */
    private static void name(String file, Map<String, String> texts, Place place, Problems found) {
        String plain = file.substring(file.lastIndexOf('/') + 1);
        String date = texts.getOrDefault("date", "").strip();
        boolean dated = DATE.matcher(date).matches();
        Matcher name = NAME.matcher(plain);
        if (!name.matches()) {
            String remedy = "name it " + (dated ? date : "DATE") + "-" + slug(texts.getOrDefault("title", "")) + ".md";
            found.add(place.of(Problem.fault("", plain, "is not named DATE-slug.md", remedy)));
        } else if (dated && !name.group(1).equals(date)) {
            String rule = "is not the date in the file's name, " + name.group(1);
            found.add(place.of(Problem.fault("date", date, rule, "change one of the two")));
        }
    }

    /** The note as a file's text in canonical form. */
    public static String write(Note note, List<Photo> photos) {
        StringBuilder out = new StringBuilder(FENCE + "\n");
        Map<String, String> texts = NOTE.texts(note, 0);
        for (String key : KEYS) {
            if (!texts.get(key).isEmpty()) {
                out.append(key).append(": ").append(texts.get(key)).append('\n');
            }
        }
        for (Photo photo : photos) {
            out.append("photo: ").append(escaped(photo.file()));
            if (!photo.caption().isEmpty() || !photo.alternative().isEmpty()) {
                out.append(" | ").append(escaped(photo.caption()));
            }
            if (!photo.alternative().isEmpty()) {
                out.append(" | ").append(escaped(photo.alternative()));
            }
            out.append('\n');
        }
        out.append(FENCE).append('\n');
        return note.text().isEmpty()
                ? out.toString()
                : out.append('\n').append(note.text()).append('\n').toString();
    }

    private static String escaped(String text) {
        return text.replace("\\", "\\\\").replace("|", "\\|");
    }

    /** The file names of notes, in their order: date and title, and the id where two would be called the same. */
    public static List<String> names(List<Note> notes) {
        Map<String, Integer> counts = new HashMap<>();
        notes.forEach(note -> counts.merge(plainName(note), 1, Integer::sum));
        Set<String> taken = new HashSet<>();
        List<String> names = new ArrayList<>();
        for (Note note : notes) {
            String name = plainName(note);
            if (counts.get(name) > 1) {
                name += "-" + slug(note.id().value());
            }
            while (!taken.add(name)) {
                name += "-" + slug(note.id().value());
            }
            names.add(name + ".md");
        }
        return names;
    }

    private static String plainName(Note note) {
        return note.date() + "-" + slug(note.title());
    }

    /** Small ASCII letters, digits and hyphens; never empty. */
    static String slug(String title) {
        String plain = Normalizer.normalize(title.replace("ß", "ss"), Normalizer.Form.NFD)
                .toLowerCase(Locale.ROOT)
                .replaceAll("\\p{M}+", "")
                .replaceAll("[^a-z0-9]+", "-");
        String cut = plain.substring(0, Math.min(plain.length(), MOST_SLUG)).replaceAll("^-+|-+$", "");
        return cut.isEmpty() ? "note" : cut;
    }
}
