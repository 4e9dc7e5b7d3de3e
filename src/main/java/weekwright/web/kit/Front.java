package weekwright.web.kit;

import io.javalin.http.Context;
import java.util.Arrays;
import java.util.Set;

/**
 * How the server is reached.
 *
 * @param names by which it may be called besides localhost, 127.0.0.1 and [::1], in lower case
 * @param beyond whether others than this machine reach it, so that nobody gets in without a log-in
 * @param proxy whether a proxy stands before it, which says how it was reached; else such headers count for nothing
 * @param tls whether it speaks TLS itself
 */
public record Front(Set<String> names, boolean beyond, boolean proxy, boolean tls) {
    private static final String HTTPS = "weekwright.https";

    public Front {
        names = Set.copyOf(names);
    }

    /** Writes down for this request whether the browser came by https. */
    void mark(Context context) {
        context.attribute(HTTPS, tls || proxy && "https".equalsIgnoreCase(last(context, "X-Forwarded-Proto")));
    }

    static boolean https(Context context) {
        return Boolean.TRUE.equals(context.attribute(HTTPS));
    }

    /** The host as the browser named it. */
    String host(Context context) {
        String forwarded = proxy ? last(context, "X-Forwarded-Host") : "";
        String host = context.header("Host");
        return forwarded.isEmpty() ? host == null ? "" : host : forwarded;
    }

    /** Where the request came from: the address, of IPv6 its network of 64 bits. */
    String address(Context context) {
        String forwarded = proxy ? last(context, "X-Forwarded-For") : "";
        String address = forwarded.isEmpty() ? context.ip() : forwarded;
        String[] parts = address.split(":");
        return parts.length > 4 ? String.join(":", Arrays.copyOf(parts, 4)) : address;
    }

    /** What the nearest proxy said: the last of a list. */
    private static String last(Context context, String header) {
        String value = context.header(header);
        return value == null ? "" : value.substring(value.lastIndexOf(',') + 1).strip();
    }
}
