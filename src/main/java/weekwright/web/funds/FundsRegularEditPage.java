package weekwright.web.funds;

import weekwright.build.Shown;
import weekwright.db.Stored;
import weekwright.funds.RegularItem;
import weekwright.funds.RegularItemStore;
import weekwright.funds.RemoveRegularItem;
import weekwright.render.Form;
import weekwright.web.kit.Answer;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.NotFound;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;
import weekwright.web.kit.Saved;

/** Changes what comes again, or removes it. */
public final class FundsRegularEditPage implements Page {
    public record View(Form form, Form remove, RegularFields.Lists lists, String name) {}

    @Override
    public View show(Request request) {
        Stored<RegularItem> item = item(request);
        Form form = request.form("", item);
        return new View(
                request.wasRefused("")
                        ? form
                        : Flow.parted(
                                form, item.value().amount(), request.settings().moneyDigits()),
                request.form("remove", item),
                RegularFields.lists(request),
                item.value().name());
    }

    private static Stored<RegularItem> item(Request request) {
        return request.read(read -> RegularItemStore.TABLE.find(read, request.id("id")))
                .orElseThrow(() -> new NotFound("There is no regular item " + request.part("id") + "."));
    }

    @Override
    public Answer submit(Request request) throws Exception {
        FormReader form = request.form();
        Stored<RegularItem> item = item(request);
        if (!form.act().equals("remove")) {
            return RegularFields.change(request, item);
        }
        return request.save(write -> {
            RemoveRegularItem.remove(write, new Shown(item.row(), form.version()));
            return Saved.to("/funds/regular")
                    .saying(item.value().name() + " comes no more. What was booked of it stays in the books.");
        });
    }
}
