package weekwright.web.episodes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Problem;
import weekwright.base.Rejected;
import weekwright.build.Shown;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.episodes.Episode;
import weekwright.episodes.EpisodeStore;
import weekwright.episodes.MoveEpisode;
import weekwright.episodes.SlotCalendar;
import weekwright.forecast.SlotFutures;
import weekwright.forecast.SlotPlan;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.parts.Outlook;
import weekwright.web.parts.SlotWords;

/** Moves an episode to another slot, or swaps two: says first what the forecast says of both. */
public final class EpisodeSlotPage implements Page {
    private final SlotFutures futures;

    public EpisodeSlotPage(SlotFutures futures) {
        this.futures = futures;
    }

    /**
     * @param slots to choose from
     * @param rows what changes; empty before a slot is chosen
     * @param other title of the episode that has the slot chosen; empty where it is free
     * @param one what a slot is called: {@code Friday}, or {@code slot} where not every such day is one
     * @param earlier the slot before the one chosen or its own; empty where there is none
     * @param later the slot after it
     */
    public record View(
            Form form,
            String id,
            String title,
            String lead,
            List<Form.Choice> slots,
            List<SlotChanges.Row> rows,
            String drawn,
            String other,
            String one,
            String earlier,
            String later) {}

    @Override
    public View show(Request request) {
        Stored<Episode> stored = EpisodePage.episode(request);
        Formats formats = request.formats();
        String act = request.wasRefused("move") ? "move" : request.wasRefused("swap") ? "swap" : "";
        Form typed = request.form(act, Map.of("slot", request.query("to")));
        Form form = new Form(
                typed.csrf(),
                typed.answerKey(),
                Optional.of(typed.version().orElse(stored.version())),
                typed.values(),
                typed.errors());
        Optional<LocalDate> to = SlotDays.parse(request, form.value("slot"));
        Optional<Stored<Episode>> other = to.flatMap(slot -> request.read(read -> other(read, stored, slot)));
        Optional<MoveEpisode.Changes> changes =
                to.flatMap(slot -> request.read(read -> changes(read, stored, slot, request.today())));
        Optional<SlotFutures.Compared> compared = changes.map(all -> futures.compare(
                request.db(), request.today(), Outlook.shown(request), read -> List.of(plan(read, all))));
        List<Form.Choice> slots = slots(request, stored, formats);
        Optional<LocalDate> from = to.or(stored.value()::slot);
        return new View(
                form,
                stored.value().id().value(),
                stored.value().title(),
                stored.value()
                        .slot()
                        .map(day -> "It is planned for " + SlotDays.day(day, formats) + formats.comingOrGone(day) + ".")
                        .orElse("It has no slot yet."),
                slots,
                compared.map(pair -> SlotChanges.rows(
                                request.read(EpisodeStore.TABLE::list), changes.orElseThrow(), pair, formats))
                        .orElse(List.of()),
                compared.map(pair -> SlotChanges.drawn(pair.futures())).orElse(""),
                other.map(one -> one.value().title()).orElse(""),
                SlotWords.one(request.settings()),
                from.flatMap(day -> slots.stream()
                                .map(Form.Choice::value)
                                .filter(slot -> slot.compareTo(day.toString()) < 0)
                                .reduce((first, last) -> last))
                        .orElse(""),
                from.flatMap(day -> slots.stream()
                                .map(Form.Choice::value)
                                .filter(slot -> slot.compareTo(day.toString()) > 0)
                                .findFirst())
                        .orElse(""));
    }

    /** What a move or, where the slot is taken, a swap would keep; empty where neither is possible. */
    private static Optional<MoveEpisode.Changes> changes(
            Read read, Stored<Episode> stored, LocalDate slot, LocalDate today) {
        try {
            return Optional.of(tried(read, stored, slot, today));
        } catch (Rejected none) {
            return Optional.empty();
        }
    }

    private static MoveEpisode.Changes tried(Read read, Stored<Episode> stored, LocalDate slot, LocalDate today)
            throws Rejected {
        return other(read, stored, slot).isPresent()
                ? MoveEpisode.swapped(read, stored, slot, today)
                : MoveEpisode.moved(read, stored, slot, today);
    }

    private static Optional<Stored<Episode>> other(Read read, Stored<Episode> stored, LocalDate slot) {
        return MoveEpisode.on(read, slot).filter(one -> one.row() != stored.row());
    }

    private static SlotPlan plan(Read read, MoveEpisode.Changes changes) {
        SlotPlan plan = SlotPlan.of(read);
        for (Stored<Episode> one : changes.episodes()) {
            plan = plan.with(one.value());
        }
        return plan;
    }

    private static List<Form.Choice> slots(Request request, Stored<Episode> stored, Formats formats) {
        List<Form.Choice> choices = new ArrayList<>();
        for (SlotCalendar.Slot slot : request.read(
                read -> SlotCalendar.of(read, request.today(), request.today().plusYears(1)))) {
            boolean own = slot.episode()
                    .map(one -> one.id().same(stored.value().id()))
                    .orElse(false);
            if (!own && slot.skipped().isEmpty() && slot.regular()) {
                choices.add(new Form.Choice(
                        slot.day().toString(),
                        SlotDays.day(slot.day(), formats)
                                + slot.episode()
                                        .map(one -> ", now “" + one.title() + "”")
                                        .orElse(", free")));
            }
        }
        return choices;
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        Stored<Episode> stored = EpisodePage.episode(request);
        Optional<LocalDate> to = form.needed("slot", LocalDate.class);
        if (!form.act().equals("move") && !form.act().equals("swap")) {
            form.check();
            List<Problem> faults = request.read(read -> faults(read, stored, to.orElseThrow(), request.today()));
            if (!faults.isEmpty()) {
                throw new Rejected(faults);
            }
            return new Answer.Again(Map.of(), "");
        }
        Shown shown = new Shown(stored.row(), form.version());
        Formats formats = request.formats();
        return request.save(write -> {
            LocalDate slot = to.orElseThrow();
            String other =
                    other(write, stored, slot).map(one -> one.value().title()).orElse("");
            if (form.act().equals("swap")) {
                MoveEpisode.swap(write, shown, slot, request.today());
            } else {
                MoveEpisode.move(write, shown, slot, request.today());
            }
            return Saved.to("/episodes/slots")
                    .saying("“" + stored.value().title() + "” is on " + formats.dateLong(slot) + " now"
                            + (form.act().equals("swap")
                                    ? ", “" + other + "” on "
                                            + formats.dateLong(
                                                    stored.value().slot().orElseThrow())
                                    : "")
                            + ".");
        });
    }

    private static List<Problem> faults(Read read, Stored<Episode> stored, LocalDate slot, LocalDate today) {
        try {
            tried(read, stored, slot, today);
            return List.of();
        } catch (Rejected rejected) {
            return rejected.problems();
        }
    }
}
