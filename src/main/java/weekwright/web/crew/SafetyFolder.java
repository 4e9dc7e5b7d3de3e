package weekwright.web.crew;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import weekwright.base.Id;
import weekwright.build.Caution;
import weekwright.build.CautionStore;
import weekwright.build.CrewMember;
import weekwright.build.CrewMemberStore;
import weekwright.build.Equipment;
import weekwright.build.EquipmentNeeds;
import weekwright.build.EquipmentStore;
import weekwright.build.HazardCodes;
import weekwright.build.HazardReadStore;
import weekwright.build.HazardReferences;
import weekwright.build.HoursEntry;
import weekwright.build.HoursEntryStore;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.build.UsualCautions;
import weekwright.db.Read;
import weekwright.db.Stored;

/** What the safety folder prints besides the crew's own cautions and incidents, read on one view of the store. */
final class SafetyFolder {
    private final Read read;
    private final List<CrewMember> crew;
    private final Map<Id, Equipment> equipment = new HashMap<>();

    /**
     * A hazard of open work or of a machine.
     *
     * @param work titles of open tasks and names of machines with it, a few
     * @param seen where its rules stand, looked at
     * @param memory the same from memory
     * @param readBy for each of the crew, when they read of it last
     */
    public record Danger(
            String code,
            String title,
            String work,
            String hands,
            String camera,
            List<String> seen,
            List<String> memory,
            List<ReadBy> readBy) {}

    /** @param on day on which a person has read of it; empty where they have not */
    public record ReadBy(String crew, String name, Optional<LocalDate> on) {}

    /** Who was on site on a day, by the hours log. */
    public record OnSite(LocalDate date, String names) {}

    /**
     * A machine.
     *
     * @param users who may use it: those who are not kept off its hazards
     * @param late whether the inspection is overdue
     */
    public record Machine(String name, String hazards, String users, String inspect, boolean late) {}

    SafetyFolder(Read read, LocalDate today) {
        this.read = read;
        this.crew = CrewMember.present(CrewMemberStore.TABLE.values(read), today);
        EquipmentStore.TABLE.values(read).forEach(one -> equipment.put(one.id(), one));
    }

    List<String> names() {
        return crew.stream().map(CrewMember::name).toList();
    }

    /** In the order of the codes; of each hazard the first three works. */
    List<Danger> dangers() {
        Map<String, Set<String>> works = new HashMap<>();
        for (Task task : TaskStore.TABLE.values(read)) {
            if (task.isOpen() && task.isWork()) {
                EquipmentNeeds.hazards(task, equipment)
                        .forEach(code -> works.computeIfAbsent(code, key -> new LinkedHashSet<>())
                                .add(task.title()));
            }
        }
        EquipmentStore.TABLE
                .values(read)
                .forEach(one -> one.hazards()
                        .list()
                        .forEach(code -> works.computeIfAbsent(code, key -> new LinkedHashSet<>())
                                .add(one.name())));
        List<Danger> dangers = new ArrayList<>();
        for (String code : HazardCodes.all()) {
            if (works.containsKey(code)) {
                List<String> titles = List.copyOf(works.get(code));
                dangers.add(new Danger(
                        code,
                        HazardCodes.title(code).orElse(code),
                        String.join("; ", titles.subList(0, Math.min(3, titles.size())))
                                + (titles.size() > 3 ? " and " + (titles.size() - 3) + " more" : ""),
                        caution(code, Caution.Whom.HANDS),
                        caution(code, Caution.Whom.CAMERA),
                        HazardReferences.seen(code),
                        HazardReferences.fromMemory(code),
                        readBy(code)));
            }
        }
        return dangers;
    }

    private List<ReadBy> readBy(String code) {
        return crew.stream()
                .map(one -> new ReadBy(
                        one.id().value(),
                        one.name(),
                        HazardReadStore.of(read, one.id(), code)
                                .map(row -> row.value().date())))
                .toList();
    }

    private String caution(String code, Caution.Whom whom) {
        return CautionStore.TABLE.values(read).stream()
                .filter(one -> one.hazard().equalsIgnoreCase(code) && one.whom() == whom)
                .map(Caution::text)
                .findFirst()
                .or(() -> UsualCautions.of(code, whom))
                .orElse("");
    }

    /** The days of a stretch on which hours were logged, the newest first; both ends included. */
    List<OnSite> onSite(LocalDate from, LocalDate to) {
        Map<String, String> names = new HashMap<>();
        CrewMemberStore.TABLE.values(read).forEach(one -> names.put(one.id().folded(), one.name()));
        Map<LocalDate, Map<String, Integer>> days = new TreeMap<>(Comparator.reverseOrder());
        for (Stored<HoursEntry> stored : HoursEntryStore.between(read, from, to)) {
            HoursEntry entry = stored.value();
            days.computeIfAbsent(entry.date(), key -> new TreeMap<>())
                    .merge(
                            names.getOrDefault(
                                    entry.crew().folded(), entry.crew().value()),
                            entry.peopleOrDefault(),
                            Math::max);
        }
        List<OnSite> list = new ArrayList<>();
        days.forEach((date, people) -> list.add(new OnSite(
                date,
                String.join(
                        ", ",
                        people.entrySet().stream()
                                .map(one -> one.getKey()
                                        + (one.getValue() > 1 ? " and " + (one.getValue() - 1) + " with them" : ""))
                                .toList()))));
        return list;
    }

    /** Machines with hazards or an inspection to come. */
    List<Machine> machines(LocalDate today, Function<LocalDate, String> date) {
        return EquipmentStore.TABLE.values(read).stream()
                .filter(one -> !one.hazards().isEmpty() || one.inspectBy().isPresent())
                .map(one -> new Machine(
                        one.name(),
                        String.join(
                                ", ",
                                one.hazards().list().stream()
                                        .map(code -> HazardCodes.title(code).orElse(code))
                                        .toList()),
                        String.join(
                                ", ",
                                crew.stream()
                                        .filter(member -> !HazardCodes.keptOff(
                                                member, one.hazards().list()))
                                        .map(CrewMember::name)
                                        .toList()),
                        one.inspectBy().map(date).orElse(""),
                        one.inspectBy().filter(day -> day.isBefore(today)).isPresent()))
                .toList();
    }
}
