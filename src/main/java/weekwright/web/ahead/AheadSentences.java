package weekwright.web.ahead;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import weekwright.build.Stage;
import weekwright.episodes.Episode;
import weekwright.forecast.Forecast;
import weekwright.forecast.Forecasts;
import weekwright.forecast.HeldWords;
import weekwright.forecast.Names;
import weekwright.render.Chances;
import weekwright.render.Formats;
import weekwright.web.parts.Choices;
import weekwright.web.parts.HeldBy;
import weekwright.web.parts.SlotWords;

/** The five answers of the sheet, A to E, from one forecast. Pure. */
final class AheadSentences {
    /** Held for funds and work first are both told from so many days apart on. */
    private static final int APART_DAYS = 7;
    /** Under so many logged hours a landing is told by its month. */
    private static final int ROUGH_MINUTES = 20 * 60;

    /**
     * One answer.
     *
     * @param more what it follows from; may be empty
     * @param link where it is told in full; may be empty
     */
    record Answer(String letter, String sentence, String more, String link) {}

    private final Forecast forecast;
    private final Names names;
    private final AheadFacts facts;
    private final Formats formats;
    private final Optional<Forecasts.Earlier> earlier;

    AheadSentences(Forecasts.Shown shown, AheadFacts facts, Formats formats, Optional<Forecasts.Earlier> earlier) {
        this.forecast = shown.forecast();
        this.names = shown.names();
        this.facts = facts;
        this.formats = formats;
        this.earlier = earlier;
    }

    /** The stage of the build that lands next: at even chances the earliest, side stages left out. */
    Optional<Forecast.Stage> nextStage() {
        return forecast.stages().stream()
                .filter(stage -> stage.landing().some())
                .filter(stage -> facts.stages().stream()
                        .anyMatch(s -> s.id().value().equals(stage.id())
                                && !s.side()
                                && facts.done(s).isEmpty()))
                .min(Comparator.comparing(
                        (Forecast.Stage stage) -> stage.landing().p50().orElse(LocalDate.MAX)));
    }

    /** The purchase whose order has to go out first; those without a day come last and are left out. */
    Optional<Forecast.Order> nextOrder() {
        return forecast.orders().stream()
                .filter(order -> order.orderBy().isPresent())
                .findFirst();
    }

    /** The first purchase for which money is missing at even chances, else the first that costs any. */
    Optional<Forecast.Order> nextShort() {
        List<Forecast.Order> paid = forecast.orders().stream()
                .filter(order -> order.orderBy().isPresent() && order.amount().minor() > 0)
                .toList();
        return paid.stream()
                .filter(order -> order.shortBy().p50().minor() > 0)
                .findFirst()
                .or(() -> paid.stream().findFirst());
    }

    /** No stage of the build has a date: all are done, or nothing of what is left was known to this forecast. */
    private Answer noLanding() {
        List<String> open = facts.stages().stream()
                .filter(stage -> !stage.side() && facts.done(stage).isEmpty())
                .map(Stage::name)
                .toList();
        return open.isEmpty()
                ? new Answer("A", "Every stage is done.", "", "/build")
                : new Answer(
                        "A",
                        "No date stands for " + Formats.list(open) + " yet.",
                        "A stage gets one from its tasks, or from rough hours for the whole of it.",
                        "/build");
    }

    Answer landing() {
        Optional<Forecast.Stage> next = nextStage();
        if (next.isEmpty()) {
            return noLanding();
        }
        Forecast.Stage stage = next.get();
        Forecast.Days days = stage.landing();
        String link = "/build/stages/" + stage.id();
        String after = "after " + formats.dateLong(forecast.horizon());
        if (days.p50().isEmpty()) {
            String sentence = stage.name() + " is done " + after + ".";
            String why = days.p10()
                    .map(day -> "The earliest is " + formats.dateLong(day) + ", one chance in ten. ")
                    .orElse("Nothing in this forecast brings it to its end"
                            + (people(stage) ? ": somebody has to be there who can do it. " : ". "));
            return new Answer("A", sentence, (why + held(stage)).strip(), link);
        }
        LocalDate middle = days.p50().get();
        boolean rough = facts.loggedMinutes() < ROUGH_MINUTES;
        String about = rough ? Formats.monthYear(middle) : formats.date(middle);
        List<String> more = new ArrayList<>();
        more.add(rough ? "" : away(middle, range(days)));
        said(stage, middle).ifPresent(more::add);
        funds(stage).ifPresent(more::add);
        more.add(held(stage));
        if (stage.rough().tasks() > 0) {
            more.add("Rough: " + Formats.count(stage.rough().tasks(), "task") + " without hours "
                    + (stage.rough().tasks() == 1 ? "is" : "are") + " guessed.");
        } else if (rough) {
            more.add("Rough: little has been logged yet.");
        }
        more.removeIf(String::isEmpty);
        return new Answer("A", stage.name() + " is done about " + about + ".", String.join(" ", more), link);
    }

