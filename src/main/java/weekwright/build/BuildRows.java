package weekwright.build;

import weekwright.base.Rows;
import weekwright.db.Read;

/** All rows of the build, out of plain files with their places or out of the store without, for rules over many rows. */
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

    /** The rows as the store has them. */
    public static BuildRows of(Read read) {
        return new BuildRows(
                Rows.of(CrewMemberStore.TABLE.values(read)),
                Rows.of(CrewHoursStore.TABLE.values(read)),
                Rows.of(DaysOffStore.TABLE.values(read)),
                Rows.of(EquipmentStore.TABLE.values(read)),
                Rows.of(TaskStore.TABLE.values(read)),
                Rows.of(LinkStore.TABLE.values(read)),
                Rows.of(HoursEntryStore.TABLE.values(read)),
                Rows.of(WeekLineStore.TABLE.values(read)),
                Rows.of(GatheringStore.TABLE.values(read)));
    }
}
