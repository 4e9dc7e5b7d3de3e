package weekwright.web.episodes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import weekwright.base.Id;
import weekwright.base.Problems;
import weekwright.base.Quantity;
import weekwright.base.Reading;
import weekwright.base.Shape;
import weekwright.build.ReferenceStore;
import weekwright.build.Settings;
import weekwright.build.Shown;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.episodes.Episode;
import weekwright.episodes.EpisodeStore;
import weekwright.episodes.Footage;
import weekwright.episodes.SaveEpisode;
import weekwright.episodes.Shot;
import weekwright.episodes.ShotStore;
import weekwright.episodes.SlotRules;
import weekwright.episodes.Tell;
import weekwright.episodes.TellStore;
import weekwright.forecast.Lessons;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.parts.Choices;
import weekwright.web.parts.EditingWords;
import weekwright.web.parts.Remarks;

/** The form of an episode with what it tells, for adding one and for changing one. */
final class EpisodeFields {
    /** A row for each task told; more than any episode has. */
    private static final int TELLS_MOST = 100;

    private static final int SLOTS_LOOKED_AT = 400;
    private static final String[] COLUMNS = {
        "number",
        "slot",
        "title",
        "kind",
        "minutes",
        "edit_low",
        "edit_likely",
        "edit_high",
        "editor",
        "address",
        "views",
        "held_back"
    };

    /** What stands in for columns that cannot be read. */
    private static final Episode STAND_IN = Shape.of(Episode.class)
            .parse(Map.of("id", "new"), Reading.form(2), new Problems())
            .orElseThrow();

    private EpisodeFields() {}

    /**
     * What the fields are chosen from.
     *
     * @param tells the numbers of the rows for tasks told
     * @param length what is taken without a length, and the footage that it usually takes
     * @param editing what is taken without hours of editing, and what it took so far
     */
    record Lists(
            List<Form.Choice> kinds,
            List<Form.Choice> editors,
            List<Form.Choice> tasks,
            List<Integer> tells,
            String length,
            String editing) {}

    static Lists lists(Request request, Read read, Form form) {
        int rows = 0;
        while (rows < TELLS_MOST && form.values().containsKey("task." + rows)) {
            rows++;
        }
        List<Integer> tells = new ArrayList<>();
        for (int i = 0; i < Math.max(rows, 1); i++) {
            tells.add(i);
        }
        return new Lists(
                Choices.words(
                        Episode.Kind.class,
                        Map.of(
                                Episode.Kind.BUILD, "of the build",
                                Episode.Kind.SIDE, "a side story",
                                Episode.Kind.STANDBY, "a standby, kept for an empty slot")),
                request.crew().stream()
                        .map(member -> new Form.Choice(member.id().value(), member.name()))
                        .toList(),
                Choices.tasks(read, task -> task.dropped().isEmpty() || isChosen(form, task.id())),
                tells,
                length(read, request.settings()),
                editing(read, request));
    }

    private static String length(Read read, Settings settings) {
        Footage footage = Footage.of(read);
        Quantity target = settings.targetMinutes();
        String empty = "Empty: " + target.text() + ", as the settings of publishing say.";
        return footage.usual(target)
                .map(usual -> empty + " That takes about " + EpisodesFootagePage.minutes(usual) + " of footage, "
                        + footage.ratio().orElseThrow().toPlainString() + " for each finished one.")
                .orElse(empty);
    }

    private static String editing(Read read, Request request) {
        String empty = "Empty: "
                + Formats.hoursLong(request.settings().editLikely().minutes()) + " for "
                + EpisodesFootagePage.minutes(request.settings().targetMinutes().value())
                + ", as the settings of publishing say.";
        return EditingWords.perFinished(Lessons.editing(read, request.today()))
                .map(each -> empty + " So far it took " + each + ".")
                .orElse(empty);
    }

    /** Whether a row has the task: one that was dropped since stays in the list until it is taken out of the row. */
    private static boolean isChosen(Form form, Id task) {
        return form.values().entrySet().stream()
                .filter(field -> field.getKey().startsWith("task."))
                .anyMatch(field -> field.getValue().stream().anyMatch(task.value()::equalsIgnoreCase));
    }

    /** The form with what the episode tells, and an empty row after it. */
    static Form filled(Read read, Id episode, Form form) {
        Map<String, List<String>> values = new LinkedHashMap<>(form.values());
        List<Stored<Tell>> tells = TellStore.ofEpisode(read, episode);
        for (int i = 0; i < tells.size(); i++) {
            values.put("task." + i, List.of(tells.get(i).value().task().value()));
            values.put(
                    "share." + i,
                    tells.get(i)
                            .value()
                            .share()
                            .map(Quantity::text)
                            .map(List::of)
                            .orElse(List.of()));
        }
        values.put("task." + tells.size(), List.of());
        return new Form(form.csrf(), form.answerKey(), form.version(), values, form.errors());
    }

