package weekwright.web.start;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.base.Money;
import weekwright.base.Problems;
import weekwright.base.Reading;
import weekwright.base.Refused;
import weekwright.base.Rejected;
import weekwright.base.Shape;
import weekwright.build.CrewMember;
import weekwright.build.Emergency;
import weekwright.build.ModelSettings;
import weekwright.build.MoneySettings;
import weekwright.build.OrderSettings;
import weekwright.build.Project;
import weekwright.build.Publishing;
import weekwright.build.Settings;
import weekwright.build.StartProject;
import weekwright.build.Weather;
import weekwright.db.Db;
import weekwright.funds.CountBalance;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** A new project by a short form: what is built, in which money, who builds it. */
public final class StartNewPage implements Page {
    private static final List<String> DAYS = List.of("mon", "tue", "wed", "thu", "fri");

    private final NewProject start;

    public StartNewPage(NewProject start) {
        this.start = start;
    }

    /** Days of the week to publish on. */
    public record View(Form form, List<Form.Choice> weekdays) {}

    @Override
    public View show(Request request) {
        StartPage.onlyWithoutProject(request);
        Form form = request.form(
                "",
                Map.of(
                        "started", request.today().toString(),
                        "currency", "EUR",
                        "zone", request.clock().getZone().getId(),
                        "weekday", "friday",
                        "hours", "8"));
        List<Form.Choice> weekdays = Arrays.stream(DayOfWeek.values())
                .map(day -> day.name().charAt(0) + day.name().substring(1).toLowerCase(Locale.ROOT))
                .map(word -> new Form.Choice(word.toLowerCase(Locale.ROOT), word))
                .toList();
        return new View(form, weekdays);
    }

    @Override
    public Answer submit(Request request) throws Exception {
        StartPage.onlyWithoutProject(request);
        FormReader form = request.form();
        Reading reading = Reading.form(digits(form.text("currency")));
        Optional<LocalDate> started = form.needed("started", LocalDate.class);
        Optional<Money> reserve = form.read("reserve", Money.class, reading);
        Optional<Money> cash = form.read("cash", Money.class, reading);
        reserve.filter(Money::isNegative)
                .ifPresent(money -> form.fault("reserve", form.text("reserve"), "is under 0", "write 0 or more"));
        List<CrewMember> crew = crew(form);
        Project project = new Project(
                form.text("name", Project.class, "name"),
                started.orElse(request.today()),
                form.text("currency", Project.class, "currency"),
                Optional.empty(),
                form.text("zone", Project.class, "zone"),
                reserve,
                Optional.empty(),
                begunBefore(started, request) ? Optional.empty() : cash,
                Optional.empty(),
                Optional.empty());
        Publishing publishing = form.draft(none(Publishing.class), "weekday");
        Settings settings = new Settings(
                project,
                publishing,
                none(Weather.class),
                none(OrderSettings.class),
                none(MoneySettings.class),
                none(Emergency.class),
                none(ModelSettings.class));
        started.filter(day -> day.isAfter(todayThere(project.zone(), request)))
                .ifPresent(day -> form.fault(
                        "started",
                        day.toString(),
                        "is after today",
                        "write today or the day it began; what is built later can be given a day under Build"));
        form.besides(() -> StartProject.check(settings, crew));
        form.check();
        Rejected.ifFaults(StartProject.check(settings, crew));
        Db db = start.create();
        db.<Void, Rejected>write("start", write -> {
            StartProject.start(write, settings, crew);
            if (begunBefore(started, request) && cash.isPresent()) {
                LocalDate today = LocalDate.now(request.clock().withZone(settings.zone()));
                CountBalance.count(write, "", today.minusDays(1), cash.get(), today);
            }
            return null;
        });
        return Answer.to(Saved.to("/start/build").saying(project.name() + " is started."));
    }

    /** The day it is in the zone that was typed, else here. */
    private static LocalDate todayThere(String zone, Request request) {
        try {
            return LocalDate.now(request.clock().withZone(ZoneId.of(zone)));
        } catch (DateTimeException notKnown) {
            return request.today();
        }
    }

    /**
     * Money at hand today is what was there when the books open only where they open today; else it is a balance counted
     * last night, so that what is entered later of the days before does not change it.
     */
    private static boolean begunBefore(Optional<LocalDate> started, Request request) {
        return started.filter(day -> day.isBefore(request.today().minusDays(1))).isPresent();
    }

    /** One name a line, trades behind a colon; each works the hours given from Monday to Friday, until the Crew sheet says otherwise. */
    private static List<CrewMember> crew(FormReader form) {
        boolean hours = form.column("hours", CrewMember.class, "mon").isPresent();
        List<CrewMember> crew = new ArrayList<>();
        List<Id> ids = new ArrayList<>();
        for (String line : form.text("crew").split("\\R")) {
            int colon = line.indexOf(':');
            String name = (colon < 0 ? line : line.substring(0, colon)).strip();
            String trades = colon < 0 ? "" : line.substring(colon + 1).strip();
            if (line.isBlank()) {
                continue;
            }
            if (name.isEmpty()) {
                form.fault("crew", line.strip(), "has no name", "write it before the colon: Ann: mason camera");
                continue;
            }
            if (crew.stream().anyMatch(member -> member.name().equalsIgnoreCase(name))) {
                form.fault("crew", name, "stands there twice", "add a second name");
                continue;
            }
            Id id = id(name, ids);
            ids.add(id);
            Map<String, String> texts = new HashMap<>(Map.of("id", id.value(), "name", name, "trades", trades));
            if (hours) {
                DAYS.forEach(day -> texts.put(day, form.text("hours")));
            }
            Problems found = new Problems();
            Shape.of(CrewMember.class)
                    .parse(texts, form.reading(), found)
                    .ifPresentOrElse(crew::add, () -> refuse(form, name, found));
        }
        if (form.text("crew").isEmpty()) {
            form.fault("crew", "", "names nobody", "write at least one name");
        }
        return crew;
    }

    private static void refuse(FormReader form, String name, Problems found) {
        found.list().stream()
                .filter(problem -> problem.column().equals("trades"))
                .findFirst()
                .ifPresentOrElse(
                        problem -> form.fault("crew", problem.read(), problem.rule(), problem.remedy()),
                        () -> form.fault("crew", name, "is no name", "write at most 200 characters on one line"));
    }

    /** The name itself in lower case where it is fit for an id and free, else with a number. */
    private static Id id(String name, List<Id> taken) {
        String word = name.toLowerCase(Locale.ROOT).replaceAll("\\s.*", "");
        try {
            Id id = Id.parse(word);
            if (taken.stream().noneMatch(other -> other.same(id))) {
                return id;
            }
        } catch (Refused refused) {
            // a name of other signs gets an id of its letters and a number
        }
        return Id.next(word, taken);
    }

    private static int digits(String currency) {
        try {
            return Money.digits(currency);
        } catch (Refused refused) {
            return 2;
        }
    }

    /** A table of settings in which nothing is set. */
    private static <R extends Record> R none(Class<R> type) {
        return Shape.of(type)
                .parse(Map.of(), Reading.form(2), new Problems())
                .orElseThrow(() -> new IllegalStateException("nothing may stand in " + type));
    }
}
