package weekwright.cli;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import weekwright.App;
import weekwright.SampleClock;
import weekwright.account.Entrance;
import weekwright.base.Rejected;
import weekwright.build.CrewMember;
import weekwright.build.CrewMemberStore;
import weekwright.build.SettingsStore;
import weekwright.db.Db;
import weekwright.db.Folder;
import weekwright.db.FolderRefused;
import weekwright.files.ImportProject;
import weekwright.files.SampleFiles;
import weekwright.forecast.Forecasts;
import weekwright.forecast.WeekBefore;
import weekwright.render.Templates;
import weekwright.web.Certificate;
import weekwright.web.Listening;
import weekwright.web.Server;

/** {@code serve}: the web server of one folder, or of a copy of the sample. Runs until it is stopped. */
@Command(
        name = "serve",
        description = {
            "Serves a project's folder to browsers. An empty or new folder is offered a new project.",
            "",
            "With --sample a copy of the sample is served from a temporary folder, under a clock on which today is"
                    + " 25 November 2026; what is changed in it is lost at the end.",
            "Stop it with Ctrl+C."
        })
final class ServeCommand implements Callable<Integer> {
    private static final int MOST_PORT = 65_535;
    private static final long CLOSING_MILLIS = 10_000;

    private final Terminal terminal;
    /** Open until the last file is closed. */
    private final CountDownLatch closed = new CountDownLatch(1);

    @Mixin
    private HelpOption help;

    @Parameters(paramLabel = "FOLDER", arity = "0..1", description = "The project's folder.")
    private Path folder;

    @Option(
            names = "--port",
            paramLabel = "N",
            defaultValue = "" + Server.PORT,
            description = "The port (${DEFAULT-VALUE}); 0 for any free one.")
    private int port;

    @Option(
            names = "--host",
            paramLabel = "ADDRESS",
            defaultValue = "127.0.0.1",
            description = "The address to listen on (${DEFAULT-VALUE}: this machine alone); any other needs a log-in.")
    private String host;

    @Option(
            names = "--name",
            paramLabel = "NAME",
            description = "A name by which other devices call this machine, such as mill.example; may be given again.")
    private List<String> names = new ArrayList<>();

    @Option(
            names = "--behind-proxy",
            description =
                    "A proxy on this machine passes requests on: its X-Forwarded-Proto, -Host and -For are believed.")
    private boolean behindProxy;

    @Option(
            names = "--tls-cert",
            paramLabel = "FILE",
            description = "Speak TLS with this certificate (PEM text, with those that vouch for it); needs --tls-key.")
    private Path certificate;

    @Option(
            names = "--tls-key",
            paramLabel = "FILE",
            description = "The certificate's key (PEM text, PKCS #8, no passphrase).")
    private Path key;

    @Option(
            names = "--backups",
            paramLabel = "PLACE",
            description = "Keep the daily backups in this folder, best on another disk (default: backups in FOLDER).")
    private Path backups;

    @Option(names = "--sample", description = "Serve a copy of the sample.")
    private boolean sample;

    ServeCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws Exception {
        Numbers.within("--port", port, 0, MOST_PORT);
        if (sample == (folder != null)) {
            throw Failure.usage(
                    "weekwright serve needs a FOLDER or --sample, one of them. See: weekwright serve --help");
        }
        if ((certificate == null) != (key == null)) {
            throw Failure.usage("--tls-cert and --tls-key belong together. See: weekwright serve --help");
        }
        try {
            return sample ? serveSample() : serve(folder, terminal.clock());
        } finally {
            closed.countDown();
        }
    }

    private int serveSample() throws Exception {
        Path temporary = Files.createTempDirectory("weekwright-serve");
        try {
            Path copy = temporary.resolve("sample");
            Clock clock = SampleClock.startingNow(terminal.clock());
            unpack(copy, clock);
            return serve(copy, clock);
        } finally {
            ProjectSource.remove(temporary);
        }
    }

    private static void unpack(Path copy, Clock clock) throws IOException, Rejected, FolderRefused {
        try (SampleFiles files = SampleFiles.unpack()) {
            ImportProject.into(files.folder(), new Folder(copy), false, LocalDate.now(clock), clock);
        }
        try (Db db = new Folder(copy).open(clock)) {
            WeekBefore.keep(db, SampleClock.DAY, Forecasts.FIRST_LOOK);
        }
    }

    private int serve(Path place, Clock clock) throws FolderRefused, Failure {
        CountDownLatch stop = new CountDownLatch(1);
        Thread hook = new Thread(() -> stop(stop), "stop");
        try (App app = new App(project(place), clock, templates(), sample);
                Server server = started(app)) {
            terminal.out().println("weekwright serves " + app.folder().path() + " at " + server.address());
            terminal.out().flush();
            if (!listening().beyond() && !hasLogIn(app)) {
                terminal.err()
                        .println("Nobody has a log-in. First-run code, good for half an hour: "
                                + app.entrance().openFirstRun() + " (to set a first passphrase at " + server.address()
                                + "account/start).");
                terminal.err().flush();
            }
            app.keepDays();
            Runtime.getRuntime().addShutdownHook(hook);
            stop.await();
        } catch (Server.PortTaken taken) {
            throw Failure.fault(taken.getMessage());
        } catch (InterruptedException e) {
            Runtime.getRuntime().removeShutdownHook(hook);
        }
        return 0;
    }

    private Folder project(Path place) {
        return backups == null ? new Folder(place) : new Folder(place, backups);
    }

    private Listening listening() throws Failure {
        try {
            return new Listening(
                    host,
                    port,
                    names,
                    behindProxy,
                    certificate == null ? Optional.empty() : Optional.of(Certificate.of(certificate, key)));
        } catch (Certificate.Unusable unusable) {
            throw Failure.fault(unusable.getMessage());
        }
    }

    /** Other devices reach it only when a log-in of the crew keeps them out. */
    private Server started(App app) throws Failure, Server.PortTaken {
        if (listening().beyond() && !hasLogIn(app)) {
            throw Failure.usage((behindProxy ? "--behind-proxy" : "--host " + host)
                    + " lets other devices in, and nobody with access crew has a log-in yet. Make one first: weekwright"
                    + " passphrase " + app.folder().path() + " NAME");
        }
        return Server.start(app, listening());
    }

    private static boolean hasLogIn(App app) {
        return app.project()
                .map(db -> db.read(read -> {
                    LocalDate today = LocalDate.now(
                            app.clock().withZone(SettingsStore.get(read).zone()));
                    return Entrance.crewHasLogIn(read, CrewMember.present(CrewMemberStore.TABLE.values(read), today));
                }))
                .orElse(false);
    }

    /** When the process is told to end, everything is closed before it does. */
    private void stop(CountDownLatch stop) {
        stop.countDown();
        try {
            closed.await(CLOSING_MILLIS, TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** From the folder {@code templates} while the program runs unpacked beside it, so that an edit shows at once. */
    private static Templates templates() {
        try {
            Path code = Path.of(ServeCommand.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI());
            Path beside = Path.of("templates");
            return Files.isDirectory(code) && Files.isRegularFile(beside.resolve("layout.peb"))
                    ? Templates.from(beside)
                    : Templates.packed();
        } catch (URISyntaxException e) {
            return Templates.packed();
        }
    }
}
