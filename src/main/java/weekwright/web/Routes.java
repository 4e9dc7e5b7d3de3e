package weekwright.web;

import java.util.List;
import java.util.Optional;
import weekwright.App;
import weekwright.web.account.AccountPage;
import weekwright.web.kit.Access;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Fragment;
import weekwright.web.kit.Page;
import weekwright.web.log.LogEntryEditPage;
import weekwright.web.log.LogPage;
import weekwright.web.parts.Outlook;
import weekwright.web.start.StartNewPage;
import weekwright.web.start.StartPage;

/** The one list of all addresses, with who may use each. A new page is a line here. */
public final class Routes {
    private static final String SAMPLE =
            "This is the sample: an invented crew rebuilds an oak water mill. Its clock began"
                    + " on 25 November 2026. Change what you like; it is gone when the program stops.";

    private final List<Line> pages;
    private final List<Other> others;

    /**
     * A page.
     *
     * @param posts whether it takes posts too
     */
    public record Line(String path, Access access, boolean posts, Page page) {}

    /** An address that is no page; it answers GET and HEAD. */
    public record Other(String path, Access access, Fragment fragment) {}

    /** @param app over any folder, an empty one too */
    public Routes(App app) {
        Outlook outlook = outlook(app);
        pages = List.of(
                form("/account", Access.PUBLIC, new AccountPage()),
                sheet("/start", Access.PUBLIC, new StartPage(app.folder().path().toString())),
                form("/start/new", Access.PUBLIC, new StartNewPage(app::create)),
                form("/log", Access.HELPER, new LogPage(outlook)),
                form("/log/entries/{row}/edit", Access.HELPER, new LogEntryEditPage()));
        others = List.of(
                new Other("/", Access.PUBLIC, request -> Answer.to("/ahead")),
                new Other("/css/{name}", Access.PUBLIC, new Styles(app.templates())),
                new Other("/static/<file>", Access.PUBLIC, new Statics()));
    }

    private static Outlook outlook(App app) {
        return request -> Optional.empty();
    }

    Routes(List<Line> pages, List<Other> others) {
        this.pages = List.copyOf(pages);
        this.others = List.copyOf(others);
    }

    private static Line sheet(String path, Access access, Page page) {
        return new Line(path, access, false, page);
    }

    private static Line form(String path, Access access, Page page) {
        return new Line(path, access, true, page);
    }

    /** Every page, in the order of the sheets. */
    public List<Line> pages() {
        return pages;
    }

    /** Style sheets, scripts, fonts, pictures, JSON, redirects: no template belongs to them. */
    public List<Other> others() {
        return others;
    }

    static Optional<String> sampleNotice(App app) {
        return app.sample() ? Optional.of(SAMPLE) : Optional.empty();
    }
}
