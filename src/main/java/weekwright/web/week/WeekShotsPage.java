package weekwright.web.week;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import weekwright.build.Shown;
import weekwright.build.Task;
import weekwright.build.TaskStore;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.episodes.CaptureShot;
import weekwright.episodes.Episode;
import weekwright.episodes.EpisodeStore;
import weekwright.episodes.FinishFilmed;
import weekwright.episodes.Shot;
import weekwright.episodes.ShotStore;
import weekwright.episodes.Tell;
import weekwright.episodes.TellStore;
import weekwright.forecast.Forecast;
import weekwright.forecast.Forecasts;
import weekwright.forecast.Proposals;
import weekwright.forecast.WeekPlan;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Access;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.parts.Choices;

/** What the camera must get: by day as the week is planned, by task for the rest, and where an episode has no shot yet. */
public final class WeekShotsPage implements Page {
    private static final int DAYS_BACK = 7;

    /**
     * @param days of this week from today on that have shots
     * @param groups shots of no day of this week, by task
     * @param needs tasks that a coming episode tells and of which nothing is wanted yet
     * @param captured in the last seven days, newest first
     */
    public record View(
            Form form,
            String head,
            String lead,
            List<Group> days,
            List<Group> groups,
            List<Need> needs,
            List<Line> captured,
            boolean crew,
            LocalDate today) {}

    /** Shots under one head; {@code day} for a day, {@code link} for a task or an episode. */
    public record Group(Optional<LocalDate> day, String title, String link, List<Line> lines) {}

    public record Line(long row, long version, Shot shot, String words, boolean once) {}

    public record Need(String task, String title, String episode, String episodeTitle) {}

    @Override
    public View show(Request request) {
        LocalDate today = request.today();
        Optional<Forecast> forecast = request.forecast().shown().map(Forecasts.Shown::forecast);
        Optional<Proposals> proposals = request.forecasts().proposals();
        return request.read(read -> {
            WeekPlan plan = WeekPlan.of(read, Weeks.monday(today), today, proposals, forecast);
            List<Stored<Shot>> wanted = ShotStore.TABLE.list(read).stream()
                    .filter(shot -> shot.value().captured().isEmpty()
                            && !shot.value().calledOff()
                            && shot.value().missed().isEmpty())
                    .sorted(Comparator.comparing((Stored<Shot> shot) -> !FinishFilmed.isOnce(read, shot.value()))
                            .thenComparing(shot -> !shot.value().must()))
                    .toList();
            Set<Long> said = new HashSet<>();
            List<Group> days = days(read, plan, wanted, today, said);
            return new View(
                    request.form("capture"),
                    wanted.isEmpty()
                            ? "No shot is wanted"
                            : Formats.sentence(Formats.count(wanted.size(), "shot")) + " wanted",
                    lead(read, wanted),
                    days,
                    groups(read, wanted, said),
                    request.access() == Access.CREW ? needs(read) : List.of(),
                    ShotStore.TABLE.list(read).stream()
                            .filter(shot -> shot.value()
                                    .captured()
                                    .filter(day -> day.isAfter(today.minusDays(DAYS_BACK)))
                                    .isPresent())
                            .sorted(Comparator.comparing((Stored<Shot> shot) ->
                                            shot.value().captured().get())
                                    .reversed())
                            .map(shot -> line(read, shot, true))
                            .toList(),
                    request.access() == Access.CREW,
                    today);
        });
    }

    private static String lead(Read read, List<Stored<Shot>> wanted) {
        long must = wanted.stream().filter(shot -> shot.value().must()).count();
        long once = wanted.stream()
                .filter(shot -> FinishFilmed.isOnce(read, shot.value()))
                .count();
        List<String> said = new ArrayList<>();
        if (must > 0) {
            said.add(Formats.counted(must, "is must-have", "are must-have"));
        }
        if (once > 0) {
            said.add(Formats.counted(once, "happens once only", "happen once only"));
        }
        return said.isEmpty() ? "" : Formats.sentence(Formats.list(said)) + ".";
    }

    private static List<Group> days(
            Read read, WeekPlan plan, List<Stored<Shot>> wanted, LocalDate today, Set<Long> said) {
        List<Group> days = new ArrayList<>();
        for (WeekPlan.Day day : plan.days()) {
            if (day.date().isBefore(today)) {
                continue;
            }
            Set<String> ids = new HashSet<>();
            day.shots().forEach(id -> ids.add(id.toLowerCase(Locale.ROOT)));
            List<Line> lines = wanted.stream()
                    .filter(shot -> ids.contains(shot.value().id().folded()) && said.add(shot.row()))
                    .map(shot -> line(read, shot, true))
                    .toList();
            if (!lines.isEmpty()) {
                days.add(new Group(Optional.of(day.date()), "", "", lines));
            }
        }
        return days;
    }

    private static List<Group> groups(Read read, List<Stored<Shot>> wanted, Set<Long> said) {
        Map<Form.Choice, List<Line>> groups = new LinkedHashMap<>();
        for (Stored<Shot> shot : wanted) {
            if (!said.contains(shot.row())) {
                groups.computeIfAbsent(ShotFields.heading(read, shot.value()), head -> new ArrayList<>())
                        .add(line(read, shot, false));
            }
        }
        return groups.entrySet().stream()
                .map(one -> new Group(
                        Optional.empty(), one.getKey().label(), one.getKey().value(), one.getValue()))
                .toList();
    }

    private static Line line(Read read, Stored<Shot> shot, boolean task) {
        return new Line(
                shot.row(),
                shot.version(),
                shot.value(),
                ShotFields.words(read, shot.value(), task),
                FinishFilmed.isOnce(read, shot.value()));
    }

    private static List<Need> needs(Read read) {
        Map<String, Episode> coming = new HashMap<>();
        EpisodeStore.TABLE.values(read).stream()
                .filter(episode -> episode.published().isEmpty()
                        && episode.footageComplete().isEmpty()
                        && episode.cut().isEmpty())
                .forEach(episode -> coming.put(episode.id().folded(), episode));
        List<Need> needs = new ArrayList<>();
        for (Tell tell : TellStore.TABLE.values(read)) {
            Episode episode = coming.get(tell.episode().folded());
            Optional<Task> task = TaskStore.TABLE.find(read, tell.task()).map(Stored::value);
            if (episode != null
                    && task.filter(Task::isOpen).filter(Task::isWork).isPresent()
                    && ShotStore.ofTask(read, tell.task()).isEmpty()) {
                needs.add(new Need(
                        task.get().id().value(),
                        task.get().title(),
                        episode.id().value(),
                        Choices.title(episode)));
            }
        }
        return needs;
    }

    /** One tap, without notes: on the day that the page stood on, since a phone may send it later. */
    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        long row = form.needed("shot", Integer.class).orElse(0);
        LocalDate day = form.read("day", LocalDate.class).orElse(request.today());
        return request.save(write -> {
            Shot shot = ShotStore.TABLE.find(write, row).map(Stored::value).orElseThrow(ShotFields::gone);
            CaptureShot.capture(write, new Shown(row, form.version()), day, shot.clip(), request.today());
            return Saved.to("/week/shots").saying("Captured: " + shot.what() + ".");
        });
    }
}
