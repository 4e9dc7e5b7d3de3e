package weekwright.web.build;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import weekwright.base.Codec;
import weekwright.base.Hours;
import weekwright.base.Id;
import weekwright.base.Refused;
import weekwright.build.Caution;
import weekwright.build.CautionStore;
import weekwright.build.CrewHoursStore;
import weekwright.build.CrewMember;
import weekwright.build.CrewMemberStore;
import weekwright.build.DayWords;
import weekwright.build.DayWordsStore;
import weekwright.build.DaysOffStore;
import weekwright.build.GatheringStore;
import weekwright.build.HazardCodes;
import weekwright.build.SaveDayWords;
import weekwright.build.Shown;
import weekwright.build.StageStore;
import weekwright.build.StatedHours;
import weekwright.build.Task;
import weekwright.build.TaskHazards;
import weekwright.build.TaskStore;
import weekwright.build.UsualCautions;
import weekwright.build.WeekLine;
import weekwright.build.WeekLineStore;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.episodes.EpisodeStore;
import weekwright.episodes.ShotStore;
import weekwright.forecast.Forecast;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.render.Frame;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.parts.EmergencyCells;
import weekwright.web.parts.Outlook;

/**
 * The sheet of one great day of a task, a pour, a raising or a gathering, to print: what must stand before it is begun, the
 * order by the clock, who stands where, cameras, the stop word, the day to fall back on. What the crew writes on it is kept
 * with the task.
 */
public final class BuildTaskDaySheetPage implements Page {
    /** Empty lines for the pencil in the running order. */
    private static final int PENCILLED = 4;

    private static final Pattern CLOCK = Pattern.compile("([0-9]{1,2}:[0-9]{2}) +(.+)");

    /**
     * @param checks what must stand, in the order of {@link DayChecks}
     * @param order lines of that day by the clock
     * @param cameras which stand where and who minds each, as written
     * @param places who is there, each with a role and room for where they stand
     * @param once shots that cannot be repeated, five boxes each
     * @param gathering about unnamed helpers; empty for none
     */
    public record View(
            Form form,
            String id,
            String title,
            String stage,
            LocalDate date,
            String begins,
            String stopWord,
            String fallback,
            List<DayChecks.Check> checks,
            List<Step> order,
            List<Place> places,
            List<Shot> shots,
            List<Shot> once,
            List<String> cameras,
            List<Care> cautions,
            String gathering,
            List<Frame.Cell> emergency) {}

    /** A line of the running order; without a clock time it stands after the others, without words it is for the pencil. */
    public record Step(String clock, String who, String what) {}

    /** @param stands where, as written; empty for the pencil */
    public record Place(String name, String role, String stands) {}

    /** @param minds who holds the camera; empty to be written */
    public record Shot(String what, String size, String minds) {}

    public record Care(String hazard, String hands, String camera) {}

    @Override
    public View show(Request request) {
        Id id = request.id("id");
        Optional<Forecast> forecast = Outlook.forecast(request);
        Formats formats = request.formats();
        return request.read(read -> {
            Task task = task(read, id);
            Optional<Stored<DayWords>> stored = DayWordsStore.of(read, task.id());
            DayWords words = stored.map(Stored::value).orElse(blank(task.id()));
            LocalDate date = date(request, task, forecast);
            List<WeekLine> lines = WeekLineStore.between(read, date, date).stream()
                    .map(Stored::value)
                    .toList();
            List<CrewMember> there = CrewMemberStore.TABLE.values(read).stream()
                    .filter(one -> hours(read, one, date).minutes() > 0)
                    .toList();
            List<String> hazards = List.copyOf(TaskHazards.of(read, task));
            List<Shot> shots = new ArrayList<>();
            List<Shot> once = new ArrayList<>();
            String minds = minds(task, lines, there);
            for (Stored<weekwright.episodes.Shot> open : ShotStore.ofTask(read, task.id())) {
                weekwright.episodes.Shot shot = open.value();
                if (shot.captured().isEmpty() && !shot.calledOff()) {
                    (shot.once() ? once : shots)
                            .add(new Shot(
                                    shot.what(), shot.size().map(Codec::word).orElse(""), minds));
                }
            }
            Form form = stored.map(row -> request.form("", row)).orElseGet(() -> request.form(""));
            return new View(
                    form,
                    task.id().value(),
                    task.title(),
                    StageStore.TABLE
                            .find(read, task.stage())
                            .map(stage -> stage.value().name())
                            .orElse(""),
                    date,
                    words.begins().map(LocalTime::toString).orElse(""),
                    words.stopWord().isEmpty() ? "Stop" : words.stopWord(),
                    words.fallback(),
                    new DayChecks(read, task, date, there, hazards, forecast, formats).all(words.permits()),
                    order(read, lines, words, task),
                    places(there, task, lines, words),
                    shots,
                    once,
                    words.cameras().lines().filter(line -> !line.isBlank()).toList(),
                    hazards.stream().map(code -> care(read, code)).toList(),
                    gathering(read, date),
                    EmergencyCells.of(request.settings().emergency()));
        });
    }

