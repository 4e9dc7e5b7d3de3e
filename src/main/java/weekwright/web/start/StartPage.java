package weekwright.web.start;

import weekwright.render.Form;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** What an empty folder can become: a new project, one from plain files, a copy of the sample. */
public final class StartPage implements Page {
    private final String folder;

    /** @param folder where the project will stand, as the person knows it */
    public StartPage(String folder) {
        this.folder = folder;
    }

    public record View(Form sample, String folder) {}

    @Override
    public View show(Request request) {
        onlyWithoutProject(request);
        return new View(request.form("sample"), folder);
    }

    /** Once there is a project these pages are over. */
    static void onlyWithoutProject(Request request) {
        if (request.hasProject()) {
            throw new Request.Elsewhere(Saved.to("/ahead"));
        }
    }
}
