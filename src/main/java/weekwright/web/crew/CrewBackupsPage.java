package weekwright.web.crew;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.List;
import weekwright.base.Problem;
import weekwright.base.Rejected;
import weekwright.db.FolderRefused;
import weekwright.files.backup.Backups;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** When the last good backup was made, all that there are, and one more now. */
public final class CrewBackupsPage implements Page {
    private static final long KILOBYTE = 1000;

    /**
     * @param last when the last good one was made; empty where there is none
     * @param warning that it is too old; empty while all is well
     * @param place the folder in which they lie
     * @param elsewhere whether that is outside the project's own
     */
    public record View(String last, String warning, Path place, boolean elsewhere, List<Line> lines, Form form) {}

    /** A backup: its file, when it was made in the project's zone, its size. */
    public record Line(String name, String made, String size) {}

    @Override
    public View show(Request request) {
        Backups backups = backups(request);
        List<Line> lines = backups.list().stream()
                .map(one -> new Line(
                        one.name(),
                        moment(request, one.made()),
                        Formats.grouped(Math.max(1, (one.bytes() + KILOBYTE / 2) / KILOBYTE)) + Formats.NBSP + "kB"))
                .toList();
        return new View(
                lines.isEmpty() ? "" : lines.get(0).made(),
                warning(request),
                backups.place(),
                !backups.place().startsWith(request.project().folder().path()),
                lines,
                request.form("make"));
    }

    /** That today's could not be made, and why; else that the last one is too old; empty while all is well. */
    public static String warning(Request request) {
        String today = request.project().backupTrouble();
        return today.isEmpty() ? backups(request).warning() : today;
    }

    private static Backups backups(Request request) {
        return new Backups(request.project().folder(), request.db(), request.clock());
    }

    private static String moment(Request request, Instant at) {
        return Formats.moment(LocalDateTime.ofInstant(at, request.settings().zone()));
    }

    /** Not in a transaction: writing goes on while it is made. */
    @Override
    public Answer submit(Request request) throws Exception {
        request.form().check();
        try {
            String file = backups(request).make().file().getFileName().toString();
            return Answer.to(Saved.to("/crew/backups").saying("Backed up and checked: " + file + "."));
        } catch (FolderRefused refused) {
            throw new Rejected(
                    Problem.fault("", "", refused.getMessage().replaceFirst("\\.$", ""), "then make it again"));
        }
    }
}
