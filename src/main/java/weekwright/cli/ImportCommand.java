package weekwright.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import weekwright.db.Folder;
import weekwright.files.CheckFiles;
import weekwright.files.ImportProject;

/** {@code import}: brings a project from plain files into a project folder, all of it or nothing. */
@Command(
        name = "import",
        description = {
            "Brings a project from plain files into a new or empty folder: all of it, or nothing if there is any fault.",
            "",
            "With --replace a project that stands in the folder is replaced, after a copy of it was made."
        })
final class ImportCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private HelpOption help;

    @Parameters(index = "0", paramLabel = "FILES", description = "A folder of plain files, with project.toml.")
    private Path files;

    @Parameters(index = "1", paramLabel = "FOLDER", description = "The project's folder: new or empty.")
    private Path folder;

    @Option(names = "--replace", description = "Replace the project that stands in the folder.")
    private boolean replace;

    ImportCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws Exception {
        ProjectSource.mustBeFolder(files);
        Folder target = new Folder(folder);
        ImportProject.Done done =
                ImportProject.into(files, target, replace, LocalDate.now(terminal.clock()), terminal.clock());
        CheckFiles.lines(done.remarks()).forEach(terminal.out()::println);
        done.backup()
                .ifPresent(copy -> terminal.out().println("The project that stood there is kept in " + copy + "."));
        terminal.out()
                .println(
                        done.changed()
                                ? "Imported into " + target.path() + "."
                                : target.path() + " holds the same project already. Nothing was changed.");
        return 0;
    }
}
