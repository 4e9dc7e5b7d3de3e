package weekwright.web.episodes;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Quantity;
import weekwright.base.RunTime;
import weekwright.db.Stored;
import weekwright.episodes.Episode;
import weekwright.episodes.EpisodeRules;
import weekwright.episodes.KeepParts;
import weekwright.episodes.Segment;
import weekwright.episodes.SegmentStore;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** The running order of an episode: its parts one after the other, and how long they are together. */
public final class EpisodeOrderPage implements Page {
    private static final PartList<Segment> PARTS =
            new PartList<>("parts", Segment.class, "place", List.of("title", "minutes"));

    /** @param seen the list as it stands, told from the same changed by somebody else */
    public record View(Form form, String id, String title, String lead, List<Integer> rows, String seen) {}

    @Override
    public View show(Request request) {
        Episode episode = EpisodePage.episode(request).value();
        List<Stored<Segment>> stands = request.read(read -> SegmentStore.ofEpisode(read, episode.id()));
        List<Segment> parts = stands.stream().map(Stored::value).toList();
        Form form = request.wasRefused("")
                ? request.form("")
                : byTheClock(
                        PARTS.filled(request.form(""), parts, request.settings().moneyDigits()), parts);
        return new View(
                form,
                episode.id().value(),
                episode.title(),
                lead(parts, wanted(request, episode)),
                PARTS.rows(form),
                KeepParts.mark(stands));
    }

    /** With lengths as 4:30 instead of as the files have them. */
    private static Form byTheClock(Form form, List<Segment> parts) {
        Map<String, List<String>> values = new LinkedHashMap<>(form.values());
        for (int i = 0; i < parts.size(); i++) {
            String field = "parts." + i + ".minutes";
            parts.get(i).minutes().ifPresent(length -> values.put(field, List.of(length.clock())));
        }
        return new Form(form.csrf(), form.answerKey(), form.version(), values, form.errors());
    }

    static Quantity wanted(Request request, Episode episode) {
        return episode.minutes().orElse(request.settings().targetMinutes());
    }

    /** "Seven parts, 19:30 of 22 minutes." */
    static String lead(List<Segment> parts, Quantity wanted) {
        if (parts.isEmpty()) {
            return "No part is written down yet; wanted: " + EpisodesFootagePage.minutes(wanted.value()) + ".";
        }
        RunTime sum = parts.stream().flatMap(part -> part.minutes().stream()).reduce(RunTime.ZERO, RunTime::plus);
        long unknown = parts.stream().filter(part -> part.minutes().isEmpty()).count();
        int over = sum.seconds() - RunTime.ofMinutes(wanted).seconds();
        String off = over > 0
                ? ": " + new RunTime(over).clock() + Formats.NBSP + "min too long"
                : over < 0 && unknown == 0
                        ? ": " + new RunTime(-over).clock() + Formats.NBSP + "min still to fill"
                        : "";
        return Formats.sentence(Formats.counted(parts.size(), "part", "parts")) + ", " + sum.clock() + " of "
                + RunTime.ofMinutes(wanted).clock() + " minutes" + off
                + (unknown == 0 ? "" : ", " + Formats.number(unknown) + " without a length") + ".";
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        String seen = form.text("seen");
        Optional<Answer> again = PARTS.again(form);
        if (again.isPresent()) {
            return again.get();
        }
        Episode episode = EpisodePage.episode(request).value();
        List<Segment> parts = PARTS.read(form, episode.id().value(), EpisodeRules::check);
        return request.save(write -> {
            KeepParts.keep(write, SegmentStore.TABLE, seen, SegmentStore.ofEpisode(write, episode.id()), parts);
            return Saved.to("/episodes/" + episode.id())
                    .saying("The running order is saved. " + lead(parts, wanted(request, episode)));
        });
    }
}
