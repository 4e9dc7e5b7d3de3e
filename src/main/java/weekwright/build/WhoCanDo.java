package weekwright.build;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import weekwright.base.Codec;
import weekwright.base.Problem;
import weekwright.db.Read;

/**
 * Whether on any day of the next 12 months enough people can come together for a task: its least hands, each with one of
 * its trades and not kept off its hazards; besides them somebody with the camera where it must be filmed once, and the
 * person beside or at work that its company asks for (rules 45, 48, 125). Unnamed helpers of a gathering count as hands
 * where there are no hazards. A day counts for a person from half an hour on.
 */
public final class WhoCanDo {
    private static final int LEAST_MINUTES = 30;
    private static final String CAMERA = "camera";

    private final List<CrewMember> crew;
    private final Set<Day> days = new HashSet<>();

    private record Day(List<CrewMember> people, int unnamed) {}

    public WhoCanDo(
            List<CrewMember> crew,
            List<CrewHours> seasons,
            List<DaysOff> daysOff,
            List<Gathering> gatherings,
            LocalDate today) {
        this.crew = List.copyOf(crew);
        for (LocalDate day = today; day.isBefore(today.plusMonths(12)); day = day.plusDays(1)) {
            List<CrewMember> people = new ArrayList<>();
            for (CrewMember member : crew) {
                if (StatedHours.on(day, member, seasons, daysOff).minutes() >= LEAST_MINUTES) {
                    people.add(member);
                }
            }
            LocalDate date = day;
            int unnamed = gatherings.stream()
                    .filter(gathering -> gathering.date().equals(date))
                    .mapToInt(Gathering::hands)
                    .sum();
            days.add(new Day(people, unnamed));
        }
    }

    /** By what stands in the store. */
    public static WhoCanDo of(Read read, LocalDate today) {
        return new WhoCanDo(
                CrewMemberStore.TABLE.values(read),
                CrewHoursStore.TABLE.values(read),
                DaysOffStore.TABLE.values(read),
                GatheringStore.TABLE.values(read),
                today);
    }

    /**
     * Why nobody can do an open task of work.
     *
     * @param hazards of the task and its equipment
     * @return a remark without place, or empty when there is a day on which it can be done
     */
    public Optional<Problem> whyNot(Task task, Collection<String> hazards) {
        if (!task.isWork()) {
            return Optional.empty();
        }
        boolean anybody = crew.stream().anyMatch(member -> hasTrade(member, task));
        if (!anybody && !crew.isEmpty()) {
            return remark(
                    "trades",
                    task.trades().text(),
                    "is no trade of anybody in the crew",
                    "add it to somebody's trades");
        }
        int need = task.leastHandsOrDefault();
        boolean once = task.cameraOrDefault() == Task.Camera.ONCE;
        Task.Company company = task.company().orElse(HazardCodes.company(hazards));
        int most = 0;
        boolean filmed = false;
        for (Day day : days) {
            List<CrewMember> hands = day.people().stream()
                    .filter(member -> hasTrade(member, task) && !HazardCodes.keptOff(member, hazards))
                    .toList();
            int unnamed = hazards.isEmpty() ? day.unnamed() : 0;
            most = Math.max(most, hands.size() + unnamed);
            if (hands.size() + unnamed < need || once && !operatorBesides(day, hands, need - unnamed, hazards)) {
                continue;
            }
            filmed = true;
            int others = day.people().size() + unnamed - need - (once ? 1 : 0);
            // two hands are each other's company, as in the engine
            if (company == Task.Company.ALONE || need > 1 || others >= 1) {
                return Optional.empty();
            }
        }
        if (most < need) {
            String there = most == 0 ? "has anybody who can do it" : "has more than " + most + " who can do it";
            return remark(
                    "hands",
                    String.valueOf(need),
                    (need == 1 ? "person is" : "people are") + " needed, and no day of the next 12 months " + there,
                    "ask for fewer hands, or add people, hours or trades");
        }
        if (!filmed) {
            return remark(
                    CAMERA,
                    "once",
                    "needs somebody with the trade camera besides the hands, and no day of the next 12 months has one",
                    "give somebody the trade, or film it otherwise");
        }
        return remark(
                "company",
                Codec.word(company),
                "asks for another person, and no day of the next 12 months has one",
                "ask somebody in for a day");
    }

    private static boolean hasTrade(CrewMember member, Task task) {
        return task.trades().isEmpty() || task.trades().list().stream().anyMatch(member.trades()::has);
    }

    private static boolean operatorBesides(Day day, List<CrewMember> hands, int need, Collection<String> hazards) {
        return day.people().stream()
                .filter(member -> member.trades().has(CAMERA) && !HazardCodes.keptOff(member, hazards))
                .anyMatch(operator -> hands.size() - (hands.contains(operator) ? 1 : 0) >= need);
    }

    private static Optional<Problem> remark(String column, String read, String rule, String remedy) {
        return Optional.of(Problem.remark(column, read, rule, remedy));
    }
}
