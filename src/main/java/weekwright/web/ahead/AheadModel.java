package weekwright.web.ahead;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import weekwright.build.Stage;
import weekwright.build.Task;
import weekwright.episodes.Episode;
import weekwright.episodes.Shot;
import weekwright.forecast.Forecast;
import weekwright.forecast.Names;
import weekwright.render.Chances;
import weekwright.render.chart.AheadPane;
import weekwright.render.chart.AheadPicture;
import weekwright.render.chart.AheadPicture.Safety;
import weekwright.web.parts.MoneyAhead;

/** The picture's figures from one forecast and the facts beside it. Pure. */
final class AheadModel {
    private static final int WEEKS_BACK = 5;
    private static final int WEEKS_AHEAD = 26;
    private static final int MOST_NOTCHES = 3;

    private final Forecast forecast;
    private final Names names;
    private final AheadFacts facts;
    private final AheadSentences sentences;
    private final LocalDate today;
    private final MoneyAhead money;
    private final AheadPane pane;
    private final Map<String, Forecast.Task> tasks;

    AheadModel(Forecast forecast, Names names, AheadFacts facts, AheadSentences sentences, AheadPane pane) {
        this.pane = pane;
        this.forecast = forecast;
        this.names = names;
        this.facts = facts;
        this.sentences = sentences;
        this.today = forecast.asOf();
        this.money = new MoneyAhead(forecast, names);
        this.tasks = forecast.tasks().stream().collect(Collectors.toMap(Forecast.Task::id, task -> task));
    }

    AheadPicture.Model model() {
        List<AheadPicture.Slot> slots = slots();
        List<List<Forecast.Order>> orders = money.groups();
        Optional<LocalDate> inHandTo = sentences.inHandTo();
        return new AheadPicture.Model(
                today,
                facts.settings().weekday(),
                facts.stages().stream().map(this::stage).toList(),
                slots,
                threads(orders),
                inHandTo,
                forecast.weeksInHand(),
                money.cash(facts.settings(), facts.ledger(), Math.max(WEEKS_BACK, pane.weeksTo(today, today))),
                new AheadPicture.Pointers(
                        sentences.nextStage().map(s -> stageIndex(s.id())).orElse(OptionalInt.empty()),
                        facts.nextSlot(today),
                        inHandTo.isPresent(),
                        index(orders, sentences.nextShort()),
                        index(orders, sentences.nextOrder())));
    }

    private static OptionalInt index(List<List<Forecast.Order>> groups, Optional<Forecast.Order> one) {
        return IntStream.range(0, groups.size())
                .filter(i -> one.map(groups.get(i)::contains).orElse(false))
                .findFirst();
    }

    private OptionalInt stageIndex(String id) {
        return IntStream.range(0, facts.stages().size())
                .filter(i -> facts.stages().get(i).id().value().equals(id))
                .findFirst();
    }

    private AheadPicture.Stage stage(Stage stage) {
        Optional<LocalDate> done = facts.done(stage);
        Optional<Forecast.Stage> told = forecast.stage(stage.id().value());
        Optional<Forecast.Days> landing = done.isPresent()
                ? Optional.empty()
                : told.map(Forecast.Stage::landing).filter(Forecast.Days::some);
        Optional<LocalDate> began =
                Optional.ofNullable(facts.firstHours().get(stage.id().folded()));
        return new AheadPicture.Stage(
                stage.name(),
                stage.side() ? "beside the build" : "",
                began,
                began.isPresent()
                        ? Optional.empty()
                        : told.map(Forecast.Stage::start).map(AheadModel::range),
                landing.map(AheadModel::range),
                done,
                done.isPresent() ? List.of() : notches(stage));
    }

    private static AheadPicture.Range range(Forecast.Days days) {
        return new AheadPicture.Range(days.p10(), days.p50(), days.p90());
    }

    /** Its tasks that its landing hangs on most. */
    private List<AheadPicture.Notch> notches(Stage stage) {
        return facts.tasksOf(stage).stream()
                .filter(Task::isOpen)
                .map(task -> tasks.get(task.id().value()))
                .filter(Objects::nonNull)
                .filter(task -> task.landing().p50().isPresent())
                .sorted(Comparator.comparing(Forecast.Task::critical).reversed())
                .limit(MOST_NOTCHES)
                .map(task -> new AheadPicture.Notch(
                        names.task(task.id()), task.landing().p50().orElseThrow()))
                .toList();
    }

    private List<AheadPicture.Slot> slots() {
        Optional<LocalDate> inHandTo = sentences.inHandTo();
        LocalDate from = earlier(today.minusWeeks(WEEKS_BACK), pane.from(today));
        LocalDate until = today.plusWeeks(WEEKS_AHEAD);
        return facts.slots(from, until.isAfter(pane.until(today)) ? until : pane.until(today)).stream()
                .map(day -> slot(day, inHandTo))
                .toList();
    }

