package weekwright.web.notes;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import weekwright.files.picture.PhotoFiles;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Fragment;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Request;

/** The pictures of the project's folder, as copies without position and other tags; an original is never given out. */
public final class Photos implements Fragment {
    private static final Pattern PICTURE = Pattern.compile("<img src=\"/photos/([^\"/]+)\"");

    private final PhotoFiles.Size size;

    public Photos(PhotoFiles.Size size) {
        this.size = size;
    }

    static PhotoFiles files(Request request) {
        return new PhotoFiles(request.project().folder().photos());
    }

    /** The attributes that keep a picture's place until it is there; empty where its file is not. */
    static String place(Request request, String file, PhotoFiles.Size size) {
        try {
            return files(request).box(file, size).map(PhotoFiles.Box::place).orElse("");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A text as a page, each of its pictures with its place kept. */
    static String inPlace(Request request, String html) {
        return PICTURE.matcher(html)
                .replaceAll(match -> Matcher.quoteReplacement(match.group()
                        + place(
                                request,
                                URLDecoder.decode(match.group(1), StandardCharsets.UTF_8),
                                PhotoFiles.Size.PAGE)));
    }

    @Override
    public Answer answer(Request request) {
        try {
            PhotoFiles.Copy copy = files(request)
                    .copy(request.part("file"), size)
                    .orElseThrow(() -> new NotFound("There is no picture of that name."));
            return new Answer.Body(
                    200,
                    copy.kind().type(),
                    Files.readAllBytes(copy.file()),
                    Map.of("Cache-Control", "private, max-age=3600", "Content-Disposition", "inline"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
