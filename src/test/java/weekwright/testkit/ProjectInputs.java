package weekwright.testkit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import weekwright.engine.Inputs;

/**
 * Engine inputs in few words, for tests: hours as decimals, dates as text, money in minor units. Defaults are those of the files;
 * beyond them a horizon of 12 months, a prior ratio of 1, no weather, no slots, no money and the as-of day Monday 2027-03-01.
 *
 * <p>Work never draws without spread (rule 12), but a guessed task takes the hours of a finished one (rule 121): {@link
 * Task#exactly} puts a task without an estimate beside one finished task of its stage, so that every trial draws those hours.
 */
public final class ProjectInputs {
    /** A Monday. */
    public static final String TODAY = "2027-03-01";

    private int asOf = day(TODAY);
    private int horizonMonths = 12;
    private final List<Inputs.Crew> crew = new ArrayList<>();
    private final List<Inputs.CrewHours> crewHours = new ArrayList<>();
    private final List<Inputs.DaysOff> daysOff = new ArrayList<>();
    private final List<Inputs.Gathering> gatherings = new ArrayList<>();
    private final List<Inputs.WorkedToday> workedToday = new ArrayList<>();
    private final List<Inputs.Turnout> turnout = new ArrayList<>();
    private final List<Inputs.Stage> stages = new ArrayList<>();
    private final List<Task> tasks = new ArrayList<>();
    private final List<Inputs.Link> links = new ArrayList<>();
    private final List<Inputs.Equipment> equipment = new ArrayList<>();
    private final List<Inputs.OwnLine> ownLines = new ArrayList<>();
    private final List<Inputs.Material> materials = new ArrayList<>();
    private final List<Inputs.Episode> episodes = new ArrayList<>();
    private final List<Inputs.PledgeLevel> levels = new ArrayList<>();
    private final List<Inputs.SupporterMonth> supporters = new ArrayList<>();
    private final List<Inputs.Regular> regular = new ArrayList<>();
    private Inputs.Publishing publishing = new Inputs.Publishing(
            5,
            Inputs.NONE,
            1,
            20,
            1,
            14,
            range(16 * 60, 24 * 60, 36 * 60),
            Inputs.NO_LIMIT,
            1,
            List.of(),
            List.of(),
            3,
            0);
    private Inputs.Weather weather = new Inputs.Weather(List.of(0., 0., 0., 0., 0., 0., 0., 0., 0., 0., 0., 0.), 2);
    private Inputs.Orders orders = new Inputs.Orders(14, 5000);
    private Inputs.Model model = new Inputs.Model(1, 18, 6, 0.1, true, 15, 30, 1, 0);
    private Inputs.Money money = new Inputs.Money(0, 0, List.of());
    private Inputs.Kept kept = Inputs.Kept.NONE;

    public static ProjectInputs project() {
        return new ProjectInputs();
    }

    /** The epoch day of an ISO date; "" is no date. */
    public static int day(String date) {
        return date.isEmpty() ? Inputs.NONE : (int) LocalDate.parse(date).toEpochDay();
    }

    /** The month number of YYYY-MM. */
    public static int month(String month) {
        return Integer.parseInt(month.substring(0, 4)) * 12 + Integer.parseInt(month.substring(5)) - 1;
    }

    public static Inputs.Range range(double low, double likely, double high) {
        return new Inputs.Range(low, likely, high);
    }

    public static int minutes(double hours) {
        return (int) Math.round(hours * 60);
    }

    public ProjectInputs today(String date) {
        asOf = day(date);
        return this;
    }

    public ProjectInputs horizonMonths(int months) {
        horizonMonths = months;
        return this;
    }

    /** Someone of every listed trade (none: whatever needs no trade), 8 hours Monday to Friday. */
    public ProjectInputs person(String id, String... trades) {
        return person(id, 8, 8, 8, 8, 8, 0, 0, trades);
    }

    /** Someone with these hours from Monday to Sunday. */
    public ProjectInputs person(
            String id,
            double mon,
            double tue,
            double wed,
            double thu,
            double fri,
            double sat,
            double sun,
            String... trades) {
        return person(new Inputs.Crew(
                id,
                List.of(trades),
                List.of(
                        minutes(mon),
                        minutes(tue),
                        minutes(wed),
                        minutes(thu),
                        minutes(fri),
                        minutes(sat),
                        minutes(sun)),
                0,
                Inputs.NONE,
                Inputs.NONE,
                List.of()));
    }

