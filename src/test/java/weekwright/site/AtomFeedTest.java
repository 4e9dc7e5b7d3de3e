package weekwright.site;

import static org.assertj.core.api.Assertions.assertThat;

import com.rometools.rome.feed.atom.Content;
import com.rometools.rome.feed.atom.Entry;
import com.rometools.rome.feed.atom.Feed;
import com.rometools.rome.feed.atom.Link;
import com.rometools.rome.feed.synd.SyndPerson;
import com.rometools.rome.io.WireFeedInput;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** The feed read back by a library for feeds and held to what RFC 4287 (December 2005) says MUST be; its sections stand beside. */
class AtomFeedTest {
    private static final String LOG = "https://mill.example/log/";

    private static AtomFeed.Entry entry(String key, String title, String by, String html) {
        return new AtomFeed.Entry(key, title, "notes/" + key + ".html", LocalDate.of(2026, 11, 9), by, html);
    }

    private static Feed read(String address, AtomFeed.Entry... entries) throws Exception {
        byte[] bytes = AtomFeed.of(
                new AtomFeed.Head("key", "The \"mill\" & race", address, "The mill", LocalDate.of(2026, 1, 5)),
                List.of(entries));
        return (Feed)
                new WireFeedInput(true, Locale.ROOT).build(new StringReader(new String(bytes, StandardCharsets.UTF_8)));
    }

    private static List<String> names(List<SyndPerson> people) {
        return people.stream().map(SyndPerson::getName).toList();
    }

    @Test
    void a_feed_has_its_id_title_day_author_and_address_and_an_entry_too() throws Exception {
        Feed feed = read(
                LOG,
                entry("n.1", "Sill <stones>", "Ilse", "<p>Two &amp; \u05d0\u05d1 \ud83e\udeb5.</p>"),
                entry("n.2", "Gate", "", ""));
        assertThat(feed.getFeedType()).isEqualTo("atom_1.0");
        // 4.1.1 and 4.2: exactly one id, title and updated; an author, since not every entry names one
        assertThat(feed.getId()).matches("urn:uuid:[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}");
        assertThat(feed.getTitle()).isEqualTo("The \"mill\" & race");
        assertThat(feed.getUpdated().toInstant()).isEqualTo(Instant.parse("2026-11-09T12:00:00Z"));
        assertThat(names(feed.getAuthors())).containsExactly("The mill");
        // 4.1.1: one link to itself, and no more than one alternate of a type and language
        assertThat(feed.getOtherLinks().stream().map(Link::getHref)).containsExactly(LOG + "feed.xml");
        assertThat(feed.getOtherLinks().get(0).getRel()).isEqualTo("self");
        assertThat(feed.getAlternateLinks().stream().map(Link::getHref)).containsExactly(LOG + "index.html");
        assertThat(feed.getEntries()).hasSize(2);
        Entry first = feed.getEntries().get(0);
        // 4.1.2 and 4.2.6: an entry's own id, its title, its day, at most one alternate and at most one content
        assertThat(first.getId()).startsWith("urn:uuid:").isNotEqualTo(feed.getId());
        assertThat(first.getId()).isNotEqualTo(feed.getEntries().get(1).getId());
        assertThat(first.getTitle()).isEqualTo("Sill <stones>");
        assertThat(first.getUpdated().toInstant()).isEqualTo(Instant.parse("2026-11-09T12:00:00Z"));
        assertThat(first.getPublished()).isEqualTo(first.getUpdated());
        assertThat(first.getAlternateLinks().stream().map(Link::getHref)).containsExactly(LOG + "notes/n.1.html");
        assertThat(names(first.getAuthors())).containsExactly("Ilse");
        // 4.1.3.3: html is one text, escaped, with no child elements
        assertThat(first.getContents()).hasSize(1);
        Content content = first.getContents().get(0);
        assertThat(content.getType()).isEqualTo("html");
        assertThat(content.getValue()).isEqualTo("<p>Two &amp; \u05d0\u05d1 \ud83e\udeb5.</p>");
        assertThat(names(feed.getEntries().get(1).getAuthors())).isEmpty();
    }

    @Test
    void an_id_stays_whatever_the_log_is_called_and_wherever_it_stands() throws Exception {
        // 4.2.6: it MUST NOT change however the feed is moved
        Feed here = read(LOG, entry("n.1", "Sill", "", "<p>x</p>"));
        Feed there = read("https://other.example/", entry("n.1", "Sill stones", "", "<p>y</p>"));
        assertThat(there.getId()).isEqualTo(here.getId());
        assertThat(there.getEntries().get(0).getId())
                .isEqualTo(here.getEntries().get(0).getId());
    }

    @Test
    void a_log_without_notes_or_address_is_a_feed_as_well() throws Exception {
        Feed feed = read("");
        assertThat(feed.getEntries()).isEmpty();
        assertThat(feed.getUpdated().toInstant()).isEqualTo(Instant.parse("2026-01-05T12:00:00Z"));
        assertThat(feed.getAlternateLinks().stream().map(Link::getHref)).containsExactly("index.html");
        assertThat(names(feed.getAuthors())).containsExactly("The mill");
    }

    @Test
    void letters_that_xml_has_no_place_for_are_left_out() throws Exception {
        assertThat(read(LOG, entry("n.1", "Si\u0000ll\u000b\ud800", "", "a\u0001b"))
                        .getEntries()
                        .get(0)
                        .getTitle())
                .isEqualTo("Sill");
    }
}
