package weekwright.web.episodes;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import weekwright.base.Quantity;
import weekwright.build.CrewMemberStore;
import weekwright.build.TaskStore;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.episodes.Clip;
import weekwright.episodes.ClipStore;
import weekwright.episodes.Episode;
import weekwright.episodes.EpisodeStore;
import weekwright.episodes.Footage;
import weekwright.forecast.Lessons;
import weekwright.render.Formats;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.parts.Choices;
import weekwright.web.parts.EditingWords;

/** The footage log: the clips of a month, what is in hand for each coming episode, and how much is shot for a finished minute. */
public final class EpisodesFootagePage implements Page {
    /**
     * @param head the shooting ratio in a sentence
     * @param editing how long editing takes
     * @param earlier address of the month before that has clips; empty without one
     */
    public record View(
            String head,
            String lead,
            String editing,
            LocalDate month,
            List<Line> clips,
            List<InHand> inHand,
            Optional<String> earlier,
            Optional<String> later) {}

    public record Line(long row, Clip clip, String task, String who) {}

    /** Footage of an episode against what one of its length usually takes. */
    public record InHand(String id, String title, String words) {}

    @Override
    public View show(Request request) {
        return request.read(read -> {
            List<LocalDate> days = ClipStore.TABLE.values(read).stream()
                    .map(Clip::date)
                    .sorted()
                    .toList();
            YearMonth month = month(request, days);
            Footage footage = Footage.of(read);
            return new View(
                    footage.ratio()
                            .map(ratio -> minutes(ratio) + " of footage for each finished one")
                            .orElse("Footage"),
                    footage.ratio().isPresent()
                            ? "Measured on " + Formats.count(footage.measured(), "published episode") + "."
                            : "What is shot for a finished minute shows once an episode with footage in the log is"
                                    + " published.",
                    EditingWords.of(Lessons.editing(read, request.today())),
                    month.atDay(1),
                    ClipStore.between(read, month.atDay(1), month.atEndOfMonth()).stream()
                            .sorted(Comparator.comparing(
                                            (Stored<Clip> clip) -> clip.value().date())
                                    .reversed())
                            .map(clip -> line(read, clip))
                            .toList(),
                    inHand(read, footage, request.settings().targetMinutes()),
                    days.stream()
                            .filter(day -> YearMonth.from(day).isBefore(month))
                            .reduce((a, b) -> b)
                            .map(EpisodesFootagePage::address),
                    days.stream()
                            .filter(day -> YearMonth.from(day).isAfter(month))
                            .findFirst()
                            .map(EpisodesFootagePage::address));
        });
    }

    private static YearMonth month(Request request, List<LocalDate> days) {
        String asked = request.query("of");
        if (!asked.isEmpty()) {
            try {
                return YearMonth.parse(asked);
            } catch (DateTimeParseException e) {
                throw new NotFound("\"" + asked + "\" is not a month; write one such as 2026-11.");
            }
        }
        return YearMonth.from(days.isEmpty() ? request.today() : days.get(days.size() - 1));
    }

    private static String address(LocalDate day) {
        return "/episodes/footage?of=" + YearMonth.from(day);
    }

    static String minutes(BigDecimal minutes) {
        String text = minutes.stripTrailingZeros().toPlainString();
        return text + (text.equals("1") ? " minute" : " minutes");
    }

    private static Line line(Read read, Stored<Clip> clip) {
        return new Line(
                clip.row(),
                clip.value(),
                clip.value()
                        .task()
                        .flatMap(id -> TaskStore.TABLE.find(read, id))
                        .map(task -> task.value().title())
                        .orElse(""),
                clip.value()
                        .who()
                        .flatMap(id -> CrewMemberStore.TABLE.find(read, id))
                        .map(member -> member.value().name())
                        .orElse(""));
    }

    private static List<InHand> inHand(Read read, Footage footage, Quantity wanted) {
        List<InHand> lines = new ArrayList<>();
        for (Episode episode : EpisodeStore.TABLE.values(read)) {
            if (episode.published().isEmpty() && episode.cut().isEmpty()) {
                lines.add(new InHand(
                        episode.id().value(),
                        Choices.title(episode),
                        Formats.sentence(words(footage, episode, wanted))));
            }
        }
        return lines;
    }

    /**
     * "34 minutes in hand of about 51 that 17 finished ones usually take"; where nothing is known of that, "34 minutes in hand, 17
     * finished ones wanted".
     */
    static String words(Footage footage, Episode episode, Quantity usually) {
        String hand = minutes(footage.ofEpisode(episode.id())) + " in hand";
        Quantity finished = episode.minutes().orElse(usually);
        return footage.usual(finished)
                .map(usual -> hand + " of about " + usual.toPlainString() + " that " + finished.text()
                        + (finished.equals(Quantity.ONE)
                                ? " finished one usually takes"
                                : " finished ones usually take"))
                .orElse(hand + ", " + finished.text()
                        + (finished.equals(Quantity.ONE) ? " finished one wanted" : " finished ones wanted"));
    }
}
