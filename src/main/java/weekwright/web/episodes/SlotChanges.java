package weekwright.web.episodes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import weekwright.db.Stored;
import weekwright.episodes.Episode;
import weekwright.episodes.MoveEpisode;
import weekwright.forecast.SlotFutures;
import weekwright.forecast.SlotOutlook;
import weekwright.render.Chances;
import weekwright.render.Formats;

/** What a change of the slots does, as planned and as changed side by side, in words. */
final class SlotChanges {
    private SlotChanges() {}

    /** A line of the table: what, as planned, as changed. */
    record Row(String what, String now, String then) {}

    /** @param before all episodes as they stand */
    static List<Row> rows(
            List<Stored<Episode>> before, MoveEpisode.Changes changes, SlotFutures.Compared pair, Formats formats) {
        SlotOutlook now = pair.now();
        SlotOutlook then = pair.then().get(0);
        List<Row> rows = new ArrayList<>();
        Set<LocalDate> slots = new LinkedHashSet<>();
        for (Stored<Episode> one : changes.episodes()) {
            Optional<LocalDate> old = before.stream()
                    .filter(row -> row.row() == one.row())
                    .findFirst()
                    .flatMap(row -> row.value().slot());
            String id = one.value().id().value();
            rows.add(new Row(
                    "“" + one.value().title() + "” is ready in time",
                    ready(old, now.ready(id), formats),
                    ready(one.value().slot(), then.ready(id), formats)));
            old.ifPresent(slots::add);
            one.value().slot().ifPresent(slots::add);
        }
        slots.stream().sorted().forEach(slot -> {
            if (now.empty(slot).isPresent()) {
                rows.add(new Row(
                        "Nothing comes out on " + formats.dateLong(slot),
                        Chances.words(now.empty(slot).get()),
                        then.empty(slot).map(Chances::words).orElse("not known")));
            }
        });
        rows.add(new Row("Of the next twelve slots stay empty", mean(now.emptyOf12()), mean(then.emptyOf12())));
        return rows;
    }

    private static String ready(Optional<LocalDate> slot, Optional<Double> chance, Formats formats) {
        return slot.map(day -> "for " + formats.dateLong(day) + ": "
                        + chance.map(Chances::words).orElse("not known"))
                .orElse("no slot");
    }

    /** {@code about 1.4}; a mean, so with its tenth. */
    static String mean(double slots) {
        long tenths = Math.round(slots * 10);
        return tenths == 0 ? "almost none" : "about " + tenths / 10 + "." + tenths % 10;
    }

    static String drawn(int futures) {
        return "From " + Formats.grouped(futures)
                + " futures, each drawn twice with the same luck: once as planned, once as"
                + " changed. Few, so that you need not wait; the whole forecast is drawn once it is accepted.";
    }
}
