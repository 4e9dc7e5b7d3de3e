package weekwright.web.help;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;
import weekwright.web.Routes;
import weekwright.web.kit.Access;

class HelpPageTest {
    private static final ServerFixture SERVER = ServerFixture.small();
    private final Visitor ilse = SERVER.as("ilse");
    private final Visitor noor = SERVER.as("noor");

    @AfterAll
    static void close() {
        SERVER.close();
    }

    private static List<String> helpLinks(Visitor.Reply page) {
        return page.page().select("main a[href]").eachAttr("href").stream()
                .filter(to -> to.startsWith("/"))
                .toList();
    }

    @Test
    void every_group_of_the_head_has_a_question_mark_that_leads_to_its_page() {
        Document ahead = ilse.get("/ahead").page();
        List<String> sheets = new ArrayList<>(ahead.select("nav.sheets a").eachAttr("href"));
        sheets.addAll(ahead.select(".masthead .more a:not([href=/help]), .at-right > a[data-search]")
                .eachAttr("href"));
        assertThat(sheets).contains("/ahead", "/week", "/notes", "/crew", "/crew/history", "/search");
        for (String sheet : sheets) {
            Element mark = ilse.get(sheet).page().selectFirst(".at-right .help-mark");
            assertThat(mark).as(sheet).isNotNull();
            assertThat(mark.select(".unseen").text()).as(sheet).startsWith("Help with ");
            assertThat(mark.select("[aria-hidden=true]").text()).isEqualTo("?");
            Visitor.Reply help = ilse.get(mark.attr("href"));
            assertThat(help.status()).as(sheet).isEqualTo(200);
            assertThat(help.page().select("h1").text())
                    .isEqualTo(mark.attr("title").substring("Help with ".length()));
        }
    }

    /** The phone hides the head of Log; its own head line has the mark. */
    @Test
    void the_log_has_the_mark_in_its_own_head_too() {
        assertThat(noor.get("/log").page().select(".log-head .help-mark").attr("href"))
                .isEqualTo("/help?of=log");
    }

    @Test
    void every_address_that_the_crew_or_a_helper_opens_leads_to_a_page_that_they_may_read() {
        List<String> without = new ArrayList<>();
        Set<String> used = new HashSet<>();
        for (Routes.Line line : new Routes(SERVER.app()).pages()) {
            if (line.path().startsWith("/help") || line.path().startsWith("/come")) {
                continue;
            }
            HelpTopics.at(line.path())
                    .filter(topic -> line.access() != Access.HELPER || topic.access() == Access.HELPER)
                    .ifPresentOrElse(topic -> used.add(topic.name()), () -> without.add(line.path()));
        }
        assertThat(without).isEmpty();
        assertThat(HelpTopics.readableBy(Access.CREW))
                .extracting(HelpTopics.Topic::name)
                .containsExactlyInAnyOrderElementsOf(used);
    }

    @Test
    void the_longest_beginning_of_an_address_decides() {
        assertThat(HelpTopics.at("/notes/public").orElseThrow().name()).isEqualTo("public-log");
        assertThat(HelpTopics.at("/notes/n.1").orElseThrow().name()).isEqualTo("notes");
        assertThat(HelpTopics.at("/build/stages/pit/materials").orElseThrow().name())
                .isEqualTo("materials");
        assertThat(HelpTopics.at("/build/stages/pit").orElseThrow().name()).isEqualTo("build");
        assertThat(HelpTopics.at("/notesbook")).isEmpty();
    }

    @Test
    void every_page_of_the_help_has_an_example_and_no_link_of_it_leads_nowhere() {
        Set<String> asked = new HashSet<>();
        for (HelpTopics.Topic topic : HelpTopics.readableBy(Access.CREW)) {
            Visitor.Reply page = ilse.get("/help?of=" + topic.name());
            assertThat(page.status()).as(topic.name()).isEqualTo(200);
            assertThat(page.page().select(".prose h2").eachText())
                    .as(topic.name())
                    .contains("An example");
            assertThat(page.page().select(".lead").text()).as(topic.name()).endsWith(".");
            for (String to : helpLinks(page)) {
                if (asked.add(to)) {
                    Visitor.Reply there = ilse.get(to);
                    assertThat(there.status()).as(topic.name() + " to " + to).isIn(200, 303);
                    int mark = to.indexOf('#');
                    if (mark > 0) {
                        assertThat(there.page().getElementById(to.substring(mark + 1)))
                                .as(topic.name() + " to " + to)
                                .isNotNull();
                    }
                }
            }
        }
    }

    @Test
    void the_list_has_every_page_with_its_first_sentence() {
        Document list = ilse.get("/help").page();
        assertThat(list.select("main li a").eachText())
                .startsWith("Ahead", "Week", "Log", "Build", "Materials and the yard", "Episodes", "Funds")
                .hasSize(HelpTopics.readableBy(Access.CREW).size());
        assertThat(list.select("main li").get(1).text())
                .isEqualTo("Week Who does what on each day, which shots are wanted of it, and what to take care of.");
    }

    @Test
    void a_helper_reads_of_the_own_sheets_alone_and_of_no_money() {
        List<String> own = noor.get("/help").page().select("main li a").eachAttr("href");
        assertThat(own)
                .containsExactly(
                        "/help?of=week", "/help?of=log", "/help?of=build", "/help?of=search", "/help?of=account");
        for (String address : own) {
            Visitor.Reply page = noor.get(address);
            assertThat(page.text()).as(address).doesNotContain("\u20ac", "money", "pledge", "reserve", "price");
            for (String to : helpLinks(page)) {
                assertThat(noor.get(to).status()).as(address + " to " + to).isIn(200, 303);
            }
        }
        Visitor.Reply refused = noor.get("/help?of=funds");
        assertThat(refused.status()).isEqualTo(403);
        assertThat(refused.text()).contains("This page of the help is for the crew.");
    }

    @Test
    void strangers_and_the_public_have_no_help() {
        Visitor stranger = SERVER.stranger();
        assertThat(stranger.get("/account").page().select(".help-mark")).isEmpty();
        assertThat(stranger.get("/public").page().select(".help-mark")).isEmpty();
        assertThat(stranger.get("/help?of=week").status()).isEqualTo(303);
    }

    @Test
    void what_there_is_no_help_with_says_where_all_of_it_is() {
        Visitor.Reply none = ilse.get("/help?of=clouds");
        assertThat(none.status()).isEqualTo(404);
        assertThat(none.text()).contains("There is no help with \"clouds\"; /help lists all that there is.");
    }
}
