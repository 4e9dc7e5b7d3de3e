package weekwright.funds;

import static weekwright.base.RowRules.needed;
import static weekwright.base.RowRules.notBefore;
import static weekwright.base.RowRules.percent;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Optional;
import weekwright.base.Money;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Quantity;
import weekwright.base.Refused;
import weekwright.build.Said;

/** What must hold within one row of the books, one regular item, one pledge level. */
public final class LedgerRules {
    private static final BigDecimal FIFTIETH = new BigDecimal("0.02");

    private LedgerRules() {}

    /** Money of the project's own currency is not foreign. */
    static void own(LedgerEntry entry, String currency, Problems problems) {
        if (entry.foreignCurrency().equals(currency)) {
            problems.fault(
                    "foreign_currency",
                    currency,
                    "is the project's own currency",
                    "leave out what was paid in another");
        }
    }

    /** @param digits of the project's currency, to write amounts with */
    public static void check(LedgerEntry entry, int digits, Problems problems) {
        foreign(entry, problems);
        rate(entry, digits, problems);
        if (entry.gross().isPresent() && entry.fee().isPresent()) {
            Money rest = entry.gross().get().minus(entry.fee().get());
            if (!rest.equals(entry.amount())) {
                problems.remark(
                        "amount",
                        entry.amount().text(digits),
                        "is not gross less fee, which is " + rest.text(digits),
                        "look at the three again");
            }
        }
    }

    /** Amount and currency stand together; the rate may be left out, since the two amounts say it. */
    private static void foreign(LedgerEntry entry, Problems problems) {
        boolean amount = entry.foreignAmount().isPresent();
        boolean currency = !entry.foreignCurrency().isEmpty();
        if (currency) {
            try {
                Money.digits(entry.foreignCurrency());
            } catch (Refused refused) {
                problems.add(Problem.fault("foreign_currency", entry.foreignCurrency(), refused));
            }
        } else if (amount || entry.rate().isPresent()) {
            problems.fault(
                    "foreign_currency",
                    "",
                    "is missing beside the " + (amount ? "foreign amount" : "rate"),
                    "write its three letters, such as USD");
        }
        if (!amount && (currency || entry.rate().isPresent())) {
            problems.fault(
                    "foreign_amount",
                    "",
                    "is missing beside the " + (currency ? "foreign currency" : "rate"),
                    "write what was paid in it, or leave out the rest of it");
        }
        nothing("foreign_amount", entry.foreignAmount(), problems);
        nothing("rate", entry.rate(), problems);
    }

    /** What was paid has the places of its currency, and comes to the amount at the rate that was paid, within a fiftieth. */
    private static void rate(LedgerEntry entry, int digits, Problems problems) {
        if (entry.foreignAmount().isEmpty() || entry.foreignAmount().get().equals(Quantity.ZERO)) {
            return;
        }
        Quantity paid = entry.foreignAmount().get();
        try {
            int places = Money.digits(entry.foreignCurrency());
            if (paid.value().scale() > places) {
                problems.fault(
                        "foreign_amount",
                        paid.text(),
                        "has more decimal places than " + entry.foreignCurrency(),
                        places == 0 ? "write whole units" : "write at most " + places + " places");
            }
        } catch (Refused refused) {
            // told already
        }
        entry.rate().filter(rate -> !rate.equals(Quantity.ZERO)).ifPresent(rate -> {
            BigDecimal should = paid.value().multiply(rate.value());
            BigDecimal is = BigDecimal.valueOf(Math.abs(entry.amount().minor()), digits);
            if (is.subtract(should).abs().compareTo(should.multiply(FIFTIETH)) > 0) {
                problems.remark(
                        "rate",
                        rate.text(),
                        "makes "
                                + should.setScale(digits, RoundingMode.HALF_EVEN)
                                        .toPlainString() + " of "
                                + paid.text() + " " + entry.foreignCurrency() + ", and " + is.toPlainString()
                                + " stands there",
                        "the rate is what one " + entry.foreignCurrency()
                                + " cost; leave it empty to take it from the two amounts");
            }
        });
    }

    private static void nothing(String column, Optional<Quantity> value, Problems problems) {
        if (value.filter(Quantity.ZERO::equals).isPresent()) {
            problems.fault(column, "0", "is nothing", "write more than 0, or leave it empty");
        }
    }

    /** A day that the books can hold: past or today, not before they open. */
    static void day(LocalDate day, LocalDate opening, LocalDate today, String remedy, Problems problems) {
        if (day.isAfter(today)) {
            problems.fault("date", Said.day(day), "is after today, " + Said.day(today), remedy);
        }
        if (day.isBefore(opening)) {
            problems.fault(
                    "date", Said.day(day), "is before the books open", "write a day from " + Said.day(opening) + " on");
        }
    }

    public static void check(RegularItem item, Problems problems) {
        needed("name", item.name(), "write what it is for", problems);
        notBefore("to", item.to(), "from", item.from(), problems);
        percent("spread", item.spread(), problems);
    }

    public static void check(PledgeLevel level, Problems problems) {
        needed("name", level.name(), "write what it is called", problems);
        percent("fee_percent", level.feePercent(), problems);
        percent("declined", level.declined(), problems);
    }

    /** Of those there at the start and those who joined, no more than all can leave. */
    public static void check(SupporterMonth month, Problems problems) {
        long most = (long) month.start() + month.joined().orElse(0);
        if (month.left().orElse(0) > most) {
            problems.fault(
                    "left",
                    month.left().get().toString(),
                    "is more than the " + most + " who were there or joined",
                    "write " + most + " or less");
        }
    }
}
