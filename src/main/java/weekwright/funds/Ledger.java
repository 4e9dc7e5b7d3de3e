package weekwright.funds;

import java.time.LocalDate;
import java.util.Optional;
import weekwright.base.Id;
import weekwright.base.Money;

/** Makes ledger entries of which most columns stay empty. */
final class Ledger {
    private Ledger() {}

    static LedgerEntry entry(
            Id id,
            LocalDate date,
            Money amount,
            LedgerEntry.Kind kind,
            String account,
            Optional<Material> material,
            String payee) {
        return new LedgerEntry(
                id,
                date,
                amount,
                kind,
                account,
                Optional.empty(),
                Optional.empty(),
                false,
                Optional.empty(),
                material.map(Material::task),
                material.map(Material::id),
                payee,
                Optional.empty(),
                "",
                Optional.empty(),
                "",
                "");
    }

    /** What was paid for a material line, as it goes into the books. */
    static LedgerEntry paid(Id id, LocalDate date, Money paid, Material line) {
        return entry(id, date, paid.negated(), LedgerEntry.Kind.MATERIAL, "", Optional.of(line), line.supplier());
    }
}
