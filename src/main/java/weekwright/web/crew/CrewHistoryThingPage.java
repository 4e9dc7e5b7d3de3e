package weekwright.web.crew;

import java.time.LocalDateTime;
import java.util.List;
import weekwright.db.History;
import weekwright.db.Read;
import weekwright.history.BringBack;
import weekwright.history.FieldChange;
import weekwright.history.Names;
import weekwright.history.Thing;
import weekwright.history.Things;
import weekwright.history.ValueWords;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.parts.Addresses;

/** Every change of one thing, field by field, and each earlier state to be brought back. */
public final class CrewHistoryThingPage implements Page {
    private static final int MOST = 200;

    /**
     * @param what the thing, as it is or was called
     * @param address where it is seen; empty where it does not stand or has no page
     * @param stands whether it is there
     * @param lines the newest first
     */
    public record View(Form form, String what, String address, boolean stands, List<Line> lines) {}

    /**
     * One change of it.
     *
     * @param change the record's number
     * @param stood whether it was there before, so that this state can be brought back
     * @param stands whether it was there after
     */
    public record Line(
            long change,
            String when,
            String who,
            String action,
            List<FieldChange> fields,
            boolean stood,
            boolean stands) {}

    @Override
    public View show(Request request) {
        Thing<?> thing = thing(request);
        long row = request.row("row");
        return request.read(read -> {
            List<History.Change> changes = History.of(read, thing.table().name(), row);
            if (changes.isEmpty()) {
                throw new NotFound("There is no history of " + thing.one() + " " + row + ".");
            }
            Names names = new Names(read);
            History.Change last = changes.get(0);
            ValueWords words = new ValueWords(names, request.formats());
            return new View(
                    request.form("back"),
                    Formats.sentence(
                            thing.called(names, last.after().or(last::before).orElseThrow())),
                    address(read, thing, row),
                    last.after().isPresent(),
                    changes.stream()
                            .limit(MOST)
                            .map(change -> line(request, change, names, words))
                            .toList());
        });
    }

    private static Thing<?> thing(Request request) {
        return Things.find(request.part("thing"))
                .orElseThrow(() -> new NotFound("Nothing is kept that is called " + request.part("thing") + "."));
    }

    private static String address(Read read, Thing<?> thing, long row) {
        return thing.kind() == Thing.Kind.SETTINGS
                ? "/crew/settings"
                : Addresses.of(read, thing.table().name(), row).orElse("");
    }

    private static Line line(Request request, History.Change change, Names names, ValueWords words) {
        return new Line(
                change.id(),
                Formats.moment(
                        LocalDateTime.ofInstant(change.at(), request.settings().zone())),
                names.who(change.who()),
                Formats.sentence(change.action()),
                words.fields(change),
                change.before().isPresent(),
                change.after().isPresent());
    }

    @Override
    public Answer submit(Request request) throws Exception {
        Thing<?> thing = thing(request);
        long row = request.row("row");
        FormReader form = request.form();
        long id = form.needed("change", Integer.class).orElse(0);
        return request.save(write -> {
            long own = History.one(write, id)
                    .filter(one -> one.thing().equals(thing.table().name()) && one.row() == row)
                    .map(History.Change::id)
                    .orElse(0L);
            boolean any = BringBack.before(write, own, request.today());
            String called = Formats.sentence(thing.called(new Names(write), row).orElse(thing.one()));
            return Saved.to(Addresses.history(thing.table().name(), row))
                    .saying(any ? called + " is back as it was." : called + " stands like that already.");
        });
    }
}
