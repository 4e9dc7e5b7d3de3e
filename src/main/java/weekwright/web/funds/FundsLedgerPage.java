package weekwright.web.funds;

import java.time.YearMonth;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import weekwright.base.Codec;
import weekwright.base.Money;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.funds.LedgerEntry;
import weekwright.funds.LedgerEntryStore;
import weekwright.funds.PledgeLevel;
import weekwright.funds.PledgeLevelStore;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.parts.Choices;

/** The books, newest first, by kind, month and stage, with what came in and went out of those shown. */
public final class FundsLedgerPage implements Page {
    private static final int A_PAGE = 100;

    /**
     * @param chosen what is asked for, by field
     * @param in what came in of all that match, counted balances and transfers left out
     * @param out what went out of them, without a minus
     * @param newer address of the page before; empty on the first
     * @param older address of the next page; empty on the last
     */
    public record View(
            List<Line> lines,
            List<Form.Choice> kinds,
            List<Form.Choice> months,
            List<Form.Choice> stages,
            Map<String, String> chosen,
            String found,
            Money in,
            Money out,
            String newer,
            String older,
            boolean some) {}

    /**
     * @param of stage or task that it belongs to, by name
     * @param foreign what was paid in another currency, with the rate; empty for none
     */
    public record Line(
            long row,
            String day,
            String kind,
            String what,
            String of,
            String account,
            Money amount,
            String foreign,
            boolean sums) {}

    @Override
    public View show(Request request) {
        return request.read(read -> view(request, read));
    }

    private static View view(Request request, Read read) {
        List<Stored<LedgerEntry>> all = LedgerEntryStore.TABLE.list(read);
        Map<String, String> chosen = new LinkedHashMap<>();
        for (String name : List.of("kind", "month", "stage", "receipt")) {
            chosen.put(name, request.query(name));
        }
        Map<String, String> stages = new LinkedHashMap<>();
        List<Form.Choice> choices = Choices.stages(read);
        choices.forEach(choice -> stages.put(choice.value().toLowerCase(Locale.ROOT), choice.label()));
        List<Stored<LedgerEntry>> match = all.stream()
                .filter(row -> matches(row.value(), chosen))
                .sorted(Comparator.comparing(
                                (Stored<LedgerEntry> row) -> row.value().date())
                        .thenComparing(Stored::row)
                        .reversed())
                .toList();
        int asked = request.query("page").matches("[0-9]{1,4}") ? Integer.parseInt(request.query("page")) : 0;
        int page = Math.min(asked, Math.max(0, match.size() - 1) / A_PAGE);
        int from = page * A_PAGE;
        int to = Math.min(from + A_PAGE, match.size());
        List<PledgeLevel> levels = PledgeLevelStore.TABLE.values(read);
        Formats formats = request.formats();
        return new View(
                match.subList(from, to).stream()
                        .map(row -> line(
                                row, stages, levels, formats, request.settings().moneyDigits()))
                        .toList(),
                LedgerFields.kinds(),
                months(all),
                choices,
                chosen,
                Formats.count(match.size(), "entry", "entries"),
                sum(match, false),
                sum(match, true).negated(),
                page > 0 ? address(chosen, page - 1) : "",
                to < match.size() ? address(chosen, page + 1) : "",
                !all.isEmpty());
    }

    private static boolean matches(LedgerEntry entry, Map<String, String> chosen) {
        String stage = chosen.get("stage");
        return (chosen.get("kind").isEmpty() || Codec.word(entry.kind()).equals(chosen.get("kind")))
                && (chosen.get("month").isEmpty()
                        || YearMonth.from(entry.date()).toString().equals(chosen.get("month")))
                && (!chosen.get("receipt").equals("none")
                        || entry.isCost() && entry.receipt().isEmpty())
                && (stage.isEmpty()
                        || entry.stage()
                                .map(id -> id.value().equalsIgnoreCase(stage))
                                .orElse(false));
    }

    private static List<Form.Choice> months(List<Stored<LedgerEntry>> all) {
        TreeSet<YearMonth> months = new TreeSet<>(Comparator.reverseOrder());
        all.forEach(row -> months.add(YearMonth.from(row.value().date())));
        return months.stream()
                .map(month -> new Form.Choice(month.toString(), Formats.monthYear(month.atDay(1))))
                .toList();
    }

    private static Line line(
            Stored<LedgerEntry> stored,
            Map<String, String> stages,
            List<PledgeLevel> levels,
            Formats formats,
            int digits) {
        LedgerEntry entry = stored.value();
        Optional<String> stage = entry.stage().map(id -> stages.getOrDefault(id.folded(), id.value()));
        return new Line(
                stored.row(),
                formats.dateShort(entry.date()),
                LedgerFields.word(entry.kind()),
                LedgerFields.what(entry, levels),
                stage.orElse(""),
                entry.account(),
                entry.amount(),
                entry.foreignAmount()
                        .map(paid -> paid.text() + Formats.NBSP + entry.foreignCurrency() + " at "
                                + entry.ratePaid(digits).orElse(""))
                        .orElse(""),
                sums(entry));
    }

    /** A counted balance is no movement, and a transfer is one between one's own accounts. */
    private static boolean sums(LedgerEntry entry) {
        return entry.kind() != LedgerEntry.Kind.COUNTED && entry.kind() != LedgerEntry.Kind.TRANSFER;
    }

    private static Money sum(List<Stored<LedgerEntry>> rows, boolean out) {
        return rows.stream()
                .map(Stored::value)
                .filter(entry -> sums(entry) && entry.amount().isNegative() == out)
                .map(LedgerEntry::amount)
                .reduce(Money.ZERO, Money::plus);
    }

    private static String address(Map<String, String> chosen, int page) {
        StringBuilder text = new StringBuilder("/funds/ledger?page=" + page);
        chosen.forEach((name, value) -> {
            if (value.matches("[\\p{L}\\p{Nd}._-]{1,40}")) {
                text.append('&').append(name).append('=').append(value);
            }
        });
        return text.toString();
    }
}
