package weekwright.forecast;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.temporal.IsoFields;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import weekwright.base.Hours;
import weekwright.base.Id;
import weekwright.build.CrewMember;
import weekwright.build.Equipment;
import weekwright.build.EquipmentNeeds;
import weekwright.build.HazardCodes;
import weekwright.build.Task;
import weekwright.build.WeekLine;
import weekwright.db.Stored;
import weekwright.episodes.Shot;
import weekwright.funds.Material;

/** Puts the week's sheet together. Pure. */
final class WeekMaker {
    private static final int DAYS = 7;
    /** A proposal under half an hour beside an own line of the same work is not worth a line. */
    private static final int LEAST_MINUTES = 30;

    private final Facts facts;
    private final List<Stored<WeekLine>> own;
    private final LocalDate monday;
    private final LocalDate asOf;
    private final Optional<Proposals> proposals;
    private final Optional<Forecast> forecast;
    private final Map<String, Task> tasks = new HashMap<>();
    private final Map<Id, Equipment> equipment = new HashMap<>();

    WeekMaker(
            Facts facts,
            List<Stored<WeekLine>> own,
            LocalDate day,
            Optional<Proposals> proposals,
            Optional<Forecast> forecast) {
        this.facts = facts;
        this.own = own;
        this.asOf = facts.asOf();
        this.monday = day.with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY));
        this.proposals = proposals;
        this.forecast = forecast;
        facts.tasks().forEach(task -> tasks.put(task.id().value(), task));
        facts.equipment().forEach(one -> equipment.put(one.id(), one));
    }

    WeekPlan plan() {
        String week = String.format(
                Locale.ROOT,
                "%d-W%02d",
                monday.get(IsoFields.WEEK_BASED_YEAR),
                monday.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR));
        List<WeekPlan.Day> days = new ArrayList<>();
        for (int i = 0; i < DAYS; i++) {
            days.add(day(monday.plusDays(i)));
        }
        return new WeekPlan(week, days);
    }

    private WeekPlan.Day day(LocalDate date) {
        List<WeekPlan.Person> people = new ArrayList<>();
        List<WeekPlan.Rain> rain = new ArrayList<>();
        Set<String> worked = new LinkedHashSet<>();
        for (CrewMember member : facts.crew()) {
            String crew = member.id().value();
            List<WeekPlan.Line> lines = ownLines(date, crew);
            if (!date.isBefore(asOf)) {
                lines.addAll(proposals(date, crew, lines));
            }
            lines.forEach(line -> line.task().ifPresent(worked::add));
            if (!lines.isEmpty()) {
                people.add(new WeekPlan.Person(crew, lines));
            }
            inTheRain(date, crew, lines).ifPresent(task -> rain.add(new WeekPlan.Rain(crew, task)));
        }
        List<WeekPlan.Line> anybody = ownLines(date, "");
        if (!anybody.isEmpty()) {
            anybody.forEach(line -> line.task().ifPresent(worked::add));
            people.add(new WeekPlan.Person("", anybody));
        }
        return new WeekPlan.Day(
                date,
                people,
                rain,
                shots(worked),
                hazards(worked),
                deliveries(date),
                orders(date),
                episode(date),
                worked.stream()
                        .filter(id -> tasks.containsKey(id) && tasks.get(id).cameraOrDefault() == Task.Camera.ONCE)
                        .toList());
    }

    private List<WeekPlan.Line> ownLines(LocalDate date, String crew) {
        List<WeekPlan.Line> lines = new ArrayList<>();
        for (Stored<WeekLine> stored : own) {
            WeekLine line = stored.value();
            if (line.date().equals(date) && facts.id("crew", line.crew()).equals(crew)) {
                boolean timed = line.hours().isPresent()
                        || line.from().isPresent() && line.to().isPresent();
                lines.add(new WeekPlan.Line(
                        word(CrewInputs.kindOf(line)),
                        line.task().map(id -> facts.id("task", id)),
                        line.episode().map(id -> facts.id("episode", id)),
                        timed ? new Hours(CrewInputs.minutesOf(line)) : Hours.ZERO,
                        line.text(),
                        true,
                        Optional.of(stored.row())));
            }
        }
        return lines;
    }

    private static String word(WeekLine.Kind kind) {
        return kind.name().toLowerCase(Locale.ROOT);
    }

    /** What the plan has this person do beyond their own lines: those were given their hours first. */
    private List<WeekPlan.Line> proposals(LocalDate date, String crew, List<WeekPlan.Line> ownLines) {
        List<WeekPlan.Line> lines = new ArrayList<>();
        for (Proposals.Doing doing : proposals.map(one -> one.of(date, crew)).orElse(List.of())) {
            boolean beside = doing.kind().equals(Doings.BESIDE);
            String kind = beside ? "work" : doing.kind();
            int left = doing.minutes();
            boolean same = false;
            for (WeekPlan.Line line : ownLines) {
                if (line.kind().equals(kind)
                        && line.task().equals(doing.task())
                        && line.episode().equals(doing.episode())) {
                    left -= line.hours().minutes();
                    same = true;
                }
            }
            if (!same || left >= LEAST_MINUTES) {
                String text = beside ? WeekPlan.BESIDE : doing.fromBank() ? "an episode from the story bank" : "";
                lines.add(new WeekPlan.Line(
                        kind, doing.task(), doing.episode(), new Hours(left), text, false, Optional.empty()));
            }
        }
        return lines;
    }

    /** For somebody with work outdoors: the indoor task that they would work on most if every day were wet. */
    private Optional<String> inTheRain(LocalDate date, String crew, List<WeekPlan.Line> lines) {
        boolean outdoors = lines.stream()
                .flatMap(line -> line.task().stream())
                .anyMatch(id -> tasks.containsKey(id) && tasks.get(id).outdoors());
        if (!outdoors || date.isBefore(asOf)) {
            return Optional.empty();
        }
        return proposals.flatMap(one -> one.inTheRain(date, crew));
    }

    private List<String> shots(Set<String> worked) {
        return facts.shots().stream()
                .filter(shot -> shot.captured().isEmpty() && !shot.calledOff())
                .filter(shot -> shot.task().isPresent() && worked.contains(facts.id("task", shot.task())))
                .map(Shot::id)
                .map(id -> id.value())
                .toList();
    }

    private List<String> hazards(Set<String> worked) {
        Set<String> found = new LinkedHashSet<>();
        worked.stream()
                .filter(tasks::containsKey)
                .forEach(id -> found.addAll(EquipmentNeeds.hazards(tasks.get(id), equipment)));
        List<String> ordered = new ArrayList<>(HazardCodes.all());
        ordered.retainAll(found);
        return ordered;
    }

    private List<String> deliveries(LocalDate date) {
        return facts.materials().stream()
                .filter(line -> line.ordered().isPresent()
                        && line.received().isEmpty()
                        && line.promised().isPresent())
                .filter(line -> isDue(line.promised().get(), date))
                .map(Material::id)
                .map(id -> id.value())
                .toList();
    }

    private List<String> orders(LocalDate date) {
        return forecast.map(Forecast::orders).orElse(List.of()).stream()
                .filter(order -> order.orderBy().filter(day -> isDue(day, date)).isPresent())
                .map(Forecast.Order::material)
                .toList();
    }

    /** On its day, or overdue on the as-of day. */
    private boolean isDue(LocalDate due, LocalDate date) {
        return due.equals(date) || date.equals(asOf) && due.isBefore(asOf);
    }

    private Optional<String> episode(LocalDate date) {
        return facts.episodes().stream()
                .filter(episode -> episode.slot().filter(date::equals).isPresent())
                .map(episode -> episode.id().value())
                .findFirst();
    }
}
