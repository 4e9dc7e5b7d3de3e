package weekwright.forecast;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.db.Db;
import weekwright.engine.Inputs;
import weekwright.engine.plan.Plan;
import weekwright.engine.plan.Planner;
import weekwright.engine.simulate.Setup;
import weekwright.engine.simulate.Simulation;

/**
 * What the order of work has each person do on each day of nine weeks, in the future with expected values and dry weather,
 * and what they would do if every day were wet. Made beside a forecast, so that a page only looks it up; it names things by
 * their ids and stays readable when the project has changed since. Immutable.
 */
public final class Proposals {
    /** From the as-of day on: its week and the eight after it. */
    static final int DAYS = 63;
    /** Rain is told for so many days: in the wet run the work has gone another way by then. */
    private static final int RAIN_DAYS = 14;

    private final LocalDate asOf;
    private final long version;
    private final Map<String, List<Doing>> dry = new HashMap<>();
    private final Map<String, List<String>> indoors = new HashMap<>();

    /**
     * What somebody does in a day.
     *
     * @param kind work, film, edit, or {@link Doings#BESIDE}
     * @param fromBank whether it is an episode of the story bank that is edited
     */
    record Doing(String kind, Optional<String> task, Optional<String> episode, boolean fromBank, int minutes) {}

    private Proposals(LocalDate asOf, long version) {
        this.asOf = asOf;
        this.version = version;
    }

    /** Runs the order of work twice, dry and wet. */
    public static Proposals of(Basis basis, Plan plan) {
        return of(basis.inputs(), plan, basis.version());
    }

    /**
     * What was proposed on a past Monday: from the forecast saved on it, else as it would have been, from what was known
     * then.
     */
    static Proposals then(Db db, LocalDate monday) {
        Optional<SavedForecast> saved = db.read(read -> SavedForecastStore.newest(read, monday))
                .filter(one -> one.day().equals(monday) && one.engine().equals(Simulation.VERSION));
        if (saved.isPresent()) {
            Inputs inputs = saved.get().unpackedInputs();
            return of(
                    inputs,
                    Planner.follow(
                            new Setup(inputs), ForecastJson.kept(saved.get().ranks())),
                    saved.get().projectVersion());
        }
        Basis basis = db.read(read -> InputsBuilder.build(read, monday));
        return of(basis, new ForecastRun.Planned(basis, Forecasts.SEED).plan());
    }

    private static Proposals of(Inputs inputs, Plan plan, long version) {
        Doings dry = Doings.of(inputs, plan, DAYS, 0);
        Doings wet = Doings.of(inputs, plan, RAIN_DAYS, Doings.EVERY_DAY_LOST);
        Proposals proposals = new Proposals(LocalDate.ofEpochDay(inputs.asOf()), version);
        for (int person = 0; person < inputs.crew().size(); person++) {
            for (int day = 0; day < DAYS; day++) {
                String key = key(
                        proposals.asOf.plusDays(day), inputs.crew().get(person).id());
                List<Doing> doings = new ArrayList<>();
                dry.of(day, person).forEach((doing, minutes) -> doings.add(named(inputs, doing, minutes)));
                if (!doings.isEmpty()) {
                    proposals.dry.put(key, List.copyOf(doings));
                }
                List<String> dryPlaces = wet.tasks(day, person).stream()
                        .map(task -> inputs.tasks().get(task))
                        .filter(task -> !task.outdoors())
                        .map(Inputs.Task::id)
                        .toList();
                if (!dryPlaces.isEmpty()) {
                    proposals.indoors.put(key, dryPlaces);
                }
            }
        }
        return proposals;
    }

    private static Doing named(Inputs inputs, Doings.Doing doing, int minutes) {
        return new Doing(
                doing.kind(),
                doing.task() < 0
                        ? Optional.empty()
                        : Optional.of(inputs.tasks().get(doing.task()).id()),
                doing.episode() < 0
                        ? Optional.empty()
                        : Optional.of(inputs.episodes().get(doing.episode()).id()),
                doing.episode() == -2,
                minutes);
    }

    /** Whether they know the project as it stood at this version on this day. */
    public boolean know(long project, LocalDate day) {
        return version == project && asOf.equals(day);
    }

    /** The first day for which there are any. */
    public LocalDate asOf() {
        return asOf;
    }

    /** In the order in which the day goes. */
    List<Doing> of(LocalDate date, String crew) {
        return dry.getOrDefault(key(date, crew), List.of());
    }

    /** The indoor task that somebody would work on most if every day were wet. */
    Optional<String> inTheRain(LocalDate date, String crew) {
        return indoors.getOrDefault(key(date, crew), List.of()).stream().findFirst();
    }

    private static String key(LocalDate date, String crew) {
        return date + " " + crew;
    }
}
