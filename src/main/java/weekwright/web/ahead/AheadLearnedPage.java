package weekwright.web.ahead;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import weekwright.base.Money;
import weekwright.engine.Inputs;
import weekwright.engine.simulate.Found;
import weekwright.engine.simulate.LateTogether;
import weekwright.engine.simulate.Learned;
import weekwright.forecast.Lessons;
import weekwright.render.Chances;
import weekwright.render.Formats;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.parts.EditingWords;
import weekwright.web.parts.PurchaseWords;

/** What the crew's own records teach the forecast, in sentences, with what each is learned from. */
public final class AheadLearnedPage implements Page {
    private static final double HALF = 0.5;

    /** A finished task as a line. */
    public record Line(String id, String title, LocalDate done, String estimate, String logged, String times) {}

    /**
     * @param work how long work takes
     * @param trades which trades run longer
     * @param ignored finished tasks that teach nothing
     * @param turnout of each person
     * @param found what turns up
     * @param guessed what stands in for hours that nobody gave
     * @param fails what may have to be done again
     * @param redone how often it had to be
     * @param surges of supporters, and how joining wanders
     * @param editing how long editing takes
     * @param episodes behind that
     * @param prices how prices stand to what was likely
     * @param unpaid received lines that teach no price
     * @param leads how long each supplier takes
     * @param late whether deliveries are late together
     * @param paid the lines behind the prices
     * @param came the orders behind the leads
     */
    public record View(
            String work,
            String trades,
            String ignored,
            List<String> turnout,
            List<String> found,
            String guessed,
            List<String> fails,
            String redone,
            List<String> surges,
            String editing,
            List<Line> episodes,
            String prices,
            String unpaid,
            List<String> leads,
            String late,
            List<Paid> paid,
            List<Came> came,
            List<Line> tasks) {}

    /** A bought line that came. */
    public record Paid(String id, String item, LocalDate received, Money likely, Money paid, String times) {}

    /** An order that came. */
    public record Came(
            String id, String item, String supplier, LocalDate received, long likely, int days, String times) {}

    @Override
    public View show(Request request) {
        LocalDate today = request.today();
        Lessons lessons = request.read(read -> Lessons.of(read, today));
        return new View(
                work(lessons.ratio()),
                trades(lessons.trades()),
                lessons.ignored().isEmpty()
                        ? ""
                        : "Left out, as next to nothing is logged on "
                                + (lessons.ignored().size() == 1 ? "it" : "them") + ": "
                                + Formats.list(lessons.ignored()) + ".",
                lessons.turnout().stream().map(AheadLearnedPage::turnout).toList(),
                found(lessons),
                guessed(lessons.guessing()),
                lessons.failing().stream().map(AheadLearnedPage::fails).toList(),
                redone(lessons.redone(), !lessons.failing().isEmpty()),
                Stream.concat(
                                lessons.surging().map(AheadLearnedPage::surges).stream(),
                                lessons.wandering().map(AheadLearnedPage::wandering).stream())
                        .toList(),
                EditingWords.of(lessons.editing()),
                lessons.editing().episodes().stream()
                        .map(AheadLearnedPage::line)
                        .toList(),
                PurchaseWords.prices(lessons.purchases()),
                unpaid(lessons.purchases().ignored()),
                lessons.purchases().leads().stream().map(PurchaseWords::lead).toList(),
                late(lessons.late()),
                lessons.purchases().paid().stream()
                        .map(one -> new Paid(
                                one.id(), one.item(), one.received(), one.likely(), one.paid(), times(one.times())))
                        .toList(),
                lessons.purchases().leads().stream()
                        .flatMap(lead -> lead.orders().stream()
                                .map(one -> new Came(
                                        one.id(),
                                        one.item(),
                                        lead.name(),
                                        one.received(),
                                        Math.round(one.likelyDays()),
                                        one.days(),
                                        times(one.times()))))
                        .toList(),
                lessons.tasks().stream().map(AheadLearnedPage::line).toList());
    }

    private static Line line(Lessons.TaskRatio one) {
        return new Line(
                one.id(),
                one.title(),
                one.done(),
                Formats.hoursForecast(one.estimateMinutes()),
                Formats.hours(one.actualMinutes()),
                times(one.times()));
    }

    static String unpaid(List<String> items) {
        return items.isEmpty()
                ? ""
                : "Left out, as what the books hold for " + (items.size() == 1 ? "it" : "them")
                        + " is under two thirds of the least it was to cost or over twice the most: "
                        + Formats.list(items) + ".";
    }

    private static String times(double value) {
        return String.format(Locale.ROOT, "%.2f", value);
    }

    static String work(Lessons.Ratio ratio) {
        String range = ", four chances in five between " + times(ratio.p10()) + " and " + times(ratio.p90());
        return ratio.finished() == 0
                ? "No task with an estimate is finished yet. Until then work is taken to last " + times(ratio.p50())
                        + " times its estimate, as it usually does" + range + "."
                : "Your work takes " + times(ratio.p50()) + " times its estimate" + range + ", from "
                        + Formats.counted(ratio.finished(), "finished task", "finished tasks") + ".";
    }

