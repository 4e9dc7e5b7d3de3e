package weekwright.web.funds;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import weekwright.db.Read;
import weekwright.funds.Supplier;
import weekwright.funds.SupplierStore;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;

/** Whom to ring for what is to be bought, and whose number is not written down. */
public final class FundsSuppliersPage implements Page {
    /** @param missing names that materials use and that have no telephone number */
    public record View(List<Line> lines, List<Missing> missing) {}

    /** A supplier, with the number as a link dials it. */
    public record Line(String id, String name, String telephone, String dialled, String email, String remarks) {}

    /** A name without a number, and where one is written down. */
    public record Missing(String name, String address) {}

    @Override
    public View show(Request request) {
        return request.read(read -> new View(
                SupplierStore.byName(read).values().stream()
                        .sorted((a, b) -> Supplier.folded(a.name()).compareTo(Supplier.folded(b.name())))
                        .map(one -> new Line(
                                one.id().value(),
                                one.name(),
                                one.telephone(),
                                one.dialled(),
                                one.email(),
                                one.remarks()))
                        .toList(),
                missing(read)));
    }

    private static List<Missing> missing(Read read) {
        Map<String, Supplier> known = SupplierStore.byName(read);
        return SupplierStore.withoutTelephone(read).stream()
                .map(name -> new Missing(name, address(name, known.get(Supplier.folded(name)))))
                .toList();
    }

    private static String address(String name, Supplier known) {
        return known == null
                ? "/funds/suppliers/new?name=" + URLEncoder.encode(name, StandardCharsets.UTF_8)
                : "/funds/suppliers/" + known.id() + "/edit";
    }
}
