package weekwright.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import weekwright.files.CheckFiles;
import weekwright.files.csv.ReadResult;
import weekwright.render.Formats;

/** {@code check}: reads a project in plain files and tells every fault and remark. */
@Command(
        name = "check",
        description = {
            "Reads a project in plain files and tells every fault (it cannot be read) and every remark (it is odd, but"
                    + " possible), each with its file, line and column. Nothing is written.",
            "",
            "The exit status is 1 if there is any fault."
        })
final class CheckCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private HelpOption help;

    @Parameters(paramLabel = "FILES", description = "A folder of plain files, with project.toml.")
    private Path files;

    CheckCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws Failure {
        ProjectSource.mustBeFolder(files);
        ReadResult result = CheckFiles.check(files, LocalDate.now(terminal.clock()));
        CheckFiles.lines(result.faults()).forEach(terminal.err()::println);
        if (!result.remarks().isEmpty()) {
            terminal.out()
                    .println(Formats.count(result.remarks().size(), "remark").replace(Formats.NBSP, " ") + ":");
            CheckFiles.lines(result.remarks()).forEach(line -> terminal.out().println("  " + line));
        }
        if (!result.faults().isEmpty()) {
            terminal.err()
                    .println(Formats.count(result.faults().size(), "fault").replace(Formats.NBSP, " ") + ".");
            return 1;
        }
        terminal.out().println("No faults.");
        return 0;
    }
}
