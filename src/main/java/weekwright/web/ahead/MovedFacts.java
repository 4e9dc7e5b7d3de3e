package weekwright.web.ahead;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.BiPredicate;
import java.util.function.Function;
import weekwright.engine.Inputs;
import weekwright.engine.explain.Cause;
import weekwright.forecast.Names;
import weekwright.render.Formats;

/** What has changed between the inputs of two forecasts, in short phrases under the cause that each belongs to. */
final class MovedFacts {
    private static final int NAMED = 3;

    private final Inputs then;
    private final Inputs now;
    private final Names names;
    private final Formats formats;
    private final Map<Cause, List<String>> facts = new EnumMap<>(Cause.class);

    private MovedFacts(Inputs then, Inputs now, Names names, Formats formats) {
        this.then = then;
        this.now = now;
        this.names = names;
        this.formats = formats;
    }

    static Map<Cause, List<String>> of(Inputs then, Inputs now, Names names, Formats formats) {
        MovedFacts found = new MovedFacts(then, now, names, formats);
        found.work();
        found.estimates();
        found.plan();
        found.materials();
        found.money();
        return found.facts;
    }

    private void say(Cause cause, String phrase) {
        facts.computeIfAbsent(cause, one -> new ArrayList<>()).add(phrase);
    }

    private void say(Cause cause, List<String> things, String what) {
        if (!things.isEmpty()) {
            List<String> named = new ArrayList<>(things.subList(0, Math.min(NAMED, things.size())));
            if (things.size() > NAMED) {
                named.add(Formats.number(things.size() - NAMED) + " more");
            }
            say(cause, what + ": " + Formats.list(named));
        }
    }

    private static <T> Map<String, T> byId(List<T> list, Function<T, String> id) {
        Map<String, T> map = new HashMap<>();
        list.forEach(one -> map.put(id.apply(one), one));
        return map;
    }

    /** Names of those in both lists for which something holds. */
    private static <T> List<String> both(
            List<T> then,
            List<T> now,
            Function<T, String> id,
            Function<String, String> name,
            BiPredicate<T, T> changed) {
        Map<String, T> old = byId(then, id);
        return now.stream()
                .filter(one -> old.containsKey(id.apply(one)) && changed.test(old.get(id.apply(one)), one))
                .map(one -> name.apply(id.apply(one)))
                .toList();
    }

    private List<String> tasks(BiPredicate<Inputs.Task, Inputs.Task> changed) {
        return both(then.tasks(), now.tasks(), Inputs.Task::id, names::task, changed);
    }

    private static <T> List<String> only(
            List<T> here, List<T> there, Function<T, String> id, Function<String, String> name) {
        Map<String, T> others = byId(there, id);
        return here.stream()
                .map(id)
                .filter(one -> !others.containsKey(one))
                .map(name)
                .toList();
    }

    private static long logged(Inputs inputs) {
        return inputs.tasks().stream()
                        .flatMap(task -> task.log().stream())
                        .mapToLong(Inputs.Worked::minutes)
                        .sum()
                + inputs.episodes().stream()
                        .mapToLong(Inputs.Episode::editedMinutes)
                        .sum();
    }

    private void work() {
        int days = now.asOf() - then.asOf();
        say(Cause.WORK, Formats.counted(days, "day has passed", "days have passed"));
        long minutes = logged(now) - logged(then);
        if (minutes > 0) {
            say(Cause.WORK, Formats.hoursLong(minutes) + " logged");
        }
        say(Cause.WORK, tasks((a, b) -> a.done() == Inputs.NONE && b.done() != Inputs.NONE), "done");
        say(
                Cause.WORK,
                tasks((a, b) -> b.done() == Inputs.NONE && b.leftMinutes() >= 0 && a.leftMinutes() != b.leftMinutes()),
                "hours left said");
        say(
                Cause.WORK,
                both(
                        then.episodes(),
                        now.episodes(),
                        Inputs.Episode::id,
                        names::episode,
                        (a, b) -> a.published() == Inputs.NONE && b.published() != Inputs.NONE),
                "published");
    }

