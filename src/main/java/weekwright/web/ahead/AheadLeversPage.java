package weekwright.web.ahead;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import weekwright.base.Problems;
import weekwright.base.Words;
import weekwright.build.Said;
import weekwright.build.Task;
import weekwright.engine.Inputs;
import weekwright.engine.explain.Levers;
import weekwright.forecast.Basis;
import weekwright.forecast.Forecast;
import weekwright.forecast.Forecasts;
import weekwright.forecast.KeepLevers;
import weekwright.forecast.KeptLevers;
import weekwright.forecast.KeptLeversStore;
import weekwright.forecast.LeverAnswer;
import weekwright.forecast.LeverFutures;
import weekwright.forecast.Names;
import weekwright.render.Chances;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.render.chart.AheadPicture;
import weekwright.render.chart.LeverPicture;
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
            List<StageRow> stages,
            String drawings,
            List<Row> rows,
            String drawn,
            boolean settling,
            String address,
            List<Kept> kept) {}

    /** A box that takes a chosen task out again. */
    public record Chosen(String field, String value, String label) {}

    /** @param anew landing with an order of work made for it; empty where that is not known or changes nothing */
    public record StageRow(
            String id,
            String name,
            String now,
            String then,
            String difference,
            String share,
            String covered,
            String anew) {}

    /** Another figure, as it stands and as tried. */
    public record Row(String what, String now, String then, String difference) {}

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
        LeverWords words = new LeverWords(ground.names(), formats, horizon(ground.inputs()));
        Optional<LeverFutures.Look> look =
                pulled ? Optional.of(futures.look(request.db(), today, shown, levers.levers())) : Optional.empty();
        Optional<LeverAnswer> answer = look.map(LeverFutures.Look::answer);
        String address = address(levers.pulled());
        Map<String, List<String>> texts = faulty ? texts(asked, levers) : levers.words();
        Map<String, List<String>> choosing = new LinkedHashMap<>(texts);
        choosing.keySet().removeAll(List.of("drop", "postponed"));
        return new View(
                request.asking(texts, asked.problems().list()),
                request.asking(choosing, asked.problems().list()),
                request.form("", Map.of("pulled", String.join(" ", levers.pulled()))),
                answer.map(words::head).orElse("Change something and see what the forecast makes of it"),
                lead(words, levers, ground.inputs(), pulled),
                formats.currencyMark().strip(),
                ground.inputs().crew().stream()
                        .map(one -> new Form.Choice(one.id(), ground.names().person(one.id())))
                        .toList(),
                trades(ground.inputs()),
                request.read(read -> Choices.tasks(read, AheadLeversPage::open)),
                chosen(levers.levers(), ground.inputs(), ground.names(), formats),
                answer.map(one -> stages(one, words, ground.names())).orElse(List.of()),
                answer.filter(one -> !one.stages().isEmpty())
                        .map(one -> picture(one, ground.names(), today, formats))
                        .orElse(""),
                answer.map(one -> rows(one, formats, ground.inputs())).orElse(List.of()),
                answer.map(AheadLeversPage::drawn).orElse(""),
                look.map(one -> !one.settled()).orElse(false),
                address,
                kept(request, words, ground.inputs()));
    }

    private static boolean open(Task task) {
        return task.done().isEmpty() && task.dropped().isEmpty();
    }

    private static LocalDate horizon(Inputs inputs) {
        return LocalDate.ofEpochDay(inputs.asOf()).plusMonths(inputs.horizonMonths());
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

    private static List<StageRow> stages(LeverAnswer answer, LeverWords words, Names names) {
        return answer.stages().stream()
                .map(stage -> new StageRow(
                        stage.id(),
                        names.stage(stage.id()),
                        words.landing(stage.landing().now()),
                        words.landing(stage.landing().then()),
                        LeverWords.difference(stage),
                        LeverWords.share(stage),
                        percents(stage.covered()),
                        stage.reordered().map(words::landing).orElse("")))
                .toList();
    }

    private static String picture(LeverAnswer answer, Names names, LocalDate today, Formats formats) {
        return new LeverPicture(
                        answer.stages().stream()
                                .map(stage -> new LeverPicture.Row(
                                        names.stage(stage.id()),
                                        range(stage.landing().now()),
                                        range(stage.landing().then()),
                                        "/build/stages/" + stage.id()))
                                .toList(),
                        today,
                        formats)
                .drawings();
    }

    private static AheadPicture.Range range(Forecast.Days days) {
        return new AheadPicture.Range(days.p10(), days.p50(), days.p90());
    }

    private static String percents(LeverAnswer.Pair<Double> chance) {
        String now = Chances.percent(chance.now());
        String then = Chances.percent(chance.then());
        return now.equals(then) ? now : then + ", now " + now;
    }

    private static List<Row> rows(LeverAnswer answer, Formats formats, Inputs inputs) {
        List<Row> rows = new ArrayList<>();
        double more = answer.empty().then() - answer.empty().now();
        rows.add(new Row(
                "Slots of the next twelve that stay empty, in the mean",
                one(answer.empty().now()),
                one(answer.empty().then()),
                Math.abs(more) < 0.05 ? "the same" : one(Math.abs(more)) + (more > 0 ? " more" : " fewer")));
        rows.add(days("The cash holds until, in four of five futures", answer.runway(), formats, inputs));
        rows.add(days("If pledges stopped today, until", answer.withoutPledges(), formats, inputs));
        double under = answer.underReserve().then() - answer.underReserve().now();
        rows.add(new Row(
                "Chance of a day under the reserve, orders going out on their day",
                Chances.percent(answer.underReserve().now()),
                Chances.percent(answer.underReserve().then()),
                Math.abs(under) < 0.005 ? "the same" : under > 0 ? "more likely" : "less likely"));
        rows.add(new Row(
                "Paid out by the end of "
                        + Said.month(YearMonth.from(LocalDate.ofEpochDay(inputs.asOf()))
                                .plusMonths(12))
                        + ", in the mean",
                formats.moneyForecast(answer.paidOut().now()),
                formats.moneyForecast(answer.paidOut().then()),
                paidOut(answer.paidOut().then() - answer.paidOut().now(), formats)));
        return rows;
    }

    private static String paidOut(long more, Formats formats) {
        String apart = formats.moneyForecast(Math.abs(more));
        return apart.equals(formats.moneyForecast(0)) ? "the same" : apart + (more > 0 ? " more" : " less");
    }

    private static String one(double mean) {
        return String.format(Locale.ROOT, "%.1f", mean);
    }

    private static Row days(String what, LeverAnswer.Pair<Optional<LocalDate>> pair, Formats formats, Inputs inputs) {
        long apart = until(pair.then(), inputs) - until(pair.now(), inputs);
        return new Row(
                what,
                said(pair.now(), formats, inputs),
                said(pair.then(), formats, inputs),
                apart == 0 ? "the same" : Formats.count(Math.abs(apart), "day") + (apart > 0 ? " longer" : " less"));
    }

    private static long until(Optional<LocalDate> day, Inputs inputs) {
        return day.orElse(horizon(inputs)).toEpochDay();
    }

    private static String said(Optional<LocalDate> day, Formats formats, Inputs inputs) {
        return day.map(formats::date).orElse("past " + formats.date(horizon(inputs)));
    }

    private static String drawn(LeverAnswer answer) {
        return Formats.grouped(answer.futures()) + " futures of each, in pairs with the same luck (seed "
                + Forecasts.SEED + ").";
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
