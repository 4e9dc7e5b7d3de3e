package weekwright.web.crew;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.render.chart.AheadPicture.Balance;
import weekwright.render.chart.AheadPicture.Fan;
import weekwright.render.chart.AheadPicture.Notch;
import weekwright.render.chart.AheadPicture.Range;
import weekwright.render.chart.AheadPicture.Safety;
import weekwright.render.chart.AheadPicture.Stage;
import weekwright.render.chart.AheadPicture.Table;
import weekwright.render.chart.CauseBar;
import weekwright.render.chart.Ladder;
import weekwright.render.chart.LineChart;
import weekwright.render.chart.OrderRod;
import weekwright.render.chart.Reel;
import weekwright.render.chart.StageStrip;
import weekwright.render.chart.Tally;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;

/**
 * Every mark, field and drawing of the sheets in each of its states, to look at while they are worked on. It stands only where
 * the templates are read from disk.
 */
public final class CrewMarksPage implements Page {
    /**
     * What the sheet shows.
     *
     * @param on day, night, or empty for what the device asks for
     * @param plain a form as it opens
     * @param refused one that came back
     * @param safeties every word for safety
     * @param sets the sets of fields, each with a page it stands on
     */
    public record View(
            String on,
            Form plain,
            Form refused,
            List<Form.Choice> choices,
            List<Fact> facts,
            List<String> safeties,
            List<Drawn> drawings,
            List<Table> tables,
            List<Fact> sets) {}

    /** A label and its text. */
    public record Fact(String label, String text) {}

    /** A drawing with what it is. */
    public record Drawn(String name, String kind, String svg) {}

    private static final String LONG = "A wheel shaft of oak, sixteen-sided, with winged gudgeons at both ends";

    @Override
    public View show(Request request) {
        Form plain = request.form("")
                .with("chosen", "oak")
                .with("pressed", "oak")
                .with("several", "oak", "elm")
                .with("ticked", "yes")
                .with("long", LONG + ". " + LONG + ".")
                .with("when", request.today().toString());
        List<Form.Choice> choices =
                List.of(new Form.Choice("oak", "oak"), new Form.Choice("elm", "elm"), new Form.Choice("long", LONG));
        return new View(
                request.query("on").matches("day|night") ? request.query("on") : "",
                plain,
                refused(plain),
                choices,
                List.of(new Fact("Needs", "two people"), new Fact("Where", "in the pit"), new Fact("Is", LONG)),
                Arrays.stream(Safety.values()).map(Safety::word).toList(),
                drawings(request.today(), request.formats()),
                List.of(
                        new Table("Nothing in it", List.of("Stage", "Days"), List.of()),
                        new Table(
                                "Two lines",
                                List.of("Stage", "Days"),
                                List.of(List.of("Roof", "+3"), List.of(LONG, "\u2212120")))),
                SETS);
    }

    private static Form refused(Form plain) {
        return new Form(
                plain.csrf(),
                plain.answerKey(),
                Optional.of(1L),
                Map.of("refused-text", List.of("many"), "refused-chosen", List.of("a tree that was felled")),
                new TreeMap<>(Map.of(
                        "refused-text",
                        "\"many\" is no number of hours. Write 3.5, 3,5, 3:30 or 3½.",
                        "refused-chosen",
                        "Choose one of the list.",
                        "refused-area",
                        "Say in a sentence what it is.",
                        "",
                        "One of two has to be there: hours or pieces.")));
    }

    private static List<Drawn> drawings(LocalDate today, Formats formats) {
        Stage stage = new Stage(
                "Wheel shaft",
                "",
                Optional.of(today.minusWeeks(8)),
                Optional.empty(),
                Optional.of(Range.of(today.plusWeeks(3), today.plusWeeks(6), today.plusWeeks(11))),
                Optional.empty(),
                List.of(new Notch("Shrink on the hoops", today.plusWeeks(2))));
        LineChart line = new LineChart(
                "marks-line",
                "Supporters, as an example",
                today,
                List.of(
                        new Balance(today.minusDays(60), 210),
                        new Balance(today.minusDays(30), 240),
                        new Balance(today, 260)),
                List.of(new Fan(today, 260, 260, 260, 260, 260), new Fan(today.plusDays(60), 230, 250, 280, 300, 330)),
                List.of(new LineChart.Level("enough", 225)),
                List.of(today.minusDays(30)),
                value -> Formats.grouped(Math.round(value)));
        return List.of(
                new Drawn("A stage", "strip", new StageStrip(stage, today, formats).drawings()),
                new Drawn("An amount over time", "half-drawing", line.drawings()),
                new Drawn(
                        "What holds it",
                        "causes",
                        CauseBar.of(List.of(
                                new CauseBar.Cause("Ilse's hours", 0.4),
                                new CauseBar.Cause("the oak", 0.3),
                                new CauseBar.Cause("the weather", 0.2),
                                new CauseBar.Cause("other causes", 0.1)))),
                new Drawn("A rung with money for part of it", "rung-drawn", Ladder.rung(1000, 400, 700, 1200)),
                new Drawn("A rung too far off to say", "rung-drawn", Ladder.blank()),
                new Drawn("A tally on its way", "tally-drawn", Tally.of(600, 300, 240, 900)),
                new Drawn("A tally over its estimate", "tally-drawn", Tally.of(600, 780, 0, 900)),
                new Drawn("A reel", "reel-drawn", Reel.of(1, 1, 0.5, 0, 0, 0)),
                new Drawn(
                        "What waits for what",
                        "rod",
                        OrderRod.of(
                                "Three pegs, as an example",
                                List.of(
                                        new OrderRod.Peg("Fell", "", OrderRod.State.DONE, false, true),
                                        new OrderRod.Peg("Rest", "8 weeks", OrderRod.State.IN_HAND, true, true),
                                        new OrderRod.Peg("Hew", "26 h", OrderRod.State.TO_COME, false, false)),
                                List.of(
                                        new OrderRod.Bow(0, 1, "", false, true),
                                        new OrderRod.Bow(1, 2, "half", true, false)))));
    }

    /** Sets of fields stand on pages of their own, with lists of the project: here is where. */
    private static final List<Fact> SETS = List.of(
            new Fact("taskFields", "/build/tasks/new"),
            new Fact("stageFields", "/build/stages/new"),
            new Fact("materialFields", "/build/tasks/{id}/materials/new"),
            new Fact("stockFields", "/build/stock/new"),
            new Fact("equipmentFields", "/build/equipment/new"),
            new Fact("costLines", "/funds/stages"),
            new Fact("ledgerFields", "/funds/entries/new"),
            new Fact("regularFields", "/funds/regular/new"),
            new Fact("supplierFields", "/funds/suppliers/new"),
            new Fact("levelFields", "/funds/levels/new"),
            new Fact("receiptField", "/funds/costs/new"),
            new Fact("episodeFields", "/episodes/new"),
            new Fact("shotFields", "/week/shots/new"),
            new Fact("weekLineHead", "/week/lines/new"),
            new Fact("weekLineFields", "/week/lines/new"),
            new Fact("noteFields", "/notes/new"),
            new Fact("noteDraft", "/notes/new"),
            new Fact("memberFields", "/crew/members/new"),
            new Fact("offFields", "/crew/off/new"),
            new Fact("hoursFields", "/crew/hours/new"),
            new Fact("stoppedFields", "/crew/stopped/new"),
            new Fact("gatheringFields", "/crew/gatherings/new"),
            new Fact("incidentFields", "/crew/incidents/new"),
            new Fact("cautionFields", "/crew/cautions/new"),
            new Fact("siteNotes", "/public"));
}
