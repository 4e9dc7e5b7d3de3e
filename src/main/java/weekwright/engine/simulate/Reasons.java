package weekwright.engine.simulate;

import java.util.ArrayList;
import java.util.List;
import weekwright.engine.Inputs;
import weekwright.engine.Outcome.Held;
import weekwright.engine.Outcome.Reason;

/** Numbers for what a task waited for, in blocks: a person each, equipment each, line each, month each, waited-for task each. */
final class Reasons {
    /** Stands for "worked"; turned into the person with the most hours on the task when the chain is followed. */
    static final int WORKED = -1;

    /** Stands for "nothing yet". */
    static final int NONE = -2;

    final int person = 0;
    final int camera;
    final int company;
    final int equipment;
    final int material;
    final int funds;
    final int weather;
    final int season;
    final int booking;
    final int wait;
    final List<Reason> list = new ArrayList<>();

    Reasons(Inputs inputs, Crowd crowd, TaskTable tasks) {
        for (int p = 0; p < crowd.count; p++) {
            list.add(new Reason(
                    Held.PERSON, p < crowd.named ? inputs.crew().get(p).id() : ""));
        }
        camera = add(Held.CAMERA, "");
        company = add(Held.COMPANY, "");
        equipment = list.size();
        inputs.equipment().forEach(e -> add(Held.EQUIPMENT, e.id()));
        material = list.size();
        inputs.materials().forEach(m -> add(Held.MATERIAL, m.id()));
        funds = add(Held.FUNDS, "");
        weather = list.size();
        for (int month = 1; month <= 12; month++) {
            add(Held.WEATHER, Integer.toString(month));
        }
        season = add(Held.SEASON, "");
        booking = add(Held.BOOKING, "");
        wait = list.size();
        for (int t = 0; t < tasks.count; t++) {
            add(Held.WAIT, tasks.id[t]);
        }
    }

    private int add(Held kind, String what) {
        list.add(new Reason(kind, what));
        return list.size() - 1;
    }
}