    private void estimates() {
        say(
                Cause.ESTIMATES,
                tasks((a, b) -> !a.estimate().equals(b.estimate())
                        || a.pieces() != b.pieces()
                        || a.learningPercent() != b.learningPercent()
                        || a.failPercent() != b.failPercent()
                        || a.redoPercent() != b.redoPercent()),
                "estimated otherwise");
        say(
                Cause.ESTIMATES,
                both(
                        then.stages(),
                        now.stages(),
                        Inputs.Stage::id,
                        names::stage,
                        (a, b) -> !a.roughMinutes().equals(b.roughMinutes())),
                "rough hours otherwise");
    }

    private void plan() {
        say(Cause.PLAN, only(now.tasks(), then.tasks(), Inputs.Task::id, names::task), "new tasks");
        say(Cause.PLAN, only(then.tasks(), now.tasks(), Inputs.Task::id, names::task), "removed tasks");
        say(Cause.PLAN, tasks((a, b) -> a.dropped() == Inputs.NONE && b.dropped() != Inputs.NONE), "dropped");
        say(
                Cause.PLAN,
                tasks((a, b) ->
                        a.notBefore() != b.notBefore() || a.booked() != b.booked() || a.asideUntil() != b.asideUntil()),
                "days set otherwise");
        if (!then.links().equals(now.links())) {
            say(Cause.PLAN, "links changed");
        }
        if (!then.crew().equals(now.crew()) || !then.crewHours().equals(now.crewHours())) {
            say(Cause.PLAN, "crew or its hours changed");
        }
        if (!then.daysOff().equals(now.daysOff())) {
            say(Cause.PLAN, "days off changed");
        }
        if (!then.equipment().equals(now.equipment())) {
            say(Cause.PLAN, "equipment changed");
        }
        if (!then.model().equals(now.model()) || !then.weather().equals(now.weather())) {
            say(Cause.PLAN, "settings of the forecast changed");
        }
    }

    private void materials() {
        List<Inputs.Material> a = then.materials();
        List<Inputs.Material> b = now.materials();
        say(
                Cause.MATERIALS,
                both(
                        a,
                        b,
                        Inputs.Material::id,
                        names::material,
                        (x, y) -> x.ordered() == Inputs.NONE && y.ordered() != Inputs.NONE),
                "ordered");
        say(
                Cause.MATERIALS,
                both(
                        a,
                        b,
                        Inputs.Material::id,
                        names::material,
                        (x, y) -> x.received() == Inputs.NONE && y.received() != Inputs.NONE),
                "came");
        say(
                Cause.MATERIALS,
                both(
                        a,
                        b,
                        Inputs.Material::id,
                        names::material,
                        (x, y) -> !x.priceMinor().equals(y.priceMinor())
                                || !x.leadDays().equals(y.leadDays())
                                || x.quantity() != y.quantity()),
                "priced or counted otherwise");
        say(Cause.MATERIALS, only(b, a, Inputs.Material::id, names::material), "new lines");
        say(Cause.MATERIALS, only(a, b, Inputs.Material::id, names::material), "removed lines");
    }

    private static int supporters(Inputs inputs) {
        int month = inputs.supporters().stream()
                .mapToInt(Inputs.SupporterMonth::month)
                .max()
                .orElse(0);
        return inputs.supporters().stream()
                .filter(row -> row.month() == month)
                .mapToInt(row -> row.start() + row.joined() - row.left())
                .sum();
    }

    private void money() {
        if (then.money().cashMinor() != now.money().cashMinor()) {
            say(
                    Cause.MONEY,
                    "in the bank: from " + formats.money(then.money().cashMinor()) + " to "
                            + formats.money(now.money().cashMinor()));
        }
        if (supporters(then) != supporters(now)) {
            say(
                    Cause.MONEY,
                    "supporters: from " + Formats.grouped(supporters(then)) + " to "
                            + Formats.grouped(supporters(now)));
        }
        if (!Objects.equals(then.levels(), now.levels())) {
            say(Cause.MONEY, "pledge levels changed");
        }
        if (!Objects.equals(then.regular(), now.regular())) {
            say(Cause.MONEY, "what comes again changed");
        }
    }
}
