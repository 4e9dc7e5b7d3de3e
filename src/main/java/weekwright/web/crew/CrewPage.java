package weekwright.web.crew;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import weekwright.build.CrewMember;
import weekwright.build.CrewMemberStore;
import weekwright.build.DaysOff;
import weekwright.build.DaysOffStore;
import weekwright.build.Equipment;
import weekwright.build.EquipmentStore;
import weekwright.build.HazardCodes;
import weekwright.build.Settings;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.render.Formats;
import weekwright.render.Frame;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.parts.EmergencyCells;

/** The crew and their hours, who is away, the equipment, what stands on the sheet for an emergency. */
public final class CrewPage implements Page {

    /** @param dayNames short names of the weekdays, Monday first */
    public record View(
            List<Person> people,
            List<Off> off,
            List<Machine> equipment,
            List<Frame.Cell> emergency,
            List<String> dayNames) {}

    /** A person; {@code hours} holds minutes by weekday, Monday first. */
    public record Person(
            String id,
            String name,
            String trades,
            List<Integer> hours,
            int week,
            String access,
            String gone,
            String notFor) {}

    /** Days off that are not past. */
    public record Off(String who, LocalDate from, LocalDate to, String hours, String reason) {}

    /** A piece of equipment. */
    public record Machine(String name, int quantity, String hazards, String remark) {}

    @Override
    public View show(Request request) {
        LocalDate today = request.today();
        Settings settings = request.settings();
        Formats formats = request.formats();
        return request.read(read -> new View(
                people(read, today, formats),
                off(read, today),
                EquipmentStore.TABLE.values(read).stream()
                        .map(one -> machine(one, formats))
                        .toList(),
                EmergencyCells.of(settings.emergency()),
                List.of("Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun")));
    }

    private static List<Person> people(Read read, LocalDate today, Formats formats) {
        List<Person> people = new ArrayList<>();
        for (Stored<CrewMember> stored : CrewMemberStore.TABLE.list(read)) {
            CrewMember member = stored.value();
            List<Integer> hours = new ArrayList<>();
            for (DayOfWeek day : DayOfWeek.values()) {
                hours.add(member.on(day).minutes());
            }
            String gone = member.to()
                    .map(to -> (to.isBefore(today) ? "left " : "until ") + formats.dateLong(to))
                    .or(() -> member.from()
                            .filter(from -> from.isAfter(today))
                            .map(from -> "from " + formats.dateLong(from)))
                    .orElse("");
            people.add(new Person(
                    member.id().value(),
                    member.name(),
                    Formats.list(member.trades().list()),
                    hours,
                    hours.stream().mapToInt(Integer::intValue).sum(),
                    member.accessOrDefault() == CrewMember.Access.CREW ? "crew" : "helper",
                    gone,
                    hazards(member)));
        }
        return people;
    }

    private static String hazards(CrewMember member) {
        if (member.notFor().isEmpty()) {
            return member.accessOrDefault() == CrewMember.Access.HELPER ? "kept off everything with a hazard" : "";
        }
        return "kept off " + Formats.list(HazardCodes.said(member.notFor().list()));
    }

    private static List<Off> off(Read read, LocalDate today) {
        Map<String, String> names = new HashMap<>();
        CrewMemberStore.TABLE
                .values(read)
                .forEach(member -> names.put(member.id().folded(), member.name()));
        return DaysOffStore.TABLE.values(read).stream()
                .filter(off -> !off.to().isBefore(today))
                .sorted(Comparator.comparing(DaysOff::from))
                .map(off -> new Off(
                        off.crew()
                                .map(id -> names.getOrDefault(id.folded(), id.value()))
                                .orElse("Everybody"),
                        off.from(),
                        off.to(),
                        off.hours()
                                .filter(hours -> hours.minutes() > 0)
                                .map(hours -> Formats.hoursLong(hours.minutes()) + " a day")
                                .orElse("away"),
                        off.reason()))
                .toList();
    }

    private static Machine machine(Equipment one, Formats formats) {
        List<String> remarks = new ArrayList<>();
        if (one.kept()) {
            remarks.add("held from a task’s first hour to its end");
        }
        one.downFrom().ifPresent(day -> remarks.add("down from " + formats.dateLong(day)));
        one.inspectBy()
                .ifPresent(
                        day -> remarks.add((day.isBefore(formats.today()) ? "inspection was due " : "inspection due ")
                                + formats.dateLong(day)
                                + formats.comingOrGone(day)));
        return new Machine(
                one.name(),
                one.quantityOrDefault(),
                Formats.list(HazardCodes.said(one.hazards().list())),
                String.join("; ", remarks));
    }
}
