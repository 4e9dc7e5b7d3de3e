package weekwright.engine;

import java.util.List;

/**
 * Everything that a forecast depends on, as it was known on the as-of day: one immutable value, free of files, tables and
 * titles, that can be written to JSON and read back.
 *
 * <p>Units: dates are epoch days ({@link java.time.LocalDate#toEpochDay()}), months are {@code 12 * year + month - 1}, times are
 * whole minutes, money is whole minor units of the project's currency (unit prices may have a fraction), shares are 0 to 1,
 * percents are numbers such as 15. Ranges from-to include both ends. An empty date is {@link #NONE}; an empty id is "".
 * Lists keep the order of the files: where a rule decides by file order, it is this order.
 *
 * <p>The caller has already resolved every default but those named here, and has left out facts dated after the as-of day
 * (rule 1: facts dated on or before the as-of day are known, later ones are ignored); a plan for the future (days off, crew
 * hours, gatherings, own week lines, booked dates) is no such fact and is given whatever its date.
 *
 * @param asOf the as-of day, the first simulated working day
 * @param horizonMonths calendar months that are simulated; days as-of to horizon - 1
 * @param crew in the order of the crew list (the last tie of rule 38)
 * @param crewHours other weekday hours for a season; the last {@code from} wins
 * @param daysOff days away and ceilings; among equals the later wins
 * @param gatherings days with unnamed hands
 * @param workedToday minutes that each person has logged on the as-of day, on anything
 * @param turnout one of each person with weeks to tell of
 * @param stages in the order of the file
 * @param tasks in the order of the file, done and dropped ones included
 * @param links in the order of the file
 * @param equipment in the order of the file
 * @param ownLines week lines that the crew touched, dated on the as-of day or later and not marked done
 * @param materials in the order of the file; lines from stock are given with price 0 and no lead
 * @param episodes in the order of the file, published ones included
 * @param publishing slots and defaults of editing
 * @param weather lost days
 * @param orders settings of orders
 * @param model settings of the model
 * @param money cash and other income
 * @param levels pledge levels in the order of the file
 * @param supporters rows of the supporters' history, as-of month included
 * @param regular regular costs and income
 * @param kept the rank list kept with the last forecast (rule 52), {@link Kept#NONE} without one
 */
