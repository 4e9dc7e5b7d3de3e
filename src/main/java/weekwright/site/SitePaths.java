package weekwright.site;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import weekwright.site.PublicLog.Entry;

/** Where things stand in the build log, from its own folder. */
final class SitePaths {
    private SitePaths() {}

    /** The name of a note's page, in {@code notes/} or the supporters' folder. */
    static String file(Entry entry) {
        return entry.note().id().folded() + ".html";
    }

    static String path(PublicStage stage) {
        return "stages/" + stage.id().folded() + ".html";
    }

    static String year(int year) {
        return "years/" + year + ".html";
    }

    /** A path as an address has it. */
    static String link(String path) {
        List<String> parts = new ArrayList<>();
        for (String part : path.split("/")) {
            parts.add(URLEncoder.encode(part, StandardCharsets.UTF_8).replace("+", "%20"));
        }
        return String.join("/", parts);
    }
}
