package weekwright.web.come;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weekwright.account.WeekLinkStore;
import weekwright.base.Hours;
import weekwright.base.Id;
import weekwright.build.CrewHoursStore;
import weekwright.build.CrewMember;
import weekwright.build.DaysOffStore;
import weekwright.build.SayComing;
import weekwright.build.StatedHours;
import weekwright.build.TaskStore;
import weekwright.db.Read;
import weekwright.forecast.WeekPlan;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/**
 * One person's own days at a secret address, with two buttons each: "I come" and "I can't". Shows no money and nobody
 * else's days; whoever has the address may answer for that person, and do nothing else.
 */
public final class ComePage implements Page {
    private static final String NOWHERE =
            "This address leads nowhere, or was replaced by a newer one. Ask the crew for yours.";

    /** @param where the address of the place; empty where none is set */
    public record View(Form form, String code, String name, String where, List<Day> days) {}

    /**
     * A day.
     *
     * @param lines what is planned for the person
     * @param expected whether they have hours on it
     * @param said "come", "cannot" or empty
     */
    public record Day(LocalDate date, List<String> lines, boolean expected, String said) {}

    @Override
    public View show(Request request) {
        CrewMember member = member(request);
        LocalDate today = request.today();
        request.forecast();
        List<Day> days = request.read(read -> days(request, read, member, today));
        String act = request.wasRefused("come") ? "come" : request.wasRefused("cannot") ? "cannot" : "";
        return new View(
                request.form(act),
                request.part("code"),
                member.name(),
                request.settings().emergency().address(),
                days);
    }

    private static CrewMember member(Request request) {
        if (!request.hasProject()) {
            throw new NotFound(NOWHERE);
        }
        return request.read(read -> WeekLinkStore.whose(read, request.part("code")))
                .flatMap(id ->
                        request.crew().stream().filter(one -> one.id().same(id)).findFirst())
                .orElseThrow(() -> new NotFound(NOWHERE));
    }

    private static List<Day> days(Request request, Read read, CrewMember member, LocalDate today) {
        List<Day> days = new ArrayList<>();
        for (LocalDate from = today; from.isBefore(today.plusDays(SayComing.DAYS + 6)); from = from.plusWeeks(1)) {
            WeekPlan week = WeekPlan.of(read, from, today, request.forecasts().proposals(), Optional.empty());
            for (WeekPlan.Day day : week.days()) {
                LocalDate date = day.date();
                if (!date.isBefore(today) && date.isBefore(today.plusDays(SayComing.DAYS))) {
                    days.add(day(read, member, day));
                }
            }
        }
        return days;
    }

    private static Day day(Read read, CrewMember member, WeekPlan.Day day) {
        List<String> lines = day.people().stream()
                .filter(person -> person.crew().equals(member.id().value()))
                .flatMap(person -> person.lines().stream())
                .map(line -> line(read, line))
                .toList();
        Hours hours =
                StatedHours.on(day.date(), member, CrewHoursStore.TABLE.values(read), DaysOffStore.TABLE.values(read));
        String said = SayComing.said(DaysOffStore.TABLE.values(read), member.id(), day.date())
                .map(comes -> comes ? "come" : "cannot")
                .orElse("");
        return new Day(day.date(), lines, hours.minutes() > 0, said);
    }

    private static String line(Read read, WeekPlan.Line line) {
        String what = line.task()
                .flatMap(id -> TaskStore.TABLE.find(read, new Id(id)))
                .map(task -> task.value().title())
                .orElse(line.episode().isPresent() ? "editing" : "");
        String words = what.isEmpty() ? line.text() : what + (line.text().isEmpty() ? "" : ": " + line.text());
        return words.isEmpty() ? line.kind() : words;
    }

    @Override
    public Answer submit(Request request) throws Exception {
        CrewMember member = member(request);
        FormReader form = request.form();
        Optional<LocalDate> date = form.needed("date", LocalDate.class);
        boolean comes = form.act().equals("come");
        if (!comes && !form.act().equals("cannot")) {
            form.fault("", "", "says neither", "press one of the two buttons beside a day");
        }
        form.check();
        request.db().write(member.id().value(), write -> {
            SayComing.say(write, member, date.orElseThrow(), comes, request.today());
            return null;
        });
        return Answer.to(Saved.to(request.address())
                .saying(Formats.weekday(date.get()) + " " + Formats.dayMonthLong(date.get()) + ": "
                        + (comes ? "you come." : "you can't come.") + " The crew sees it on the week."));
    }
}