    public ProjectInputs person(Inputs.Crew person) {
        crew.add(person);
        return this;
    }

    /** The last person is paid so many minor units an hour. */
    public ProjectInputs paid(long payMinor) {
        Inputs.Crew last = crew.remove(crew.size() - 1);
        return person(new Inputs.Crew(
                last.id(), last.trades(), last.weekdayMinutes(), payMinor, last.from(), last.to(), last.notFor()));
    }

    /** The last person is kept off tasks with these hazards. */
    public ProjectInputs notFor(String... hazards) {
        Inputs.Crew last = crew.remove(crew.size() - 1);
        return person(new Inputs.Crew(
                last.id(),
                last.trades(),
                last.weekdayMinutes(),
                last.payMinor(),
                last.from(),
                last.to(),
                List.of(hazards)));
    }

    /** The last person is there from–to only. */
    public ProjectInputs between(String from, String to) {
        Inputs.Crew last = crew.remove(crew.size() - 1);
        return person(new Inputs.Crew(
                last.id(), last.trades(), last.weekdayMinutes(), last.payMinor(), day(from), day(to), last.notFor()));
    }

    /** Other hours for every weekday from–to. */
    public ProjectInputs season(String person, String from, String to, double hours) {
        Integer[] week = new Integer[7];
        Arrays.fill(week, minutes(hours));
        crewHours.add(new Inputs.CrewHours(person, day(from), day(to), List.of(week)));
        return this;
    }

    public ProjectInputs off(String person, String from, String to, double hours) {
        daysOff.add(new Inputs.DaysOff(person, day(from), day(to), minutes(hours)));
        return this;
    }

    /** Hours of the hands, not yet paid. */
    public ProjectInputs workedToday(String person, double hours) {
        workedToday.add(new Inputs.WorkedToday(person, minutes(hours), minutes(hours)));
        return this;
    }

    public ProjectInputs gathering(String date, int hands, double hours, double comeShare) {
        gatherings.add(new Inputs.Gathering("g" + gatherings.size(), day(date), hands, minutes(hours), comeShare, 0));
        return this;
    }

    public ProjectInputs stage(String id) {
        return stage(new Inputs.Stage(id, stages.size(), 1, false, Inputs.Range.EMPTY));
    }

    public ProjectInputs stage(Inputs.Stage stage) {
        stages.removeIf(each -> each.id().equals(stage.id()));
        stages.add(stage);
        return this;
    }

    /** A task of stage "build" that is described by the calls on it; add to it before {@link #inputs}. */
    public Task task(String id) {
        Task task = new Task(id);
        tasks.add(task);
        return task;
    }

    /** The second begins after the first, the third after the second … */
    public ProjectInputs chain(String... ids) {
        for (int i = 1; i < ids.length; i++) {
            link(ids[i], ids[i - 1], 1, 0);
        }
        return this;
    }

    public ProjectInputs link(String task, String after, double share, double waitDays) {
        links.add(new Inputs.Link(task, after, share, Inputs.Range.of(waitDays)));
        return this;
    }

    public ProjectInputs equipment(String id, int quantity) {
        return equipment(new Inputs.Equipment(id, quantity, false, "", Inputs.NONE, Inputs.Range.EMPTY));
    }

    public ProjectInputs equipment(Inputs.Equipment one) {
        equipment.add(one);
        return this;
    }

    public ProjectInputs ownLine(String date, String person, String task, Inputs.LineKind kind, double hours) {
        ownLines.add(new Inputs.OwnLine(
                day(date),
                person,
                kind == Inputs.LineKind.EDIT ? "" : task,
                kind == Inputs.LineKind.EDIT ? task : "",
                kind,
                minutes(hours)));
        return this;
    }

    /** A bought line for one unit at a price without spread and a lead without spread. */
    public ProjectInputs material(String id, String task, long priceMinor, double leadDays) {
        return material(line(id, task, priceMinor, leadDays, 0));
    }

    public static Inputs.Material line(
            String id, String task, long priceMinor, double leadDays, double depositPercent) {
        return new Inputs.Material(
                id,
                task,
                "",
                1,
                0,
                Inputs.Range.of(priceMinor),
                Inputs.Source.BOUGHT,
                0,
                Inputs.Range.of(leadDays),
                depositPercent,
                Inputs.NONE,
                Inputs.NONE,
                Inputs.NONE,
                0,
                "");
    }

