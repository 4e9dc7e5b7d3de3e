package weekwright.forecast;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import weekwright.engine.Inputs;
import weekwright.engine.plan.Plan;
import weekwright.engine.simulate.ExpectedRun;
import weekwright.engine.simulate.Setup;
import weekwright.engine.simulate.Trace;

/** What each person does on each of the first days of the future with expected values, in weather that is given. */
final class Doings implements Trace {
    /** What somebody does in a day, in minutes; the episode is -1 for none and -2 for one from the story bank. */
    record Doing(String kind, int task, int episode) {}

    static final String BESIDE = "beside";
    /** Chances are summed day by day and a day is lost when the sum passes 1 (rule 54): 2 loses the first day too. */
    static final double EVERY_DAY_LOST = 2;

    private final Inputs inputs;
    private final int days;
    private final Map<Long, Map<Doing, Integer>> minutes = new LinkedHashMap<>();

    private Doings(Inputs inputs, int days) {
        this.inputs = inputs;
        this.days = days;
    }

    /**
     * Runs the plan.
     *
     * @param days how many days from the as-of day on are kept
     * @param lost chance of a day lost outdoors: 0 for a dry week, {@link #EVERY_DAY_LOST} for a wet one
     */
    static Doings of(Inputs inputs, Plan plan, int days, double lost) {
        Doings doings = new Doings(inputs, days);
        ExpectedRun.tell(new Setup(inWeather(inputs, lost)), plan, doings);
        return doings;
    }

    /** In the order in which the day goes; empty for unnamed hands. */
    Map<Doing, Integer> of(int day, int person) {
        return minutes.getOrDefault(key(day, person), Map.of());
    }

    /** Tasks that the person works on, most minutes first. */
    List<Integer> tasks(int day, int person) {
        List<Map.Entry<Doing, Integer>> worked = new ArrayList<>(of(day, person).entrySet());
        worked.removeIf(entry -> !entry.getKey().kind().equals("work"));
        worked.sort(Map.Entry.comparingByValue(Collections.reverseOrder()));
        return worked.stream().map(entry -> entry.getKey().task()).toList();
    }

    @Override
    public void stretch(
            int day,
            int task,
            int hands,
            int company,
            int operator,
            int from,
            int clock,
            int filming,
            int progress,
            boolean withEquipment) {
        if (day >= days || task >= inputs.tasks().size()) {
            return;
        }
        for (int person = 0; person < inputs.crew().size(); person++) {
            if ((hands >> person & 1) == 1) {
                add(day, person, new Doing("work", task, -1), clock);
            }
        }
        add(day, company, new Doing(BESIDE, task, -1), clock);
        add(day, operator, new Doing("film", task, -1), filming);
    }

    @Override
    public void edits(int day, int person, int episode, int editing) {
        if (day < days) {
            add(day, person, new Doing("edit", -1, episode < 0 ? -2 : episode), editing);
        }
    }

    private void add(int day, int person, Doing doing, int more) {
        if (person >= 0 && person < inputs.crew().size() && more > 0) {
            minutes.computeIfAbsent(key(day, person), key -> new LinkedHashMap<>())
                    .merge(doing, more, Integer::sum);
        }
    }

    private static long key(int day, int person) {
        return (long) day << 32 | person;
    }

    private static Inputs inWeather(Inputs i, double lost) {
        return new Inputs(
                i.asOf(),
                i.horizonMonths(),
                i.crew(),
                i.crewHours(),
                i.daysOff(),
                i.gatherings(),
                i.workedToday(),
                i.turnout(),
                i.stages(),
                i.tasks(),
                i.links(),
                i.equipment(),
                i.ownLines(),
                i.materials(),
                i.episodes(),
                i.publishing(),
                new Inputs.Weather(Collections.nCopies(12, lost), i.weather().spellDays()),
                i.orders(),
                // a week is planned with the hours that people have stated and the tasks that are listed
                i.model().with(1, 0),
                i.money(),
                i.levels(),
                i.supporters(),
                i.regular(),
                i.kept());
    }
}
