package weekwright.web.week;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import weekwright.base.Hours;
import weekwright.build.Caution;
import weekwright.build.HoursEntry;
import weekwright.build.WeekLine;
import weekwright.db.Stored;
import weekwright.episodes.Shot;
import weekwright.forecast.WeekPlan;
import weekwright.render.Formats;

/** The days of the sheet in words. Pure. */
final class WeekDays {
    /** Of the pictures wanted of a day's tasks so many are shown, once-only ones first. */
    private static final int MOST_SHOTS = 4;

    private static final String TIRED = "fatig";

    private final WeekPlan plan;
    private final WeekFacts facts;
    private final LocalDate today;
    private final boolean crew;
    private final WeekWarnings warnings;
    private final Set<String> saidHazards = new HashSet<>();
    private final Set<String> saidShots = new HashSet<>();

    WeekDays(WeekPlan plan, WeekFacts facts, LocalDate today, boolean crew) {
        this.plan = plan;
        this.facts = facts;
        this.today = today;
        this.crew = crew;
        this.warnings = new WeekWarnings(facts);
    }

    List<WeekPage.Day> days() {
        return plan.days().stream().map(this::day).toList();
    }

    private WeekPage.Day day(WeekPlan.Day day) {
        boolean past = day.date().isBefore(today);
        List<WeekPage.Line> lines = new ArrayList<>(past ? logged(day.date()) : List.of());
        boolean filmed = false;
        for (WeekPlan.Person person : day.people()) {
            for (WeekPlan.Line line : person.lines()) {
                filmed |= line.kind().equals("film");
                if (!past || line.own() && lines.isEmpty()) {
                    lines.add(line(day.date(), person.crew(), line));
                }
            }
        }
        return new WeekPage.Day(
                day.date(),
                past ? "past" : day.date().equals(today) ? "today" : "",
                lines,
                past
                        ? List.of()
                        : day.rain().stream()
                                .map(rain -> facts.person(rain.crew()) + ": " + facts.task(rain.task()))
                                .toList(),
                past ? List.of() : shots(day),
                past ? List.of() : day.onceOnly().stream().map(facts::task).toList(),
                past ? List.of() : facts.said(day.date()),
                past ? List.of() : warnings.conflicts(day),
                past ? List.of() : cautions(day, filmed || !day.shots().isEmpty()),
                past
                        ? List.of()
                        : day.deliveries().stream().map(facts::material).toList(),
                past ? List.of() : day.orders().stream().map(facts::material).toList(),
                day.episode()
                        .map(id -> facts.episodes().get(id))
                        .map(e -> e.number()
                                        .map(n -> "no." + Formats.NBSP + n + ", ")
                                        .orElse("")
                                + e.title()));
    }

    /** What was logged on a day that is past, by person. */
    private List<WeekPage.Line> logged(LocalDate date) {
        Map<String, Integer> sums = new LinkedHashMap<>();
        Map<String, String[]> words = new LinkedHashMap<>();
        for (HoursEntry entry : facts.hours()) {
            if (!entry.date().equals(date)) {
                continue;
            }
            String text = entry.task()
                    .map(id -> facts.task(id.value()))
                    .or(() -> entry.episode().map(id -> facts.episode(id.value())))
                    .orElse("shop and office");
            String as = entry.asOrDefault() == HoursEntry.As.CAMERA
                    ? "filmed " + text
                    : entry.asOrDefault() == HoursEntry.As.EDIT ? "edited " + text : text;
            String key = entry.crew().folded() + " " + as;
            sums.merge(key, entry.hours().minutes(), Integer::sum);
            words.put(key, new String[] {facts.person(entry.crew().value()), as});
        }
        return words.entrySet().stream()
                .map(e -> new WeekPage.Line(e.getValue()[0], e.getValue()[1], sums.get(e.getKey()), "", true, true, ""))
                .toList();
    }

