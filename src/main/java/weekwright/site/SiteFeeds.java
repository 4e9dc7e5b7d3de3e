package weekwright.site;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import weekwright.base.Id;
import weekwright.site.PublicLog.Entry;

/** What other programs read of the build log: its feed, and its site map. */
final class SiteFeeds {
    private static final int FEED_MOST = 50;

    private SiteFeeds() {}

    /** The newest notes that everyone may read, whole. */
    static byte[] feed(PublicLog log, SitePages pages) {
        LocalDate began = log.notes().isEmpty()
                ? log.today()
                : log.notes().get(log.notes().size() - 1).since();
        return AtomFeed.of(
                new AtomFeed.Head(log.key(), log.project(), log.address(), log.project(), began),
                log.notes().stream()
                        .sorted(Comparator.comparing(Entry::since).reversed())
                        .limit(FEED_MOST)
                        .map(entry -> new AtomFeed.Entry(
                                id(entry),
                                entry.note().title(),
                                SitePaths.link("notes/" + SitePaths.file(entry)),
                                entry.since(),
                                entry.by(),
                                pages.html(entry, log.address())))
                        .toList());
    }

    private static String id(Entry entry) {
        Id id = entry.note().id();
        return "note " + id.folded();
    }

    /** A site map (sitemaps.org, protocol 0.9) of the pages for everyone. */
    static byte[] siteMap(PublicLog log, List<String> paths) {
        StringBuilder xml = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                + "<urlset xmlns=\"http://www.sitemaps.org/schemas/sitemap/0.9\">\n");
        paths.forEach(path -> xml.append("<url><loc>")
                .append((log.address() + SitePaths.link(path)).replace("&", "&amp;"))
                .append("</loc></url>\n"));
        return xml.append("</urlset>\n").toString().getBytes(StandardCharsets.UTF_8);
    }
}
