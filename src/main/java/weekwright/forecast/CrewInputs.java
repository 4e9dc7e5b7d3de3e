package weekwright.forecast;

import java.time.DayOfWeek;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import weekwright.base.Hours;
import weekwright.base.Money;
import weekwright.build.CrewMember;
import weekwright.build.HazardCodes;
import weekwright.build.HoursEntry;
import weekwright.build.WeekLine;
import weekwright.engine.Inputs;
import weekwright.funds.LedgerEntry;

/** People and their days as the engine takes them. Pure. */
final class CrewInputs {
    private static final int WHOLE_DAY_MINUTES = 24 * 60;

    private final Facts facts;

    CrewInputs(Facts facts) {
        this.facts = facts;
    }

    List<Inputs.Crew> crew() {
        List<Inputs.Crew> crew = new ArrayList<>();
        for (CrewMember member : facts.crew()) {
            // a helper is kept from all until some are written (rule 125)
            boolean allOfThem = member.accessOrDefault() == CrewMember.Access.HELPER
                    && member.notFor().isEmpty();
            crew.add(new Inputs.Crew(
                    member.id().value(),
                    member.trades().list(),
                    week(member::on),
                    member.pay().map(Money::minor).orElse(0L),
                    Facts.day(member.from()),
                    Facts.day(member.to()),
                    allOfThem ? HazardCodes.all() : member.notFor().list()));
        }
        return crew;
    }

    List<Inputs.CrewHours> crewHours() {
        return facts.crewHours().stream()
                .map(row -> new Inputs.CrewHours(
                        facts.id("crew", row.crew()), Facts.day(row.from()), Facts.day(row.to()), week(row::on)))
                .toList();
    }

    private static List<Integer> week(Function<DayOfWeek, Hours> hours) {
        return Arrays.stream(DayOfWeek.values())
                .map(day -> hours.apply(day).minutes())
                .toList();
    }

    List<Inputs.DaysOff> daysOff() {
        return facts.daysOff().stream()
                .map(row -> new Inputs.DaysOff(
                        facts.id("crew", row.crew()),
                        Facts.day(row.from()),
                        Facts.day(row.to()),
                        Facts.minutes(row.hours())))
                .toList();
    }

    List<Inputs.Gathering> gatherings() {
        return facts.gatherings().stream()
                .filter(row -> !row.date().isBefore(facts.asOf()))
                .map(row -> new Inputs.Gathering(
                        row.id().value(),
                        Facts.day(row.date()),
                        row.hands(),
                        row.hours().minutes(),
                        Facts.number(row.comeShare(), 1),
                        row.cost().map(Money::minor).orElse(0L)))
                .toList();
    }

    /**
     * Each person's own minutes logged on the as-of day, on anything; unnamed people beside them have no hours to lose and no pay.
     * Where the ledger has wages of that day, they are taken to be paid (rule 1).
     */
    List<Inputs.WorkedToday> workedToday() {
        boolean paid = facts.ledger().stream()
                .anyMatch(row ->
                        row.kind() == LedgerEntry.Kind.WAGES && row.date().equals(facts.asOf()));
        Map<String, Integer> minutes = new LinkedHashMap<>();
        Map<String, Integer> toPay = new HashMap<>();
        for (HoursEntry entry : facts.hours()) {
            if (entry.date().equals(facts.asOf())) {
                String person = facts.id("crew", entry.crew());
                minutes.merge(person, entry.hours().minutes(), Integer::sum);
                boolean counts =
                        entry.asOrDefault() != HoursEntry.As.SHOP && entry.asOrDefault() != HoursEntry.As.OFFICE;
                toPay.merge(person, counts && !paid ? entry.hours().minutes() : 0, Integer::sum);
            }
        }
        return minutes.entrySet().stream()
                .map(entry -> new Inputs.WorkedToday(entry.getKey(), entry.getValue(), toPay.get(entry.getKey())))
                .toList();
    }

    /** Stored week lines are the crew's own (rule 43: proposals are never stored); a line needs a person to reserve hours of. */
    List<Inputs.OwnLine> ownLines() {
        return facts.weekLines().stream()
                .filter(line -> !line.date().isBefore(facts.asOf()))
                .filter(line -> !line.done() && line.crew().isPresent())
                .map(line -> new Inputs.OwnLine(
                        Facts.day(line.date()),
                        facts.id("crew", line.crew()),
                        facts.id("task", line.task()),
                        facts.id("episode", line.episode()),
                        Inputs.LineKind.valueOf(kindOf(line).name()),
                        minutesOf(line)))
                .toList();
    }

    /** The kind as written; without one an episode is edited, a task worked on, and anything else an errand. */
    static WeekLine.Kind kindOf(WeekLine line) {
        return line.kind()
                .orElse(
                        line.episode().isPresent()
                                ? WeekLine.Kind.EDIT
                                : line.task().isPresent() ? WeekLine.Kind.WORK : WeekLine.Kind.ERRAND);
    }

    /** Its hours; without them from clock to clock; without those all that the person has that day. */
    static int minutesOf(WeekLine line) {
        if (line.hours().isPresent()) {
            return line.hours().get().minutes();
        }
        if (line.from().isPresent() && line.to().isPresent()) {
            long minutes = Duration.between(line.from().get(), line.to().get()).toMinutes();
            return (int) Math.max(0, minutes);
        }
        return WHOLE_DAY_MINUTES;
    }
}
