package weekwright.campaign;

import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.CountDownLatch;
import weekwright.App;
import weekwright.render.Templates;
import weekwright.testkit.WritingConnection;
import weekwright.web.Server;

/** The planted breach: the same server, whose writing connection syncs as {@code synchronous=NORMAL} does, not at each commit. */
public final class NormalServer {
    private NormalServer() {}

    /** @param args as those of {@code serve FOLDER --port N} */
    public static void main(String[] args) throws Exception {
        App app = new App(Path.of(args[1]), Clock.systemUTC(), Templates.packed(), false);
        WritingConnection.set(app.project().orElseThrow(), "PRAGMA synchronous = NORMAL");
        Server server = Server.start(app, "127.0.0.1", Integer.parseInt(args[3]));
        System.out.println("weekwright serves " + args[1] + " at " + server.address());
        new CountDownLatch(1).await();
    }
}
