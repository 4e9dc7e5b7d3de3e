package weekwright.web.build;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Codec;
import weekwright.base.Refused;
import weekwright.build.ShiftDates;
import weekwright.db.Read;
import weekwright.episodes.ShiftSlots;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** Moves everything planned from a day on by so many days: shows what would move, then does it. */
public final class BuildShiftPage implements Page {
    private static final int MOST_DAYS = 3650;

    /** @param moves what would move; empty before a look was taken */
    public record View(Form form, boolean looked, List<ShiftDates.Move> moves) {}

    @Override
    public View show(Request request) {
        String act = request.wasRefused("move") ? "move" : "";
        Form form = request.form(act, Map.of("first", request.today().toString(), "days", "7"));
        boolean looked = request.wasRefused(act);
        Optional<LocalDate> first = parse(request, LocalDate.class, form.value("first"));
        Optional<Integer> days = parse(request, Integer.class, form.value("days"));
        List<ShiftDates.Move> moves = looked && first.isPresent() && days.isPresent()
                ? request.read(read -> moves(read, first.get(), days.get(), form.holds("slots", "yes")))
                : List.of();
        return new View(form, looked && first.isPresent() && days.isPresent(), moves);
    }

    private static <T> Optional<T> parse(Request request, Class<T> type, String text) {
        try {
            return text.isEmpty()
                    ? Optional.empty()
                    : Optional.of(Codec.of(type).parse(text, request.settings().typed()));
        } catch (Refused refused) {
            return Optional.empty();
        }
    }

    private static List<ShiftDates.Move> moves(Read read, LocalDate first, int days, boolean slots) {
        List<ShiftDates.Move> moves = new ArrayList<>(ShiftDates.moves(read, first, days));
        if (slots) {
            moves.addAll(ShiftSlots.moves(read, first, days));
        }
        moves.sort(Comparator.comparing(ShiftDates.Move::from));
        return moves;
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        Optional<LocalDate> first = form.needed("first", LocalDate.class);
        Optional<Integer> days = form.needed("days", Integer.class);
        boolean slots = form.ticked("slots");
        first.filter(day -> day.isBefore(request.today()))
                .ifPresent(day -> form.fault(
                        "first", day.toString(), "is past, and what is past stays", "write today or a later day"));
        days.filter(n -> n == 0 || Math.abs(n) > MOST_DAYS)
                .ifPresent(n -> form.fault(
                        "days",
                        n.toString(),
                        n == 0 ? "moves nothing" : "is too far",
                        "write how many days later; with a minus, earlier"));
        if (!form.act().equals("move")) {
            form.check();
            return new Answer.Again(Map.of(), "");
        }
        return request.save(write -> {
            int count =
                    moves(write, first.orElseThrow(), days.orElseThrow(), slots).size();
            ShiftDates.shift(write, first.get(), days.get(), request.today());
            if (slots) {
                ShiftSlots.shift(write, first.get(), days.get());
            }
            return Saved.to("/build")
                    .saying(Formats.count(count, "day") + (count == 1 ? " is " : " are ") + "moved by "
                            + Formats.count(Math.abs(days.get()), "day")
                            + (days.get() > 0 ? ", later." : ", earlier."));
        });
    }
}
