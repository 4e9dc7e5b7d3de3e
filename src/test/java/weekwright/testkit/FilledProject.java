package weekwright.testkit;

import weekwright.build.Caution;
import weekwright.build.CautionStore;
import weekwright.build.CrewHours;
import weekwright.build.CrewHoursStore;
import weekwright.build.DaysOff;
import weekwright.build.DaysOffStore;
import weekwright.build.Equipment;
import weekwright.build.EquipmentStore;
import weekwright.build.Gathering;
import weekwright.build.GatheringStore;
import weekwright.build.Incident;
import weekwright.build.IncidentStore;
import weekwright.build.Stopped;
import weekwright.build.StoppedStore;
import weekwright.build.WeekLine;
import weekwright.build.WeekLineStore;
import weekwright.db.Db;
import weekwright.db.Table;
import weekwright.db.Write;
import weekwright.episodes.Clip;
import weekwright.episodes.ClipStore;
import weekwright.funds.Material;
import weekwright.funds.MaterialStore;
import weekwright.funds.RegularItem;
import weekwright.funds.RegularItemStore;
import weekwright.funds.StockItem;
import weekwright.funds.StockItemStore;
import weekwright.funds.Supplier;
import weekwright.funds.SupplierStore;
import weekwright.notes.Note;
import weekwright.notes.NoteStore;
import weekwright.notes.Photo;
import weekwright.notes.PhotoStore;

/** {@link SmallProject} with one row of everything that it has none of, so that every kind of page has something to show. */
public final class FilledProject {
    private FilledProject() {}

    public static void fill(Db db) {
        SmallProject.fill(db);
        db.write("test", write -> {
            put(write, DaysOffStore.TABLE, DaysOff.class, "crew ilse from 2026-12-24 to 2026-12-27 reason Winter");
            put(write, CrewHoursStore.TABLE, CrewHours.class, "crew ilse from 2026-12-01 to 2026-12-20 mon 4");
            put(
                    write,
                    StoppedStore.TABLE,
                    Stopped.class,
                    "id st.1 date 2026-11-23 crew ilse hours 3 reason weather note Frost");
            put(
                    write,
                    GatheringStore.TABLE,
                    Gathering.class,
                    "id g.1 date 2026-12-19 hands 6 hours 6 come_share 0.7 note Soup");
            put(
                    write,
                    IncidentStore.TABLE,
                    Incident.class,
                    "id i.1 date 2026-11-02 who Noor what Splinter hurt yes changed Gloves");
            put(write, CautionStore.TABLE, Caution.class, "hazard hot for hands text Water");
            put(
                    write,
                    EquipmentStore.TABLE,
                    Equipment.class,
                    "id saw name Bandsaw hazards woodm inspect_by 2027-02-01");
            put(
                    write,
                    RegularItemStore.TABLE,
                    RegularItem.class,
                    "id r.1 name Rent amount -90.00 every month from 2026-01-02");
            put(
                    write,
                    MaterialStore.TABLE,
                    Material.class,
                    "id mat.9 task gate.3 item Nails quantity 90 unit pc price_likely 1 source bought ordered"
                            + " 2026-11-20 promised 2026-12-05");
            put(
                    write,
                    WeekLineStore.TABLE,
                    WeekLine.class,
                    "id w.1 date 2026-11-27 crew bram kind errand hours 1 text Post");
            put(write, SupplierStore.TABLE, Supplier.class, "id s.1 name Sawmill telephone 0555010014");
            put(
                    write,
                    StockItemStore.TABLE,
                    StockItem.class,
                    "id y.1 item Oak quantity 2 unit m3 place Loft value 190");
            put(
                    write,
                    ClipStore.TABLE,
                    Clip.class,
                    "id c.1 date 2026-11-20 card A01 clip C0001 task weir.2 minutes 4 who bram");
            put(
                    write,
                    NoteStore.TABLE,
                    Note.class,
                    "id n.1 title Stones date 2026-11-20 author ilse stage weir visible everyone text Two");
            put(write, PhotoStore.TABLE, Photo.class, "note n.1 file stones.jpg caption Sill alternative Stones");
            return null;
        });
    }

    private static <R extends Record> void put(Write write, Table<R> table, Class<R> type, String columnsAndValues) {
        table.insert(write, SmallProject.of(type, columnsAndValues.split(" ")));
    }
}
