package weekwright.web.kit;

import io.javalin.http.Context;
import java.io.IOException;
import java.io.InputStream;
import java.util.concurrent.TimeUnit;

/**
 * The rest of a body that was refused before all of it was read. A connection closed on somebody who still sends is
 * reset, and a reset throws away the answer on its way (RFC 9112 section 9.6): so the rest is read and forgotten first,
 * within limits of size and time.
 */
final class Unread {
    /** More than the largest form that is taken. */
    private static final long MOST_BYTES = 200_000_000;

    private static final long MOST_NANOS = TimeUnit.SECONDS.toNanos(20);

    private static final int PIECE = 65_536;

    private Unread() {}

    /** Reads to the end of the body, or as far as the limits go. */
    static void forget(Context context) {
        byte[] piece = new byte[PIECE];
        long until = System.nanoTime() + MOST_NANOS;
        try {
            InputStream body = context.req().getInputStream();
            long read = 0;
            while (read < MOST_BYTES && System.nanoTime() - until < 0) {
                int more = body.read(piece);
                if (more < 0) {
                    return;
                }
                read += more;
            }
        } catch (IOException | IllegalStateException gone) {
            // the sender has gone, or a reader has taken the stream to its end
        }
    }
}
