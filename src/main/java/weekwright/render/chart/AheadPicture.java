package weekwright.render.chart;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import weekwright.render.Chances;
import weekwright.render.Formats;

/**
 * The picture of Ahead: stages, publication days and money on one line of weeks. Drawn wide for a screen, upright for a
 * phone, and given as tables. Dates beyond the horizon are empty; money is in minor units of the project's currency.
 */
public final class AheadPicture {
    /**
     * All the picture shows.
     *
     * @param today the day the forecast stands on; the sheet begins on the Monday four weeks before its week
     * @param slotDay the weekday of publication
     * @param stages in the project's order; the picture chooses those in hand and next
     * @param slots publication days in order of date, past ones included
     * @param threads what ties work and purchases to the slot that tells them
     * @param inHandTo the last publication day that footage already shot can fill; empty for none
     * @param weeksInHand how many such days there are
     * @param pointers where the lettered balloons of the sentences stand
     */
    public record Model(
            LocalDate today,
            DayOfWeek slotDay,
            List<Stage> stages,
            List<Slot> slots,
            List<Thread> threads,
            Optional<LocalDate> inHandTo,
            int weeksInHand,
            Cash cash,
            Pointers pointers) {
        public Model {
            stages = List.copyOf(stages);
            slots = List.copyOf(slots);
            threads = List.copyOf(threads);
        }

        /** The threads from work to the episode of that day. */
        List<Thread> work(Slot slot) {
            return threads.stream()
                    .filter(thread ->
                            thread.slot().equals(slot.day()) && thread.stage().isPresent())
                    .toList();
        }

        /** What has to be bought for the episode of that day. */
        List<Purchase> bought(Slot slot) {
            return threads.stream()
                    .filter(thread -> thread.slot().equals(slot.day()))
                    .flatMapToInt(thread -> thread.purchase().stream())
                    .mapToObj(cash.purchases()::get)
                    .toList();
        }

        String stage(Thread work) {
            return stages.get(work.stage().orElseThrow()).name();
        }
    }

    /** Days reached in at least 10, 50 and 90 % of the trials; empty where that lies beyond the horizon. */
    public record Range(Optional<LocalDate> p10, Optional<LocalDate> p50, Optional<LocalDate> p90) {
        public static Range of(LocalDate p10, LocalDate p50, LocalDate p90) {
            return new Range(Optional.of(p10), Optional.of(p50), Optional.of(p90));
        }
    }

    /**
     * A stage as a timber.
     *
     * @param remark a word or two beside the name, such as {@code Saturdays}; empty for none
     * @param began the day of its first hours; empty if it has none
     * @param start when it begins, for a stage without hours
     * @param landing when its last task is done, for a stage not done
     * @param done the day its last task was done
     * @param notches its tasks' landings that are worth a mark, most important first
     */
    public record Stage(
            String name,
            String remark,
            Optional<LocalDate> began,
            Optional<Range> start,
            Optional<Range> landing,
            Optional<LocalDate> done,
            List<Notch> notches) {
        public Stage {
            notches = List.copyOf(notches);
        }

        boolean inHand() {
            return began.isPresent() && done.isEmpty();
        }
    }

    /** A task's even chance inside its stage. */
    public record Notch(String name, LocalDate day) {}

    /** How safe a publication day is, as word and as line. */
    public enum Safety {
        /** Nine in ten and over. */
        SAFE("safe"),
        /** From two in three. */
        CLOSE("close"),
        AT_RISK("at risk"),
        /** Nothing planned. */
        OPEN("open"),
        /** Filled from the story bank. */
        BANK("bank"),
        /** Published. */
        OUT("out");

        private final String word;

        Safety(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }

        /** The class of the mark. */
        public String kind() {
            return word.replace(' ', '-');
        }
    }

    /**
     * A publication day.
     *
     * @param number the episode's number, empty where none is planned
     * @param title the episode's title, empty where none is planned
     * @param filled share of what the episode needs that is shot, 0 to 1
     */
    public record Slot(LocalDate day, String number, String title, Safety safety, double filled) {}

    /**
     * A thread from work, or from a purchase, to the day that tells it.
     *
     * @param stage index into the model's stages; empty for a thread from a purchase
     * @param purchase index into the purchases; empty for a thread from work
     * @param from the day the work is done, at even chances; empty for a thread from a purchase, which begins where its step stands
     * @param slot the publication day
     */
    public record Thread(
            OptionalInt stage, OptionalInt purchase, Optional<LocalDate> from, LocalDate slot, Safety safety) {
        public static Thread ofWork(int stage, LocalDate from, LocalDate slot, Safety safety) {
            return new Thread(OptionalInt.of(stage), OptionalInt.empty(), Optional.of(from), slot, safety);
        }

        public static Thread ofPurchase(int purchase, LocalDate slot, Safety safety) {
            return new Thread(OptionalInt.empty(), OptionalInt.of(purchase), Optional.empty(), slot, safety);
        }
    }

    /**
     * The money: what was, what comes if nothing more were bought, and what must be bought.
     *
     * @param past the balance on past days, oldest first, in minor units
     * @param fan the balance to come, from today on, in order of date
     * @param purchases in order of date
     */
    public record Cash(long now, long reserve, List<Balance> past, List<Fan> fan, List<Purchase> purchases) {
        public Cash {
            past = List.copyOf(past);
            fan = List.copyOf(fan);
            purchases = List.copyOf(purchases);
        }
    }

