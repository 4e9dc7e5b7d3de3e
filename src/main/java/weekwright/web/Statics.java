package weekwright.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.regex.Pattern;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Fragment;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Request;

/** Scripts, fonts and marks packed with the program, from its resources under {@code static/}. */
final class Statics implements Fragment {
    private static final Pattern NAME = Pattern.compile("[a-z0-9][a-z0-9-]*(/[a-z0-9][a-z0-9-]*)*\\.[a-z0-9]{2,11}");
    /** It stands before every page, not only before what lies beside it. */
    private static final String WORKER = "worker.js";

    private static final Map<String, String> TYPES = Map.of(
            "js", "text/javascript; charset=utf-8",
            "svg", "image/svg+xml; charset=utf-8",
            "woff2", "font/woff2",
            "png", "image/png",
            "webmanifest", "application/manifest+json; charset=utf-8");

    @Override
    public Answer answer(Request request) {
        String file = request.part("file");
        String type = TYPES.get(file.substring(file.lastIndexOf('.') + 1));
        if (type == null || !NAME.matcher(file).matches()) {
            throw new NotFound("There is no file " + file + ".");
        }
        try (InputStream in = Statics.class.getResourceAsStream("/static/" + file)) {
            if (in == null) {
                throw new NotFound("There is no file " + file + ".");
            }
            return new Answer.Body(200, type, in.readAllBytes(), headers(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Letters stay as they are; a page that has to wait for them is drawn with others. */
    private static Map<String, String> headers(String file) {
        if (file.equals(WORKER)) {
            return Map.of("Cache-Control", "no-cache", "Service-Worker-Allowed", "/");
        }
        return Map.of("Cache-Control", file.endsWith(".woff2") ? "max-age=31536000, immutable" : "max-age=3600");
    }
}
