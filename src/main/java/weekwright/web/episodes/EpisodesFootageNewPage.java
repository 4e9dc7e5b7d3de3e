package weekwright.web.episodes;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import weekwright.base.Id;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Quantity;
import weekwright.base.Rejected;
import weekwright.build.CrewMember;
import weekwright.db.Read;
import weekwright.episodes.Clip;
import weekwright.episodes.ClipTasks;
import weekwright.episodes.LogClips;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.parts.Choices;

/**
 * Puts a card's clips into the footage log: a listing is read, each clip is shown with the task that the week and the log
 * give, and only what was looked over is kept. Pictures never leave the browser.
 */
public final class EpisodesFootageNewPage implements Page {
    private static final int MOST = 1000;

    /** @param lines what was read and is to be looked over; empty before */
    public record View(Form form, List<Line> lines, List<Form.Choice> tasks, List<Form.Choice> people, String read) {}

    /**
     * A clip to look over.
     *
     * @param number its place in the listing, from 0
     * @param why what the proposed task rests on
     * @param known whether it stands in the log already
     */
    public record Line(
            int number,
            String clip,
            String card,
            LocalDate date,
            Optional<LocalTime> time,
            Optional<Quantity> minutes,
            String why,
            boolean known) {}

    @Override
    public View show(Request request) {
        Form form = request.wasRefused("read")
                ? request.form("read")
                : request.form(
                        "",
                        Map.of(
                                "who",
                                request.person().map(one -> one.id().value()).orElse("")));
        String listing = form.value("listing").strip();
        String card = form.value("card").strip();
        return request.read(read -> new View(
                form,
                !listing.isEmpty() && form.value("read").equals(mark(listing, card))
                        ? lines(request, read, listing, card)
                        : List.of(),
                Choices.tasks(read, task -> task.dropped().isEmpty()),
                request.crew().stream()
                        .map(member -> new Form.Choice(member.id().value(), member.name()))
                        .toList(),
                mark(listing, card)));
    }

    private static List<Line> lines(Request request, Read read, String listing, String card) {
        Set<String> known = LogClips.known(read);
        ClipTasks guesses = new ClipTasks(read);
        List<Line> lines = new ArrayList<>();
        for (ClipListing.Line one :
                ClipListing.read(listing, card, request.settings().typed(), request.today(), new Problems())) {
            lines.add(new Line(
                    lines.size(),
                    one.clip(),
                    one.card(card),
                    one.date(),
                    one.time(),
                    one.minutes(),
                    one.task().isPresent()
                            ? "as listed"
                            : guesses.of(one.date(), one.time(), one.minutes())
                                    .map(ClipTasks.Guess::why)
                                    .orElse("not clear: choose"),
                    known.contains(LogClips.key(one.date(), one.card(card), one.clip()))));
        }
        return lines;
    }

    /** Tells whether what is kept is what was looked over. */
    private static String mark(String listing, String card) {
        return Integer.toHexString((listing.replace("\r\n", "\n") + "\n" + card).hashCode());
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        String listing = form.neededText("listing");
        String card = form.text("card");
        String shown = form.text("read");
        Optional<Id> who =
                form.oneOf("who", request.crew().stream().map(CrewMember::id).toList());
        Problems problems = new Problems();
        List<ClipListing.Line> lines = listing.isEmpty()
                ? List.of()
                : ClipListing.read(listing, card, form.reading(), request.today(), problems);
        if (lines.size() > MOST) {
            form.fault("listing", "", "has " + lines.size() + " clips", "send at most " + MOST + " at once");
        }
        for (Problem one : problems.faults()) {
            form.fault("listing", "", one.text(), "");
        }
        if (form.problems().hasFaults() || form.act().equals("read") || !shown.equals(mark(listing, card))) {
            form.ignoringFields();
            form.check();
            return look(request, lines, listing, card);
        }
        return keep(request, form, lines, card, who);
    }

    private static Answer look(Request request, List<ClipListing.Line> lines, String listing, String card) {
        Map<String, List<String>> fields = new LinkedHashMap<>();
        fields.put("read", List.of(mark(listing, card)));
        request.read(read -> {
            ClipTasks guesses = new ClipTasks(read);
            for (int i = 0; i < lines.size(); i++) {
                ClipListing.Line line = lines.get(i);
                fields.put(
                        "task." + i,
                        line.task()
                                .or(() -> guesses.of(line.date(), line.time(), line.minutes())
                                        .map(ClipTasks.Guess::task))
                                .map(id -> List.of(id.value()))
                                .orElse(List.of("")));
            }
            return null;
        });
        return new Answer.Again(
                fields, Formats.count(lines.size(), "clip") + " read. Nothing is kept yet: look over the tasks.");
    }

    private static Answer keep(
            Request request, FormReader form, List<ClipListing.Line> lines, String card, Optional<Id> who)
            throws Exception {
        List<Optional<Id>> tasks = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            tasks.add(form.read("task." + i, Id.class));
        }
        return request.save(write -> {
            Set<String> known = LogClips.known(write);
            List<Clip> clips = new ArrayList<>();
            List<Integer> numbers = new ArrayList<>();
            for (int i = 0; i < lines.size(); i++) {
                ClipListing.Line line = lines.get(i);
                if (!known.contains(LogClips.key(line.date(), line.card(card), line.clip()))) {
                    clips.add(line.clip(card, tasks.get(i), who));
                    numbers.add(i);
                }
            }
            try {
                LogClips.log(write, clips, request.today());
            } catch (Rejected rejected) {
                List<Problem> placed = new ArrayList<>();
                for (Problem one : rejected.problems()) {
                    int dot = one.column().indexOf('.');
                    int number = numbers.get(Integer.parseInt(one.column().substring(0, dot)));
                    placed.add(Problem.fault(
                            one.column().substring(dot + 1) + "." + number, one.read(), one.rule(), one.remedy()));
                }
                throw new Rejected(placed);
            }
            int left = lines.size() - clips.size();
            return Saved.to("/episodes/footage")
                    .saying(Formats.sentence(Formats.count(clips.size(), "clip")) + " in the footage log."
                            + (left == 0 ? "" : " " + Formats.count(left, "was", "were") + " there already."));
        });
    }
}