    static String trades(List<Lessons.TradeRatio> trades) {
        if (trades.isEmpty()) {
            return "";
        }
        List<String> words = trades.stream()
                .map(trade ->
                        trade.trade() + " " + times(trade.times()) + " (" + Formats.count(trade.tasks(), "task") + ")")
                .toList();
        return "By trade, the longest first: " + Formats.list(words) + ".";
    }

    static String turnout(Lessons.Turnout one) {
        String hours = one.name() + "’s " + Formats.hoursLong(one.statedMinutes()) + " a week";
        long there = Math.round(one.statedMinutes() * one.mean() / 60);
        if (one.set()) {
            return one.mean() == 1
                    ? "All of " + hours + " count: the settings say so."
                    : "Of " + hours + ", " + there + (there == 1 ? " counts" : " count") + ": the settings say so.";
        }
        String from = one.weeks() == 0
                ? "four fifths, as fewer than eight weeks are logged"
                : "from " + Formats.counted(one.weeks(), "week", "weeks") + " of log";
        return "Of " + hours + ", " + there + (there == 1 ? " reaches" : " reach") + " the build, " + from + ".";
    }

    static List<String> found(Lessons lessons) {
        List<String> said = new ArrayList<>();
        Found found = lessons.found();
        if (!found.any()) {
            said.add("Nothing is drawn beside the listed tasks: the settings say so.");
        } else if (found.fixed() >= 0) {
            said.add("Beside the listed hours of a stage, " + percent(found.fixed())
                    + " more are drawn: the settings say so.");
        } else {
            String from = found.shares().isEmpty()
                    ? "as is usual, for no finished stage says yet what was found in it"
                    : "from " + Formats.counted(found.shares().size(), "finished stage", "finished stages")
                            + " and what is usual";
            said.add("Beside the listed hours of an open stage about " + percent(found.mean()) + " more turn up, "
                    + from + ".");
        }
        Found.TurnedUp up = lessons.turnedUp();
        if (up.since() != Inputs.NONE) {
            said.add("Found since " + Formats.monthYear(LocalDate.ofEpochDay(up.since())) + ": "
                    + Formats.hoursLong(up.minutes()) + " in " + Formats.counted(up.jobs(), "job", "jobs") + ".");
        }
        return said;
    }

    private static String percent(double share) {
        return Math.round(100 * share) + " in a hundred";
    }

    static String fails(Lessons.Failing task) {
        return task.title() + ": " + Chances.words(task.chance()) + " that it fails, and then "
                + (task.again() == 1 ? "all of it" : percent(task.again()) + " of it") + " is done again.";
    }

    /**
     * What the log says beside the chances written at the tasks.
     *
     * @param more whether open tasks may fail too
     */
    static String redone(Lessons.Redone so, boolean more) {
        if (so.finished() == 0) {
            return !more
                    ? ""
                    : "The chances are those written at the tasks: none that might have failed is finished yet.";
        }
        return "Of "
                + Formats.counted(
                        so.finished(), "finished task that might have failed", "finished tasks that might have failed")
                + ", "
                + (so.again() == 0 ? "none was" : Formats.number(so.again()) + (so.again() == 1 ? " was" : " were"))
                + " done again; by the chances written at them it would be about "
                + String.format(Locale.ROOT, "%.1f", so.expected()) + ".";
    }

    static String guessed(Learned.Guessing one) {
        if (one.tasks() == 0) {
            return "";
        }
        String who = Formats.sentence(Formats.counted(one.tasks(), "open task has", "open tasks have")) + " no hours: ";
        return one.finished() == 0
                ? who + "taken as 12 hours, give or take a factor of two and a half, until a task is finished."
                : who + "drawn as the hours of a finished task of the same stage, or of any of your "
                        + Formats.counted(one.finished(), "finished task", "finished tasks") + " where it has none.";
    }

    static String late(LateTogether late) {
        if (!late.any()) {
            return "";
        }
        String came = Formats.counted(late.came(), "order", "orders") + " that came";
        String out = Formats.counted(late.out(), "order that is", "orders that are") + " out";
        String from = "from " + (late.out() == 0 ? came : late.came() == 0 ? out : came + " and " + out);
        if (late.chance() < HALF) {
            return Formats.sentence(from) + ", it is not likely that deliveries are late or early together.";
        }
        return "Deliveries are late or early together: what is ordered now takes " + times(late.times())
                + " times what line and supplier say, " + from + "; half of that is forgotten in three months.";
    }

    static String wandering(Learned.Wandering one) {
        String said = "How many usually join wanders by about " + percent(one.drift()) + " from month to month, ";
        return one.set()
                ? said + "as the settings say."
                : one.months() == 0
                        ? said + "as is usual, for fewer than four months are counted."
                        : said + "from " + Formats.counted(one.months(), "month", "months") + " counted.";
    }

    static String surges(Learned.Surging one) {
        String from = one.seen() == 0
                ? "as is usual, for no month is marked as one that a film drove"
                : "from " + Formats.counted(one.seen(), "month", "months") + " that a film drove, of "
                        + Formats.counted(one.films(), "film", "films");
        return "One film in " + Math.round(1 / one.chance()) + " brings a surge of supporters, about "
                + String.format(Locale.ROOT, "%.1f", one.size()) + " months’ worth of usual joining, " + from + ".";
    }
}
