package weekwright.web.ahead;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import weekwright.base.Problems;
import weekwright.base.Words;
import weekwright.build.Task;
import weekwright.engine.Inputs;
import weekwright.engine.explain.Levers;
import weekwright.forecast.Basis;
import weekwright.forecast.Forecasts;
import weekwright.forecast.KeepLevers;
import weekwright.forecast.KeptLevers;
import weekwright.forecast.KeptLeversStore;
import weekwright.forecast.LeverFutures;
import weekwright.forecast.Names;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.parts.Choices;
import weekwright.web.parts.Outlook;

/** Changes tried in the forecast, one or several at once: the address holds them, the project is not touched. */
public final class AheadLeversPage implements Page {
    private static final String PATH = "/ahead/levers";

    private final LeverFutures futures;

    public AheadLeversPage(LeverFutures futures) {
        this.futures = futures;
    }

    /**
     * @param choose the fields that choose one task more
     * @param head what the levers do, or what to do here
     * @param lead what is changed
     * @param crew whose hours can be moved
     * @param chosen tasks that are dropped or postponed already, as boxes
     * @param stages what becomes of them; empty while no lever is pulled
     * @param drawings the same as a picture, SVG text; empty likewise
     * @param rows slots and money
     * @param drawn from how many futures
     * @param settling whether a better answer is being drawn
     * @param address of this answer after the question mark
     * @param kept levers under a name
     */
    public record View(
            Form form,
            Form choose,
            Form keep,
            String head,
            String lead,
            String currency,
            List<Form.Choice> crew,
            List<Form.Choice> trades,
            List<Form.Choice> tasks,
            List<Chosen> chosen,
            List<LeverTables.Stage> stages,
            String drawings,
            List<LeverTables.Row> rows,
            String drawn,
            boolean settling,
            String address,
            List<Kept> kept) {}

    /** A box that takes a chosen task out again. */
    public record Chosen(String field, String value, String label) {}

    /** @param row by which it is removed */
    public record Kept(long row, long version, String name, String said, String address) {}

    @Override
    public View show(Request request) {
        LocalDate today = request.today();
        Formats formats = request.formats();
        FormReader asked = request.asked();
        Optional<Forecasts.Shown> shown = Outlook.shown(request);
        Basis ground = futures.basis(request.db(), today, shown);
        LeverFields.Read levers = LeverFields.read(asked, ground.inputs());
        boolean faulty = asked.problems().hasFaults();
        boolean pulled = !levers.levers().none() && !faulty;
        LocalDate horizon = ground.asOf().plusMonths(ground.inputs().horizonMonths());
        LeverWords words = new LeverWords(ground.names(), formats, horizon);
        Optional<LeverFutures.Look> look =
                pulled ? Optional.of(futures.look(request.db(), today, shown, levers.levers())) : Optional.empty();
        Optional<LeverTables> answer =
                look.map(one -> new LeverTables(one.answer(), words, ground.names(), today, horizon, formats));
        String address = address(levers.pulled());
        Map<String, List<String>> texts = faulty ? texts(asked, levers) : levers.words();
        Map<String, List<String>> choosing = new LinkedHashMap<>(texts);
        choosing.keySet().removeAll(List.of("drop", "postponed"));
        return new View(
                request.asking(texts, asked.problems().list()),
                request.asking(choosing, asked.problems().list()),
                request.form("", Map.of("pulled", String.join(" ", levers.pulled()))),
                look.map(one -> words.head(one.answer()))
                        .orElse("Change something and see what the forecast makes of it"),
                lead(words, levers, ground.inputs(), pulled),
                formats.currencyMark().strip(),
                ground.inputs().crew().stream()
                        .map(one -> new Form.Choice(one.id(), ground.names().person(one.id())))
                        .toList(),
                trades(ground.inputs()),
                request.read(read -> Choices.tasks(read, AheadLeversPage::open)),
                chosen(levers.levers(), ground.inputs(), ground.names(), formats),
                answer.map(LeverTables::stages).orElse(List.of()),
                answer.map(LeverTables::drawings).orElse(""),
                answer.map(LeverTables::rows).orElse(List.of()),
                answer.map(LeverTables::drawn).orElse(""),
                look.map(one -> !one.settled()).orElse(false),
                address,
                kept(request, words, ground.inputs()));
    }

