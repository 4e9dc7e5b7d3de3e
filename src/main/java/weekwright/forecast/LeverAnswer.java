package weekwright.forecast;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import weekwright.engine.Inputs;
import weekwright.engine.Outcome;

/**
 * What levers do: the plan as it stands beside the plan as tried, future by future with the same luck. Chances are 0 to 1.
 *
 * @param futures drawn of each
 * @param stages that have something left to land
 * @param empty how many of the next twelve slots stay empty, in the mean
 * @param runway last day up to which four of five futures never ended a day under zero; empty if to the horizon
 * @param withoutPledges the same with the reserve, if pledges stopped today and nothing more were ordered
 * @param underReserve chance of a day that ends under the reserve before the horizon, orders going out on their day
 * @param paidOut minor units paid out by the end of the twelfth month after this one, in the mean
 * @param reordered whether {@link Stage#reordered} is known
 */
public record LeverAnswer(
        int futures,
        List<Stage> stages,
        Pair<Double> empty,
        Pair<Optional<LocalDate>> runway,
        Pair<Optional<LocalDate>> withoutPledges,
        Pair<Double> underReserve,
        Pair<Long> paidOut,
        boolean reordered) {
    /** In {@link Stage#middle}, of a future that lands on one side alone. */
    private static final int FAR = 1_000_000;

    public LeverAnswer {
        stages = List.copyOf(stages);
    }

    /** As it stands and as tried. */
    public record Pair<T>(T now, T then) {}

    /**
     * A stage.
     *
     * @param sooner share of futures in which it lands earlier than in the same future without the levers
     * @param later share in which it lands later
     * @param middle days later, negative for sooner, in the middle one of all futures; empty where that one never lands on one side
     * @param covered chance that its materials are covered
     * @param reordered landing as tried with an order of work made anew for it; empty while unknown, and where nothing
     *     changes that the order depends on
     */
    public record Stage(
            String id,
            Pair<Forecast.Days> landing,
            double sooner,
            double later,
            Optional<Integer> middle,
            Pair<Double> covered,
            Optional<Forecast.Days> reordered) {}

    static LeverAnswer of(LeverSide now, LeverSide then, Optional<LeverSide> anew) {
        List<Stage> stages = new ArrayList<>();
        for (int s = 0; s < now.landing().length; s++) {
            Forecast.Days landing = ForecastMaker.days(now.landing()[s]);
            if (landing.some() && open(now, s)) {
                stages.add(stage(s, landing, now, then, anew));
            }
        }
        return new LeverAnswer(
                now.futures(),
                stages,
                new Pair<>(now.emptySlots(), then.emptySlots()),
                new Pair<>(now.runway(), then.runway()),
                new Pair<>(now.withoutPledges(), then.withoutPledges()),
                new Pair<>(now.underReserve(), then.underReserve()),
                new Pair<>(now.paidOutMean(), then.paidOutMean()),
                anew.isPresent());
    }

    private static boolean open(LeverSide side, int stage) {
        return Arrays.stream(side.landing()[stage])
                .anyMatch(day -> day > side.inputs().asOf());
    }

    private static Stage stage(int s, Forecast.Days landing, LeverSide now, LeverSide then, Optional<LeverSide> anew) {
        int sooner = 0;
        int later = 0;
        int[] apart = new int[now.futures()];
        for (int trial = 0; trial < apart.length; trial++) {
            int a = now.landing()[s][trial];
            int b = then.landing()[s][trial];
            sooner += b < a ? 1 : 0;
            later += b > a ? 1 : 0;
            apart[trial] = a == b
                    ? 0
                    : a == Outcome.LATER || b == Inputs.NONE
                            ? -FAR
                            : b == Outcome.LATER || a == Inputs.NONE ? FAR : b - a;
        }
        int middle = Outcome.quantile(apart, 0.5);
        return new Stage(
                now.inputs().stages().get(s).id(),
                new Pair<>(landing, ForecastMaker.days(then.landing()[s])),
                (double) sooner / apart.length,
                (double) later / apart.length,
                Math.abs(middle) == FAR ? Optional.empty() : Optional.of(middle),
                new Pair<>(now.covered()[s], then.covered()[s]),
                anew.map(side -> ForecastMaker.days(side.landing()[s])));
    }
}
