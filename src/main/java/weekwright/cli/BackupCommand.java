package weekwright.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import weekwright.db.Db;
import weekwright.db.Folder;
import weekwright.files.backup.MakeBackup;

/** {@code backup}: a project as one checked file, while it is served too. */
@Command(
        name = "backup",
        description = {
            "Writes a project with its pictures into one file, reads it back and checks it. It may be used while the folder"
                    + " is served.",
            "",
            "Log-ins are in it, as hashes; who is logged in is not. Keep it as safe as the project."
        })
final class BackupCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private HelpOption help;

    @Parameters(index = "0", paramLabel = "FOLDER", description = "A project's folder.")
    private Path folder;

    @Parameters(index = "1", paramLabel = "FILE", description = "Where to write: a file that is not there yet.")
    private Path file;

    BackupCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws Exception {
        Folder source = new Folder(folder);
        try (Db db = source.open(terminal.clock())) {
            MakeBackup.Done done = MakeBackup.into(db, source, file, terminal.clock());
            terminal.out()
                    .println("Backed up into " + done.file() + " and checked: version " + done.version() + ", "
                            + Backups.pictures(done.pictures()) + ".");
        }
        return 0;
    }
}
