package weekwright.web.week;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.build.Caution;
import weekwright.build.CautionStore;
import weekwright.build.CrewMember;
import weekwright.build.CrewMemberStore;
import weekwright.build.DaysOff;
import weekwright.build.DaysOffStore;
import weekwright.build.Equipment;
import weekwright.build.EquipmentStore;
import weekwright.build.HazardCodes;
import weekwright.build.HoursEntry;
import weekwright.build.HoursEntryStore;
import weekwright.build.SayComing;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.build.UsualCautions;
import weekwright.build.WeekLine;
import weekwright.build.WeekLineStore;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.episodes.Episode;
import weekwright.episodes.EpisodeStore;
import weekwright.episodes.Shot;
import weekwright.episodes.ShotStore;
import weekwright.funds.Material;
import weekwright.funds.MaterialStore;
import weekwright.render.Formats;

/**
 * What the week's sheet names, by id, read on one view of the store.
 *
 * @param own the crew's lines by row, those of the evening before the week among them
 */
record WeekFacts(
        Map<String, CrewMember> crew,
        Map<String, Task> tasks,
        Map<String, Episode> episodes,
        Map<String, Stored<Shot>> shots,
        Map<String, Material> materials,
        Map<Id, Equipment> equipment,
        Map<Long, WeekLine> own,
        List<Caution> cautions,
        List<HoursEntry> hours,
        List<DaysOff> daysOff) {

    static WeekFacts of(Read read, LocalDate monday) {
        Map<String, CrewMember> crew = new LinkedHashMap<>();
        CrewMemberStore.TABLE.values(read).forEach(one -> crew.put(one.id().value(), one));
        Map<String, Task> tasks = new HashMap<>();
        TaskStore.TABLE.values(read).forEach(one -> tasks.put(one.id().value(), one));
        Map<String, Episode> episodes = new HashMap<>();
        EpisodeStore.TABLE.values(read).forEach(one -> episodes.put(one.id().value(), one));
        Map<String, Stored<Shot>> shots = new HashMap<>();
        ShotStore.TABLE.list(read).forEach(one -> shots.put(one.value().id().value(), one));
        Map<String, Material> materials = new HashMap<>();
        MaterialStore.TABLE.values(read).forEach(one -> materials.put(one.id().value(), one));
        Map<Id, Equipment> equipment = new HashMap<>();
        EquipmentStore.TABLE.values(read).forEach(one -> equipment.put(one.id(), one));
        Map<Long, WeekLine> own = new HashMap<>();
        for (Stored<WeekLine> line : WeekLineStore.between(read, monday.minusDays(1), monday.plusDays(6))) {
            own.put(line.row(), line.value());
        }
        List<HoursEntry> hours = HoursEntryStore.between(read, monday, monday.plusDays(6)).stream()
                .map(Stored::value)
                .toList();
        return new WeekFacts(
                crew,
                tasks,
                episodes,
                shots,
                materials,
                equipment,
                own,
                CautionStore.TABLE.values(read),
                hours,
                DaysOffStore.TABLE.values(read));
    }

    /** A work by what {@link WeekAgainst} calls it: {@code task mill.3}, {@code episode ep.4}, or nothing. */
    String named(String key) {
        return key.startsWith("task ")
                ? task(key.substring(5))
                : key.startsWith("episode ") ? "edit " + episode(key.substring(8)) : "shop and office";
    }

    /** "Noor comes." "Bram can't come." in the order of the crew list. */
    List<String> said(LocalDate day) {
        List<String> said = new ArrayList<>();
        crew.values()
                .forEach(one -> SayComing.said(daysOff, one.id(), day)
                        .ifPresent(comes -> said.add(one.name() + (comes ? " comes." : " can't come."))));
        return said;
    }

    String person(String id) {
        return id.isEmpty()
                ? "Anybody"
                : Optional.ofNullable(crew.get(id)).map(CrewMember::name).orElse(id);
    }

    String task(String id) {
        return Optional.ofNullable(tasks.get(id)).map(Task::title).orElse(id);
    }

    /** {@code no. 47}; a standby by its title. */
    String episode(String id) {
        return Optional.ofNullable(episodes.get(id))
                .map(e -> e.number().map(n -> "no." + Formats.NBSP + n).orElse(e.title()))
                .orElse(id);
    }

    String material(String id) {
        Optional<Material> line = Optional.ofNullable(materials.get(id));
        return line.map(m -> m.item()
                        + m.quantity()
                                .map(q -> ", " + q.text() + (m.unit().isEmpty() ? "" : Formats.NBSP + m.unit()))
                                .orElse(""))
                .orElse(id);
    }

    /** The crew's own caution where they wrote one, else the usual one. */
    String caution(String code, Caution.Whom whom) {
        return cautions.stream()
                .filter(one -> one.hazard().toLowerCase(Locale.ROOT).equals(code) && one.whom() == whom)
                .map(Caution::text)
                .findFirst()
                .or(() -> UsualCautions.of(code, whom))
                .orElse("");
    }

    static String hazard(String code) {
        return HazardCodes.title(code).orElse(code);
    }
}
