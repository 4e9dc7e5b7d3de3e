package weekwright.site;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.NodeList;
import weekwright.base.Id;
import weekwright.db.Db;
import weekwright.db.Folder;
import weekwright.db.FolderRefused;
import weekwright.db.Stale;
import weekwright.db.Write;
import weekwright.forecast.Forecasts;
import weekwright.funds.LedgerEntry;
import weekwright.funds.LedgerEntryStore;
import weekwright.notes.NoteStore;
import weekwright.notes.Photo;
import weekwright.notes.PhotoStore;
import weekwright.render.Templates;
import weekwright.testkit.CameraPicture;
import weekwright.testkit.Requirement;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.SmallProject;

class SiteTest {
    private static final Templates TEMPLATES = Templates.packed();
    private static final String ALL_ON = "stages landing episodes thanks drawing moved rung pledge";

    @TempDir
    Path folder;

    private Db db;

    @BeforeEach
    void open() throws Exception {
        db = new Folder(folder.resolve("project")).create(ServerFixture.CLOCK);
        PublicProject.fill(db);
    }

    @AfterEach
    void close() {
        db.close();
    }

    private Site site() {
        return Site.of(
                db, new Folder(folder.resolve("project")), TEMPLATES, picture -> Optional.empty(), PublicProject.TODAY);
    }

    private void allOn() {
        List<String> pairs = new ArrayList<>(List.of("address", "https://weir.example/log"));
        for (String column : ALL_ON.split(" ")) {
            pairs.addAll(List.of(column, "yes"));
        }
        PublicProject.switches(db, pairs.toArray(String[]::new));
    }

    private static String text(Site site, String path) {
        return new String(site.at(path).orElseThrow(), StandardCharsets.UTF_8);
    }

    private static Document page(Site site, String path) {
        return Jsoup.parse(text(site, path));
    }

    @Test
    void only_notes_for_everyone_whose_day_or_film_has_come_are_public_and_all_else_is_off() {
        Site site = site();
        assertThat(site.paths().stream().filter(path -> !path.startsWith("assets/")))
                .containsExactly(
                        "index.html",
                        "notes/n.all.html",
                        "notes/n.out.html",
                        "stages/weir.html",
                        "years/2026.html",
                        "feed.xml");
        Document index = page(site, "index.html");
        assertThat(index.select("h3").eachText()).containsExactly("Sill stones", "Told already");
        assertThat(index.select("h2").eachText()).containsExactly("Notes");
        assertThat(page(site, "stages/weir.html").select(".lead")).isEmpty();
        assertThat(page(site, "notes/n.out.html").select(".by").text()).isEqualTo("16 Oct 2026 · B. · Weir");
    }

    @Test
    @Requirement({"14.1.1", "14.1.2"})
    void nothing_that_is_not_public_stands_in_any_file_with_everything_switched_on() {
        allOn();
        Site site = site();
        for (String path : site.paths()) {
            if (path.startsWith("assets/")) {
                continue;
            }
            assertThat(text(site, path))
                    .as(path)
                    .doesNotContain(
                            "SECRET",
                            "SUPPORTERS",
                            "Ilse",
                            "Noor",
                            "Boards for the gate",
                            "Mill lane",
                            "4000",
                            "/build/")
                    .doesNotContainPattern("(?<![:T\\d])\\b\\d{1,2}:\\d{2}\\b(?!:)")
                    .doesNotContain("<script");
        }
    }

    @Test
    void what_is_switched_on_stands_on_the_first_page() {
        allOn();
        Site site = site();
        Document index = page(site, "index.html");
        assertThat(index.select(".parts li").eachText())
                .containsExactly("Weir in hand, 33 hours done, about 17 hours to go", "Sluice gate to come");
        assertThat(index.select("section[aria-labelledby=thanks] li").eachText())
                .containsExactly("Oak: the upper farm");
        assertThat(index.select("section[aria-labelledby=next]").text().replace('\u00a0', ' '))
                .isEqualTo("Next film Friday 27 November");
        assertThat(page(site, "episodes.html").select("h2").eachText()).containsExactly("Episode 10, The footing");
        assertThat(page(site, "notes/n.out.html").select(".by").text())
                .isEqualTo("16 Oct 2026 · B. · Weir · Episode 10, The footing");
        assertThat(index.select("meta[property=og:url]").attr("content"))
                .isEqualTo("https://weir.example/log/index.html");
    }

