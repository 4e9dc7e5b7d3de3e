package weekwright.web.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.base.Money;
import weekwright.base.Quantity;
import weekwright.build.Stage;
import weekwright.build.StageStore;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.funds.Material;
import weekwright.funds.MaterialStore;
import weekwright.funds.StageCosts;
import weekwright.funds.TakeOff;
import weekwright.render.Formats;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;

/** The take-off of a stage: every material line with its dimensions, what it comes to, and what is covered already. */
public final class BuildStageMaterialsPage implements Page {
    /** @param sums how the lines stand, in the order of {@link Standing}, then all together */
    public record View(String id, String name, List<Part> parts, List<Sum> sums) {}

    /** The lines of one task. */
    public record Part(String id, String title, boolean open, List<Line> lines) {}

    /** A line. */
    public record Line(
            String id,
            String item,
            String dimensions,
            String amount,
            String waste,
            String price,
            String priceGot,
            String standing,
            Money likely) {}

    /** What lines of one kind come to. */
    public record Sum(String what, int lines, Money low, Money likely, Money high) {}

    private enum Standing {
        TO_BUY("still to buy"),
        ORDERED("ordered"),
        IN_HAND("in hand"),
        YARD("from the yard"),
        GIVEN("given"),
        OWN("salvaged or our own");

        private final String words;

        Standing(String words) {
            this.words = words;
        }

        static Standing of(Material line) {
            if (line.stock().isPresent()) {
                return YARD;
            }
            return switch (line.sourceOrDefault()) {
                case GIVEN -> GIVEN;
                case SALVAGED, OWN -> OWN;
                case BOUGHT ->
                    line.received().isPresent() ? IN_HAND : line.ordered().isPresent() ? ORDERED : TO_BUY;
            };
        }
    }

    @Override
    public View show(Request request) {
        Id id = request.id("id");
        Formats formats = request.formats();
        int digits = request.settings().moneyDigits();
        return request.read(read -> {
            Stage stage = StageStore.TABLE
                    .find(read, id)
                    .map(Stored::value)
                    .orElseThrow(() -> new NotFound("There is no stage " + id + "."));
            List<Part> parts = new ArrayList<>();
            List<Material> all = new ArrayList<>();
            for (Task task : tasks(read, stage)) {
                List<Material> lines = MaterialStore.ofTask(read, task.id()).stream()
                        .map(Stored::value)
                        .toList();
                all.addAll(lines);
                parts.add(new Part(
                        task.id().value(),
                        task.title(),
                        task.isOpen(),
                        lines.stream().map(line -> line(line, formats, digits)).toList()));
            }
            return new View(stage.id().value(), stage.name(), parts, sums(all, digits));
        });
    }

    private static List<Task> tasks(Read read, Stage stage) {
        return TaskStore.ofStage(read, stage.id()).stream()
                .map(Stored::value)
                .filter(task -> task.dropped().isEmpty())
                .toList();
    }

    private static Line line(Material line, Formats formats, int digits) {
        return new Line(
                line.id().value(),
                line.item(),
                line.dimensions().map(d -> d.said(line.unit())).orElse(""),
                (line.quantity().map(q -> q.text()).orElse("") + " " + line.unit()).strip(),
                line.waste().isPresent()
                        ? TakeOff.withWaste(line)
                                .map(all -> ("with " + line.waste().get().text() + " % waste " + all.text() + " "
                                                + line.unit())
                                        .strip())
                                .orElse("")
                        : "",
                price(line, formats),
                BuildMaterialPage.priceGot(line, formats),
                Standing.of(line).words,
                StageCosts.worth(line, line.priceLikely(), digits));
    }

    private static String price(Material line, Formats formats) {
        return line.priceLikely()
                .map(price -> formats.price(price.value()) + BuildMaterialPage.prices(line, formats))
                .orElse("");
    }

    private static List<Sum> sums(List<Material> lines, int digits) {
        List<Sum> sums = new ArrayList<>();
        for (Standing standing : Standing.values()) {
            List<Material> some =
                    lines.stream().filter(line -> Standing.of(line) == standing).toList();
            if (!some.isEmpty()) {
                sums.add(sum(standing.words, some, digits));
            }
        }
        if (!lines.isEmpty()) {
            sums.add(sum("all together", lines, digits));
        }
        return sums;
    }

    private static Sum sum(String what, List<Material> lines, int digits) {
        Money low = Money.ZERO;
        Money likely = Money.ZERO;
        Money high = Money.ZERO;
        for (Material line : lines) {
            likely = likely.plus(StageCosts.worth(line, line.priceLikely(), digits));
            low = low.plus(StageCosts.worth(line, first(line.priceLow(), line), digits));
            high = high.plus(StageCosts.worth(line, first(line.priceHigh(), line), digits));
        }
        return new Sum(what, lines.size(), low, likely, high);
    }

    /** An empty low or high is the likely one. */
    private static Optional<Quantity> first(Optional<Quantity> price, Material line) {
        return price.or(line::priceLikely);
    }
}