    public ProjectInputs material(Inputs.Material line) {
        materials.add(line);
        return this;
    }

    /** An episode with an edit of so many hours without spread, telling whole tasks. */
    public ProjectInputs episode(String id, String slot, double editHours, String... tells) {
        return episode(new Inputs.Episode(
                id,
                slot.isEmpty() ? Inputs.EpisodeKind.STANDBY : Inputs.EpisodeKind.BUILD,
                day(slot),
                Inputs.Range.of(minutes(editHours)),
                "",
                0,
                Inputs.NONE,
                Inputs.NONE,
                Inputs.NONE,
                Arrays.stream(tells).map(task -> new Inputs.Tell(task, 1)).toList()));
    }

    /** An episode of the build that was filmed, cut and published on its slot, telling nothing. */
    public ProjectInputs published(String id, String slot) {
        return episode(new Inputs.Episode(
                id,
                Inputs.EpisodeKind.BUILD,
                day(slot),
                Inputs.Range.EMPTY,
                "",
                0,
                day(slot),
                day(slot),
                day(slot),
                List.of()));
    }

    public ProjectInputs episode(Inputs.Episode one) {
        episodes.add(one);
        return this;
    }

    /** Slots on Fridays from a day on. */
    public ProjectInputs fridays(String first) {
        Inputs.Publishing p = publishing;
        return publishing(new Inputs.Publishing(
                5,
                day(first),
                p.everyWeeks(),
                p.targetMinutes(),
                p.earlyDays(),
                p.editWindowDays(),
                p.editMinutes(),
                p.chargesAMonth(),
                p.emptyLeaving(),
                p.skip(),
                p.editDays(),
                p.bankFloorWeeks(),
                0));
    }

    /** Editing on these weekdays only, 1 for Monday. */
    public ProjectInputs editDays(Integer... weekdays) {
        Inputs.Publishing p = publishing;
        return publishing(new Inputs.Publishing(
                p.weekday(),
                p.first(),
                p.everyWeeks(),
                p.targetMinutes(),
                p.earlyDays(),
                p.editWindowDays(),
                p.editMinutes(),
                p.chargesAMonth(),
                p.emptyLeaving(),
                p.skip(),
                List.of(weekdays),
                p.bankFloorWeeks(),
                0));
    }

    /** Turnout and found share as set, under 0 for learned. */
    public ProjectInputs learned(double turnoutShare, double foundShare) {
        return model(model.with(turnoutShare, foundShare));
    }

    /** Past weeks of a person, oldest first. */
    public ProjectInputs turnout(String person, Double... weeks) {
        turnout.add(new Inputs.Turnout(person, List.of(weeks)));
        return this;
    }

    public Inputs.Publishing publishing() {
        return publishing;
    }

    public ProjectInputs publishing(Inputs.Publishing value) {
        publishing = value;
        return this;
    }

    /** The same chance of a lost day in every month. */
    public ProjectInputs weather(double lost, double spellDays) {
        Double[] months = new Double[12];
        Arrays.fill(months, lost);
        weather = new Inputs.Weather(List.of(months), spellDays);
        return this;
    }

    public ProjectInputs weather(Inputs.Weather value) {
        weather = value;
        return this;
    }

    public ProjectInputs orders(int marginDays, long smallMinor) {
        orders = new Inputs.Orders(marginDays, smallMinor);
        return this;
    }

    public Inputs.Model model() {
        return model;
    }

    public ProjectInputs model(Inputs.Model value) {
        model = value;
        return this;
    }

    public ProjectInputs cash(long cashMinor, long reserveMinor) {
        money = new Inputs.Money(cashMinor, reserveMinor, money.otherMonths(), money.putBy());
        return this;
    }

    /** So much is put by on the as-of day, and of each pay-out; a tax month of 0 never pays it. */
    public ProjectInputs putBy(long minor, double percent, int taxMonth) {
        money = new Inputs.Money(
                money.cashMinor(),
                money.reserveMinor(),
                money.otherMonths(),
                new Inputs.PutBy(minor, percent, taxMonth));
        return this;
    }

    public ProjectInputs otherMonths(Long... totals) {
        money = new Inputs.Money(money.cashMinor(), money.reserveMinor(), List.of(totals), money.putBy());
        return this;
    }

    public ProjectInputs level(Inputs.PledgeLevel level) {
        levels.add(level);
        return this;
    }