    private WeekPage.Line line(LocalDate date, String person, WeekPlan.Line line) {
        Optional<WeekLine> own = line.row().map(facts.own()::get);
        return new WeekPage.Line(
                facts.person(person),
                text(line, facts),
                line.own() ? line.hours().minutes() : quarters(line.hours().minutes()),
                own.map(WeekDays::clock).orElse(""),
                line.own(),
                own.map(WeekLine::done).orElse(false),
                !crew
                        ? ""
                        : line.row()
                                .map(row -> "/week/lines/" + row + "/edit")
                                .orElseGet(() -> line.own() ? "" : takeOver(date, person, line)));
    }

    /** {@code 09:00 to 12:30}; empty where a line says no time. */
    static String clock(WeekLine line) {
        return line.from()
                .map(from -> from + line.to().map(to -> " to " + to).orElse(""))
                .orElse("");
    }

    /** What a line says: the verb and what it is done on, with the crew's own words. */
    static String text(WeekPlan.Line line, WeekFacts facts) {
        String what = line.task()
                .map(facts::task)
                .or(() -> line.episode().map(facts::episode))
                .orElse("");
        String verb = line.kind().equals("work") ? "" : line.kind();
        String said = (verb + " " + what).strip();
        return said.isEmpty() ? line.text() : line.text().isEmpty() || !line.own() ? said : said + ": " + line.text();
    }

    /** As above for a line that the crew wrote. */
    static String text(WeekLine line, WeekFacts facts) {
        return text(
                new WeekPlan.Line(
                        line.kind().orElse(WeekLine.Kind.WORK).name().toLowerCase(Locale.ROOT),
                        line.task().map(Object::toString),
                        line.episode().map(Object::toString),
                        line.hours().orElse(Hours.ZERO),
                        line.text(),
                        true,
                        Optional.empty()),
                facts);
    }

    /** The form of a new line, filled in with what is proposed. */
    private static String takeOver(LocalDate date, String person, WeekPlan.Line line) {
        StringBuilder address = new StringBuilder("/week/lines/new?date=" + date);
        put(address, "crew", person);
        put(address, "kind", line.kind());
        line.task().ifPresent(task -> put(address, "task", task));
        line.episode().ifPresent(episode -> put(address, "episode", episode));
        put(address, "hours", new Hours(quarters(line.hours().minutes())).text());
        return address.toString();
    }

    /** A proposal is told to the nearest quarter of an hour, never as nothing. */
    static int quarters(int minutes) {
        return Math.max(15, (minutes + 7) / 15 * 15);
    }

    private static void put(StringBuilder address, String name, String value) {
        address.append('&').append(name).append('=').append(URLEncoder.encode(value, StandardCharsets.UTF_8));
    }

    private List<WeekPage.WantedShot> shots(WeekPlan.Day day) {
        return day.shots().stream()
                .filter(saidShots::add)
                .map(facts.shots()::get)
                .filter(Objects::nonNull)
                .sorted(Comparator.comparing(
                                (Stored<Shot> shot) -> !shot.value().once())
                        .thenComparing(shot -> !shot.value().must()))
                .limit(MOST_SHOTS)
                .map(shot -> new WeekPage.WantedShot(
                        shot.row(),
                        shot.value().what(),
                        shot.value().must(),
                        shot.value().once(),
                        shot.value().captured().isPresent(),
                        shot.value().calledOff()))
                .toList();
    }

    /** Each hazard is told in full on its first day of the week, by name after that. */
    private List<WeekPage.Care> cautions(WeekPlan.Day day, boolean filmed) {
        List<WeekPage.Care> cautions = new ArrayList<>();
        for (String code : day.hazards()) {
            boolean first = saidHazards.add(code);
            cautions.add(new WeekPage.Care(
                    WeekFacts.hazard(code),
                    first ? facts.caution(code, Caution.Whom.HANDS) : "",
                    first && filmed ? facts.caution(code, Caution.Whom.CAMERA) : ""));
        }
        List<String> tiring = warnings.tiring(day);
        if (!tiring.isEmpty()) {
            cautions.add(new WeekPage.Care(
                    WeekFacts.hazard(TIRED),
                    String.join(" ", tiring) + " " + facts.caution(TIRED, Caution.Whom.HANDS),
                    ""));
        }
        return cautions;
    }
}
