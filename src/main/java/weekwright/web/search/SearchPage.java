package weekwright.web.search;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import weekwright.db.Search;
import weekwright.web.kit.Access;
import weekwright.web.kit.Page;
import weekwright.web.kit.Request;

/** Looks for words in tasks, stages, notes, materials, the yard, episodes, the books, crew and equipment. */
public final class SearchPage implements Page {
    /** What a helper may open. */
    private static final Set<Search.Kind> HELPERS = EnumSet.of(Search.Kind.TASKS, Search.Kind.STAGES);

    /** @param words as they were typed */
    public record View(String words, List<Group> groups, int count, boolean full) {}

    /** Things of one kind, best first. */
    public record Group(String name, List<Line> lines) {}

    /** A thing found, with the address of its page. */
    public record Line(String to, List<Search.Piece> title, List<Search.Piece> around) {}

    @Override
    public View show(Request request) {
        String words = request.query("words");
        Set<Search.Kind> kinds = request.access() == Access.CREW ? EnumSet.allOf(Search.Kind.class) : HELPERS;
        List<Search.Found> found = request.read(read -> Search.find(read, words, kinds));
        Map<Search.Kind, List<Line>> byKind = new EnumMap<>(Search.Kind.class);
        for (Search.Found one : found) {
            byKind.computeIfAbsent(one.kind(), kind -> new ArrayList<>())
                    .add(new Line(address(one), title(one), one.around()));
        }
        List<Group> groups = new ArrayList<>();
        byKind.forEach((kind, lines) -> groups.add(new Group(name(kind), lines)));
        return new View(words, groups, found.size(), found.size() >= 100);
    }

    private static List<Search.Piece> title(Search.Found found) {
        return found.title().isEmpty() ? List.of(new Search.Piece(found.id(), false)) : found.title();
    }

    private static String name(Search.Kind kind) {
        return switch (kind) {
            case TASKS -> "Tasks";
            case STAGES -> "Stages";
            case NOTES -> "Build notes";
            case MATERIALS -> "Materials";
            case STOCK -> "The yard";
            case EPISODES -> "Episodes";
            case LEDGER -> "The books";
            case CREW -> "Crew";
            case EQUIPMENT -> "Equipment";
        };
    }

    private static String address(Search.Found found) {
        return switch (found.kind()) {
            case TASKS -> "/build/tasks/" + found.id();
            case STAGES -> "/build/stages/" + found.id();
            case NOTES -> "/notes/" + found.id();
            case MATERIALS -> "/build/materials/" + found.id();
            case STOCK -> "/build/stock/" + found.id() + "/edit";
            case EPISODES -> "/episodes/" + found.id();
            case LEDGER -> "/funds/entries/" + found.row() + "/edit";
            case CREW -> "/crew/members/" + found.id() + "/edit";
            case EQUIPMENT -> "/build/equipment/" + found.id() + "/edit";
        };
    }
}