    /** A level without fees, paid out on the day of the charge. */
    public ProjectInputs level(String id, long amountMinor, boolean perEpisode) {
        return level(new Inputs.PledgeLevel(id, amountMinor, perEpisode, 0, 0, 0, 0, false));
    }

    public ProjectInputs supporters(String month, String level, int start, int joined, int left) {
        supporters.add(new Inputs.SupporterMonth(month(month), level, start, joined, left, false));
        return this;
    }

    /** A month that one film drove. */
    public ProjectInputs surge(String month, String level, int start, int joined, int left) {
        supporters.add(new Inputs.SupporterMonth(month(month), level, start, joined, left, true));
        return this;
    }

    public ProjectInputs regular(String id, long amountMinor, Inputs.Every every, String from, String to) {
        return regular(new Inputs.Regular(id, amountMinor, 0, every, day(from), day(to)));
    }

    public ProjectInputs regular(Inputs.Regular item) {
        regular.add(item);
        return this;
    }

    /** The kept order of work: first named, first worked. */
    public ProjectInputs ranks(String... ids) {
        kept = new Inputs.Kept(List.of(ids), List.of());
        return this;
    }

    public Inputs inputs() {
        List<Inputs.Task> built = new ArrayList<>();
        tasks.forEach(task -> built.add(task.build()));
        // the samples of exact tasks stand last, so that positions of the others are as written
        tasks.stream().filter(task -> task.exact > 0).map(Task::sample).forEach(built::add);
        Set<String> known = new LinkedHashSet<>();
        stages.forEach(stage -> known.add(stage.id()));
        List<Inputs.Stage> all = new ArrayList<>(stages);
        for (Inputs.Task task : built) {
            if (known.add(task.stage())) {
                all.add(new Inputs.Stage(task.stage(), all.size(), 1, false, Inputs.Range.EMPTY));
            }
        }
        return new Inputs(
                asOf,
                horizonMonths,
                crew,
                crewHours,
                daysOff,
                gatherings,
                workedToday,
                turnout,
                all,
                built,
                links,
                equipment,
                ownLines,
                materials,
                episodes,
                publishing,
                weather,
                orders,
                model,
                money,
                levels,
                supporters,
                regular,
                kept);
    }

    /** A task under construction; {@link #and} goes back to the project. */
    public final class Task {
        private final String id;
        private String stage = "build";
        private Inputs.Kind kind = Inputs.Kind.WORK;
        private Inputs.Range estimate = Inputs.Range.EMPTY;
        private int exact;
        private int pieces = 1;
        private double learning = 100;
        private int hands = 1;
        private int leastHands = 1;
        private List<String> trades = List.of();
        private Inputs.Company company = Inputs.Company.ALONE;
        private final List<Inputs.Need> needs = new ArrayList<>();
        private double without = -1;
        private boolean outdoors;
        private int seasonFrom;
        private int seasonTo;
        private int notBefore = Inputs.NONE;
        private int booked = Inputs.NONE;
        private Inputs.Range rebook = Inputs.Range.EMPTY;
        private boolean oneGo;
        private int priority;
        private Inputs.Camera camera = Inputs.Camera.NONE;
        private double cameraExtra = -1;
        private double storyMinutes;
        private boolean storyTold;
        private List<String> hazards = List.of();
        private double left = -1;
        private int leftOn = Inputs.NONE;
        private int asideUntil = Inputs.NONE;
        private int started = Inputs.NONE;
        private int done = Inputs.NONE;
        private int dropped = Inputs.NONE;
        private final List<Inputs.Worked> log = new ArrayList<>();
        private final List<Integer> shotDays = new ArrayList<>();
        private boolean fill;
        private double fail;
        private double redo = 100;
        private int added = Inputs.NONE;

        private Task(String id) {
            this.id = id;
        }

        public ProjectInputs and() {
            return ProjectInputs.this;
        }

        public Task task(String other) {
            return ProjectInputs.this.task(other);
        }

        public Task stage(String value) {
            stage = value;
            return this;
        }

        /** So many hours in every trial. Takes a stage of its own unless one is set that holds tasks of these hours only. */
        public Task exactly(double hours) {
            exact = minutes(hours);
            if (stage.equals("build")) {
                stage = "of-" + id;
            }
            return this;
        }

        public Task hours(double low, double likely, double high) {
            estimate = range(low * 60, likely * 60, high * 60);
            return this;
        }

