package weekwright.web.week;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import weekwright.forecast.WeekPlan;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;

/** The words of a week to copy: a message for those who cannot reach the server, and the log in five lines. */
public final class WeekWordsPage implements Page {

    /**
     * @param who whose message; empty for everybody's
     * @param lines of the log; empty where nothing was logged
     */
    public record View(
            String title,
            String week,
            String back,
            List<Form.Choice> people,
            String who,
            String bring,
            String lunch,
            String message,
            int letters,
            String lines) {}

    @Override
    public View show(Request request) {
        LocalDate monday = Weeks.asked(request);
        LocalDate today = request.today();
        request.forecast();
        record Seen(WeekPlan plan, WeekFacts facts) {}
        Seen seen = request.read(read -> new Seen(
                WeekPlan.of(read, monday, today, request.forecasts().proposals(), Optional.empty()),
                WeekFacts.of(read, monday)));
        String who = seen.facts().crew().containsKey(request.query("who")) ? request.query("who") : "";
        String message = plain(new WeekMessage(seen.plan(), seen.facts())
                .text(
                        Optional.of(who).filter(one -> !one.isEmpty()),
                        monday.equals(Weeks.monday(today)) ? today : monday,
                        request.settings().emergency().address(),
                        request.query("bring"),
                        request.query("lunch")));
        return new View(
                Weeks.title(monday),
                Weeks.name(monday),
                Weeks.address(monday, today),
                request.crew().stream()
                        .map(one -> new Form.Choice(one.id().value(), one.name()))
                        .toList(),
                who,
                request.query("bring"),
                request.query("lunch"),
                message,
                message.length(),
                plain(String.join("\n", FiveLines.of(seen.facts(), monday))));
    }

    /** Blanks that hold a number to its unit have no use in a message. */
    private static String plain(String text) {
        return text.replace(Formats.NBSP, " ");
    }
}
