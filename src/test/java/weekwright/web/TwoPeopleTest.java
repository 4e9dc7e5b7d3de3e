package weekwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

/** Two people have the same form open, on every page that edits something: neither overwrites the other unseen. */
class TwoPeopleTest {
    /** An edit page, what it edits in the sample, and a field of it in which both write. */
    private record Edit(String path, String address, String field, String label) {}

    private static final List<Edit> EDITS = List.of(
            new Edit("/week/lines/{row}/edit", "/week/lines/18/edit", "text", "In your words"),
            new Edit("/log/entries/{row}/edit", "/log/entries/915/edit", "note", "Note"),
            new Edit("/build/stages/{id}/edit", "/build/stages/sluice/edit", "name", "Name"),
            new Edit("/build/tasks/{id}/edit", "/build/tasks/shaft.13/edit", "title", "What is done"),
            new Edit("/build/materials/{id}/edit", "/build/materials/m.02/edit", "item", "What is needed"),
            new Edit("/build/stock/{id}/edit", "/build/stock/y.02/edit", "item", "What lies there"),
            new Edit("/build/equipment/{id}/edit", "/build/equipment/planer/edit", "name", "What it is called"),
            new Edit("/episodes/{id}/edit", "/episodes/e50/edit", "title", "Title"),
            new Edit("/episodes/footage/{row}/edit", "/episodes/footage/2/edit", "remarks", "Remarks"),
            new Edit("/week/shots/{row}/edit", "/week/shots/2/edit", "what", "What the picture shows"),
            new Edit("/notes/{id}/edit", "/notes/note.01/edit", "title", "Title"),
            new Edit("/notes/{id}/pictures/{row}/edit", "/notes/note.01/pictures/1/edit", "caption", "Caption"),
            new Edit("/funds/entries/{row}/edit", "/funds/entries/200/edit", "note", "Note"),
            new Edit("/funds/suppliers/{id}/edit", "/funds/suppliers/s.1/edit", "name", "Name"),
            new Edit("/funds/regular/{id}/edit", "/funds/regular/r.2/edit", "name", "What it is for"),
            new Edit("/funds/levels/{id}/edit", "/funds/levels/beam/edit", "name", "Name"),
            new Edit("/crew/members/{id}/edit", "/crew/members/tomas/edit", "name", "Name"),
            new Edit("/crew/off/{row}/edit", "/crew/off/2/edit", "reason", "Why"),
            new Edit("/crew/hours/{row}/edit", "/crew/hours/1/edit", "mon", "Mondays"),
            new Edit("/crew/stopped/{row}/edit", "/crew/stopped/1/edit", "note", "Note"),
            new Edit("/crew/gatherings/{row}/edit", "/crew/gatherings/1/edit", "note", "Note"),
            new Edit("/crew/incidents/{row}/edit", "/crew/incidents/1/edit", "what", "What happened"),
            new Edit("/crew/cautions/{row}/edit", "/crew/cautions/1/edit", "text", "The caution"));

    private static ServerFixture server;

    @BeforeAll
    static void start() {
        server = ServerFixture.sample();
    }

    @AfterAll
    static void stop() {
        server.close();
    }

    @Test
    void every_page_that_edits_shows_the_second_of_two_both_versions_and_keeps_what_was_typed() {
        List<String> wrong = new ArrayList<>();
        for (Edit edit : EDITS) {
            boolean hours = edit.field().equals("mon");
            Visitor ilse = server.as("ilse");
            Visitor tomas = server.as("tomas");
            Visitor.Form hers = form(ilse, edit).with(edit.field(), hours ? "3.5" : "Written by Ilse");
            Visitor.Form his = form(tomas, edit).with(edit.field(), hours ? "2:15" : "Written by Tomas");
            Visitor.Reply first = hers.send();
            Visitor.Reply conflict = his.send();
            if (first.status() != 303 || conflict.status() != 409) {
                wrong.add(edit.path() + " answers " + first.status() + ", then " + conflict.status() + ": "
                        + first.troubles() + conflict.troubles());
                continue;
            }
            Element row = conflict.page().select("main tbody tr").stream()
                    .filter(tr -> tr.select("th").text().equals(edit.label()))
                    .findFirst()
                    .orElse(new Element("tr"));
            List<String> cells = row.select("td").eachText();
            List<String> both = hours ? List.of("2¼ h", "3½ h") : List.of("Written by Tomas", "Written by Ilse");
            if (cells.size() != 3 || !cells.subList(1, 3).equals(both)) {
                wrong.add(edit.path() + " shows " + conflict.text());
            }
            if (!conflict.page().select("h1").text().startsWith("Ilse changed this since you opened it, ")) {
                wrong.add(edit.path() + " says " + conflict.page().select("h1").text());
            }
            Visitor.Reply over = tomas.form(conflict).send();
            String stands = form(ilse, edit).value(edit.field());
            if (over.status() != 303 || !stands.equals(hours ? "2.25" : "Written by Tomas")) {
                wrong.add(edit.path() + " saved over answers " + over.status() + ", then " + stands);
            }
        }
        assertThat(wrong).isEmpty();
    }

