package weekwright.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import weekwright.testkit.BrowserFixture;
import weekwright.testkit.BrowserFixture.Paper;
import weekwright.testkit.ServerFixture;
import weekwright.testkit.Visitor;

/** What is put on paper, as the browser prints it. */
class PrintInTheBrowserTest {
    /** Points of the margin of 12 mm, less one for what overhangs a letter. */
    private static final double MARGIN = 12 / 25.4 * 72 - 1;

    /** A document as it is printed: its pages, its words, and what stands beyond the margins. */
    private record Printed(int pages, String text, List<String> cutOff) {
        static Printed of(byte[] bytes) throws IOException {
            List<String> beyond = new ArrayList<>();
            PDFTextStripper letters = new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition one) {
                    super.processTextPosition(one);
                    double right = one.getXDirAdj() + one.getWidthDirAdj();
                    double width = one.getDir() % 180 == 0 ? one.getPageWidth() : one.getPageHeight();
                    if (one.getDir() == 0 && (one.getXDirAdj() < MARGIN || right > width - MARGIN)) {
                        beyond.add(one.getUnicode() + " at " + one.getXDirAdj() + " of " + width);
                    }
                }
            };
            try (PDDocument pdf = Loader.loadPDF(bytes)) {
                String text = letters.getText(pdf).replaceAll("[\\s\u00a0]+", " ");
                return new Printed(pdf.getNumberOfPages(), text, beyond);
            }
        }
    }

    /** A sheet, its most pages, words that stand on it and words that do not. */
    private record Sheet(String path, int pages, List<String> on, List<String> off) {}

    private static final List<Sheet> SHEETS = List.of(
            new Sheet(
                    "/week",
                    1,
                    List.of("Week 48", "Sunday", "If something happens", "112"),
                    List.of("Print for the wall")),
            new Sheet(
                    "/build/tasks/shaft.18/day-sheet",
                    1,
                    List.of(
                            "Go, or not one box empty: not yet",
                            "Stop word",
                            "Hold: anybody says it, everybody stops",
                            "In this order, by the clock",
                            "Who stands where",
                            "Cameras, and who minds them",
                            "card empty battery focus locked second camera sound",
                            "Take care",
                            "If something happens",
                            "112"),
                    List.of("Print it", "Words of this sheet")),
            new Sheet(
                    "/funds/months/2026-09",
                    1,
                    List.of(
                            "September 2026",
                            "Closed on",
                            "Of it put by for tax €356.74",
                            "Cost of an hour worked",
                            "Income of a published episode",
                            "ask a licensed accountant"),
                    List.of("Open it again", "For a spreadsheet")),
            new Sheet("/funds/purchases", 2, List.of("Oak planks 70 mm"), List.of()),
            new Sheet(
                    "/build/stages/shaft",
                    3,
                    List.of("Wheel shaft", "today", "What it costs", "Flat iron 80 x 12"),
                    List.of("Those ticked are done on", "As CSV")),
            new Sheet(
                    "/episodes",
                    3,
                    List.of("By Friday", "A frame for the sluice Tells Joint the sluice frame in oak.", "Standbys"),
                    List.of("All slots of a year")),
            new Sheet("/funds", 2, List.of("Funding ladder", "Last in the books"), List.of("Pledge levels")),
            new Sheet("/notes", 7, List.of("Sunday figures, written down on Tuesday"), List.of("every stage")),
            new Sheet("/notes/book", 40, List.of("Wheel shaft"), List.of()),
            new Sheet(
                    "/ahead",
                    2,
                    List.of("Wheel shaft is done about", "Scaffold to the south eaves"),
                    List.of("Earlier", "Fewer weeks", "Show")));

    @Test
    void what_is_printed_stands_whole_on_a4_and_on_letter() throws Exception {
        try (ServerFixture server = ServerFixture.sample().drawn();
                BrowserFixture browser = BrowserFixture.at(server, "ilse")) {
            for (Sheet sheet : SHEETS) {
                look(browser, sheet);
            }
            assertThat(browser.complaints()).isEmpty();
        }
    }

    @Test
    void the_log_is_printed_as_the_entries_of_its_day_without_the_forms_that_take_them() throws Exception {
        try (ServerFixture server = ServerFixture.small();
                BrowserFixture browser = BrowserFixture.at(server, "ilse")) {
            Visitor ilse = server.as("ilse");
            ilse.follow(ilse.form(ilse.get("/log"), "form[data-log]")
                    .with("hours", "3:15")
                    .with("note", "Two stones bedded")
                    .send());
            ilse.follow(ilse.form(ilse.get("/log"), "form[data-log]")
                    .with("who", "bram")
                    .press("start-clock"));
            look(
                    browser,
                    new Sheet(
                            "/log",
                            1,
                            List.of("Log, Wed 25 Nov Today so far Ilse, Set the sill stones Two stones bedded 3¼ h"),
                            List.of(
                                    "At what",
                                    "How is it?",
                                    "More: ",
                                    "The whole week",
                                    "Bram",
                                    "Nothing done today",
                                    "Without the server")));
        }
    }

    private static void look(BrowserFixture browser, Sheet sheet) throws IOException {
        browser.open(sheet.path());
        for (Paper paper : Paper.values()) {
            Printed printed = Printed.of(browser.pdf(paper));
            String said = sheet.path() + " on " + paper;
            assertThat(printed.pages()).as(said).isBetween(1, sheet.pages());
            assertThat(printed.text()).as(said).contains(sheet.on());
            sheet.off().forEach(word -> assertThat(printed.text()).as(said).doesNotContain(word));
            assertThat(printed.cutOff()).as(said).isEmpty();
        }
    }
}
