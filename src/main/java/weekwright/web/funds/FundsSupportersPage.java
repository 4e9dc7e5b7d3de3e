package weekwright.web.funds;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.episodes.Episode;
import weekwright.episodes.EpisodeStore;
import weekwright.forecast.Forecast;
import weekwright.funds.LedgerEntryStore;
import weekwright.funds.MarkSurge;
import weekwright.funds.PledgeLevel;
import weekwright.funds.PledgeLevelStore;
import weekwright.funds.SetSupporters;
import weekwright.funds.SupporterMonth;
import weekwright.funds.SupporterMonthStore;
import weekwright.funds.SurgeHints;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;
import weekwright.web.parts.Outlook;

/** A month's supporters: how many of each level at the start, how many joined and left. */
public final class FundsSupportersPage implements Page {

    /**
     * @param shown the month in words
     * @param usual how the usual rate would split levels of which only the count stands in the form; often empty
     * @param ahead the history with its fan
     * @param surges months that look as if one film had filled them
     */
    public record View(
            Form form,
            Form mark,
            String month,
            String shown,
            List<Level> levels,
            List<String> usual,
            String before,
            String after,
            List<FundsIncome.Line> income,
            SupportersAhead ahead,
            SurgeWords surges) {}

    /** A level and the month before it, for comparison. */
    public record Level(String id, String name, String before) {}

    @Override
    public View show(Request request) {
        YearMonth now = YearMonth.from(request.today());
        YearMonth month = month(request, now);
        Optional<Forecast> forecast = Outlook.forecast(request);
        return request.read(read -> {
            Problems problems = new Problems();
            SetSupporters.month(read, month, now, problems);
            if (problems.hasFaults()) {
                throw new NotFound(problems.list().get(0).sentence() + ".");
            }
            Map<String, String> texts = new LinkedHashMap<>();
            texts.put("month", month.toString());
            List<Level> levels = new ArrayList<>();
            for (PledgeLevel level : PledgeLevelStore.TABLE.values(read)) {
                String id = level.id().value();
                Optional<SupporterMonth> before = row(read, month.minusMonths(1), level.id());
                Optional<SupporterMonth> own = row(read, month, level.id());
                texts.put(
                        "start." + id,
                        own.map(row -> (long) row.start())
                                .or(() -> before.map(SupporterMonth::end))
                                .map(String::valueOf)
                                .orElse(""));
                texts.put(
                        "joined." + id,
                        own.flatMap(SupporterMonth::joined).map(String::valueOf).orElse(""));
                texts.put(
                        "left." + id,
                        own.flatMap(SupporterMonth::left).map(String::valueOf).orElse(""));
                texts.put("surge." + id, own.map(SupporterMonth::surge).orElse(false) ? "yes" : "");
                levels.add(new Level(
                        id,
                        level.name(),
                        before.map(row -> "ended the month before with " + row.end())
                                .orElse("")));
            }
            Form form = request.form("", texts);
            return new View(
                    form,
                    request.form("surge"),
                    month.toString(),
                    Formats.monthYear(month.atDay(1)),
                    levels,
                    UsualSplit.all(read, month, now, form::value).stream()
                            .map(UsualSplit::sentence)
                            .toList(),
                    month.isAfter(SetSupporters.first(read))
                            ? month.minusMonths(1).toString()
                            : "",
                    month.isBefore(now) ? month.plusMonths(1).toString() : "",
                    income(read, request),
                    SupportersAhead.of(
                            request.today(),
                            forecast,
                            SupporterMonthStore.TABLE.values(read),
                            LedgerEntryStore.TABLE.values(read),
                            request.formats()),
                    SurgeWords.of(SurgeHints.of(SupporterMonthStore.TABLE.values(read), now)));
        });
    }

    private static List<FundsIncome.Line> income(Read read, Request request) {
        return FundsIncome.lines(
                request.today(),
                request.settings(),
                PledgeLevelStore.TABLE.values(read),
                SupporterMonthStore.TABLE.values(read),
                EpisodeStore.TABLE.values(read).stream()
                        .map(Episode::published)
                        .flatMap(Optional::stream)
                        .toList(),
                LedgerEntryStore.TABLE.values(read),
                request.formats());
    }

    private static YearMonth month(Request request, YearMonth now) {
        String asked = request.query("month");
        return asked.matches("[0-9]{4}-(0[1-9]|1[0-2])") ? YearMonth.parse(asked) : now;
    }

    private static Optional<SupporterMonth> row(Read read, YearMonth month, Id level) {
        return SupporterMonthStore.of(read, month).stream()
                .map(Stored::value)
                .filter(row -> row.level().same(level))
                .findFirst();
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        Optional<YearMonth> month = form.needed("month", YearMonth.class);
        if (form.act().equals("usual") && month.isPresent()) {
            return usual(request, month.get());
        }
        if (form.act().equals("surge")) {
            return mark(request, month);
        }
        List<SupporterMonth> rows = new ArrayList<>();
        for (PledgeLevel level : request.read(PledgeLevelStore.TABLE::values)) {
            String id = level.id().value();
            int faults = form.problems().list().size();
            Optional<Integer> start = form.whole("start." + id, SupporterMonth.class, "start");
            Optional<Integer> joined = form.whole("joined." + id, SupporterMonth.class, "joined");
            Optional<Integer> left = form.whole("left." + id, SupporterMonth.class, "left");
            boolean surge = form.ticked("surge." + id);
            if (month.isPresent() && form.problems().list().size() == faults) {
                rows.add(new SupporterMonth(month.get(), level.id(), start.orElseThrow(), joined, left, surge));
            }
        }
        YearMonth now = YearMonth.from(request.today());
        form.besides(() -> request.read(read -> {
            Problems problems = SetSupporters.check(read, rows, now);
            if (rows.isEmpty() && month.isPresent()) {
                SetSupporters.month(read, month.get(), now, problems);
            }
            return problems;
        }));
        return request.save(write -> {
            List<Problem> remarks = SetSupporters.set(write, rows, now);
            StringBuilder said = new StringBuilder(
                    "Supporters of " + Formats.monthYear(month.orElseThrow().atDay(1)) + " are counted.");
            remarks.forEach(remark -> said.append(' ').append(remark.sentence()).append('.'));
            return Saved.to("/funds").saying(said.toString());
        });
    }

    /** Fills in who joined and left by the usual rate, where only the count stands there; saves nothing. */
    private static Answer usual(Request request, YearMonth month) {
        FormReader form = request.form();
        Map<String, List<String>> filled = new LinkedHashMap<>();
        request.read(read -> UsualSplit.all(read, month, YearMonth.from(request.today()), form::text))
                .forEach(split -> {
                    filled.put("joined." + split.level(), List.of(String.valueOf(split.joined())));
                    filled.put("left." + split.level(), List.of(String.valueOf(split.left())));
                });
        form.ignoringFields();
        return new Answer.Again(
                filled,
                filled.isEmpty()
                        ? "No level has its count alone, with the next month counted: nothing was filled in."
                        : "Joined and left stand in the form now, by the usual rate; nothing is saved yet.");
    }

    private static Answer mark(Request request, Optional<YearMonth> month) throws Exception {
        return request.save(write -> {
            MarkSurge.mark(write, month.orElseThrow(), YearMonth.from(request.today()));
            return Saved.to("/funds/supporters?month=" + month.get())
                    .saying(Formats.monthYear(month.get().atDay(1)) + " is marked as filled by one film.");
        });
    }
}