        /** A wait of days without spread. */
        public Task days(double days) {
            return days(days, days, days);
        }

        public Task days(double low, double likely, double high) {
            kind = Inputs.Kind.WAIT;
            estimate = range(low, likely, high);
            return this;
        }

        public Task pieces(int count, double learningPercent) {
            pieces = count;
            learning = learningPercent;
            return this;
        }

        public Task hands(int most, int least) {
            hands = most;
            leastHands = least;
            return this;
        }

        public Task trades(String... words) {
            trades = List.of(words);
            return this;
        }

        public Task company(Inputs.Company value) {
            company = value;
            return this;
        }

        public Task needs(String equipmentId, int quantity) {
            needs.add(new Inputs.Need(equipmentId, quantity));
            return this;
        }

        public Task without(double percent) {
            without = percent;
            return this;
        }

        public Task outdoors() {
            outdoors = true;
            return this;
        }

        /** Month and day as MMDD numbers, such as 415. */
        public Task season(int from, int to) {
            seasonFrom = from;
            seasonTo = to;
            return this;
        }

        public Task notBefore(String date) {
            notBefore = day(date);
            return this;
        }

        public Task booked(String date, double rebookDays) {
            booked = day(date);
            rebook = rebookDays < 0 ? Inputs.Range.EMPTY : Inputs.Range.of(rebookDays);
            return this;
        }

        public Task oneGo() {
            oneGo = true;
            return this;
        }

        public Task priority(int value) {
            priority = value;
            return this;
        }

        public Task camera(Inputs.Camera value, double extraPercent) {
            camera = value;
            cameraExtra = extraPercent;
            return this;
        }

        public Task story(double finishedMinutes) {
            storyMinutes = finishedMinutes;
            return this;
        }

        public Task storyTold() {
            storyTold = true;
            return this;
        }

        public Task hazards(String... codes) {
            hazards = List.of(codes);
            return this;
        }

        public Task left(double hours, String on) {
            left = hours * 60;
            leftOn = day(on);
            return this;
        }

        public Task asideUntil(String date) {
            asideUntil = day(date);
            return this;
        }

        public Task started(String date) {
            started = day(date);
            return this;
        }

        public Task done(String date) {
            done = day(date);
            return this;
        }

        public Task dropped(String date) {
            dropped = day(date);
            return this;
        }

        public Task logged(String date, String person, double hours) {
            return logged(date, person, Inputs.As.HANDS, hours, 0, false);
        }

        public Task logged(String date, String person, Inputs.As as, double hours, int piecesDone, boolean filmed) {
            if (started == Inputs.NONE) {
                started = day(date);
            }
            log.add(new Inputs.Worked(day(date), person, as, minutes(hours), piecesDone, filmed));
            return this;
        }

        public Task shot(String date) {
            shotDays.add(day(date));
            return this;
        }

        /** For gaps only. */
        public Task fill() {
            fill = true;
            return this;
        }

        /** Fails with a chance in percent, which costs so many percent again. */
        public Task fails(double percent, double redoPercent) {
            fail = percent;
            redo = redoPercent;
            return this;
        }

        public Task added(String date) {
            added = day(date);
            return this;
        }

        private Inputs.Task build() {
            return new Inputs.Task(
                    id,
                    stage,
                    kind,
                    estimate,
                    pieces,
                    learning,
                    hands,
                    leastHands,
                    trades,
                    company,
                    List.copyOf(needs),
                    without,
                    outdoors,
                    seasonFrom,
                    seasonTo,
                    notBefore,
                    booked,
                    rebook,
                    oneGo,
                    priority,
                    camera,
                    cameraExtra,
                    storyMinutes,
                    storyTold,
                    hazards,
                    left,
                    leftOn,
                    asideUntil,
                    started,
                    done,
                    dropped,
                    List.copyOf(log),
                    List.copyOf(shotDays),
                    fill,
                    fail,
                    redo,
                    added);
        }

        /** The finished task whose hours an exact one takes. */
        private Inputs.Task sample() {
            ProjectInputs other = new ProjectInputs();
            Task sample = other.task("sample-" + id).stage(stage).done("2020-01-31");
            sample.started = day("2020-01-01");
            sample.log.add(new Inputs.Worked(day("2020-01-01"), "", Inputs.As.HANDS, exact, 0, false));
            return sample.build();
        }
    }
}
