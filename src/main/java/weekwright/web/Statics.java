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
            return new Answer.Body(200, type, in.readAllBytes(), Map.of("Cache-Control", "max-age=3600"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