    /** The texts of a new episode: the next number and the first free slot, and what is the same as in one that stands. */
    static Map<String, String> proposed(Read read, Settings settings, LocalDate today, Optional<Episode> like) {
        List<Episode> all = EpisodeStore.TABLE.values(read);
        Map<String, String> texts = new LinkedHashMap<>();
        like.ifPresent(one -> {
            Map<String, String> its = Shape.of(Episode.class).texts(one, settings.moneyDigits());
            for (String column :
                    List.of("title", "kind", "minutes", "edit_low", "edit_likely", "edit_high", "editor")) {
                texts.put(column, its.get(column));
            }
        });
        if (like.map(one -> one.kindOrDefault() == Episode.Kind.STANDBY).orElse(false)) {
            return texts;
        }
        all.stream()
                .flatMap(one -> one.number().stream())
                .max(Integer::compare)
                .ifPresent(last -> texts.put("number", Integer.toString(last + 1)));
        Set<LocalDate> taken = new HashSet<>();
        all.forEach(one -> one.slot().ifPresent(taken::add));
        for (int days = 0; days < SLOTS_LOOKED_AT; days++) {
            LocalDate day = today.plusDays(days);
            if (SlotRules.isSlot(day, settings) && !taken.contains(day)) {
                texts.put("slot", day.toString());
                break;
            }
        }
        return texts;
    }

    static Answer add(Request request) throws Exception {
        FormReader form = request.form();
        if (form.act().equals("tell")) {
            return another(form);
        }
        Optional<Id> like = form.read("like", Id.class);
        Episode draft = form.draft(STAND_IN, COLUMNS);
        List<Tell> tells = tells(form, new Id("new"));
        form.besides(
                () -> request.read(read -> SaveEpisode.check(read, Optional.empty(), draft, tells, request.today())));
        return request.save(write -> {
            Id id = ReferenceStore.unusedId(write, EpisodeStore.TABLE.name(), "ep");
            Episode episode = Shape.of(Episode.class).with(draft, "id", id);
            SaveEpisode.Saved kept = SaveEpisode.save(write, Optional.empty(), episode, tells, request.today());
            if (like.isPresent()) {
                for (Stored<Shot> shot : ShotStore.ofEpisode(write, like.get())) {
                    Shot once = shot.value();
                    ShotStore.TABLE.insert(
                            write,
                            new Shot(
                                    ReferenceStore.unusedId(write, ShotStore.TABLE.name(), "shot"),
                                    Optional.of(id),
                                    Optional.empty(),
                                    once.what(),
                                    once.size(),
                                    once.must(),
                                    once.once(),
                                    Optional.empty(),
                                    "",
                                    false,
                                    Optional.empty(),
                                    "",
                                    ""));
                }
            }
            return Saved.to("/episodes/" + id)
                    .saying("\"" + episode.title() + "\" is added." + Remarks.said(kept.remarks()));
        });
    }

    static Answer change(Request request, Stored<Episode> old) throws Exception {
        FormReader form = request.form();
        if (form.act().equals("tell")) {
            return another(form);
        }
        Episode draft = form.draft(old.value(), COLUMNS);
        List<Tell> tells = tells(form, old.value().id());
        Optional<Shown> shown = Optional.of(new Shown(old.row(), form.version()));
        form.besides(() -> request.read(read -> SaveEpisode.check(read, shown, draft, tells, request.today())));
        return request.save(write -> {
            SaveEpisode.Saved kept = SaveEpisode.save(write, shown, draft, tells, request.today());
            return Saved.to("/episodes/" + old.value().id())
                    .saying("The episode is saved." + Remarks.said(kept.remarks()));
        });
    }

    private static Answer another(FormReader form) {
        int rows = 0;
        while (rows < TELLS_MOST - 1 && form.has("task." + rows)) {
            rows++;
        }
        return new Answer.Again(Map.of("task." + rows, List.of()), "");
    }

    private static List<Tell> tells(FormReader form, Id episode) {
        List<Tell> tells = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < TELLS_MOST; i++) {
            int row = i;
            Optional<Id> task = form.read("task." + i, Id.class);
            String typed = form.text("share." + i);
            Optional<Quantity> share = form.read("share." + i, Quantity.class);
            share.filter(s -> s.compareTo(Quantity.ZERO) < 0 || s.compareTo(Quantity.ONE) > 0)
                    .ifPresent(
                            s -> form.fault("share." + row, s.text(), "is not a share", "write 0 to 1, such as 0.5"));
            if (task.isEmpty()) {
                if (!typed.isEmpty() && form.text("task." + i).isEmpty()) {
                    form.fault("task." + i, "", "is missing beside its share", "choose the task, or empty the row");
                }
                continue;
            }
            if (!seen.add(task.get().folded())) {
                form.fault("task." + i, "", "names the same task as a row above", "name each task once");
            }
            tells.add(new Tell(episode, task.get(), share));
        }
        return tells;
    }
}