    /** Whether it is people that a stage waits for, as far as that is known. */
    private static boolean people(Forecast.Stage stage) {
        return stage.heldBy().isEmpty()
                || List.of("person", "company", "camera")
                        .contains(stage.heldBy().get(0).kind());
    }

    /** How far off the middle is, and what its range is: both in one line under the large one. */
    private String away(LocalDate middle, String range) {
        String away = formats.away(middle);
        if (away.isEmpty() || range.isEmpty()) {
            return away.isEmpty() ? range : Formats.sentence(away) + ".";
        }
        return Formats.sentence(away) + "; " + range.substring(0, 1).toLowerCase(Locale.ROOT) + range.substring(1);
    }

    private String range(Forecast.Days days) {
        LocalDate from = days.p10().orElseThrow();
        if (days.p90().isEmpty()) {
            return "Not before " + formats.dateLong(from) + "; " + Chances.words(days.beyond()) + " after "
                    + formats.dateLong(forecast.horizon()) + ".";
        }
        LocalDate to = days.p90().get();
        if (from.equals(to)) {
            return "";
        }
        return "Four in five chances " + formats.between(from, to) + ".";
    }

    private Optional<String> said(Forecast.Stage stage, LocalDate now) {
        return earlier.flatMap(then -> then.forecast()
                .stage(stage.id())
                .flatMap(old -> old.landing().p50())
                .map(old -> old.equals(now)
                        ? "On " + formats.dateLong(then.day()) + " we said the same day."
                        : "On " + formats.dateLong(then.day()) + " we said " + formats.dateLong(old) + "."));
    }

    /** Both answers to the question of money, where they lie a week or more apart. */
    private Optional<String> funds(Forecast.Stage stage) {
        Optional<LocalDate> held = stage.landing().p50();
        Optional<LocalDate> free = stage.workFirst().p50();
        if (held.isEmpty() || free.isEmpty() || ChronoUnit.DAYS.between(free.get(), held.get()) < APART_DAYS) {
            return Optional.empty();
        }
        return Optional.of(HeldWords.money(formats.dateLong(held.get()), formats.dateLong(free.get())));
    }

    private String held(Forecast.Stage stage) {
        if (stage.heldBy().isEmpty()) {
            return "";
        }
        Forecast.HeldBy first = stage.heldBy().get(0);
        List<String> then = stage.heldBy().size() > 1 && stage.heldBy().get(1).share() >= 0.1
                ? List.of(HeldWords.of(stage.heldBy().get(1), names))
                : List.of();
        return HeldBy.sentence(first, then, names);
    }

    Answer nextSlot() {
        Optional<LocalDate> slot = facts.nextSlot(forecast.asOf());
        if (slot.isEmpty()) {
            return new Answer("B", "No publication day is set.", "Say under Crew on which day you publish.", "/crew");
        }
        String day = formats.date(slot.get());
        Optional<Episode> planned = facts.onSlot(slot.get());
        if (planned.isEmpty()) {
            return new Answer(
                    "B",
                    "Nothing is planned for " + formats.date(slot.get()) + formats.comingOrGone(slot.get()) + ".",
                    SlotWords.COULD_FILL,
                    "/episodes");
        }
        Episode episode = planned.get();
        String link = "/episodes/" + episode.id();
        String title = Choices.title(episode);
        Optional<Forecast.Episode> told = forecast.episode(episode.id().value());
        if (episode.cut().isPresent()) {
            return new Answer("B", "The episode of " + day + " is ready.", Formats.sentence(title) + ".", link);
        }
        double chance = told.flatMap(Forecast.Episode::onTime).orElse(0.0);
        String more = Formats.sentence(title) + ": " + Chances.words(chance) + " that it is ready in time."
                + told.flatMap(Forecast.Episode::lateBy)
                        .filter(task -> !Chances.safety(chance).equals("safe"))
                        .map(task -> " It waits for " + names.task(task) + ".")
                        .orElse("");
        return new Answer("B", "The episode of " + day + " is " + Chances.safety(chance) + ".", more, link);
    }

