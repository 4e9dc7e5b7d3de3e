package weekwright.web.week;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weekwright.forecast.WeekPlan;
import weekwright.render.Formats;

/**
 * The week as a message to somebody who cannot reach the server: when, what, who, what to bring, lunch. Under 900 letters;
 * no money and nobody's days off. Pure.
 */
final class WeekMessage {
    /** A message under this many letters fits what telephones send in one piece or a few. Our own bound. */
    static final int MOST_LETTERS = 900;

    private static final String MORE = "More stands on the sheet in the shop.";

    private final WeekPlan plan;
    private final WeekFacts facts;

    WeekMessage(WeekPlan plan, WeekFacts facts) {
        this.plan = plan;
        this.facts = facts;
    }

    /**
     * The message.
     *
     * @param who whose days; empty for everybody's
     * @param from days before it are left out
     * @param where the address of the place; empty for none, so too the next two
     */
    String text(Optional<String> who, LocalDate from, String where, String bring, String lunch) {
        List<String> tail = new ArrayList<>();
        add(tail, "Bring: ", bring);
        add(tail, "Lunch: ", lunch);
        add(tail, "Where: ", where);
        String head = who.map(one -> facts.person(one) + ", your").orElse("Our") + " week:";
        List<String> days = days(who, from);
        if (days.isEmpty()) {
            days = List.of("Nothing is planned yet.");
        }
        int shown = days.size();
        String text = join(head, days, shown, tail);
        while (text.length() >= MOST_LETTERS && shown > 0) {
            text = join(head, days, --shown, tail);
        }
        return text.length() < MOST_LETTERS ? text : text.substring(0, MOST_LETTERS - 2) + "…";
    }

    private static String join(String head, List<String> days, int shown, List<String> tail) {
        List<String> all = new ArrayList<>();
        all.add(head);
        all.addAll(days.subList(0, shown));
        if (shown < days.size()) {
            all.add(MORE);
        }
        all.addAll(tail);
        return String.join("\n", all);
    }

    private static void add(List<String> lines, String head, String text) {
        if (!text.isEmpty()) {
            lines.add(head + text);
        }
    }

    private List<String> days(Optional<String> who, LocalDate from) {
        List<String> days = new ArrayList<>();
        for (WeekPlan.Day day : plan.days()) {
            List<String> parts = new ArrayList<>();
            List<String> others = new ArrayList<>();
            for (WeekPlan.Person person : day.people()) {
                List<String> lines = person.lines().stream()
                        .filter(line -> !line.kind().equals("rest"))
                        .map(this::line)
                        .distinct()
                        .toList();
                boolean theirs = who.isEmpty()
                        || who.get().equals(person.crew())
                        || person.crew().isEmpty();
                if (!lines.isEmpty() && theirs) {
                    parts.add((who.isEmpty() ? facts.person(person.crew()) + ": " : "") + String.join(", ", lines));
                } else if (!lines.isEmpty()) {
                    others.add(facts.person(person.crew()));
                }
            }
            if (!parts.isEmpty() && !day.date().isBefore(from)) {
                days.add(Formats.weekdayShort(day.date()) + " " + Formats.dayMonth(day.date()) + ": "
                        + String.join("; ", parts)
                        + (others.isEmpty() ? "" : " (there too: " + Formats.list(others) + ")") + ".");
            }
        }
        return days;
    }

    private String line(WeekPlan.Line line) {
        String clock = line.row().map(facts.own()::get).map(WeekDays::clock).orElse("");
        return WeekDays.text(line, facts) + (clock.isEmpty() ? "" : " from " + clock);
    }
}
