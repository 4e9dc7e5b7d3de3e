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

    @Override
    public View show(Request request) {
        Formats formats = new Formats(request.settings().project().currency(), request.today());
        return request.read(read -> {
            List<Line> lines = new ArrayList<>();
            List<StageCosts.Line> all = new ArrayList<>();
            Map<String, StageCosts> costs = StageCosts.all(read);
            for (Stage stage : stages(read)) {
                StageCosts one = costs.get(stage.id().folded());
                if (one != null) {
                    lines.add(line(stage.id().value(), stage.name(), one, formats));
                    all.addAll(one.lines());
                }
            }
            return new View(
                    lines,
                    lines.isEmpty()
                            ? Optional.empty()
                            : Optional.of(line("", "All stages", new StageCosts(all), formats)));
        });
    }

    private static List<Stage> stages(Read read) {
        return StageStore.inOrder(read).stream().map(Stored::value).toList();
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