    Answer inHand() {
        String days = SlotWords.several(facts.settings());
        int weeks = forecast.weeksInHand();
        if (weeks == 0) {
            return new Answer(
                    "C", "No story is in hand.", "What is filmed next is what can be shown next.", "/episodes");
        }
        String sentence = weeks == 1
                ? "One " + days.substring(0, days.length() - 1) + " of story in hand."
                : Formats.sentence(Formats.number(weeks)) + " " + days + " of story in hand.";
        String more = inHandTo()
                .map(to -> "If nothing more were filmed, there is something to show up to " + formats.date(to) + ".")
                .orElse("");
        return new Answer("C", sentence, more, "/episodes");
    }

    /** The last coming slot of those in hand. */
    Optional<LocalDate> inHandTo() {
        List<LocalDate> coming = facts.slots(forecast.asOf(), forecast.asOf().plusYears(3)).stream()
                .filter(day ->
                        facts.onSlot(day).map(e -> e.published().isEmpty()).orElse(true))
                .toList();
        int weeks = Math.min(forecast.weeksInHand(), coming.size());
        return weeks == 0 ? Optional.empty() : Optional.of(coming.get(weeks - 1));
    }

    Answer purchase() {
        Optional<Forecast.Order> next = nextShort();
        if (next.isEmpty() && facts.onOrder().minor() > 0) {
            return new Answer(
                    "D",
                    formats.money(facts.onOrder().minor()) + " is still to be paid for what is on order.",
                    "Nothing else has to be bought as far as is planned.",
                    "/funds/orders");
        }
        if (next.isEmpty()) {
            return new Answer("D", "Nothing has to be paid for as far as is planned.", "", "/funds");
        }
        Forecast.Order order = next.get();
        String item = Formats.sentence(names.material(order.material()));
        long even = order.shortBy().p50().minor();
        long bad = order.shortBy().p90().minor();
        String cost = "About " + formats.moneyForecast(order.amount().minor()) + ", due "
                + formats.date(order.orderBy().orElseThrow()) + ", reserve kept.";
        if (even > 0) {
            return new Answer(
                    "D",
                    item + ": " + formats.moneyForecast(even) + " short.",
                    cost + " At most " + formats.moneyForecast(bad) + " short, nine in ten.",
                    "/funds");
        }
        String more =
                bad > 0 ? cost + " One chance in ten that over " + formats.moneyForecast(bad) + " is missing." : cost;
        return new Answer("D", item + ": the money is there.", more, "/funds");
    }

    Answer orderBy() {
        Optional<Forecast.Order> next = nextOrder();
        if (next.isEmpty()) {
            return new Answer("E", "Nothing is left to order.", "", "/funds");
        }
        Forecast.Order order = next.get();
        String item = names.material(order.material());
        LocalDate by = order.orderBy().orElseThrow();
        String sentence = by.isBefore(forecast.asOf())
                ? Formats.sentence(item) + " should have been ordered by " + formats.date(by) + formats.comingOrGone(by)
                        + "."
                : "Order by " + formats.date(by) + formats.comingOrGone(by) + ": " + item + ".";
        List<String> more = new ArrayList<>();
        order.needBy().ifPresent(day -> more.add("Needed by " + formats.date(day) + "."));
        if (order.shortBy().p50().minor() > 0) {
            waiting(order).ifPresent(more::add);
        }
        return new Answer("E", sentence, String.join(" ", more), "/build/materials/" + order.material());
    }

    /** What it costs to wait for the money, in days of the stage. */
    private Optional<String> waiting(Forecast.Order order) {
        return facts.material(order.material())
                .flatMap(line -> facts.task(line.task().value()))
                .flatMap(task -> forecast.stage(task.stage().value()))
                .flatMap(stage -> {
                    Optional<LocalDate> held = stage.landing().p50();
                    Optional<LocalDate> free = stage.workFirst().p50();
                    if (held.isEmpty() && free.isPresent()) {
                        return Optional.of("Waiting for the money costs " + stage.name() + " more than is drawn.");
                    }
                    if (held.isEmpty() || free.isEmpty() || !held.get().isAfter(free.get())) {
                        return Optional.of("Waiting for the money costs " + stage.name() + " nothing as yet.");
                    }
                    long days = ChronoUnit.DAYS.between(free.get(), held.get());
                    return Optional.of("Waiting for the money costs " + stage.name() + " about "
                            + Formats.count(days, "day") + ".");
                });
    }
}
