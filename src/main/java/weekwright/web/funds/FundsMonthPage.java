package weekwright.web.funds;

import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import weekwright.base.Problem;
import weekwright.base.Rejected;
import weekwright.build.CrewMember;
import weekwright.build.Said;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.episodes.EpisodeStore;
import weekwright.funds.BooksMoved;
import weekwright.funds.CloseMonth;
import weekwright.funds.ClosedMonth;
import weekwright.funds.ClosedMonthStore;
import weekwright.funds.MonthGaps;
import weekwright.funds.MonthStatement;
import weekwright.funds.StatementLine;
import weekwright.funds.WaitingFiles;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** A month: what is missing, its statement, and that it is closed or opened again. */
public final class FundsMonthPage implements Page {
    private static final int CHANGES_MOST = 12;

    /**
     * @param month as in the address
     * @param closed when and by whom, in words; empty while it is open
     * @param shut why it cannot be closed yet; empty where it can
     * @param missing what is missing, or was when it was closed
     * @param since what the books say otherwise now
     * @param first when they were first changed, in words; empty where the log does not say
     */
    public record View(
            Form form,
            String month,
            String name,
            String closed,
            String shut,
            List<Missing> missing,
            List<StatementParts.Section> sections,
            List<String> since,
            String first) {}

    /** Something missing; {@code link}: where it is mended, empty for none. */
    public record Missing(String text, String link) {}

    private final WaitingFiles waiting;

    public FundsMonthPage(WaitingFiles waiting) {
        this.waiting = waiting;
    }

    @Override
    public View show(Request request) {
        YearMonth month = month(request);
        Formats formats = request.formats();
        return request.read(read -> {
            Optional<Stored<ClosedMonth>> closed = ClosedMonthStore.find(read, month);
            return closed.isPresent()
                    ? closed(request, read, closed.get(), formats)
                    : open(request, read, month, formats);
        });
    }

    /** The month of the address, in which the books are open. */
    static YearMonth month(Request request) {
        String text = request.part("month");
        YearMonth first = YearMonth.from(request.settings().openingDate());
        YearMonth last = YearMonth.from(request.today());
        if (!text.matches("[0-9]{4}-(0[1-9]|1[0-2])")
                || YearMonth.parse(text).isBefore(first)
                || YearMonth.parse(text).isAfter(last)) {
            throw new NotFound("The books are open from " + Said.month(first) + " to " + Said.month(last) + ".");
        }
        return YearMonth.parse(text);
    }

    /** What the statement of a month says now. */
    static List<StatementLine> now(Read read, YearMonth month) {
        return MonthStatement.of(read, month, EpisodeStore.publishedIn(read, month));
    }

    private View open(Request request, Read read, YearMonth month, Formats formats) {
        return new View(
                form(request),
                month.toString(),
                Said.month(month),
                "",
                CloseMonth.check(read, month, request.today()).faults().stream()
                        .findFirst()
                        .map(fault -> "It " + fault.rule() + "; " + fault.remedy() + ".")
                        .orElse(""),
                MonthGaps.of(read, month, request.today(), waiting.list()).stream()
                        .map(gap -> new Missing(gap.text(), link(gap)))
                        .toList(),
                StatementParts.of(now(read, month), formats),
                List.of(),
                "");
    }

    /** One form: whichever button was pressed and refused is told above. */
    private static Form form(Request request) {
        return request.form(request.wasRefused("reopen") ? "reopen" : "close");
    }

    private static View closed(Request request, Read read, Stored<ClosedMonth> row, Formats formats) {
        ClosedMonth closed = row.value();
        List<StatementLine> lines = ClosedMonthStore.lines(read, closed.month()).stream()
                .map(Stored::value)
                .toList();
        return new View(
                form(request),
                closed.month().toString(),
                Said.month(closed.month()),
                "Closed on " + Said.day(closed.closed()) + (closed.who().isEmpty() ? "" : " by " + closed.who()),
                "",
                lines.stream()
                        .filter(line -> line.part() == StatementLine.Part.MISSING)
                        .map(line -> new Missing(line.name(), ""))
                        .toList(),
                StatementParts.of(lines, formats),
                since(lines, now(read, closed.month()), formats),
                BooksMoved.since(read, row)
                        .map(at -> "first changed on " + Said.day(day(request, at)))
                        .orElse("since it was closed"));
    }

    /** The day of the project's own zone. */
    static LocalDate day(Request request, Instant at) {
        return LocalDate.ofInstant(at, request.settings().zone());
    }

    private static String link(MonthGaps.Gap gap) {
        return switch (gap.kind()) {
            case BALANCE -> "/funds/balance";
            case ENTRY -> "/funds/entries/" + gap.of() + "/edit";
            case RECEIPTS -> "/funds/ledger?receipt=none&month=" + gap.of();
            case DELIVERY -> "/build/materials/" + gap.of();
            case SUPPORTERS -> "/funds/supporters?month=" + gap.of();
            case FILE -> "/funds/files/" + gap.of();
        };
    }

    /** Lines that the books and the log would say otherwise now. */
    private static List<String> since(List<StatementLine> kept, List<StatementLine> now, Formats formats) {
        record Key(StatementLine.Part part, String name) {}
        Map<Key, StatementLine> then = new HashMap<>();
        kept.forEach(line -> then.put(new Key(line.part(), line.name()), line));
        List<String> said = new ArrayList<>();
        for (StatementLine line : now) {
            StatementLine before = then.remove(new Key(line.part(), line.name()));
            boolean notSaidThen = before == null
                    && (line.name().equals(MonthStatement.PUT_BY) || line.name().equals(MonthStatement.WITHOUT_PUT_BY));
            if (!line.equals(before) && !notSaidThen) {
                said.add(Formats.sentence(line.name()) + ": "
                        + (before == null ? "nothing" : StatementParts.figure(before, formats)) + " then, "
                        + StatementParts.figure(line, formats) + " now");
            }
        }
        kept.stream()
                .filter(line -> line.part() != StatementLine.Part.MISSING
                        && then.containsKey(new Key(line.part(), line.name())))
                .forEach(line -> said.add(Formats.sentence(line.name()) + ": " + StatementParts.figure(line, formats)
                        + " then, nothing now"));
        return said.size() > CHANGES_MOST
                ? Stream.concat(
                                said.stream().limit(CHANGES_MOST),
                                Stream.of("and " + (said.size() - CHANGES_MOST) + " more"))
                        .toList()
                : said;
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        YearMonth month = month(request);
        String here = "/funds/months/" + month;
        if (form.act().equals("reopen")) {
            return request.save(write -> {
                if (!CloseMonth.reopen(write, month)) {
                    throw new Rejected(
                            Problem.fault("", Said.month(month), "is not closed", "look at it as it stands now"));
                }
                return Saved.to(here).saying(Said.month(month) + " is open again; its statement is gone.");
            });
        }
        boolean anyway = form.ticked("anyway");
        String who = request.person().map(CrewMember::name).orElse("");
        form.besides(() -> request.read(read -> CloseMonth.check(read, month, request.today())));
        return request.save(write -> {
            CloseMonth.close(
                    write, month, anyway, who, EpisodeStore.publishedIn(write, month), request.today(), waiting.list());
            return Saved.to(here).saying(Said.month(month) + " is closed.");
        });
    }
}