    /** The day asked for, else the booked one, else the first with a line of the crew's, else about when it lands, else today. */
    private static LocalDate date(Request request, Task task, Optional<Forecast> forecast) {
        String asked = request.query("date");
        if (!asked.isEmpty()) {
            try {
                return Codec.of(LocalDate.class).parse(asked, request.settings().typed());
            } catch (Refused refused) {
                throw new NotFound("\"" + asked + "\" " + refused.rule() + ".");
            }
        }
        return task.booked()
                .or(() -> request.read(read -> WeekLineStore.TABLE.values(read).stream()
                        .filter(line ->
                                line.task().filter(id -> id.same(task.id())).isPresent()
                                        && !line.date().isBefore(request.today()))
                        .map(WeekLine::date)
                        .min(Comparator.naturalOrder())))
                .or(() -> forecast.flatMap(f -> f.task(task.id().value()))
                        .flatMap(one -> one.landing().p50()))
                .filter(day -> !day.isBefore(request.today()))
                .orElse(request.today());
    }

    private static Hours hours(Read read, CrewMember one, LocalDate date) {
        return StatedHours.on(date, one, CrewHoursStore.TABLE.values(read), DaysOffStore.TABLE.values(read));
    }

    private static Task task(Read read, Id id) {
        return TaskStore.TABLE
                .find(read, id)
                .orElseThrow(() -> new NotFound("There is no task \"" + id + "\"."))
                .value();
    }

    private static DayWords blank(Id task) {
        return new DayWords(task, Optional.empty(), "", "", "", "", "", "");
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        Id id = request.id("id");
        Task task = request.read(read -> task(read, id));
        DayWords row = form.draft(
                blank(task.id()), "begins", "stop_word", "fallback", "permits", "running", "places", "cameras");
        return request.save(write -> {
            Optional<Shown> shown =
                    DayWordsStore.of(write, task.id()).map(stands -> new Shown(stands.row(), form.version()));
            SaveDayWords.save(write, shown, row);
            return Saved.to("/build/tasks/" + task.id() + "/day-sheet").saying("The words of the day sheet are kept.");
        });
    }

    /** Who is there, then who else is written down with a place. */
    private static List<Place> places(List<CrewMember> there, Task task, List<WeekLine> lines, DayWords words) {
        Map<String, String> written = new LinkedHashMap<>();
        words.places().lines().filter(line -> !line.isBlank()).forEach(line -> {
            int colon = line.indexOf(':');
            written.put(
                    colon < 0 ? line.strip() : line.substring(0, colon).strip(),
                    colon < 0 ? "" : line.substring(colon + 1).strip());
        });
        List<Place> places = new ArrayList<>();
        for (CrewMember one : there) {
            String stands = written.keySet().stream()
                    .filter(name -> name.equalsIgnoreCase(one.name()))
                    .findFirst()
                    .map(written::remove)
                    .orElse("");
            places.add(new Place(one.name(), role(one, task, lines), stands));
        }
        written.forEach((name, stands) -> places.add(new Place(name, "", stands)));
        return places;
    }

