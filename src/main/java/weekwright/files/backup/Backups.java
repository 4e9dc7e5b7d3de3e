package weekwright.files.backup;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.temporal.IsoFields;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import weekwright.db.Db;
import weekwright.db.Folder;
import weekwright.db.FolderRefused;
import weekwright.db.History;
import weekwright.files.Tidy;

/**
 * The backups of a project in its folder {@code backups/} or where else they were told to lie, named by the second in UTC in which they were made; whatever bears
 * such a name was found whole. Other files there are left alone.
 */
public final class Backups {
    /** From this age of the last one on the crew is warned. */
    public static final Duration WARN_AFTER = Duration.ofDays(2);

    private static final int DAYS = 7;
    private static final int WEEKS = 4;
    private static final int MONTHS = 12;
    private static final Duration SURELY_KEPT = Duration.ofDays(1);
    private static final String SCRATCH = ".backup-";
    private static final String ENDING = ".zip";
    private static final Pattern NAME = Pattern.compile("\\d{4}-\\d\\d-\\d\\d-\\d{6}\\.zip");
    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("uuuu-MM-dd-HHmmss", Locale.ROOT).withZone(ZoneOffset.UTC);

    private final Folder folder;
    private final Db db;
    private final Clock clock;

    public Backups(Folder folder, Db db, Clock clock) {
        this.folder = folder;
        this.db = db;
        this.clock = clock;
    }

    /** A backup that lies there. */
    public record Kept(String name, Instant made, long bytes) {}

    /** Where they lie. */
    public Path place() {
        return folder.backups();
    }

    /** All that are there, newest first. */
    public List<Kept> list() {
        if (!Files.isDirectory(place())) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(place())) {
            List<Kept> kept = new ArrayList<>();
            for (Path file : files.filter(
                            one -> NAME.matcher(one.getFileName().toString()).matches())
                    .toList()) {
                String name = file.getFileName().toString();
                String stamp = name.substring(0, name.length() - ENDING.length());
                kept.add(new Kept(name, LocalDateTime.parse(stamp, STAMP).toInstant(ZoneOffset.UTC), Files.size(file)));
            }
            kept.sort(Comparator.comparing(Kept::made).reversed());
            return kept;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Makes one now, and then removes those that are no longer needed. */
    public MakeBackup.Done make() throws FolderRefused {
        MakeBackup.Done done =
                MakeBackup.into(db, folder, place().resolve(STAMP.format(clock.instant()) + ENDING), clock);
        thin();
        return done;
    }

    /** Makes one if none was made on this day of UTC. */
    public Optional<MakeBackup.Done> daily() throws FolderRefused {
        Instant now = clock.instant();
        boolean made = list().stream().anyMatch(one -> day(one.made()).equals(day(now)));
        return made ? Optional.empty() : Optional.of(make());
    }

    /** How long ago the last one was made, or the project was begun, where that is longer than it should be. */
    public Optional<Duration> overdue() {
        Instant now = clock.instant();
        Optional<Instant> last = list().stream().findFirst().map(Kept::made);
        return last.or(() -> db.read(History::first))
                .map(since -> Duration.between(since, now))
                .filter(age -> age.compareTo(WARN_AFTER) > 0);
    }

    /** The warning as one sentence; empty while all is well. */
    public String warning() {
        return overdue()
                .map(age -> list().isEmpty()
                        ? "There is no backup of this project yet."
                        : "The last good backup is " + age.toDays() + " days old.")
                .orElse("");
    }

    private void thin() throws FolderRefused {
        List<Instant> all = list().stream().map(Kept::made).toList();
        Set<Instant> keep = kept(all, clock.instant());
        try {
            for (Instant made : all) {
                if (!keep.contains(made)) {
                    Files.deleteIfExists(place().resolve(STAMP.format(made) + ENDING));
                }
            }
            leftOver();
        } catch (IOException e) {
            throw new FolderRefused("An old backup in " + place() + " cannot be removed: " + e.getMessage()
                    + ". The new one is there. Look after the right to write there.");
        }
    }

    /** What a backup that was broken off left behind. */
    private void leftOver() throws IOException {
        Instant before = clock.instant().minus(SURELY_KEPT);
        List<Path> old;
        try (Stream<Path> files = Files.list(place())) {
            old = files.filter(one -> one.getFileName().toString().startsWith(SCRATCH))
                    .toList();
        }
        for (Path one : old) {
            if (Files.getLastModifiedTime(one).toInstant().isBefore(before)) {
                Tidy.remove(one);
            }
        }
    }

    /**
     * Which are kept: the newest of each of the last seven days, four weeks (from Monday) and twelve months that have one, and
     * all of the last 24 hours.
     *
     * @param all newest first
     */
    static Set<Instant> kept(List<Instant> all, Instant now) {
        Set<Instant> keep = new HashSet<>();
        all.stream().filter(made -> made.isAfter(now.minus(SURELY_KEPT))).forEach(keep::add);
        newest(all, DAYS, LocalDate::toString, keep);
        newest(all, WEEKS, Backups::week, keep);
        newest(all, MONTHS, day -> day.toString().substring(0, 7), keep);
        return keep;
    }

    private static String week(LocalDate day) {
        return day.get(IsoFields.WEEK_BASED_YEAR) + "-" + day.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR);
    }

    private static void newest(List<Instant> all, int most, Function<LocalDate, String> span, Set<Instant> keep) {
        Set<String> seen = new HashSet<>();
        for (Instant made : all) {
            String one = span.apply(day(made));
            if (seen.size() < most && seen.add(one)) {
                keep.add(made);
            }
        }
    }

    private static LocalDate day(Instant at) {
        return LocalDate.ofInstant(at, ZoneOffset.UTC);
    }
}
