package weekwright.web.kit;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.eclipse.jetty.http.HttpField;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.server.internal.ResponseHttpFields;
import org.eclipse.jetty.util.Callback;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Stands before everything else in the server: puts the header set on every answer, the web server's own included, and
 * turns away requests that name another host, so that a page of a foreign site whose name was made to point here gets
 * nothing (DNS rebinding).
 */
public final class Guard extends Handler.Wrapper {
    private static final Logger LOG = LoggerFactory.getLogger("weekwright.web");
    private static final String CSP = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob:;"
            + " connect-src 'self'; font-src 'self'; media-src blob:; manifest-src 'self'; worker-src 'self'; form-action"
            + " 'self'; base-uri 'none'; frame-ancestors 'none'";

    /** The headers of every answer. */
    public static final Map<String, String> HEADERS = headers();

    /** For a year browsers ask this name by https alone (RFC 6797); sent only where the server speaks TLS itself. */
    private static final HttpField HTTPS_FROM_NOW_ON =
            new ResponseHttpFields.PersistentHttpField(new HttpField("Strict-Transport-Security", "max-age=31536000"));

    private final Set<String> hosts;
    private final boolean proxy;
    private final boolean tls;

    /** @param front by which names this server may be called; a proxy's word for the name counts where one stands before it */
    public Guard(Front front) {
        hosts = front.names();
        proxy = front.proxy();
        tls = front.tls();
    }

    private static Map<String, String> headers() {
        Map<String, String> all = new LinkedHashMap<>();
        all.put("Content-Security-Policy", CSP);
        all.put("X-Content-Type-Options", "nosniff");
        all.put("Referrer-Policy", "same-origin");
        all.put("Cross-Origin-Resource-Policy", "same-origin");
        all.put("Permissions-Policy", "camera=(), geolocation=(), microphone=(), payment=(), usb=()");
        all.put("Vary", "Accept-Encoding");
        return all;
    }

    /** Puts the header set on an answer so that no later reset of the answer takes it off. */
    public static Request customize(Request request, HttpFields.Mutable response) {
        HEADERS.forEach(
                (name, value) -> response.put(new ResponseHttpFields.PersistentHttpField(new HttpField(name, value))));
        return request;
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) throws Exception {
        if (tls) {
            response.getHeaders().put(HTTPS_FROM_NOW_ON);
        }
        String forwarded = proxy ? request.getHeaders().get("X-Forwarded-Host") : null;
        if (isOurs(request.getHeaders().get(HttpHeader.HOST)) && (forwarded == null || isOurs(forwarded))) {
            return super.handle(request, response, callback);
        }
        LOG.info("a request under a name that is not ours refused with 421");
        response.setStatus(421);
        response.getHeaders().put(HttpHeader.CONTENT_TYPE, "text/plain; charset=utf-8");
        response.getHeaders().put(HttpHeader.CACHE_CONTROL, "no-store");
        Content.Sink.write(response, true, sentence(), callback);
        return true;
    }

    private String sentence() {
        Set<String> all = new TreeSet<>(hosts);
        all.removeAll(Set.of("localhost", "127.0.0.1", "[::1]"));
        return all.isEmpty()
                ? "This server answers to localhost, 127.0.0.1 and [::1] alone.\n"
                : "This server does not answer to that name. Open it by its address, or start it with --name and that"
                        + " name.\n";
    }

    private boolean isOurs(String host) {
        if (host == null) {
            return false;
        }
        String name = host.strip().toLowerCase(Locale.ROOT).replaceFirst(":[0-9]{1,5}$", "");
        String cut = name.endsWith(".") ? name.substring(0, name.length() - 1) : name;
        return cut.equals("localhost") || cut.equals("127.0.0.1") || cut.equals("[::1]") || hosts.contains(cut);
    }

    /** The web server's own refusals (an unreadable request, an address or a head too long) in plain words. */
    public static final class Errors extends ErrorHandler {
        @Override
        public boolean handle(Request request, Response response, Callback callback) {
            HEADERS.forEach((name, value) -> {
                if (!response.getHeaders().contains(name)) {
                    response.getHeaders().put(name, value);
                }
            });
            response.getHeaders().put(HttpHeader.CONTENT_TYPE, "text/plain; charset=utf-8");
            response.getHeaders().put(HttpHeader.CACHE_CONTROL, "no-store");
            Content.Sink.write(response, true, sentence(response.getStatus()), callback);
            return true;
        }

        private static String sentence(int status) {
            return switch (status) {
                case 404 -> "Nothing stands at this address.\n";
                case 414 -> "This address is too long.\n";
                case 431 -> "The head of this request is too large.\n";
                case 500 -> "Something in the program failed. Nothing was saved.\n";
                default -> "This request cannot be read (" + status + ").\n";
            };
        }
    }
}