    private static List<Step> order(Read read, List<WeekLine> lines, DayWords words, Task task) {
        List<Step> steps = new ArrayList<>();
        words.begins()
                .ifPresent(begins -> steps.add(new Step(
                        begins.toString(),
                        "all",
                        "Walk through it cold; agree the stop word; " + task.title() + " begins")));
        words.running().lines().filter(line -> !line.isBlank()).forEach(line -> {
            Matcher clock = CLOCK.matcher(line.strip());
            steps.add(clock.matches() ? new Step(clock.group(1), "", clock.group(2)) : new Step("", "", line.strip()));
        });
        lines.stream()
                .sorted(Comparator.comparing((WeekLine line) -> line.from().orElse(LocalTime.MAX)))
                .forEach(line -> steps.add(new Step(
                        line.from()
                                .map(from ->
                                        from + line.to().map(to -> " to " + to).orElse(""))
                                .orElse(""),
                        line.crew()
                                .flatMap(id -> CrewMemberStore.TABLE.find(read, id))
                                .map(one -> one.value().name())
                                .orElse("anybody"),
                        what(read, line))));
        for (int i = 0; i < PENCILLED; i++) {
            steps.add(new Step("", "", ""));
        }
        return steps;
    }

    private static String what(Read read, WeekLine line) {
        String kind = line.kind()
                .filter(one -> one != WeekLine.Kind.WORK)
                .map(Codec::word)
                .orElse("");
        String title = line.task()
                .flatMap(id -> TaskStore.TABLE.find(read, id))
                .map(one -> one.value().title())
                .or(() -> line.episode()
                        .flatMap(id -> EpisodeStore.TABLE.find(read, id))
                        .map(one -> one.value().title()))
                .orElse("");
        String said = (kind + " " + title).strip();
        return line.text().isEmpty() ? said : said.isEmpty() ? line.text() : said + ": " + line.text();
    }

    private static boolean has(CrewMember one, Task task, List<WeekLine> lines, WeekLine.Kind kind) {
        return lines.stream()
                .anyMatch(line -> line.kind().orElse(WeekLine.Kind.WORK) == kind
                        && line.crew().filter(id -> id.same(one.id())).isPresent()
                        && line.task().filter(id -> id.same(task.id())).isPresent());
    }

    private static String role(CrewMember one, Task task, List<WeekLine> lines) {
        if (has(one, task, lines, WeekLine.Kind.FILM)) {
            return "camera";
        }
        return has(one, task, lines, WeekLine.Kind.WORK) ? "hands" : "";
    }

    /** Who films: those with a line for it, else nobody yet. */
    private static String minds(Task task, List<WeekLine> lines, List<CrewMember> there) {
        return Formats.list(there.stream()
                .filter(one -> has(one, task, lines, WeekLine.Kind.FILM))
                .map(CrewMember::name)
                .toList());
    }

    private static Care care(Read read, String code) {
        return new Care(
                HazardCodes.title(code).orElse(code),
                caution(read, code, Caution.Whom.HANDS),
                caution(read, code, Caution.Whom.CAMERA));
    }

    private static String caution(Read read, String code, Caution.Whom whom) {
        return CautionStore.TABLE.values(read).stream()
                .filter(one -> one.hazard().equalsIgnoreCase(code) && one.whom() == whom)
                .map(Caution::text)
                .findFirst()
                .or(() -> UsualCautions.of(code, whom))
                .orElse("");
    }

    private static String gathering(Read read, LocalDate date) {
        return GatheringStore.TABLE.values(read).stream()
                .filter(one -> one.date().equals(date))
                .map(one -> Formats.count(one.hands(), "helper") + " asked in, "
                        + Formats.hoursLong(one.hours().minutes()) + " each"
                        + (one.note().isBlank() ? "." : ": " + one.note().strip()))
                .findFirst()
                .orElse("");
    }
}
