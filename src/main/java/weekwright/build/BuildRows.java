package weekwright.build;

import weekwright.base.Rows;
import weekwright.db.AllRows;

/** All rows of the build, for rules over many rows. */
public record BuildRows(
        Rows<CrewMember> crew,
        Rows<CrewHours> crewHours,
        Rows<DaysOff> daysOff,
        Rows<Equipment> equipment,
        Rows<Task> tasks,
        Rows<Link> links,
        Rows<HoursEntry> hours,
        Rows<WeekLine> week,
        Rows<Gathering> gatherings) {

    public static BuildRows of(AllRows all) {
        return new BuildRows(
                all.of(CrewMemberStore.TABLE),
                all.of(CrewHoursStore.TABLE),
                all.of(DaysOffStore.TABLE),
                all.of(EquipmentStore.TABLE),
                all.of(TaskStore.TABLE),
                all.of(LinkStore.TABLE),
                all.of(HoursEntryStore.TABLE),
                all.of(WeekLineStore.TABLE),
                all.of(GatheringStore.TABLE));
    }
}
