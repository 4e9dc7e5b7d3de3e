package weekwright.web.funds;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Money;
import weekwright.build.Stage;
import weekwright.build.StageStore;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.funds.StageCosts;
import weekwright.render.Formats;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.parts.CostLines;

/** What each stage costs: estimate, committed, spent, left, and every line of it with the rows of the books that paid it. */
public final class FundsStagesPage implements Page {
    /** @param sum of all stages; empty without any */
    public record View(List<Line> lines, Optional<Line> sum) {}

    /** A stage. */
    public record Line(
            String id,
            String name,
            Money estimate,
            Money committed,
            Money spent,
            Money left,
            Money together,
            String said,
            List<CostLines.Line> parts) {}

    /** The stages of which something is committed or left. */
    static List<Line> open(Read read, Formats formats) {
        return lines(read, StageCosts.all(read), formats).stream()
                .filter(line -> line.committed().plus(line.left()).minor() > 0)
                .toList();
    }

    private static List<Line> lines(Read read, Map<String, StageCosts> costs, Formats formats) {
        List<Line> lines = new ArrayList<>();
        for (Stored<Stage> stage : StageStore.inOrder(read)) {
            Optional.ofNullable(costs.get(stage.value().id().folded()))
                    .ifPresent(one -> lines.add(
                            line(stage.value().id().value(), stage.value().name(), one, formats)));
        }
        return lines;
    }

    @Override
    public View show(Request request) {
        Formats formats = request.formats();
        return request.read(read -> {
            Map<String, StageCosts> costs = StageCosts.all(read);
            List<Line> lines = lines(read, costs, formats);
            List<StageCosts.Line> all =
                    costs.values().stream().flatMap(one -> one.lines().stream()).toList();
            return new View(
                    lines,
                    lines.isEmpty()
                            ? Optional.empty()
                            : Optional.of(line("", "All stages", new StageCosts(all), formats)));
        });
    }

    private static Line line(String id, String name, StageCosts costs, Formats formats) {
        return new Line(
                id,
                name,
                costs.estimate(),
                costs.committed(),
                costs.spent(),
                costs.left(),
                costs.together(),
                CostLines.said(costs, formats),
                id.isEmpty() ? List.of() : CostLines.of(costs, formats));
    }
}
