package weekwright.testkit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import weekwright.App;
import weekwright.account.LogInStore;
import weekwright.account.Passphrases;
import weekwright.base.Id;
import weekwright.db.Db;
import weekwright.db.Folder;
import weekwright.render.Templates;
import weekwright.web.Listening;
import weekwright.web.Server;

/**
 * The real server on a free port over a new folder, under a clock that stands on Wednesday 25 November 2026, 08:00 UTC.
 * Closing it stops the server and deletes the folder.
 */
public final class ServerFixture implements AutoCloseable {
    public static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-25T08:00:00Z"), ZoneOffset.UTC);

    /** As cheap as they can be; the full cost has its own test. */
    public static final Passphrases PASSPHRASES = new Passphrases(8, 1);

    private static final int FIRST_LOOK = 50;
    private static final int TRIALS = 400;

    private final Path folder;
    private final App app;
    private final Listening listening;
    private Server server;
    private final int port;

    private ServerFixture(Path folder, Clock clock, Consumer<App> fill) {
        this(folder, clock, fill, local());
    }

    private ServerFixture(Path folder, Clock clock, Consumer<App> fill, Listening listening) {
        this(folder, clock, fill, listening, Templates.packed());
    }

    private ServerFixture(Path folder, Clock clock, Consumer<App> fill, Listening listening, Templates templates) {
        this.folder = folder;
        this.listening = listening;
        try {
            app = new App(
                    new Folder(folder.resolve("project")),
                    clock,
                    clock instanceof SettableClock settable ? settable::nanos : System::nanoTime,
                    templates,
                    false,
                    FIRST_LOOK,
                    TRIALS,
                    PASSPHRASES);
            fill.accept(app);
            server = Server.start(app, listening);
            port = server.port();
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    /** An empty folder: no project as yet. */
    public static ServerFixture empty() {
        return new ServerFixture(newFolder(), CLOCK, app -> {});
    }

    /** With {@link SmallProject}. */
    public static ServerFixture small() {
        return copied(NewStore.SMALL, local(), Templates.packed());
    }

    private static Listening local(String... names) {
        return new Listening("127.0.0.1", 0, List.of(names), false);
    }

    private static ServerFixture copied(NewStore store, Listening listening, Templates templates) {
        return new ServerFixture(
                store.copyInto(newFolder()), CLOCK, app -> NewStore.renew(create(app)), listening, templates);
    }

    /** As above for somebody who works on the templates: they are read from their folder. */
    public static ServerFixture smallWithTemplatesOnDisk() {
        return copied(NewStore.SMALL, local(), Templates.from(Path.of("templates")));
    }

    /** With {@link SmallProject} on a port that another server had, as where it was set up anew. */
    public static ServerFixture smallAt(int port) {
        return copied(NewStore.SMALL, new Listening("127.0.0.1", port, List.of(), false), Templates.packed());
    }

    /** With {@link SmallProject}, called by this name besides: no browser holds plain http to it for secure. */
    public static ServerFixture smallNamed(String name) {
        return copied(NewStore.SMALL, local(name), Templates.packed());
    }

    /** As above with whatever is written into its new store. */
    public static ServerFixture named(String name, Consumer<Db> fill) {
        return filled(CLOCK, fill, local(name));
    }

    /** With {@link SmallProject}, called by this name and speaking TLS with this certificate. */
    public static ServerFixture smallUnderTls(String name, OwnCertificate certificate) {
        return copied(
                NewStore.SMALL,
                new Listening("127.0.0.1", 0, List.of(name), false, Optional.of(certificate.read())),
                Templates.packed());
    }

    /** The server goes out of reach; the project stays. */
    public void stop() {
        server.close();
    }

    /** The server that was stopped is there again, at the port that it had. */
    public void startAgain() {
        try {
            server = Server.start(
                    app, new Listening("127.0.0.1", port, listening.names(), false, listening.certificate()));
        } catch (Server.PortTaken e) {
            throw new IllegalStateException(e);
        }
    }

    /** With a copy of the sample. */
    public static ServerFixture sample() {
        return copied(NewStore.SAMPLE, local(), Templates.packed());
    }

    /** As above, called by this name besides. */
    public static ServerFixture sampleNamed(String name) {
        return copied(NewStore.SAMPLE, local(name), Templates.packed());
    }

    /** With whatever is written into its new store. */
    public static ServerFixture of(Consumer<Db> fill) {
        return under(CLOCK, fill);
    }

    /** As above under another clock. */
    public static ServerFixture under(Clock clock, Consumer<Db> fill) {
        return filled(clock, fill, local());
    }

    private static ServerFixture filled(Clock clock, Consumer<Db> fill, Listening listening) {
        return new ServerFixture(
                NewStore.EMPTY.copyInto(newFolder()),
                clock,
                app -> {
                    Db db = create(app);
                    NewStore.renew(db);
                    fill.accept(db);
                },
                listening);
    }

    private static Db create(App app) {
        try {
            return app.create();
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    private static Path newFolder() {
        try {
            return Files.createTempDirectory("weekwright-test");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public Db db() {
        return app.project().orElseThrow();
    }

    /** With the forecast of the clock's day drawn. */
    public ServerFixture drawn() {
        try {
            app.forecasts().orElseThrow().current(LocalDate.of(2026, 11, 25));
            app.forecasts().orElseThrow().await();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
        return this;
    }

    public App app() {
        return app;
    }

    /** A folder beside the project's own, for files that a test needs. */
    public Path beside() {
        return folder;
    }

    public String origin() {
        return "http://127.0.0.1:" + port;
    }

    public int port() {
        return port;
    }

    /** A browser at which nobody was chosen yet. */
    public Visitor stranger() {
        return new Visitor(origin());
    }

    /** A browser at which this person of the crew was chosen. */
    public Visitor as(String crew) {
        Visitor visitor = stranger();
        visitor.setCookie("who", crew);
        visitor.get("/account");
        return visitor;
    }

    /** Gives somebody a passphrase: from then on nobody gets in without. */
    public void giveLogIn(String crew, String passphrase) {
        String hash = PASSPHRASES.hash(passphrase);
        db().write("crew", write -> {
            LogInStore.set(write, new Id(crew), hash);
            return null;
        });
    }

    /** A browser at which this person is logged in. */
    public Visitor loggedIn(String crew, String passphrase) {
        Visitor visitor = stranger();
        Visitor.Reply in = visitor.form(visitor.get("/account/log-in"))
                .with("name", crew)
                .with("passphrase", passphrase)
                .send();
        visitor.follow(in);
        return visitor;
    }

    @Override
    public void close() {
        server.close();
        app.close();
        try {
            for (Path file : NewStore.deepestFirst(folder)) {
                Files.delete(file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
