package weekwright.web.episodes;

import java.time.LocalDate;
import java.util.Optional;
import weekwright.base.Codec;
import weekwright.base.Refused;
import weekwright.build.Settings;
import weekwright.episodes.SlotRules;
import weekwright.render.Chances;
import weekwright.render.Formats;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Request;

/** Words for slots, whatever their weekday and however far apart they are. */
final class SlotDays {
    private SlotDays() {}

    /** {@code An episode comes out every Friday at 17:00.} */
    static String cadence(Settings settings) {
        String day = Formats.weekday(settings.weekday());
        String every = settings.everyWeeks() == 1
                ? "every " + day
                : settings.everyWeeks() == 2
                        ? "every second " + day
                        : "on a " + day + " every " + Formats.number(settings.everyWeeks()) + " weeks";
        return "An episode comes out " + every + " at " + settings.publishingTime() + ".";
    }

    /** {@code Friday 4 December}. */
    static String day(LocalDate day, Formats formats) {
        return Formats.weekday(day) + Formats.NBSP + formats.dateLong(day);
    }

    /** {@code one in five that it stays empty}. */
    static String empty(double chance) {
        return Chances.words(chance) + " that it stays empty";
    }

    /** A day as it stands in an address. */
    static Optional<LocalDate> parse(Request request, String text) {
        try {
            return text.isEmpty()
                    ? Optional.empty()
                    : Optional.of(Codec.of(LocalDate.class)
                            .parse(text, request.settings().typed()));
        } catch (Refused refused) {
            return Optional.empty();
        }
    }

    /** The slot in the address, skipped or not. */
    static LocalDate slot(Request request) {
        String text = request.part("day");
        return parse(request, text)
                .filter(day -> SlotRules.isRegular(day, request.settings()))
                .orElseThrow(() -> new NotFound("\"" + text + "\" is no day on which episodes come out."));
    }
}
