package weekwright.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import weekwright.build.SettingsStore;
import weekwright.db.Db;
import weekwright.db.Folder;
import weekwright.render.Templates;
import weekwright.site.PublishSite;
import weekwright.site.Site;

/** {@code publish}: writes the public build log as a static site. */
@Command(
        name = "publish",
        description = {
            "Writes the public build log into a folder as a static site: pages without script, relative links, an Atom"
                    + " feed.",
            "",
            "Publishing again writes only what changed. What it shows is set under Crew and settings; all of it is off"
                    + " at first but the notes for everyone."
        })
final class PublishCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private HelpOption help;

    @Parameters(index = "0", paramLabel = "FOLDER", description = "A project's folder.")
    private Path folder;

    @Parameters(
            index = "1",
            paramLabel = "SITE",
            description = "Where to write: a new or empty folder, or the one published into before.")
    private Path target;

    @Option(names = "--today", paramLabel = "DATE", description = "The day it is published, such as 2026-11-25.")
    private LocalDate today;

    PublishCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws Exception {
        Folder source = new Folder(folder);
        try (Db db = source.open(terminal.clock())) {
            if (db.read(SettingsStore::find).isEmpty()) {
                throw Failure.fault(folder + " holds no project yet. There is nothing to publish.");
            }
            LocalDate day = today == null
                    ? LocalDate.now(terminal.clock()
                            .withZone(db.read(SettingsStore::get).zone()))
                    : today;
            Site site = Site.of(db, source, Templates.packed(), Site.copies(source), day);
            try (ProgressLine progress = new ProgressLine(terminal, "steps", site.most())) {
                PublishSite.Done done = PublishSite.into(target, site, progress);
                progress.stop();
                terminal.out()
                        .println("Published into " + target.toAbsolutePath().normalize() + ": "
                                + done.written()
                                + (done.written() == 1 ? " file written, " : " files written, ") + done.same()
                                + " as they were, " + done.removed() + " removed.");
            }
        }
        return 0;
    }
}
