package weekwright.funds;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.base.Money;
import weekwright.base.Problems;
import weekwright.base.Quantity;
import weekwright.base.Rejected;
import weekwright.build.Faults;
import weekwright.build.Shown;
import weekwright.db.Stale;
import weekwright.db.Stored;
import weekwright.db.Write;

/**
 * Says that a material line came, whole or in part; a part splits the line and what was paid for it before, and both have
 * the same lot from then on. What was paid on arrival goes into the books.
 */
public final class ReceiveMaterial {
    private ReceiveMaterial() {}

    /** @param rest the line of what has not come yet */
    public record Received(Stored<Material> line, Optional<Stored<Material>> rest) {}

    /**
     * @param part how much came; empty for all of it
     * @param paid on arrival
     * @param today in the project's zone
     */
    public static Received receive(
            Write write, Shown shown, LocalDate day, Optional<Quantity> part, Optional<Money> paid, LocalDate today)
            throws Rejected, Stale {
        Material line = MaterialChange.shown(write, shown);
        Problems problems = new Problems();
        MaterialChange.notReceived(line, problems);
        MaterialChange.mustBePast("received", day, today, problems);
        MaterialChange.notBefore("received", day, line.ordered(), "ordered", problems);
        MaterialChange.someMoney(paid, problems);
        Quantity whole = line.quantity().orElse(Quantity.ONE);
        part.filter(came -> came.compareTo(Quantity.ZERO) <= 0 || came.compareTo(whole) > 0)
                .ifPresent(came -> problems.fault(
                        "part",
                        came.text(),
                        "is not a part of the " + (whole.text() + " " + line.unit()).strip() + " of this line",
                        "write how much came, or leave it empty when all did"));
        Faults.refuse(problems);
        Optional<Quantity> split = part.filter(came -> came.compareTo(whole) < 0);
        String lot = line.lot().isEmpty() ? line.id().value() : line.lot();
        Material came = MaterialChange.with(line, Map.of("received", Optional.of(day)));
        Optional<Stored<Material>> rest = Optional.empty();
        if (split.isPresent()) {
            Quantity remaining = new Quantity(whole.value().subtract(split.get().value()));
            Id id = MaterialStore.nextPart(write, line.id());
            Material later = lot(line, lot, remaining);
            later = MaterialStore.TABLE.shape().with(later, "id", id);
            later = MaterialStore.TABLE.shape().with(later, "value", Optional.empty());
            later = MaterialStore.TABLE.shape().with(later, "thanked", Optional.empty());
            came = lot(came, lot, split.get());
            rest = Optional.of(MaterialStore.TABLE.insert(write, later));
            DepositShare.move(write, day, line, split.get(), later);
        }
        MaterialChange.pay(write, day, paid, line);
        return new Received(MaterialStore.TABLE.update(write, shown.row(), shown.version(), came), rest);
    }

    private static Material lot(Material line, String lot, Quantity quantity) {
        Material named = MaterialStore.TABLE.shape().with(line, "lot", lot);
        return MaterialStore.TABLE.shape().with(named, "quantity", Optional.of(quantity));
    }
}