    /** A counted or computed balance in minor units. */
    public record Balance(LocalDate day, long minor) {}

    /** The balance of a day by its percentiles, in minor units. */
    public record Fan(LocalDate day, double p10, double p25, double p50, double p75, double p90) {}

    /**
     * A purchase to come.
     *
     * @param name short: {@code Oak for the rims}
     * @param orderBy the last day its order can go out
     * @param amount mean cost in minor units
     * @param shortBy what is missing on that day at even chances, in minor units; 0 if nothing is
     */
    public record Purchase(String name, LocalDate orderBy, long amount, long shortBy) {}

    /**
     * Where the balloons of the sentences stand again.
     *
     * @param landing A: index of the stage whose landing is told
     * @param slot B: the publication day told
     * @param inHand C: whether the weeks in hand are told
     * @param shortOf D: index of the purchase that is short
     * @param orderBy E: index of the purchase whose order is told
     */
    public record Pointers(
            OptionalInt landing, Optional<LocalDate> slot, boolean inHand, OptionalInt shortOf, OptionalInt orderBy) {
        public static final Pointers NONE =
                new Pointers(OptionalInt.empty(), Optional.empty(), false, OptionalInt.empty(), OptionalInt.empty());
    }

    /** A table of the same figures: heads of the columns, rows of text. */
    public record Table(String caption, List<String> heads, List<List<String>> rows) {}

    private final Model model;
    private final Formats formats;
    private final AheadPane pane;

    public AheadPicture(Model model, Formats formats, AheadPane pane) {
        this.model = model;
        this.pane = pane;
        this.formats = formats;
    }

    /** All three; the style sheet shows the one that fits the screen. */
    public String drawings() {
        return wide() + medium() + upright();
    }

    /** For screens of 1272 pixels and more: 24 weeks, time to the right, 1208 pixels wide. */
    public String wide() {
        return new AheadWide(model, formats, "ahead-wide", 1208, AheadSheet.wide(model, pane), pane).draw();
    }

    /** For smaller screens down to 720 pixels, and for paper: 14 weeks, 688 pixels wide. */
    public String medium() {
        return new AheadWide(model, formats, "ahead-medium", 688, AheadSheet.medium(model, pane), pane).draw();
    }

    /** For phones: 16 weeks, time downwards. */
    public String upright() {
        return new AheadUpright(model, formats, pane).draw();
    }

    /** The stages that the wide picture does not show, in one line to stand under it; empty if it shows all. */
    public String offSheet() {
        return AheadSheet.wide(model, pane).offSheet(formats);
    }

    /** All figures of the picture: stages, publication days and purchases. */
    public List<Table> tables(LocalDate horizon) {
        List<Table> tables = new ArrayList<>();
        tables.add(new Table(
                "Stages",
                List.of("Stage", "Standing", "One in ten by", "Even chances by", "Nine in ten by"),
                model.stages().stream().map(stage -> row(stage, horizon)).toList()));
        if (!model.slots().isEmpty()) {
            tables.add(new Table(
                    Formats.weekdays(model.slotDay()),
                    List.of("Day", "No.", "Episode", "Standing", "Shot", "Tells work on", "To be bought for it"),
                    model.slots().stream()
                            .map(s -> List.of(
                                    formats.dateBrief(s.day()),
                                    s.number(),
                                    s.title(),
                                    s.safety().word(),
                                    s.safety() == Safety.OPEN ? "" : Chances.percent(s.filled()),
                                    joined(
                                            model.work(s),
                                            work -> model.stage(work) + ", "
                                                    + formats.dateBrief(
                                                            work.from().orElseThrow())),
                                    joined(model.bought(s), Purchase::name)))
                            .toList()));
        }
        if (!model.cash().purchases().isEmpty()) {
            tables.add(new Table(
                    "Purchases",
                    List.of("Purchase", "Order by", "Cost", "Short"),
                    model.cash().purchases().stream()
                            .map(p -> List.of(
                                    p.name(),
                                    formats.dateBrief(p.orderBy()),
                                    formats.moneyForecast(p.amount()),
                                    p.shortBy() > 0 ? formats.moneyForecast(p.shortBy()) : "covered"))
                            .toList()));
        }
        return tables;
    }

    private static <T> String joined(List<T> things, Function<T, String> word) {
        return things.stream().map(word).collect(Collectors.joining("; "));
    }

    private List<String> row(Stage stage, LocalDate horizon) {
        String standing = stage.done()
                .map(d -> "done " + formats.dateBrief(d))
                .orElseGet(() -> stage.began()
                        .map(d -> "in hand since " + formats.dateBrief(d))
                        .orElseGet(() -> stage.start()
                                .flatMap(Range::p50)
                                .map(d -> "begins about " + formats.dateBrief(d))
                                .orElse("to come")));
        List<String> cells = new ArrayList<>(List.of(stage.name(), standing));
        cells.addAll(stage.landing()
                .map(r -> Stream.of(r.p10(), r.p50(), r.p90())
                        .map(d -> d.map(formats::dateBrief).orElse("after " + formats.dateBrief(horizon)))
                        .toList())
                .orElse(List.of("", "", "")));
        return cells;
    }
}