    private static LocalDate earlier(LocalDate a, LocalDate b) {
        return a.isBefore(b) ? a : b;
    }

    /** The same weeks, each thing leading to its own page. */
    AheadPane leading(AheadPicture.Model model) {
        return pane.leading(
                facts.stages().stream()
                        .map(stage -> "/build/stages/" + stage.id().value())
                        .toList(),
                model.slots().stream()
                        .map(slot -> facts.onSlot(slot.day())
                                .map(one -> "/episodes/" + one.id().value())
                                .orElse(
                                        slot.day().isBefore(today)
                                                ? "/episodes/slots"
                                                : "/episodes/slots/" + slot.day()))
                        .toList(),
                money.groups().stream()
                        .map(group ->
                                "/build/materials/" + MoneyAhead.largest(group).material())
                        .toList());
    }

    private AheadPicture.Slot slot(LocalDate day, Optional<LocalDate> inHandTo) {
        Optional<Episode> episode = facts.onSlot(day);
        if (episode.isEmpty()) {
            boolean banked =
                    !day.isBefore(today) && inHandTo.map(to -> !day.isAfter(to)).orElse(false);
            return new AheadPicture.Slot(day, "", "", banked ? Safety.BANK : Safety.OPEN, 0);
        }
        Episode one = episode.get();
        return new AheadPicture.Slot(
                day, one.number().map(String::valueOf).orElse(""), one.title(), safety(one), filled(one));
    }

    private Safety safety(Episode episode) {
        if (episode.published().isPresent()) {
            return Safety.OUT;
        }
        if (episode.cut().isPresent()) {
            return Safety.SAFE;
        }
        double chance = forecast.episode(episode.id().value())
                .flatMap(Forecast.Episode::onTime)
                .orElse(0.0);
        return switch (Chances.safety(chance)) {
            case "safe" -> Safety.SAFE;
            case "close" -> Safety.CLOSE;
            default -> Safety.AT_RISK;
        };
    }

    /** The share of its must-have shots captured; without shots, of its told tasks done. */
    private double filled(Episode episode) {
        if (episode.footageComplete().isPresent() || episode.published().isPresent()) {
            return 1;
        }
        List<Shot> must = facts.shots().stream()
                .filter(shot -> shot.episode().map(id -> id.same(episode.id())).orElse(false))
                .filter(Shot::must)
                .toList();
        if (!must.isEmpty()) {
            return must.stream().filter(shot -> shot.captured().isPresent()).count() / (double) must.size();
        }
        List<Task> told = facts.told(episode).stream()
                .map(tell -> facts.task(tell.task().value()))
                .flatMap(Optional::stream)
                .toList();
        return told.isEmpty()
                ? 0
                : told.stream().filter(task -> task.done().isPresent()).count() / (double) told.size();
    }

    /** For each coming episode, the told task that is done last, and what has to be bought for it last unless all of it is shot. */
    private List<AheadPicture.Thread> threads(List<List<Forecast.Order>> orders) {
        List<AheadPicture.Thread> threads = new ArrayList<>();
        for (Episode episode : facts.episodes()) {
            if (episode.published().isPresent() || episode.slot().isEmpty()) {
                continue;
            }
            LocalDate slot = episode.slot().get();
            Safety safety = safety(episode);
            lastTold(episode).ifPresent(task -> {
                stageIndex(task.stage().value())
                        .ifPresent(stage -> threads.add(
                                AheadPicture.Thread.ofWork(stage, landing(task).orElseThrow(), slot, safety)));
                IntStream.range(0, shot(episode) ? 0 : orders.size())
                        .filter(i -> orders.get(i).stream().anyMatch(order -> isFor(order, task)))
                        .max()
                        .ifPresent(purchase -> threads.add(AheadPicture.Thread.ofPurchase(purchase, slot, safety)));
            });
        }
        return threads;
    }

    private static boolean shot(Episode episode) {
        return episode.footageComplete().isPresent() || episode.cut().isPresent();
    }

    private Optional<Task> lastTold(Episode episode) {
        return facts.told(episode).stream()
                .map(tell -> facts.task(tell.task().value()))
                .flatMap(Optional::stream)
                .filter(Task::isOpen)
                .filter(task -> landing(task).isPresent())
                .max(Comparator.comparing(task -> landing(task).orElseThrow()));
    }

    private boolean isFor(Forecast.Order order, Task task) {
        return facts.material(order.material())
                .map(line -> line.task().same(task.id()))
                .orElse(false);
    }

    private Optional<LocalDate> landing(Task task) {
        return Optional.ofNullable(tasks.get(task.id().value()))
                .flatMap(t -> t.landing().p50());
    }
}
