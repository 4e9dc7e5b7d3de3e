package weekwright.web;

import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.SizeUnit;
import io.javalin.http.ContentTooLargeResponse;
import io.javalin.http.HttpResponseException;
import io.javalin.http.MethodNotAllowedResponse;
import java.net.BindException;
import java.util.List;
import java.util.Optional;
import org.eclipse.jetty.server.AbstractConnector;
import org.eclipse.jetty.server.Connector;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.SecureRequestCustomizer;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.SslConnectionFactory;
import org.eclipse.jetty.server.handler.GracefulHandler;
import org.eclipse.jetty.util.ssl.SslContextFactory;
import weekwright.App;
import weekwright.web.account.AccountConfirmPage;
import weekwright.web.account.AccountLogInPage;
import weekwright.web.help.HelpTopics;
import weekwright.web.kit.Desk;
import weekwright.web.kit.Front;
import weekwright.web.kit.Guard;
import weekwright.web.kit.Project;

/** The web server of one {@link App}. */
public final class Server implements AutoCloseable {
    /** The port unless another is asked for. */
    public static final int PORT = 8347;

    private static final long BODY_MOST = 1_000_000;
    private static final int STOP_MILLIS = 5_000;
    private static final int IDLE_MILLIS = 100;

    private final Javalin javalin;
    private final String host;
    private final boolean tls;

    /** The port is taken; the message is the sentence for the person. */
    public static final class PortTaken extends Exception {
        private static final long serialVersionUID = 1L;

        PortTaken(int port) {
            super("Port " + port + " is taken by another program. Choose another with --port, or 0 for a free one.");
        }
    }

    private Server(Javalin javalin, String host, boolean tls) {
        this.tls = tls;
        this.javalin = javalin;
        this.host = host;
    }

    /**
     * Starts serving.
     *
     * @param host the address to listen on, 127.0.0.1 for this machine alone
     * @param port 0 for a free one
     */
    public static Server start(App app, String host, int port) throws PortTaken {
        return start(app, host, port, new Routes(app));
    }

    static Server start(App app, String host, int port, Routes routes) throws PortTaken {
        return start(app, new Listening(host, port, List.of(), false), routes);
    }

    /** Starts serving for more than this machine. */
    public static Server start(App app, Listening listening) throws PortTaken {
        return start(app, listening, new Routes(app));
    }

    private static Server start(App app, Listening listening, Routes routes) throws PortTaken {
        Front front = listening.front();
        int port = listening.port();
        Desk desk = new Desk(
                app.templates(),
                app.clock(),
                () -> app.project()
                        .map(db -> new Project(app.folder(), db, app.forecasts().orElseThrow(), app.backupTrouble())),
                Routes.sampleNotice(app),
                HelpTopics::of,
                Provenance::of,
                front,
                new AccountLogInPage(app.entrance()),
                new AccountConfirmPage(app.entrance()),
                app.entrance());
        Javalin javalin = Javalin.create(config -> configure(config, listening, front, desk, routes));
        try {
            javalin.start();
        } catch (RuntimeException e) {
            for (Throwable cause = e; cause != null; cause = cause.getCause()) {
                if (cause instanceof BindException) {
                    throw new PortTaken(port);
                }
            }
            throw e;
        }
        return new Server(javalin, listening.host(), listening.certificate().isPresent());
    }

    private static void configure(JavalinConfig config, Listening listening, Front front, Desk desk, Routes routes) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.http.maxRequestSize = BODY_MOST;
        config.http.prefer405over404 = true;
        config.http.defaultContentType = "text/plain; charset=utf-8";
        listening
                .certificate()
                .ifPresent(certificate -> config.jetty.addConnector((server, http) -> {
                    ServerConnector connector = secure(server, http, certificate);
                    connector.setHost(listening.host());
                    connector.setPort(listening.port());
                    return connector;
                }));
        config.jetty.host = listening.host();
        config.jetty.port = listening.port();
        config.jetty.multipartConfig.maxFileSize(40, SizeUnit.MB);
        config.jetty.multipartConfig.maxTotalRequestSize(160, SizeUnit.MB);
        config.jetty.multipartConfig.maxInMemoryFileSize(1, SizeUnit.MB);
        config.jetty.modifyServer(server -> {
            server.setStopTimeout(STOP_MILLIS);
            server.insertHandler(new GracefulHandler());
            server.insertHandler(new Guard(front));
            server.setErrorHandler(new Guard.Errors());
        });
        config.jetty.modifyHttpConfiguration(http -> {
            http.setSendServerVersion(false);
            http.setSendXPoweredBy(false);
            http.addCustomizer((request, response) -> Guard.customize(request, response));
        });
        config.jetty.modifyServletContextHandler(handler -> handler.setErrorHandler(new Guard.Errors()));
        var to = config.routes;
        for (Routes.Line line : routes.pages()) {
            to.get(line.path(), context -> desk.show(context, line.path(), line.access(), line.page()));
            if (line.posts()) {
                Desk.Needed needed = new Desk.Needed(line.submitting(), line.confirmed());
                to.post(line.path(), context -> desk.submit(context, line.path(), needed, line.page()));
            }
        }
        for (Routes.Other other : routes.others()) {
            to.get(other.path(), context -> desk.fragment(context, other.path(), other.access(), other.fragment()));
        }
        to.exception(MethodNotAllowedResponse.class, (e, context) -> {
            context.header(
                    "Allow",
                    Optional.ofNullable(e.getDetails().get("availableMethods")).orElse("GET, HEAD"));
            desk.unknown(context, 405);
        });
        to.exception(ContentTooLargeResponse.class, (e, context) -> desk.unknown(context, 413));
        to.exception(HttpResponseException.class, (e, context) -> desk.unknown(context, e.getStatus()));
    }

    /** TLS 1.2 and 1.3; which host was meant is looked at by {@link Guard}. */
    private static ServerConnector secure(
            org.eclipse.jetty.server.Server server, HttpConfiguration http, Certificate certificate) {
        SslContextFactory.Server tls = new SslContextFactory.Server();
        tls.setKeyStore(certificate.store());
        tls.setKeyStorePassword(Certificate.PASSWORD);
        tls.setIncludeProtocols("TLSv1.2", "TLSv1.3");
        http.addCustomizer(new SecureRequestCustomizer(false));
        return new ServerConnector(server, new SslConnectionFactory(tls, "http/1.1"), new HttpConnectionFactory(http));
    }

    public int port() {
        return javalin.port();
    }

    /** The address to open in a browser. */
    public String address() {
        return (tls ? "https://" : "http://") + (host.equals("0.0.0.0") || host.equals("::") ? "localhost" : host) + ":"
                + port() + "/";
    }

    /** Finishes the requests under way, at most five seconds, and stops. */
    @Override
    public void close() {
        // browsers keep connections open; those without a request do not hold the end up
        for (Connector connector : javalin.jettyServer().server().getConnectors()) {
            if (connector instanceof AbstractConnector one) {
                one.setShutdownIdleTimeout(IDLE_MILLIS);
            }
        }
        javalin.stop();
    }
}
