package weekwright.web.week;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import weekwright.base.Id;
import weekwright.build.CrewMember;
import weekwright.build.Equipment;
import weekwright.build.EquipmentNeeds;
import weekwright.build.Task;
import weekwright.build.WeekLine;
import weekwright.forecast.WeekPlan;
import weekwright.render.Formats;

/**
 * What does not go together on a day of the sheet: two works for one machine, an operator who is also one of the hands,
 * once-only work without an operator; and what tires: more than ten hours, heavy work after a late edit. The last two are
 * common practice, no source. Pure.
 */
final class WeekWarnings {
    private static final int LONG_DAY_MINUTES = 10 * 60;
    private static final LocalTime LATE = LocalTime.of(21, 0);
    private static final Set<String> HEAVY =
            Set.of("lift", "hand", "jack", "fell", "saw", "stump", "hot", "melt", "height");

    private final WeekFacts facts;

    WeekWarnings(WeekFacts facts) {
        this.facts = facts;
    }

    /** Sentences about a day. */
    List<String> conflicts(WeekPlan.Day day) {
        List<String> said = new ArrayList<>();
        machines(day, said);
        operators(day, said);
        return said;
    }

    /** Two works that somebody wrote, or one of them, and one machine; lines whose clock times lie apart go together. */
    private void machines(WeekPlan.Day day, List<String> said) {
        record Use(String task, String who, boolean own, Optional<WeekLine> line, int count) {}
        Map<Id, List<Use>> uses = new LinkedHashMap<>();
        for (WeekPlan.Person person : day.people()) {
            for (WeekPlan.Line line : person.lines()) {
                Task task = line.kind().equals("work")
                        ? line.task().map(facts.tasks()::get).orElse(null)
                        : null;
                if (task != null) {
                    Optional<WeekLine> own = line.row().map(facts.own()::get);
                    EquipmentNeeds.of(task)
                            .counts()
                            .forEach((id, count) -> uses.computeIfAbsent(id, key -> new ArrayList<>())
                                    .add(new Use(task.id().value(), person.crew(), line.own(), own, count)));
                }
            }
        }
        uses.forEach((id, all) -> {
            Equipment machine = facts.equipment().get(id);
            Map<String, Use> byTask = new LinkedHashMap<>();
            all.forEach(use -> byTask.merge(use.task(), use, (a, b) -> a.own() ? a : b));
            int wanted = byTask.values().stream().mapToInt(Use::count).sum();
            boolean own = byTask.values().stream().anyMatch(Use::own);
            boolean apart = byTask.size() == 2
                    && apart(byTask.values().stream().map(Use::line).toList());
            if (machine != null && byTask.size() > 1 && own && wanted > machine.quantityOrDefault() && !apart) {
                List<String> works = byTask.values().stream()
                        .map(use -> facts.task(use.task()) + " (" + facts.person(use.who()) + ")")
                        .toList();
                said.add(Formats.list(works) + (works.size() == 2 ? " both want " : " all want ") + machine.name()
                        + (machine.quantityOrDefault() == 1
                                ? ", and there is one"
                                : ", and there are " + machine.quantityOrDefault())
                        + ": agree who is first.");
            }
        });
    }

    private static boolean apart(List<Optional<WeekLine>> lines) {
        Optional<WeekLine> one = lines.get(0);
        Optional<WeekLine> other = lines.get(1);
        if (one.isEmpty()
                || other.isEmpty()
                || one.get().from().isEmpty()
                || one.get().to().isEmpty()
                || other.get().from().isEmpty()
                || other.get().to().isEmpty()) {
            return false;
        }
        return !one.get().to().get().isAfter(other.get().from().get())
                || !other.get().to().get().isAfter(one.get().from().get());
    }

