package weekwright.web.episodes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.db.Read;
import weekwright.db.Stored;
import weekwright.episodes.Episode;
import weekwright.episodes.Tell;
import weekwright.episodes.TellStore;
import weekwright.funds.Material;
import weekwright.funds.MaterialStore;
import weekwright.funds.StockItem;
import weekwright.funds.StockItemStore;

/**
 * What an episode owes to those who gave: the given material of the tasks that it tells, from the take-off and, where a
 * line takes it from the yard, from there.
 *
 * @param line what is to be said: the credit that was agreed, else what was given and by whom
 * @param agreed whether a credit was agreed
 * @param on day on which it came; empty while it is still to come
 */
record Credits(String line, boolean agreed, Optional<LocalDate> on) {

    /** Each once, in the order of the take-off. */
    static List<Credits> of(Read read, Episode episode) {
        Map<String, StockItem> yard = new HashMap<>();
        StockItemStore.TABLE.values(read).forEach(item -> yard.put(item.id().folded(), item));
        Map<String, Credits> all = new LinkedHashMap<>();
        for (Stored<Tell> tell : TellStore.ofEpisode(read, episode.id())) {
            for (Stored<Material> row : MaterialStore.ofTask(read, tell.value().task())) {
                Material line = row.value();
                Optional<StockItem> item = line.stock().map(id -> yard.get(id.folded()));
                credit(line, item).ifPresent(one -> all.putIfAbsent(one.line(), one));
            }
        }
        return new ArrayList<>(all.values());
    }

    private static Optional<Credits> credit(Material line, Optional<StockItem> item) {
        if (!line.credit().isBlank()) {
            return Optional.of(new Credits(line.credit().strip(), true, came(line, item)));
        }
        if (item.isPresent() && !item.get().credit().isBlank()) {
            return Optional.of(new Credits(item.get().credit().strip(), true, came(line, item)));
        }
        boolean given = line.sourceOrDefault() == Material.Source.GIVEN
                || item.flatMap(StockItem::source)
                        .filter(source -> source == Material.Source.GIVEN)
                        .isPresent();
        String giver = item.map(StockItem::from).filter(from -> !from.isBlank()).orElse(line.supplier());
        return given
                ? Optional.of(new Credits(
                        line.item() + (giver.isBlank() ? "" : ": " + giver.strip()), false, came(line, item)))
                : Optional.empty();
    }

    private static Optional<LocalDate> came(Material line, Optional<StockItem> item) {
        return item.flatMap(StockItem::since).or(line::received);
    }
}
