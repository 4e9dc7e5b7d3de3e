package weekwright.web.start;

import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** What an empty folder can become: a new project, one from plain files, a copy of the sample. */
public final class StartPage implements Page {
    private final NewProject start;

    /** @param start the folder that is served */
    public StartPage(NewProject start) {
        this.start = start;
    }

    /** @param folder where the project will stand, as the person knows it */
    public record View(Form sample, String folder) {}

    @Override
    public View show(Request request) {
        onlyWithoutProject(request);
        return new View(request.form("sample"), start.folder().path().toString());
    }

    @Override
    public Answer submit(Request request) throws Exception {
        onlyWithoutProject(request);
        request.form().check();
        start.copySample(request.clock());
        return Answer.to(Saved.to("/ahead").saying("The sample is copied. Its dates stand around 25 November 2026."));
    }

    /** Once there is a project these pages are over. */
    static void onlyWithoutProject(Request request) {
        if (request.hasProject()) {
            throw new Request.Elsewhere(Saved.to("/ahead"));
        }
    }
}
