package weekwright.web.notes;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Fragment;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Request;

/** The pictures of the project's folder. Only plain files of its photos folder with a picture's ending are given out. */
public final class Photos implements Fragment {
    private static final String NAME = "[\\p{L}\\p{Nd}_-][\\p{L}\\p{Nd}._-]{0,199}";
    private static final Map<String, String> TYPES =
            Map.of("jpg", "image/jpeg", "jpeg", "image/jpeg", "png", "image/png", "webp", "image/webp");

    @Override
    public Answer answer(Request request) {
        String name = request.part("file");
        String type = TYPES.get(name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT));
        Path file = name.matches(NAME) && type != null
                ? request.project().folder().photos().resolve(name)
                : Path.of("");
        if (type == null || !name.matches(NAME) || !Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            throw new NotFound("There is no picture of that name.");
        }
        try {
            return new Answer.Body(
                    200, type, Files.readAllBytes(file), Map.of("Cache-Control", "private, max-age=3600"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
