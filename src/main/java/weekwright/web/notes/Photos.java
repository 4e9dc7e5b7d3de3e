package weekwright.web.notes;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.util.Map;
import weekwright.files.picture.PhotoFiles;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Fragment;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Request;

/** The pictures of the project's folder, as copies without position and other tags; an original is never given out. */
public final class Photos implements Fragment {
    private final PhotoFiles.Size size;

    public Photos(PhotoFiles.Size size) {
        this.size = size;
    }

    static PhotoFiles files(Request request) {
        return new PhotoFiles(request.project().folder().photos());
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