    @Test
    void the_next_purchase_stands_there_with_its_price_and_whether_the_money_is_there() {
        PublicProject.switches(db, "rung", "yes");
        assertThat(page(site(), "index.html").select("section[aria-labelledby=rung]"))
                .isEmpty();
        forecast();
        Element rung = page(site(), "index.html").selectFirst("section[aria-labelledby=rung]");
        assertThat(rung.text())
                .isEqualTo("What is bought next Oak boards, for Sluice gate About €300, to be ordered now. The"
                        + " money for it is there with nine chances in ten.");
        assertThat(rung.select("svg .rung-sure")).hasSize(1);
        PublicProject.switches(db, "rung", "no");
        assertThat(text(site(), "index.html")).doesNotContain("Oak boards");
    }

    private void forecast() {
        try (Forecasts forecasts = new Forecasts(db, ServerFixture.CLOCK, 2, 20, 60)) {
            forecasts.current(PublicProject.TODAY);
            forecasts.await();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void why_the_date_of_the_stage_in_hand_moved_is_one_sentence() {
        PublicProject.switches(db, "moved", "yes");
        assertThat(page(site(), "index.html").select("section[aria-labelledby=stands]"))
                .isEmpty();
        assertThat(moved("2026-11-18", "2026-11-25", "9, 0, 2, 0, -1"))
                .isEqualTo("Since 18 November the date of Weir moved 10 days later, mostly because the work went slower"
                        + " than expected.");
        assertThat(moved("2026-11-18", "2026-11-24", "1, 0, 0, 0, -2"))
                .isEqualTo("Since 18 November the date of Weir moved 1 day earlier, mostly because there is more money"
                        + " for materials than expected.");
        assertThat(moved("2026-11-18", "2026-11-25", "1, 0, -1, 0, 0"))
                .isEqualTo("Since 18 November the date of Weir has not moved.");
        // a week old: it says nothing of today's date
        assertThat(moved("2026-11-11", "2026-11-18", "9, 0, 2, 0, -1")).isEmpty();
    }

    private String moved(String since, String day, String days) {
        db.write("test", write -> {
            write.handle().execute("DELETE FROM moved_stage");
            write.handle()
                    .execute("INSERT INTO moved_stage VALUES ('weir', '" + since + "', '" + day + "', " + days + ")");
            return null;
        });
        return page(site(), "index.html")
                .select("section[aria-labelledby=stands] p")
                .text();
    }

    @Test
    void where_pledges_went_are_shares_of_what_was_spent_on_stages_that_sum_to_a_hundred() {
        PublicProject.switches(db, "pledge", "yes");
        db.write("test", write -> {
            spent(write, "p.1", "-200", "weir");
            spent(write, "p.2", "-100", "gate");
            spent(write, "p.3", "50", "gate");
            return null;
        });
        assertThat(page(site(), "index.html")
                        .select("section[aria-labelledby=pledge] li")
                        .eachText())
                .containsExactly("Weir 80", "Sluice gate 20");
    }

    private static void spent(Write write, String id, String amount, String stage) {
        LedgerEntryStore.TABLE.insert(
                write,
                SmallProject.of(
                        LedgerEntry.class,
                        "id",
                        id,
                        "date",
                        "2026-11-02",
                        "amount",
                        amount,
                        "kind",
                        amount.startsWith("-") ? "material" : "refund",
                        "stage",
                        stage));
    }

    @Test
    void references_are_names_and_an_episode_to_come_keeps_its_title() {
        assertThat(page(site(), "notes/n.all.html").select("article > p").last().text())
                .isEqualTo("Two of nine lie. Set the sill stones, an episode to come.");
    }

    @Test
    void supporters_read_theirs_under_a_link_that_can_be_renewed_and_ended() {
        db.write("test", write -> {
            SupportersLinkStore.renew(write);
            return null;
        });
        String token = db.read(SupportersLinkStore::find).orElseThrow();
        assertThat(token).matches("[A-Za-z0-9_-]{22}");
        String path = "supporters/" + token + "/index.html";
        Document list = page(site(), path);
        assertThat(list.select("h3").eachText()).containsExactly("SUPPORTERS-ONLY", "Sill stones", "Told already");
        assertThat(list.select("meta[name=robots]").attr("content")).isEqualTo("noindex");
        assertThat(text(site(), "feed.xml")).doesNotContain("SUPPORTERS");
        db.write("test", write -> {
            SupportersLinkStore.renew(write);
            return null;
        });
        assertThat(site().at(path)).isEmpty();
        assertThat(db.read(SupportersLinkStore::find)).isNotEqualTo(Optional.of(token));
    }

    @Test
    void every_link_and_file_named_on_a_page_is_there_and_relative() {
        allOn();
        db.write("test", write -> {
            SupportersLinkStore.renew(write);
            return null;
        });
        Site site = site();
        Set<String> missing = new HashSet<>();
        for (String path : site.paths()) {
            if (!path.endsWith(".html")) {
                continue;
            }
            Document page = Jsoup.parse(text(site, path), "http://site.invalid/" + path);
            assertThat(page.select("link[rel=preload][as=font]")).as(path).hasSize(2);
            for (Element link : page.select("a[href], link[href], img[src]")) {
                String to = link.absUrl(link.hasAttr("src") ? "src" : "href").replaceFirst("#.*", "");
                assertThat(link.attr("href")).as(path).doesNotStartWith("/");
                if (to.startsWith("http://site.invalid/")
                        && site.at(to.substring(20)).isEmpty()
                        && !to.substring(20).equals(path)) {
                    missing.add(path + " -> " + to);
                }
            }
        }
        assertThat(missing).isEmpty();
    }

    /** HTML Standard section 4.3.11 (living standard): a heading is at most one level below the one before it. */
    @Test
    void no_heading_leaves_out_a_level_and_each_page_has_one_first_of_all() {
        allOn();
        Site site = site();
        for (String path : site.paths()) {
            if (path.endsWith(".html")) {
                List<String> levels = page(site, path).select("h1, h2, h3, h4, h5, h6").stream()
                        .map(Element::tagName)
                        .toList();
                assertThat(levels).as(path).startsWith("h1");
                for (int i = 1; i < levels.size(); i++) {
                    assertThat(levels.get(i).charAt(1) - levels.get(i - 1).charAt(1))
                            .as(path + ": " + levels)
                            .isLessThan(2);
                    assertThat(levels.get(i)).as(path).isNotEqualTo("h1");
                }
            }
        }
    }

    /** RFC 4287 sections 4.1.1, 4.1.2, 4.2.6, 4.2.15 and 3.3: what a feed and an entry must have, once. */
    @Test
    void the_feed_has_what_the_standard_of_atom_asks_for() throws Exception {
        allOn();
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        org.w3c.dom.Element feed = factory.newDocumentBuilder()
                .parse(new ByteArrayInputStream(site().at("feed.xml").orElseThrow()))
                .getDocumentElement();
        assertThat(feed.getNamespaceURI()).isEqualTo("http://www.w3.org/2005/Atom");
        assertThat(feed.getLocalName()).isEqualTo("feed");
        List<org.w3c.dom.Element> parts = new ArrayList<>(children(feed, "entry"));
        assertThat(parts).hasSize(2);
        parts.add(feed);
        Set<String> ids = new HashSet<>();
        for (org.w3c.dom.Element part : parts) {
            for (String once : List.of("id", "title", "updated")) {
                assertThat(children(part, once)).as(once).hasSize(1);
            }
            assertThat(ids.add(children(part, "id").get(0).getTextContent())).isTrue();
            OffsetDateTime.parse(children(part, "updated").get(0).getTextContent());
            assertThat(children(part, "link").stream()
                            .filter(link -> link.getAttribute("rel").equals("alternate")))
                    .hasSize(1);
        }
        assertThat(children(feed, "author")).hasSize(1);
        assertThat(children(feed, "link").get(0).getAttribute("href")).isEqualTo("https://weir.example/log/feed.xml");
        org.w3c.dom.Element newest = children(feed, "entry").get(0);
        assertThat(children(newest, "title").get(0).getTextContent()).isEqualTo("Told already");
        assertThat(children(newest, "updated").get(0).getTextContent()).isEqualTo("2026-11-20T12:00:00Z");
    }

    private static List<org.w3c.dom.Element> children(org.w3c.dom.Element of, String name) {
        List<org.w3c.dom.Element> found = new ArrayList<>();
        NodeList all = of.getChildNodes();
        for (int i = 0; i < all.getLength(); i++) {
            if (all.item(i) instanceof org.w3c.dom.Element element
                    && element.getLocalName().equals(name)) {
                found.add(element);
            }
        }
        return found;
    }

    @Test
    void published_again_only_what_changed_is_written_and_what_is_no_longer_public_goes() throws Exception {
        Path target = folder.resolve("site");
        int all = site().paths().size();
        assertThat(PublishSite.into(target, site(), count -> true)).isEqualTo(new PublishSite.Done(all, 0, 0));
        Files.writeString(target.resolve("own.txt"), "stays");
        assertThat(PublishSite.into(target, site(), count -> true)).isEqualTo(new PublishSite.Done(0, all, 0));
        db.write("test", write -> {
            var note = NoteStore.TABLE.find(write, new Id("n.out")).orElseThrow();
            try {
                NoteStore.TABLE.delete(write, note.row(), note.version());
            } catch (Stale e) {
                throw new IllegalStateException(e);
            }
            return null;
        });
        PublishSite.Done done = PublishSite.into(target, site(), count -> true);
        // the first page, the note beside it, the stage, the year and the feed named it
        assertThat(done).isEqualTo(new PublishSite.Done(5, all - 6, 1));
        assertThat(target.resolve("notes/n.out.html")).doesNotExist();
        assertThat(target.resolve("own.txt")).hasContent("stays");
    }

    @Test
    void a_folder_with_something_else_in_it_is_refused_and_stays_as_it_is() throws Exception {
        Path target = Files.createDirectory(folder.resolve("other"));
        Files.writeString(target.resolve("index.html"), "theirs");
        assertThatThrownBy(() -> PublishSite.into(target, site(), count -> true))
                .isInstanceOf(FolderRefused.class)
                .hasMessage(target + " holds something else than a build log, and nothing of it is overwritten. Name a"
                        + " new or empty folder, or the one that was published into before.");
        assertThat(target.resolve("index.html")).hasContent("theirs");
    }

    @Test
    void a_list_changed_by_hand_removes_nothing_outside_the_folder() throws Exception {
        Path target = folder.resolve("site");
        PublishSite.into(target, site(), count -> true);
        Path outside = Files.writeString(folder.resolve("outside.txt"), "stays");
        Files.writeString(target.resolve(PublishSite.LIST), "weekwright build log\n../outside.txt\n" + outside + "\n");
        PublishSite.into(target, site(), count -> true);
        assertThat(outside).hasContent("stays");
    }

    @Test
    void pictures_are_published_without_the_camera_s_tags_under_a_name_of_their_bytes() throws Exception {
        Folder project = new Folder(folder.resolve("project"));
        Files.createDirectories(project.photos());
        Files.write(project.photos().resolve("sill.jpg"), CameraPicture.jpeg(64, 48, "2026:11:09 07:30:00"));
        db.write("test", write -> {
            PhotoStore.TABLE.insert(
                    write,
                    SmallProject.of(
                            Photo.class,
                            "note",
                            "n.all",
                            "file",
                            "sill.jpg",
                            "caption",
                            "Two of nine",
                            "alternative",
                            "Two dressed stones"));
            PhotoStore.TABLE.insert(write, SmallProject.of(Photo.class, "note", "n.all", "file", "gone.jpg"));
            return null;
        });
        Path target = folder.resolve("site");
        Site site = Site.of(db, project, TEMPLATES, Site.copies(project), PublicProject.TODAY);
        PublishSite.into(target, site, count -> true);
        Document page = Jsoup.parse(Files.readString(target.resolve("notes/n.all.html")));
        assertThat(page.select("img").eachAttr("alt")).containsExactly("Two dressed stones");
        String path = page.select("img").attr("src");
        assertThat(path).matches("\\.\\./pictures/[0-9a-f]{16}\\.jpg");
        byte[] published = Files.readAllBytes(target.resolve("notes").resolve(path));
        BufferedImage copy = ImageIO.read(new ByteArrayInputStream(published));
        assertThat(page.select("img").attr("width")).isEqualTo(String.valueOf(copy.getWidth()));
        assertThat(page.select("img").attr("height")).isEqualTo(String.valueOf(copy.getHeight()));
        assertThat(CameraPicture.text(published))
                .doesNotContain(CameraPicture.PRIVATE)
                .doesNotContain(CameraPicture.text(CameraPicture.LATITUDE))
                .doesNotContain("2026:11:09");
    }

    @Test
    void the_preview_of_a_note_is_its_first_picture_wherever_it_stands() throws Exception {
        Folder project = new Folder(folder.resolve("project"));
        Files.createDirectories(project.photos());
        List<String> names = List.of("in-the-text.jpg", "under-it.jpg");
        for (String name : names) {
            Files.write(
                    project.photos().resolve(name), CameraPicture.jpeg(64 + name.length(), 48, "2026:11:09 07:30:00"));
            db.write("test", write -> {
                PhotoStore.TABLE.insert(write, SmallProject.of(Photo.class, "note", "n.all", "file", name));
                PhotoStore.TABLE.insert(write, SmallProject.of(Photo.class, "note", "n.out", "file", name));
                return null;
            });
        }
        db.write(
                "test",
                write -> write.handle()
                        .execute("UPDATE notes SET text = 'Dug. ![Sill](photos/in-the-text.jpg)' WHERE id = 'n.out'"));
        PublicProject.switches(db, "address", "https://weir.example/log");
        Site site = Site.of(db, project, TEMPLATES, Site.copies(project), PublicProject.TODAY);
        for (String note : List.of("n.all", "n.out")) {
            Document page = page(site, "notes/" + note + ".html");
            assertThat(page.select("meta[property=og:image]").attr("content"))
                    .as(note)
                    .isEqualTo(page.selectFirst("article img").attr("src").replace("../", "https://weir.example/log/"));
        }
        assertThat(page(site, "notes/n.out.html").select("article img").eachAttr("alt"))
                .containsExactly("Sill", "");
    }

    /** sitemaps.org, protocol 0.9: whole addresses in urlset, url, loc of its namespace. */
    @Test
    void the_site_map_names_every_page_for_everyone_and_no_other() throws Exception {
        assertThat(site().paths()).doesNotContain("sitemap.xml");
        allOn();
        db.write("test", write -> {
            SupportersLinkStore.renew(write);
            return null;
        });
        Site site = site();
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        NodeList places = factory.newDocumentBuilder()
                .parse(new ByteArrayInputStream(site.at("sitemap.xml").orElseThrow()))
                .getElementsByTagNameNS("http://www.sitemaps.org/schemas/sitemap/0.9", "loc");
        List<String> named = new ArrayList<>();
        for (int i = 0; i < places.getLength(); i++) {
            named.add(places.item(i).getTextContent());
        }
        assertThat(named)
                .containsExactlyElementsOf(site.paths().stream()
                        .filter(path -> path.endsWith(".html") && !path.startsWith("supporters/"))
                        .map(path -> "https://weir.example/log/" + path)
                        .toList())
                .hasSizeGreaterThan(4);
    }

    @Test
    void each_page_and_each_picture_made_and_written_is_a_step_that_is_counted_once() throws Exception {
        Folder project = new Folder(folder.resolve("project"));
        Files.createDirectories(project.photos());
        db.write("test", write -> {
            for (int i = 0; i < 12; i++) {
                PhotoStore.TABLE.insert(
                        write, SmallProject.of(Photo.class, "note", "n.all", "file", "sill-" + i + ".jpg"));
            }
            return null;
        });
        for (int i = 0; i < 12; i++) {
            Files.write(
                    project.photos().resolve("sill-" + i + ".jpg"),
                    CameraPicture.jpeg(64 + i, 48, "2026:11:09 07:30:00"));
        }
        Site site = Site.of(db, project, TEMPLATES, Site.copies(project), PublicProject.TODAY);
        List<Integer> steps = new ArrayList<>();
        PublishSite.into(folder.resolve("site"), site, steps::add);
        assertThat(steps).hasSize(site.paths().size() + 24).hasSize(site.most());
        assertThat(steps)
                .isEqualTo(IntStream.rangeClosed(1, site.most()).boxed().toList());
    }
}
