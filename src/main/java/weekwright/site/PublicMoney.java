package weekwright.site;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import weekwright.base.Id;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.forecast.Forecast;
import weekwright.forecast.SavedForecastStore;
import weekwright.funds.Material;
import weekwright.funds.MaterialStore;
import weekwright.funds.StageCosts;
import weekwright.render.Formats;
import weekwright.render.chart.Ladder;

/** What the public may know of the money: the next purchase, and which stage the spent money went into. */
public final class PublicMoney {
    /** A purchase that is paid for passes through its post by so much. */
    private static final double THROUGH = 1.06;

    private PublicMoney() {}

    /** The next purchase: its name with its stage, what it costs by when, whether the money is there, and its picture. */
    public record Rung(String what, String words, String svg) {}

    /** @param percent whole, of all that was spent on stages; they sum to 100 */
    public record Share(String stage, int percent) {}

    /**
     * The first purchase of a stage that has not begun; where those have none, the first of all. From the newest forecast kept.
     */
    static Optional<Rung> rung(Read read, List<PublicStage> stages, Formats formats, int moneyDigits) {
        List<Forecast.Order> orders = SavedForecastStore.newest(read, formats.today()).stream()
                .flatMap(saved -> saved.forecast(moneyDigits).orders().stream())
                .filter(order -> order.orderBy().isPresent() && order.amount().minor() > 0)
                .filter(order -> material(read, order)
                        .map(line -> line.ordered().isEmpty() && line.received().isEmpty())
                        .orElse(false))
                .sorted(Comparator.comparing(order -> order.orderBy().orElseThrow()))
                .toList();
        return orders.stream()
                .filter(order -> stage(read, order, stages)
                        .map(stage -> stage.doneMinutes() == 0 && !stage.side())
                        .orElse(false))
                .findFirst()
                .or(() -> orders.stream().findFirst())
                .map(order -> rung(read, order, stages, formats));
    }

    private static Optional<Material> material(Read read, Forecast.Order order) {
        return MaterialStore.TABLE.find(read, new Id(order.material())).map(Stored::value);
    }

    private static Optional<PublicStage> stage(Read read, Forecast.Order order, List<PublicStage> stages) {
        return material(read, order)
                .flatMap(line -> TaskStore.TABLE.find(read, line.task()))
                .map(Stored::value)
                .map(Task::stage)
                .flatMap(id ->
                        stages.stream().filter(stage -> stage.id().same(id)).findFirst());
    }

    private static Rung rung(Read read, Forecast.Order order, List<PublicStage> stages, Formats formats) {
        LocalDate day = order.orderBy().orElseThrow();
        long need = order.amount().minor();
        long middle = order.shortBy().p50().minor();
        long bad = order.shortBy().p90().minor();
        String said = bad <= 0
                ? "The money for it is there with nine chances in ten."
                : middle <= 0
                        ? "The money for it is there at even chances."
                        : "At even chances about " + formats.moneyForecast(middle) + " of it is still missing.";
        String name = Formats.sentence(material(read, order).map(Material::item).orElse(order.material()));
        return new Rung(
                name
                        + stage(read, order, stages)
                                .map(stage -> ", for " + stage.name())
                                .orElse(""),
                "About " + formats.moneyForecast(need) + ", to be ordered "
                        + (day.isAfter(formats.today()) ? "by " + formats.dateOrMonth(day) : "now") + ". " + said,
                Ladder.rung(need, there(need, bad), there(need, middle), there(need, middle)));
    }

    private static double there(long need, long missing) {
        return missing <= 0 ? need * THROUGH : need - missing;
    }

    /** Which stage the spent money went into, the most first; no amounts. Stages with nothing spent are left out. */
    static List<Share> pledge(Read read, List<PublicStage> stages) {
        Map<String, StageCosts> costs = StageCosts.all(read);
        List<PublicStage> spent =
                stages.stream().filter(stage -> spent(costs, stage) > 0).toList();
        long all = spent.stream().mapToLong(stage -> spent(costs, stage)).sum();
        // what rounding down leaves goes to the largest rests, so that the shares sum to 100
        int[] whole = spent.stream()
                .mapToInt(stage -> (int) (100 * spent(costs, stage) / all))
                .toArray();
        int left = 100 - IntStream.of(whole).sum();
        IntStream.range(0, whole.length)
                .boxed()
                .sorted(Comparator.comparing((Integer i) -> -(100 * spent(costs, spent.get(i)) % all)))
                .limit(left)
                .forEach(i -> whole[i]++);
        List<Share> shares = new ArrayList<>();
        for (int i = 0; i < whole.length; i++) {
            shares.add(new Share(spent.get(i).name(), whole[i]));
        }
        shares.sort(Comparator.comparing(Share::percent).reversed());
        return shares;
    }

    private static long spent(Map<String, StageCosts> costs, PublicStage stage) {
        StageCosts of = costs.get(stage.id().folded());
        return of == null ? 0 : of.spent().minor();
    }
}
