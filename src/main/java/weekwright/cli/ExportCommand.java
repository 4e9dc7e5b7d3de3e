package weekwright.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import weekwright.db.Db;
import weekwright.db.Folder;
import weekwright.files.ExportProject;

/** {@code export}: writes a project as plain files. */
@Command(
        name = "export",
        description =
                "Writes a project as plain files (CSV, TOML, Markdown, pictures) into a new or empty folder. Import brings"
                        + " back an equal project.")
final class ExportCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private HelpOption help;

    @Parameters(index = "0", paramLabel = "FOLDER", description = "A project's folder.")
    private Path folder;

    @Parameters(index = "1", paramLabel = "FILES", description = "Where to write: a new or empty folder.")
    private Path files;

    ExportCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws Exception {
        Folder source = new Folder(folder);
        try (Db db = source.open(terminal.clock())) {
            ExportProject.into(db, source, files);
        }
        terminal.out().println("Exported into " + files.toAbsolutePath().normalize() + ".");
        return 0;
    }
}
