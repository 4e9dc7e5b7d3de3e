package weekwright.web.help;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import weekwright.render.Frame;
import weekwright.web.kit.Access;
import weekwright.web.kit.Request;

/** The pages of the help: which sheets each explains, and who may read it. */
public final class HelpTopics {
    /**
     * A page of the help; its text is {@code templates/help/texts/NAME.md}.
     *
     * @param name as it stands in the address: {@code public-log}
     * @param title as links say it: {@code The public build log}
     * @param access whoever may open one of its sheets may read it, so a helper's tell of no money
     * @param sheets the beginnings of the addresses it explains; {@code *} stands for any one part
     */
    public record Topic(String name, String title, Access access, List<String> sheets) {
        Topic(String name, String title, Access access, String... sheets) {
            this(name, title, access, List.of(sheets));
        }
    }

    private static final List<Topic> ALL = List.of(
            new Topic("ahead", "Ahead", Access.CREW, "/ahead"),
            new Topic("week", "Week", Access.HELPER, "/week"),
            new Topic("log", "Log", Access.HELPER, "/log"),
            new Topic("build", "Build", Access.HELPER, "/build"),
            new Topic(
                    "materials",
                    "Materials and the yard",
                    Access.CREW,
                    "/build/stock",
                    "/build/materials",
                    "/build/stages/*/materials",
                    "/build/tasks/*/materials",
                    "/build/gifts"),
            new Topic("episodes", "Episodes", Access.CREW, "/episodes"),
            new Topic("funds", "Funds", Access.CREW, "/funds"),
            new Topic("supporters", "Supporters", Access.CREW, "/funds/supporters", "/funds/levels"),
            new Topic(
                    "books",
                    "The books",
                    Access.CREW,
                    "/funds/ledger",
                    "/funds/entries",
                    "/funds/costs",
                    "/funds/receipts",
                    "/funds/files",
                    "/funds/regular",
                    "/funds/balance",
                    "/funds/months",
                    "/funds/years"),
            new Topic("purchases", "Purchases", Access.CREW, "/funds/orders", "/funds/purchases", "/funds/suppliers"),
            new Topic("notes", "Notes", Access.CREW, "/notes"),
            new Topic("public-log", "The public build log", Access.CREW, "/notes/public"),
            new Topic("crew", "Crew and days", Access.CREW, "/crew"),
            new Topic("safety", "Safety", Access.CREW, "/crew/safety", "/crew/incidents", "/crew/cautions"),
            new Topic("log-ins", "Log-ins and calendars", Access.CREW, "/crew/log-ins", "/crew/calendars"),
            new Topic("files", "Files and backups", Access.CREW, "/crew/backups"),
            new Topic("settings", "Settings", Access.CREW, "/crew/settings"),
            new Topic("history", "History", Access.CREW, "/crew/history"),
            new Topic("search", "Search", Access.HELPER, "/search"),
            new Topic("account", "Your log-in", Access.HELPER, "/account"),
            new Topic("start", "A new project", Access.CREW, "/start"));

    private HelpTopics() {}

    /** Those that somebody may read, in the order of the sheets. */
    static List<Topic> readableBy(Access access) {
        return ALL.stream().filter(topic -> access.covers(topic.access())).toList();
    }

    /** The topic of this name, whoever asks. */
    static Optional<Topic> named(String name) {
        return ALL.stream().filter(topic -> topic.name().equals(name)).findFirst();
    }

    /** What explains the sheet that was asked for; empty before strangers, and on the help itself. */
    public static Optional<Frame.Help> of(Request request) {
        if (request.access() == Access.PUBLIC) {
            return Optional.empty();
        }
        return at(request.address())
                .filter(topic -> request.access().covers(topic.access()))
                .map(topic -> new Frame.Help(topic.name(), topic.title()));
    }

    /** The topic with the longest beginning of this address. */
    static Optional<Topic> at(String address) {
        return ALL.stream()
                .filter(topic -> parts(topic, address) > 0)
                .max(Comparator.comparingInt(topic -> parts(topic, address)));
    }

    /** How many parts of the address the topic's best fitting sheet covers; 0 for none. */
    private static int parts(Topic topic, String address) {
        return topic.sheets().stream()
                .mapToInt(sheet -> parts(sheet, address))
                .max()
                .orElse(0);
    }

    private static int parts(String sheet, String address) {
        String[] wanted = sheet.substring(1).split("/");
        String[] is = address.substring(1).split("/");
        for (int i = 0; i < wanted.length; i++) {
            if (i >= is.length || !wanted[i].equals("*") && !wanted[i].equals(is[i])) {
                return 0;
            }
        }
        return wanted.length;
    }
}