    private void operators(WeekPlan.Day day, List<String> said) {
        Map<String, Set<String>> hands = new HashMap<>();
        Map<String, Set<String>> filming = new HashMap<>();
        Set<String> there = new HashSet<>();
        Set<String> written = new LinkedHashSet<>();
        for (WeekPlan.Person person : day.people()) {
            for (WeekPlan.Line line : person.lines()) {
                if (!line.kind().equals("rest")) {
                    there.add(person.crew());
                }
                line.task().ifPresent(task -> {
                    if (line.kind().equals("work") && !line.text().equals(WeekPlan.BESIDE)) {
                        hands.computeIfAbsent(task, key -> new HashSet<>()).add(person.crew());
                    } else if (line.kind().equals("film")) {
                        filming.computeIfAbsent(task, key -> new HashSet<>()).add(person.crew());
                    }
                    if (line.own() && !line.kind().equals("rest")) {
                        written.add(task);
                    }
                });
            }
        }
        for (String id : written) {
            Optional<Task> task = Optional.ofNullable(facts.tasks().get(id));
            boolean operated = task.map(Task::cameraOrDefault)
                    .filter(camera -> camera == Task.Camera.OPERATOR || camera == Task.Camera.ONCE)
                    .isPresent();
            Set<String> both = new HashSet<>(hands.getOrDefault(id, Set.of()));
            both.retainAll(filming.getOrDefault(id, Set.of()));
            Set<String> others = new HashSet<>(filming.getOrDefault(id, Set.of()));
            others.removeAll(hands.getOrDefault(id, Set.of()));
            if (operated && !both.isEmpty() && others.isEmpty()) {
                said.add(Formats.list(both.stream().sorted().map(facts::person).toList())
                        + " cannot hold the camera and be one of the hands of " + facts.task(id) + ".");
            } else if (operated
                    && task.get().cameraOrDefault() == Task.Camera.ONCE
                    && hands.containsKey(id)
                    && others.isEmpty()
                    && there.stream()
                            .noneMatch(
                                    crew -> isOperator(crew) && !hands.get(id).contains(crew))) {
                said.add(facts.task(id)
                        + " happens once, and nobody who can hold the camera is there besides the hands.");
            }
        }
    }

    private boolean isOperator(String crew) {
        CrewMember member = facts.crew().get(crew);
        return member != null && member.trades().has("camera");
    }

    /** Who has too much on a day; each a sentence. */
    List<String> tiring(WeekPlan.Day day) {
        List<String> said = new ArrayList<>();
        for (WeekPlan.Person person : day.people()) {
            int minutes = person.lines().stream()
                    .filter(line -> !line.kind().equals("rest"))
                    .mapToInt(line -> line.hours().minutes())
                    .sum();
            if (person.crew().isEmpty()) {
                continue;
            }
            if (minutes > LONG_DAY_MINUTES) {
                said.add(facts.person(person.crew()) + " has " + Formats.hoursLong(minutes) + " planned.");
            }
            Optional<String> heavy = person.lines().stream()
                    .filter(line -> line.kind().equals("work"))
                    .flatMap(line -> line.task().stream())
                    .filter(this::heavy)
                    .findFirst();
            if (heavy.isPresent() && editedLate(person.crew(), day.date().minusDays(1))) {
                said.add(facts.person(person.crew()) + " edits late the evening before: " + facts.task(heavy.get())
                        + " is heavy work.");
            }
        }
        return said;
    }

    private boolean heavy(String id) {
        Task task = facts.tasks().get(id);
        return task != null
                && EquipmentNeeds.hazards(task, facts.equipment()).stream().anyMatch(HEAVY::contains);
    }

    private boolean editedLate(String crew, LocalDate evening) {
        return facts.own().values().stream()
                .filter(line -> line.date().equals(evening) && line.kind().equals(Optional.of(WeekLine.Kind.EDIT)))
                .filter(line -> line.crew().map(Id::value).equals(Optional.of(crew)))
                .flatMap(line -> line.to().stream())
                .anyMatch(to -> to.isAfter(LATE));
    }
}