    private static boolean open(Task task) {
        return task.done().isEmpty() && task.dropped().isEmpty();
    }

    /** What stands in the fields where something was refused: all as it was typed. */
    private static Map<String, List<String>> texts(FormReader asked, LeverFields.Read levers) {
        Map<String, List<String>> all = new LinkedHashMap<>(levers.words());
        asked.problems().list().forEach(problem -> all.put(problem.column(), asked.texts(problem.column())));
        for (String name : List.of("postpone", "until", "grant", "grant_on", "helper", "helper_trade", "helper_from")) {
            all.computeIfAbsent(name, asked::texts);
        }
        return all;
    }

    private static String lead(LeverWords words, LeverFields.Read levers, Inputs inputs, boolean pulled) {
        return pulled
                ? "With " + Formats.list(words.said(levers.levers(), inputs)) + "."
                : "Nothing of the project is touched: the same futures are drawn once as things stand and once as"
                        + " changed, so that what differs is the change and not the luck.";
    }

    private static List<Form.Choice> trades(Inputs inputs) {
        Set<String> trades = new LinkedHashSet<>();
        inputs.tasks().forEach(task -> trades.addAll(task.trades()));
        inputs.crew().forEach(one -> trades.addAll(one.trades()));
        return trades.stream().sorted().map(one -> new Form.Choice(one, one)).toList();
    }

    private static List<Chosen> chosen(Levers levers, Inputs inputs, Names names, Formats formats) {
        List<Chosen> all = new ArrayList<>();
        for (Inputs.Task task : inputs.tasks()) {
            if (levers.dropped().contains(task.id())) {
                all.add(new Chosen("drop", task.id(), "“" + names.task(task.id()) + "” dropped"));
            }
            Integer until = levers.postponed().get(task.id());
            if (until != null) {
                LocalDate day = LocalDate.ofEpochDay(until);
                all.add(new Chosen(
                        "postponed",
                        task.id() + ":" + day,
                        "“" + names.task(task.id()) + "” not before " + formats.date(day)));
            }
        }
        return all;
    }

    private static String address(List<String> pulled) {
        return pulled.stream()
                .map(word -> word.split("=", 2))
                .map(word -> encoded(word[0]) + "=" + encoded(word[1]))
                .collect(Collectors.joining("&"));
    }

    private static String encoded(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8);
    }

    private static List<Kept> kept(Request request, LeverWords words, Inputs inputs) {
        return request.read(read -> KeptLeversStore.TABLE.list(read).stream()
                .map(row -> new Kept(
                        row.row(),
                        row.version(),
                        row.value().name(),
                        said(request, words, inputs, row.value().pulled().list()),
                        address(row.value().pulled().list())))
                .toList());
    }

    /** What a kept lever changes; a task that it names may be done since. */
    private static String said(Request request, LeverWords words, Inputs inputs, List<String> pulled) {
        Map<String, List<String>> texts = pulled.stream()
                .map(word -> word.split("=", 2))
                .collect(Collectors.groupingBy(
                        word -> word[0], LinkedHashMap::new, Collectors.mapping(word -> word[1], Collectors.toList())));
        FormReader kept = request.asked(texts);
        List<String> all = words.said(LeverFields.read(kept, inputs).levers(), inputs);
        List<String> parts = new ArrayList<>(all.isEmpty() ? List.of() : List.of(Formats.list(all)));
        if (kept.problems().hasFaults()) {
            parts.add(all.isEmpty() ? "nothing of it can be tried any more" : "the rest cannot be tried any more");
        }
        return Formats.sentence(String.join("; ", parts));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        if (form.act().equals("remove")) {
            long row = form.needed("row", Integer.class).map(Integer::longValue).orElse(0L);
            return request.save(write -> {
                KeptLeversStore.TABLE.delete(write, row, form.version());
                return Saved.to(PATH).saying("These levers are no longer kept.");
            });
        }
        Words pulled = form.read("pulled", Words.class).orElse(Words.NONE);
        String name = form.text("name", KeptLevers.class, "name");
        KeptLevers row = new KeptLevers(name, pulled);
        form.besides(() -> {
            Problems problems = new Problems();
            KeepLevers.check(row, problems);
            return problems;
        });
        return request.save(write -> {
            KeepLevers.keep(write, row);
            return Saved.to(PATH + "?" + address(pulled.list())).saying("“" + name + "” is kept.");
        });
    }
}