    private static Visitor.Form form(Visitor visitor, Edit edit) {
        return visitor.form(visitor.get(edit.address()), "main form:has([name=" + edit.field() + "])");
    }

    /** The table of a stage's tasks has a row for each and says in the row itself that it was changed. */
    @Test
    void no_page_that_edits_is_missing_here() {
        Set<String> here = EDITS.stream().map(Edit::path).collect(Collectors.toCollection(TreeSet::new));
        here.add("/build/stages/{id}/tasks/edit");
        assertThat(new Routes(server.app())
                        .pages().stream().map(Routes.Line::path).filter(path -> path.endsWith("/edit")))
                .containsExactlyInAnyOrderElementsOf(here);
    }

    @Test
    void settings_that_somebody_else_saved_meanwhile_are_shown_beside_ones_own() {
        Visitor ilse = server.as("ilse");
        Visitor tomas = server.as("tomas");
        String css = "main form:has([name=reserve])";
        Visitor.Form his = tomas.form(tomas.get("/crew/settings"), css).with("reserve", "900");
        ilse.form(ilse.get("/crew/settings"), css).with("reserve", "1200.50").press("project");
        Visitor.Reply conflict = his.press("project");
        assertThat(conflict.status()).isEqualTo(409);
        assertThat(conflict.page().select("main tbody tr").size()).isEqualTo(1);
        assertThat(conflict.page().select("main tbody td").eachText().subList(1, 3))
                .containsExactly("€900.00", "€1,200.50");
    }

    @Test
    void a_button_that_finds_the_thing_changed_meanwhile_does_nothing_and_tells_what_was_changed() {
        Visitor ilse = server.as("ilse");
        Visitor tomas = server.as("tomas");
        String address = "/crew/stopped/2/edit";
        Visitor.Form his = tomas.form(tomas.get(address), "main form.act");
        ilse.form(ilse.get(address), "main form:has([name=note])")
                .with("note", "Seen twice\nby both")
                .send();
        Visitor.Reply conflict = his.press("remove");
        assertThat(conflict.status()).isEqualTo(409);
        assertThat(conflict.page().select("main tbody tr").eachText())
                .containsExactly(
                        "Note Melt water over the dam by noon Melt water over the dam by noon Seen twice by both");
        assertThat(tomas.form(conflict).value("do")).isEqualTo("remove");
        assertThat(ilse.get(address).status()).isEqualTo(200);
    }

    @Test
    void links_and_told_tasks_that_two_people_change_stand_side_by_side_too() {
        Visitor ilse = server.as("ilse");
        Visitor tomas = server.as("tomas");
        Visitor.Form hers = ilse.form(ilse.get("/build/tasks/sluice.10/edit"));
        Visitor.Form his = tomas.form(tomas.get("/build/tasks/sluice.10/edit"));
        String first = hers.value("after.0");
        assertThat(first).isNotEmpty();
        hers.with("after.0", "").send();
        Visitor.Reply refused = his.with("after.1", "pit.1").send();
        assertThat(refused.status()).isEqualTo(409);
        assertThat(refused.page()
                        .select(".both-versions tr:has(th:contains(Follows))")
                        .text())
                .startsWith("Follows nothing ")
                .contains("Measure and draw the wheel pit");

        hers = ilse.form(ilse.get("/episodes/e50/edit"));
        his = tomas.form(tomas.get("/episodes/e50/edit"));
        hers.with("task.0", "").send();
        refused = his.with("task.1", "pit.1").send();
        assertThat(refused.status()).isEqualTo(409);
        assertThat(refused.page()
                        .select(".both-versions tr:has(th:contains(Tells))")
                        .text())
                .startsWith("Tells nothing ")
                .contains("Measure and draw the wheel pit");
    }
}
