package weekwright.testkit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import weekwright.engine.Inputs;
import weekwright.engine.Inputs.Camera;
import weekwright.engine.Inputs.Company;
import weekwright.engine.Inputs.Every;

/** Small invented projects of every kind of task, by number; the same number gives the same project. */
public final class RandomProjects {
    private static final String[] TRADES = {"mason", "joiner", "smith"};

    private RandomProjects() {}

    /** Three people, two friends on one Saturday, 14 to 30 tasks in three stages, tools, materials, a film each Friday. */
    public static Inputs of(int number) {
        SplittableRandom random = new SplittableRandom(number);
        ProjectInputs project = ProjectInputs.project()
                .horizonMonths(18)
                .person("ada", 8, 8, 8, 8, 8, 4, 0, "mason", "smith")
                .person("bo", 7, 7, 7, 7, 7, 4, 0, "joiner", "camera", "edit")
                .paid(1200)
                .person("cy", 0, 0, 6, 0, 0, 6, 0, "mason", "joiner", "camera")
                .notFor("fell")
                .off("", "2027-12-20", "2028-01-05", 0)
                .off("ada", "2027-04-05", "2027-04-18", 0)
                .gathering("2027-03-20", 2, 5, 1)
                .weather(0.3, 2.5)
                .cash(random.nextInt(60_000), 10_000)
                .orders(14, 500)
                .level("friend", 500, false)
                .supporters("2027-02", "friend", 40, 3, 2)
                .supporters("2027-03", "friend", 41, 0, 0)
                .regular("rent", -4_000, Every.MONTH, "2026-01-05", "")
                .fridays("2027-03-05")
                .equipment(new Inputs.Equipment("saw", 1, false, "", Inputs.NONE, Inputs.Range.EMPTY))
                .equipment(new Inputs.Equipment("trestle", 3, true, "", Inputs.NONE, Inputs.Range.EMPTY))
                .stage("s1")
                .stage("s2")
                .stage("s3")
                .learned(-1, 0)
                .turnout("bo", .9, .8, .2, .3, 1., 1.1, .7, .9, .6, 1.)
                .editDays(2, 4);
        int tasks = 14 + random.nextInt(17);
        List<String> ids = new ArrayList<>();
        for (int t = 0; t < tasks; t++) {
            String id = "t" + t;
            boolean wait = t > 0 && random.nextInt(5) == 0;
            task(project, id, 3 * t / tasks, wait, random);
            for (int l = random.nextInt(3); l > 0 && t > 0; l--) {
                String after = ids.get(Math.max(0, t - 1 - random.nextInt(5)));
                boolean twice = project.inputs().links().stream()
                        .anyMatch(link -> link.task().equals(id) && link.after().equals(after));
                if (!twice) {
                    project.link(id, after, random.nextInt(3) == 0 ? 0.5 : 1, random.nextInt(3) == 0 ? 3 : 0);
                }
            }
            if (!wait && random.nextInt(3) == 0) {
                project.material("m" + t, id, 500 + random.nextInt(8_000), random.nextInt(30));
            }
            ids.add(id);
        }
        project.episode("e1", "2027-05-07", 6, "t0");
        project.episode("e2", "2027-06-04", 6, "t1", "t3");
        return project.inputs();
    }

    private static void task(ProjectInputs project, String id, int stage, boolean wait, SplittableRandom random) {
        ProjectInputs.Task task = project.task(id).stage("s" + (stage + 1));
        if (wait) {
            task.days(1, 4, 9).fails(15, 50);
            if (random.nextBoolean()) {
                task.needs("trestle", 1 + random.nextInt(2));
            }
            return;
        }
        double likely = 2 + random.nextInt(40);
        task.hours(likely * 0.7, likely, likely * 1.8);
        int hands = 1 + random.nextInt(2);
        task.hands(hands, hands == 2 && random.nextBoolean() ? 1 : hands);
        if (random.nextInt(3) > 0) {
            task.trades(TRADES[random.nextInt(3)], TRADES[random.nextInt(3)]);
        }
        switch (random.nextInt(6)) {
            case 0 -> task.company(Company.BY).hazards("melt");
            case 1 -> task.company(Company.CALL);
            case 2 -> task.hazards("fell");
            default -> {}
        }
        switch (random.nextInt(6)) {
            case 0 -> task.camera(Camera.OPERATOR, 30).story(6);
            case 1 -> task.camera(Camera.FIXED, 10).story(4);
            case 2 -> task.camera(Camera.ONCE, 0).story(9);
            default -> {}
        }
        switch (random.nextInt(5)) {
            case 0 -> task.needs("saw", 1);
            case 1 -> task.needs("trestle", 1 + random.nextInt(2));
            default -> {}
        }
        switch (random.nextInt(8)) {
            case 0 -> task.outdoors();
            case 1 -> task.season(401, 930);
            case 2 ->
                task.notBefore(LocalDate.parse(ProjectInputs.TODAY)
                        .plusDays(random.nextInt(60))
                        .toString());
            case 3 -> task.priority(1);
            case 4 -> task.fill();
            case 5 -> task.fails(40, 30);
            default -> {}
        }
        if (hands == 1 && random.nextInt(6) == 0) {
            task.hours(2, 3, 5).oneGo();
        }
    }
}
