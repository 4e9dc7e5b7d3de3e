package weekwright.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import weekwright.db.Folder;
import weekwright.files.backup.RestoreBackup;

/** {@code restore}: a project back from a backup. */
@Command(
        name = "restore",
        description =
                "Brings a project back from a backup into a new or empty folder: all of it, after it was checked, or"
                        + " nothing.")
final class RestoreCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private HelpOption help;

    @Parameters(index = "0", paramLabel = "FILE", description = "A backup's file.")
    private Path file;

    @Parameters(index = "1", paramLabel = "FOLDER", description = "Where to write: a new or empty folder.")
    private Path folder;

    RestoreCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws Exception {
        Folder target = new Folder(folder);
        RestoreBackup.Done done = RestoreBackup.into(file, target);
        terminal.out()
                .println("Restored into " + target.path() + ": version " + done.version() + " as of " + done.made()
                        + ", " + Backups.pictures(done.pictures()) + ".");
        return 0;
    }
}
