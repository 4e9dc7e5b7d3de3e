package weekwright.web;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import weekwright.App;
import weekwright.render.Frame;
import weekwright.web.account.AccountPage;
import weekwright.web.kit.Access;
import weekwright.web.kit.Answer;
import weekwright.web.kit.Fragment;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;

/** The one list of all addresses, with who may use each. A new page is a line here. */
public final class Routes {
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
        pages = List.of(form("/account", Access.PUBLIC, new AccountPage()));
        others = List.of(
                new Other("/", Access.PUBLIC, request -> Answer.to("/ahead")),
                new Other("/css/{name}", Access.PUBLIC, new Styles(app.templates())),
                new Other("/static/<file>", Access.PUBLIC, new Statics()));
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
        return Optional.empty();
    }

    static Function<Request, List<Frame.Cell>> provenance(App app) {
        return request -> List.of();
    }
}
