package weekwright.web.crew;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import weekwright.base.Problem;
import weekwright.base.Rejected;
import weekwright.build.CrewMember;
import weekwright.db.History;
import weekwright.db.Read;
import weekwright.history.ChangeLine;
import weekwright.history.Names;
import weekwright.history.Thing;
import weekwright.history.Things;
import weekwright.history.UndoChange;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Access;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.parts.Addresses;

/**
 * Every change of everything, newest first, and the button of every page that takes its own change back: everybody may
 * post here, a helper only to take back what they did just now.
 */
public final class CrewHistoryPage implements Page {
    private static final int LINES = 40;
    private static final Duration JUST_NOW = Duration.ofMinutes(10);

    /**
     * @param form what was refused, and the keys of the buttons
     * @param kind chosen of {@code kinds}; empty for all
     * @param who chosen of {@code people}; empty for everybody
     * @param earlier the project version before which older changes begin; 0 where there are none
     */
    public record View(
            Form form,
            List<Form.Choice> kinds,
            String kind,
            List<Form.Choice> people,
            String who,
            List<Line> lines,
            long earlier) {}

    /**
     * One change.
     *
     * @param what all of it in one line
     * @param parts the same, each with the address of its history
     * @param back whether it may be taken back
     */
    public record Line(long version, String when, String who, String what, List<Part> parts, boolean back) {}

    /** One thing of a change; the address is empty for several of a kind. */
    public record Part(String text, String address) {}

    @Override
    public View show(Request request) {
        String kind = request.query("kind");
        String who = request.query("who");
        String before = request.query("before");
        List<String> things = Things.all().stream()
                .filter(thing -> word(thing.kind()).equals(kind))
                .map(thing -> thing.table().name())
                .toList();
        History.Filter filter = new History.Filter(
                things, who, before.matches("[0-9]{1,15}") ? Long.parseLong(before) : Long.MAX_VALUE);
        return request.read(read -> {
            Names names = new Names(read);
            List<Long> versions = History.versions(read, filter, LINES + 1);
            List<Line> lines = new ArrayList<>();
            versions.stream().limit(LINES).forEach(version -> lines.add(line(request, read, names, version)));
            return new View(
                    request.form("undo"),
                    Arrays.stream(Thing.Kind.values())
                            .map(one -> new Form.Choice(word(one), Formats.sentence(one.words())))
                            .toList(),
                    things.isEmpty() ? "" : kind,
                    History.whos(read).stream()
                            .map(one -> new Form.Choice(one, Formats.sentence(names.who(one))))
                            .toList(),
                    who,
                    lines,
                    versions.size() > LINES ? versions.get(LINES - 1) : 0);
        });
    }

    private static String word(Thing.Kind kind) {
        return kind.name().toLowerCase(Locale.ROOT);
    }

    private static Line line(Request request, Read read, Names names, long version) {
        ChangeLine change = ChangeLine.of(read, names, version);
        return new Line(
                version,
                Formats.moment(
                        LocalDateTime.ofInstant(change.at(), request.settings().zone())),
                Formats.sentence(change.who()),
                Formats.sentence(change.text()),
                change.parts().stream()
                        .map(part -> new Part(
                                Formats.sentence(part.text()),
                                part.row() == 0 ? "" : Addresses.history(part.thing(), part.row())))
                        .toList(),
                UndoChange.mayBe(read, version));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        String asked = form.text("to");
        String to = Saved.isPath(asked) ? asked : "/crew/history";
        long version = form.needed("change", Integer.class).orElse(0);
        try {
            return request.save(write -> {
                List<History.Change> changes = History.ofVersion(write, version);
                if (request.access() != Access.CREW) {
                    ownJustNow(request, changes);
                }
                String what = changes.isEmpty()
                        ? ""
                        : ChangeLine.of(write, new Names(write), version).text();
                List<String> gone = changes.stream()
                        .filter(change -> change.before().isEmpty())
                        .flatMap(change -> Addresses.of(write, change.thing(), change.row()).stream())
                        .toList();
                UndoChange.undo(write, version, request.today());
                boolean there = gone.stream().noneMatch(address -> under(to, address));
                return Saved.to(there ? to : Addresses.above(to)).saying("Taken back: " + what + ".");
            });
        } catch (Rejected refused) {
            if (request.access() == Access.CREW) {
                throw refused;
            }
            return Answer.to(Saved.to(to)
                    .saying(refused.problems().stream()
                            .map(Problem::sentence)
                            .collect(Collectors.joining(". ", "", "."))));
        }
    }

    /** Whether a page shows a thing, or a part of it. */
    private static boolean under(String to, String address) {
        return to.equals(address) || to.startsWith(address + "/") || to.startsWith(address + "?");
    }

    /** A helper takes back what they did themselves a moment ago, and nothing else. */
    private static void ownJustNow(Request request, List<History.Change> changes) throws Rejected {
        String own = request.person().map(CrewMember::id).map(id -> id.value()).orElse("");
        boolean allowed = changes.stream()
                .allMatch(change -> change.who().equalsIgnoreCase(own)
                        && !change.at().plus(JUST_NOW).isBefore(request.clock().instant()));
        if (!allowed) {
            throw new Rejected(Problem.fault(
                    "", "", "Only what you did yourself just now can be taken back", "ask the crew for anything else"));
        }
    }
}
