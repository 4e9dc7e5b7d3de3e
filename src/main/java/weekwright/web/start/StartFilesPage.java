package weekwright.web.start;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import weekwright.files.CheckFiles;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** A project from a folder of plain files on this machine: checked as a whole, then brought in as a whole. */
public final class StartFilesPage implements Page {
    private final NewProject start;

    public StartFilesPage(NewProject start) {
        this.start = start;
    }

    /** @param problems one line for each fault and remark of the files, the first 200 and a count */
    public record View(Form form, List<String> problems) {}

    @Override
    public View show(Request request) {
        StartPage.onlyWithoutProject(request);
        boolean inFiles =
                request.refusals().stream().anyMatch(problem -> !problem.file().isEmpty());
        return new View(request.form(""), inFiles ? CheckFiles.lines(request.refusals()) : List.of());
    }

    @Override
    public Answer submit(Request request) throws Exception {
        StartPage.onlyWithoutProject(request);
        FormReader form = request.form();
        Optional<Path> files = folder(form);
        form.check();
        int remarks = start.importFiles(files.orElseThrow(), request.today(), request.clock());
        String odd = remarks == 0
                ? ""
                : " There " + (remarks == 1 ? "is " : "are ") + Formats.count(remarks, "remark")
                        + " on them; the command check lists them.";
        return Answer.to(Saved.to("/ahead").saying("The files are brought in." + odd));
    }

    private static Optional<Path> folder(FormReader form) {
        String text = form.neededText("folder");
        if (text.isEmpty()) {
            return Optional.empty();
        }
        try {
            Path path = Path.of(text);
            if (!path.isAbsolute()) {
                form.fault("folder", text, "is not a whole path", "write it from the root of the disk on");
            } else if (!Files.isDirectory(path)) {
                form.fault("folder", text, "is no folder on this machine", "write the path of the folder of files");
            } else {
                return Optional.of(path);
            }
        } catch (InvalidPathException e) {
            form.fault("folder", text, "is not a path", "write the path of the folder of files");
        }
        return Optional.empty();
    }
}