public record Inputs(
        int asOf,
        int horizonMonths,
        List<Crew> crew,
        List<CrewHours> crewHours,
        List<DaysOff> daysOff,
        List<Gathering> gatherings,
        List<WorkedToday> workedToday,
        List<Turnout> turnout,
        List<Stage> stages,
        List<Task> tasks,
        List<Link> links,
        List<Equipment> equipment,
        List<OwnLine> ownLines,
        List<Material> materials,
        List<Episode> episodes,
        Publishing publishing,
        Weather weather,
        Orders orders,
        Model model,
        Money money,
        List<PledgeLevel> levels,
        List<SupporterMonth> supporters,
        List<Regular> regular,
        Kept kept) {

    /** An empty date. */
    public static final int NONE = Integer.MIN_VALUE;

    /** No limit, for {@link Publishing#chargesAMonth()}. */
    public static final int NO_LIMIT = Integer.MAX_VALUE;

    public Inputs {
        crew = List.copyOf(crew);
        crewHours = List.copyOf(crewHours);
        daysOff = List.copyOf(daysOff);
        gatherings = List.copyOf(gatherings);
        workedToday = List.copyOf(workedToday);
        turnout = List.copyOf(turnout);
        stages = List.copyOf(stages);
        tasks = List.copyOf(tasks);
        links = List.copyOf(links);
        equipment = List.copyOf(equipment);
        ownLines = List.copyOf(ownLines);
        materials = List.copyOf(materials);
        episodes = List.copyOf(episodes);
        levels = List.copyOf(levels);
        supporters = List.copyOf(supporters);
        regular = List.copyOf(regular);
    }

    /**
     * Low, likely and high of something, defaults resolved, low ≤ likely ≤ high. {@link #EMPTY} stands for "not given".
     */
    public record Range(double low, double likely, double high) {
        /** Nothing given. */
        public static final Range EMPTY = new Range(-1, -1, -1);

        /** Zero without spread. */
        public static final Range ZERO = new Range(0, 0, 0);

        public Range {
            if (!(low <= likely && likely <= high)) {
                throw new IllegalArgumentException(
                        "low %s, likely %s, high %s are not in order".formatted(low, likely, high));
            }
        }

        /** A value without spread. */
        public static Range of(double value) {
            return new Range(value, value, value);
        }

        /** Whether nothing was given. */
        public boolean given() {
            return likely >= 0;
        }

        /** (low + 4 likely + high) / 6. */
        public double mean() {
            return (low + 4 * likely + high) / 6;
        }

        /** (high - low) / 6. */
        public double deviation() {
            return (high - low) / 6;
        }
    }

    /**
     * A person.
     *
     * @param trades words of the project's own; {@code camera} and {@code edit} are known to the engine
     * @param weekdayMinutes seven numbers, Monday first
     * @param payMinor pay for an hour in minor units, 0 for owners
     * @param from first day with the crew or {@link #NONE}
     * @param to last day with the crew or {@link #NONE}
     * @param notFor hazards whose tasks this person never works on (a helper's: all hazards not struck out)
     */
    public record Crew(
            String id,
            List<String> trades,
            List<Integer> weekdayMinutes,
            long payMinor,
            int from,
            int to,
            List<String> notFor) {}

    /** Weekday hours of a season or a job in place of the person's own; seven numbers, Monday first. */
    public record CrewHours(String crew, int from, int to, List<Integer> weekdayMinutes) {}

    /** Days away; {@code crew} "" means everyone, and then the minutes are a ceiling. */
    public record DaysOff(String crew, int from, int to, int minutes) {}

    /**
     * A day with unnamed helpers, who have every trade and are kept from tasks with hazards.
     *
     * @param hands how many are asked
     * @param minutes of each
     * @param comeShare chance of each to come
     * @param costMinor paid on the day
     */
    public record Gathering(String id, int date, int hands, int minutes, double comeShare, long costMinor) {}

    /**
     * What a person's past weeks say of turning out (rule 120).
     *
     * @param weeks hours on tasks and episodes divided by stated hours, of the last 52 weeks those in which somebody logged and
     *     the person had hours, oldest first
     */
    public record Turnout(String crew, List<Double> weeks) {}

    /**
     * Minutes a person has logged on the as-of day, on whatever.
     *
     * @param toPay of these, minutes of hands, camera and editing whose wages the ledger does not show (rule 88); 0 where the
     *     forecast was kept without
     */
    public record WorkedToday(String crew, int minutes, int toPay) {}

    /**
     * A stage.
     *
     * @param order place in the build; equal numbers are allowed
     * @param weight in the plan's objective
     * @param side never the headline
     * @param roughMinutes person-minutes of the whole stage, {@link Range#EMPTY} if not given (rule 121)
     */
    public record Stage(String id, int order, double weight, boolean side, Range roughMinutes) {}

    /** Whether a task is worked on or waited for. */
    public enum Kind {
        WORK,
        WAIT
    }

    /** How a task is filmed. */
    public enum Camera {
        NONE,
        FIXED,
        OPERATOR,
        ONCE
    }

    /** Whether another person must be about: nobody, at work that day, or beside with hours of their own. */
    public enum Company {
        ALONE,
        CALL,
        BY
    }

    /** So many of an equipment. */
    public record Need(String equipment, int quantity) {}

    /** As what an hour was logged; hours as shop and office belong to no task and are not given. */
    public enum As {
        HANDS,
        CAMERA,
        EDIT
    }

    /**
     * An hours entry on a task.
     *
     * @param minutes person-minutes (hours times people)
     * @param pieces done in it, 0 for none
     * @param filmed whether it is marked filmed or has footage minutes
     */
    public record Worked(int date, String crew, As as, int minutes, int pieces, boolean filmed) {}

    /**
     * A task.
     *
     * @param estimate person-minutes of the whole task, of the first piece if {@code pieces} is over 1, calendar days of a
     *     wait; {@link Range#EMPTY} for work that nobody has estimated (rule 121: guessed)
     * @param pieces equal parts, at least 1
     * @param learningPercent what each doubling of the pieces takes, 100 for no learning
     * @param hands people at once
     * @param leastHands fewest people at once (rule 41)
     * @param trades any of which is needed; empty: anyone
     * @param company resolved (rule 125)
     * @param withoutPercent so many percent more hours if the equipment is not to be had; under 0: cannot be done without
     * @param seasonFrom month * 100 + day or 0
     * @param seasonTo month * 100 + day or 0
     * @param notBefore first day on which it may start or {@link #NONE}
     * @param booked the only day on which it may start or {@link #NONE}
     * @param rebookDays days from a missed turn to the next, {@link Range#EMPTY} if not given
     * @param oneGo whether it is worked in one stretch of a day (rule 127)
     * @param priority higher first among tasks not under way
     * @param cameraExtraPercent under 0: the project's setting
     * @param storyMinutes finished minutes that the filmed task yields
     * @param storyTold nothing more in it
     * @param hazards own and inherited from its equipment
     * @param leftMinutes what the crew says is left in person-minutes (days of a wait are never said); under 0: not said
     * @param leftOn when it was said, {@link #NONE} for the as-of day
     * @param asideUntil first day on which it may be worked on again or {@link #NONE}
     * @param started first day of work or of the wait, {@link #NONE} if not begun
     * @param done last day, {@link #NONE} if not done
     * @param dropped day on which it was dropped or {@link #NONE}
     * @param log its hours entries in the order of their dates, then of the file
     * @param shotDays days on which a shot of it was captured
     * @param fill for gaps and rain only (rule 134)
     * @param failPercent chance that it fails at its end, 0 for never (rule 132)
     * @param redoPercent of its hours or days that a failure costs again
     * @param added day on which it was put down, {@link #NONE} if not known (rule 122)
     */
    public record Task(
            String id,
            String stage,
            Kind kind,
            Range estimate,
            int pieces,
            double learningPercent,
            int hands,
            int leastHands,
            List<String> trades,
            Company company,
            List<Need> equipment,
            double withoutPercent,
            boolean outdoors,
            int seasonFrom,
            int seasonTo,
            int notBefore,
            int booked,
            Range rebookDays,
            boolean oneGo,
            int priority,
            Camera camera,
            double cameraExtraPercent,
            double storyMinutes,
            boolean storyTold,
            List<String> hazards,
            double leftMinutes,
            int leftOn,
            int asideUntil,
            int started,
            int done,
            int dropped,
            List<Worked> log,
            List<Integer> shotDays,
            boolean fill,
            double failPercent,
            double redoPercent,
            int added) {}

    /** The task may be worked on once that share of {@code after} is done and the wait in calendar days has passed. */
    public record Link(String task, String after, double share, Range waitDays) {}

    /**
     * Equipment.
     *
     * @param kept held from a task's first hour to its end
     * @param readyAfter the task after which it exists, "" for always
     * @param downFrom first day on which it is down or {@link #NONE}
     * @param backDays calendar days from {@code downFrom} until it is back, {@link Range#EMPTY} for never
     */
    public record Equipment(String id, int quantity, boolean kept, String readyAfter, int downFrom, Range backDays) {}

    /** What a week line reserves hours for. */
    public enum LineKind {
        WORK,
        FILM,
        EDIT,
        ERRAND,
        CARE,
        REST
    }

    /** A week line of the crew's own; {@code task} and {@code episode} "" if none; a line of nobody ("") reserves no hours. */
    public record OwnLine(int date, String crew, String task, String episode, LineKind kind, int minutes) {}

    /** Where material comes from. */
    public enum Source {
        BOUGHT,
        GIVEN,
        SALVAGED,
        OWN
    }

    /**
     * A material line.
     *
     * @param lot lines of one lot are parts of one delivery ("" for none)
     * @param priceMinor unit price in minor units, {@link Range#ZERO} if empty and not bought
     * @param atShare the line is needed once that share of the task is done, 0 for its start
     * @param leadDays {@link Range#ZERO} if empty
     * @param ordered day of the order or {@link #NONE}
     * @param promised day of delivery as promised or {@link #NONE}
     * @param received day of delivery or {@link #NONE}
     * @param paidMinor what the ledger shows paid for it, at least 0
     * @param supplier whose leads are learned together (rule 124), lower case, "" for none
     */
    public record Material(
            String id,
            String task,
            String lot,
            double quantity,
            double wastePercent,
            Range priceMinor,
            Source source,
            double atShare,
            Range leadDays,
            double depositPercent,
            int ordered,
            int promised,
            int received,
            long paidMinor,
            String supplier) {
        public Material {
            supplier = supplier == null ? "" : supplier;
        }

        /** The same at another price, ordered and received on other days. */
        public Material with(Range otherPrice, int orderedOn, int receivedOn) {
            return new Material(
                    id,
                    task,
                    lot,
                    quantity,
                    wastePercent,
                    otherPrice,
                    source,
                    atShare,
                    leadDays,
                    depositPercent,
                    orderedOn,
                    promised,
                    receivedOn,
                    paidMinor,
                    supplier);
        }
    }

    /** A standby is not tied to the build and has no slot of its own. */
    public enum EpisodeKind {
        BUILD,
        SIDE,
        STANDBY
    }

    /** The episode shows that share of the task done. */
    public record Tell(String task, double share) {}

    /**
     * An episode.
     *
     * @param slot publication date as planned or {@link #NONE}
     * @param editMinutes {@link Range#EMPTY} for the project's default
     * @param editor crew id or "" for anyone with the trade
     * @param editedMinutes edit time logged so far
     * @param footageComplete day or {@link #NONE}
     * @param cut day on which it was ready or {@link #NONE}
     * @param published day or {@link #NONE}
     */
    public record Episode(
            String id,
            EpisodeKind kind,
            int slot,
            Range editMinutes,
            String editor,
            int editedMinutes,
            int footageComplete,
            int cut,
            int published,
            List<Tell> tells) {}

    /**
     * Slots.
     *
     * @param weekday 1 for Monday to 7 for Sunday
     * @param first no slot before this day
     * @param targetMinutes of an episode made from the story bank
     * @param earlyDays by which an episode must be cut before its slot
     * @param editWindowDays before a slot in which its episode is edited
     * @param editMinutes default edit time
     * @param chargesAMonth how many publications of a month charge, {@link #NO_LIMIT} for all
     * @param emptyLeaving factor of an empty slot on that month's leaving
     * @param skip slot dates left out
     * @param editDays weekdays of editing, 1 for Monday to 7 for Sunday; empty for any (rule 133)
     * @param bankFloorWeeks story in hand under which fill work takes its turn like any other (rule 134)
     * @param leftEmpty how many of the slots from the as-of day on stay empty whatever is ready; only a lever says so
     */
    public record Publishing(
            int weekday,
            int first,
            int everyWeeks,
            double targetMinutes,
            int earlyDays,
            int editWindowDays,
            Range editMinutes,
            int chargesAMonth,
            double emptyLeaving,
            List<Integer> skip,
            List<Integer> editDays,
            double bankFloorWeeks,
            int leftEmpty) {}

    /** Twelve chances of a day lost outdoors, January first, and the mean length of a spell in days. */
    public record Weather(List<Double> lost, double spellDays) {}

    /**
     * Settings of orders.
     *
     * @param smallMinor cost in minor units up to which an order passes one that waits for funds (rule 59), resolved
     * @param onDeposit whether an order waits for its deposit alone and takes the balances to be there when they fall due, not
     *     for its whole cost and all balances owed (rule 58); only a lever says so
     */
    public record Orders(int marginDays, long smallMinor, boolean onDeposit) {
        /** As rule 58 has it. */
        public Orders(int marginDays, long smallMinor) {
            this(marginDays, smallMinor, false);
        }
    }

    /**
     * Settings of the model (rule 99); half-lives in months, 0 for none.
     *
     * @param joiningDrift standard deviation of a month's step of ln λ (rule 80), under 0: learned
     * @param turnout share of the stated hours that reaches the build, under 0: learned for each person (rule 120)
     * @param foundShare of a stage's hours that turn up beside its listed tasks, under 0: learned (rule 122)
     * @param leadsApart whether nothing is learned of deliveries that are late together (rule 137)
     */
    public record Model(
            double priorRatio,
            double effortHalfLife,
            double supportersHalfLife,
            double joiningDrift,
            boolean editingFirst,
            double cameraFixedPercent,
            double cameraOperatorPercent,
            double turnout,
            double foundShare,
            boolean leadsApart) {
        /** With what is late together learned. */
        public Model(
                double priorRatio,
                double effortHalfLife,
                double supportersHalfLife,
                double joiningDrift,
                boolean editingFirst,
                double cameraFixedPercent,
                double cameraOperatorPercent,
                double turnout,
                double foundShare) {
            this(
                    priorRatio,
                    effortHalfLife,
                    supportersHalfLife,
                    joiningDrift,
                    editingFirst,
                    cameraFixedPercent,
                    cameraOperatorPercent,
                    turnout,
                    foundShare,
                    false);
        }

        /** The same with another turnout and found share. */
        public Model with(double otherTurnout, double otherFoundShare) {
            return new Model(
                    priorRatio,
                    effortHalfLife,
                    supportersHalfLife,
                    joiningDrift,
                    editingFirst,
                    cameraFixedPercent,
                    cameraOperatorPercent,
                    otherTurnout,
                    otherFoundShare,
                    leadsApart);
        }

        /** The same with deliveries drawn each for itself, or not. */
        public Model leadsApart(boolean apart) {
            return new Model(
                    priorRatio,
                    effortHalfLife,
                    supportersHalfLife,
                    joiningDrift,
                    editingFirst,
                    cameraFixedPercent,
                    cameraOperatorPercent,
                    turnout,
                    foundShare,
                    apart);
        }
    }

    /**
     * Money on the as-of day.
     *
     * @param cashMinor of all accounts at the end of what is recorded up to the as-of day (rule 85)
     * @param otherMonths totals of other income and other costs of the last whole months, at most 24, oldest first
     *     (rule 86: drawn with replacement and booked on the 15th)
     * @param putBy what of it is kept for the tax office
     */
    public record Money(long cashMinor, long reserveMinor, List<Long> otherMonths, PutBy putBy) {
        public Money {
            putBy = putBy == null ? PutBy.NOTHING : putBy;
        }

        /** Nothing put by. */
        public Money(long cashMinor, long reserveMinor, List<Long> otherMonths) {
            this(cashMinor, reserveMinor, otherMonths, PutBy.NOTHING);
        }

        /** What orders may use. */
        public long availableMinor() {
            return cashMinor - putBy.minor();
        }
    }

    /**
     * Money that is not theirs (rule 135).
     *
     * @param minor of the net pay-outs since the last tax payment
     * @param percent of each pay-out to come
     * @param taxMonth 1 to 12, at whose end all of it is paid out, 0 for never
     */
    public record PutBy(long minor, double percent, int taxMonth) {
        /** All pay-outs are theirs. */
        public static final PutBy NOTHING = new PutBy(0, 0, 0);

        /** What of a pay-out is put by, rounded half up. */
        public long of(long payoutMinor) {
            return StrictMath.round(payoutMinor * percent / 100);
        }
    }

    /**
     * A pledge level.
     *
     * @param perEpisode charged at each publication, else on the first of each month
     * @param paidToday whether the ledger holds the pay-out of a charge of the as-of day itself
     */
    public record PledgeLevel(
            String id,
            long amountMinor,
            boolean perEpisode,
            double feePercent,
            long feeFixedMinor,
            double declinedPercent,
            int payoutDays,
            boolean paidToday) {}

    /**
     * Supporters of a level in a month: how many on its first day, how many came and went in it (so far).
     *
     * @param surge whether one film drove the month (rule 123)
     */
    public record SupporterMonth(int month, String level, int start, int joined, int left, boolean surge) {}

    /** How often a regular item falls due. */
    public enum Every {
        WEEK,
        MONTH,
        YEAR,
        EPISODE
    }

    /** A regular item, signed; {@code from} is its first day (or {@link #NONE}), {@code to} its last (or {@link #NONE}). */
    public record Regular(String id, long amountMinor, double spreadPercent, Every every, int from, int to) {}

    /** A day before which the plan does not start a task. */
    public record NotBefore(String task, int day) {}

    /** The order of work kept with a forecast: task ids, first to be worked first, and days held back. */
    public record Kept(List<String> ranks, List<NotBefore> notBefore) {
        /** No kept order. */
        public static final Kept NONE = new Kept(List.of(), List.of());
    }
}
