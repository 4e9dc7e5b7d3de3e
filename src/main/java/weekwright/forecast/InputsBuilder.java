package weekwright.forecast;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import weekwright.base.Quantity;
import weekwright.build.CrewMember;
import weekwright.build.Settings;
import weekwright.db.Read;
import weekwright.engine.Inputs;

/**
 * Reads one state of a project as the engine takes it, as of a day: facts dated on or before that day are known, facts dated
 * later are ignored, plans for later days count (rule 1).
 */
public final class InputsBuilder {
    private InputsBuilder() {}

    /**
     * One read of the whole project.
     *
     * @throws java.util.NoSuchElementException while the folder has no project
     */
    public static Basis build(Read read, LocalDate asOf) {
        return build(Source.of(read), asOf, SavedForecastStore.kept(read, asOf), read.projectVersion());
    }

    /** From plain files: no order of work is kept with them (rule 108), and their version is 0. */
    public static Basis build(Source files, LocalDate asOf) {
        return build(files, asOf, Inputs.Kept.NONE, 0);
    }

    private static Basis build(Source source, LocalDate asOf, Inputs.Kept kept, long version) {
        Facts facts = Facts.of(source, asOf);
        return new Basis(
                inputs(facts, kept), names(facts), facts.settings().project().currency(), version);
    }

    private static Inputs inputs(Facts facts, Inputs.Kept kept) {
        CrewInputs crew = new CrewInputs(facts);
        TaskInputs tasks = new TaskInputs(facts);
        FundsInputs funds = new FundsInputs(facts);
        EpisodeInputs episodes = new EpisodeInputs(facts);
        Settings settings = facts.settings();
        return new Inputs(
                Facts.day(facts.asOf()),
                settings.horizonMonths(),
                crew.crew(),
                crew.crewHours(),
                crew.daysOff(),
                crew.gatherings(),
                crew.workedToday(),
                new TurnoutInputs(facts, crew).weeks(),
                tasks.stages(),
                tasks.tasks(),
                tasks.links(),
                tasks.equipment(),
                crew.ownLines(),
                funds.materials(),
                episodes.episodes(),
                episodes.publishing(),
                new Inputs.Weather(
                        settings.weatherLost().stream()
                                .map(Quantity::doubleValue)
                                .toList(),
                        settings.spellDays().doubleValue()),
                new Inputs.Orders(settings.marginDays(), settings.smallOrder().minor()),
                model(settings),
                funds.money(),
                funds.levels(),
                funds.supporters(),
                funds.regular(),
                kept);
    }

    private static Inputs.Model model(Settings settings) {
        return new Inputs.Model(
                settings.priorRatio().doubleValue(),
                settings.effortHalfLife().doubleValue(),
                settings.supportersHalfLife().doubleValue(),
                settings.model().joiningDrift().map(Quantity::doubleValue).orElse(-1.0),
                settings.editingFirst(),
                settings.cameraFixed().doubleValue(),
                settings.cameraOperator().doubleValue(),
                settings.model().turnout().map(Quantity::doubleValue).orElse(-1.0),
                settings.model().foundShare().map(Quantity::doubleValue).orElse(-1.0),
                !settings.lateTogether());
    }

    /** What people call the things of the project. */
    static Names names(Read read) {
        return names(Facts.of(Source.of(read), LocalDate.MAX));
    }

    private static Names names(Facts facts) {
        return new Names(
                facts.settings().project().name(),
                named(facts.stages(), row -> row.id().value(), row -> row.name()),
                named(facts.tasks(), row -> row.id().value(), row -> row.title()),
                named(facts.crew(), row -> row.id().value(), CrewMember::name),
                named(facts.equipment(), row -> row.id().value(), row -> row.name()),
                named(facts.materials(), row -> row.id().value(), row -> row.item()),
                named(facts.episodes(), row -> row.id().value(), row -> row.title()),
                named(facts.shots(), row -> row.id().value(), row -> row.what()));
    }

    private static <R> Map<String, String> named(List<R> rows, Function<R, String> id, Function<R, String> name) {
        Map<String, String> names = new LinkedHashMap<>();
        rows.forEach(row -> names.put(id.apply(row), name.apply(row)));
        return names;
    }
}
