package weekwright.web.notes;

import java.io.IOException;
import java.io.InputStream;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weekwright.base.Refused;
import weekwright.files.KeptFiles;
import weekwright.files.picture.PhotoFiles;
import weekwright.files.picture.PictureFacts;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Request;
import weekwright.web.kit.Upload;

/** The pictures that came with a form: looked at, then kept as files. */
final class SentPictures {
    static final String FIELD = "pictures";
    private static final int MOST_AT_ONCE = 12;

    private SentPictures() {}

    /** A picture that came, with its place among them. */
    record Sent(int place, Upload upload, PictureFacts facts) {}

    /** A picture whose file is kept. */
    record Kept(int place, String file, Optional<LocalDate> takenOn) {}

    /** Looks at all that came; what cannot be kept is a fault each. */
    static List<Sent> read(Request request, FormReader form) throws IOException {
        // without a script some browsers send the name of the file as a text field
        form.text(FIELD);
        List<Upload> uploads = request.uploads(FIELD);
        if (uploads.isEmpty()) {
            form.fault(FIELD, "", "is missing", "choose or take a picture");
        } else if (uploads.size() > MOST_AT_ONCE) {
            form.fault(FIELD, uploads.size() + " files", "are too many at once", "send " + MOST_AT_ONCE + " at a time");
        }
        List<Sent> good = new ArrayList<>();
        for (int place = 0; place < uploads.size(); place++) {
            Upload upload = uploads.get(place);
            if (upload.bytes() > KeptFiles.MOST_BYTES) {
                form.fault(FIELD, upload.name(), "is larger than 25 MB", "save it smaller");
            } else if (upload.bytes() == 0) {
                form.fault(FIELD, upload.name(), "is empty", "choose the picture once more");
            } else {
                try (InputStream in = upload.content().get()) {
                    good.add(new Sent(place, upload, PictureFacts.read(in)));
                } catch (Refused e) {
                    form.fault(FIELD, upload.name(), e.rule(), e.remedy());
                }
            }
        }
        return good;
    }

    /** Keeps all of them, or adds faults and keeps none. */
    static List<Kept> keep(Request request, FormReader form, List<Sent> good) throws IOException {
        PhotoFiles files = Photos.files(request);
        List<Kept> kept = new ArrayList<>();
        for (Sent one : good) {
            try (InputStream in = one.upload().content().get()) {
                String file = files.keep(in, one.facts(), one.facts().takenOn().orElse(request.today()));
                kept.add(new Kept(one.place(), file, one.facts().takenOn()));
            } catch (Refused e) {
                form.fault(FIELD, one.upload().name(), e.rule(), e.remedy());
            }
        }
        return kept;
    }
}
