package weekwright.web.parts;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import weekwright.forecast.Forecasts;
import weekwright.forecast.Names;
import weekwright.forecast.StoryWork;
import weekwright.render.Formats;
import weekwright.web.kit.Access;
import weekwright.web.kit.Request;

/**
 * Work that can begin now and gives story, in words, the most story for a day of delay first; for the crew.
 *
 * @param rows empty where no work that can begin gives any
 * @param drawn how it was found
 */
public record StoryRows(List<Row> rows, String drawn) {
    /** A task. */
    public record Row(String task, String title, String said) {}

    /** Where the story in hand is thin; empty where it is not, or nothing is known yet. */
    public static Optional<StoryRows> ifThin(Request request) {
        return of(request, true);
    }

    /** Whether the story in hand is thin or not. */
    public static Optional<StoryRows> of(Request request) {
        return of(request, false);
    }

    private static Optional<StoryRows> of(Request request, boolean thinOnly) {
        if (request.access() != Access.CREW) {
            return Optional.empty();
        }
        // what is known is read before anything newer is asked for
        Optional<StoryWork> known = request.forecasts().story();
        Optional<Names> names = request.forecast().shown().map(Forecasts.Shown::names);
        return known.filter(work -> names.isPresent() && (work.thin() || !thinOnly))
                .map(work -> words(work, names.get()));
    }

    static StoryRows words(StoryWork work, Names names) {
        return new StoryRows(
                work.rows().stream()
                        .map(row -> new Row(row.task(), names.task(row.task()), said(row, names)))
                        .toList(),
                "Each was put at the front of the order of work, and " + work.futures()
                        + " futures of that were held against as many as things stand, with the same luck.");
    }

    private static String said(StoryWork.Row row, Names names) {
        String minutes = "about " + Formats.count(Math.round(row.minutes()), "minute") + " of story";
        String delay = row.free()
                ? "; done first it holds no stage up"
                : "; done first it holds “" + names.stage(row.stage()) + "” up by " + days(row.delayDays())
                        + " in the mean, "
                        + Formats.count(Math.max(1, Math.round(row.minutes() / row.delayDays())), "minute")
                        + " for a day";
        String empty = row.emptyNow() - row.emptyThen() >= 0.05
                ? "; of the next twelve slots " + one(row.emptyThen()) + " instead of " + one(row.emptyNow())
                        + " stay empty"
                : "";
        return minutes + delay + empty + ".";
    }

    private static String days(double days) {
        return days >= 9.5 ? Math.round(days) + " days" : one(days) + (one(days).equals("1.0") ? " day" : " days");
    }

    private static String one(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }
}
