package weekwright.db;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Looks for words in everything that has a name or a text (SQLite FTS5, see 0003_search.sql). */
public final class Search {
    private static final int MOST = 100;
    private static final int WORDS_MOST = 8;
    private static final int LETTERS_MOST = 40;
    private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{M}\\p{Nd}]+");
    /** Set around the words found; neither can be typed into a form. */
    private static final String OPENING = "\u0001";

    private static final String CLOSING = "\u0002";

    private Search() {}

    /** {@code …task:weir.2) follows}: the end of an address with which an excerpt begins. */
    private static final Pattern LINK_BEGUN = Pattern.compile("^…[^\\s()\\[\\]]*\\)");
    /** {@code ](task:weir.2)}, or as much of it as there is before the excerpt's end. */
    private static final Pattern LINK = Pattern.compile("\\]\\([^)\\n…]*(?:\\)|(…)$)");
    /** Heads, rules of tables, table bars, brackets of links and boxes, slanted and strong. */
    private static final Pattern SIGNS =
            Pattern.compile("(?m)^#{1,6} |^[-*] |:?-{3,}:?|!?\\[[ x]?\\]?|\\]|\\||\\*{1,3}");

    /** Kinds of things that are found, in the order of the numbers that the schema gives them. */
    public enum Kind {
        TASKS,
        STAGES,
        NOTES,
        MATERIALS,
        STOCK,
        EPISODES,
        LEDGER,
        CREW,
        EQUIPMENT
    }

    /** A piece of a text, and whether it is a word that was looked for. */
    public record Piece(String text, boolean marked) {}

    /**
     * A thing found.
     *
     * @param row of its table
     * @param around the words found in its text with some around them; empty when they stand in the title alone
     */
    public record Found(Kind kind, long row, String id, List<Piece> title, List<Piece> around) {}

    /**
     * The things in which every word stands, best first, at most a hundred. The last word may be the beginning of one. Case,
     * accents and all signs but letters and digits are left out; a text without letters and digits finds nothing.
     */
    public static List<Found> find(Read read, String text, Set<Kind> kinds) {
        String query = query(text);
        if (query.isEmpty() || kinds.isEmpty()) {
            return List.of();
        }
        String numbers =
                kinds.stream().map(kind -> String.valueOf(kind.ordinal() + 1)).collect(Collectors.joining(", "));
        return read.handle()
                .createQuery("SELECT rowid AS place, \"id\", highlight(search, 0, :opening, :closing) AS title,"
                        + " snippet(search, 1, :opening, :closing, '…', 16) AS around FROM search"
                        + " WHERE search MATCH :query AND rowid % 16 IN (" + numbers + ")"
                        + " ORDER BY bm25(search, 6.0, 1.0), rowid LIMIT " + MOST)
                .bind("query", query)
                .bind("opening", OPENING)
                .bind("closing", CLOSING)
                .map((rs, context) -> {
                    Kind kind = Kind.values()[(int) (rs.getLong("place") % 16) - 1];
                    String around = kind == Kind.NOTES ? plain(rs.getString("around")) : rs.getString("around");
                    return new Found(
                            kind,
                            rs.getLong("place") / 16,
                            rs.getString("id"),
                            pieces(rs.getString("title")),
                            around.contains(OPENING) ? pieces(around) : List.of());
                })
                .list();
    }

    /** Each word in quotation marks, so that nothing typed is read as a sign of the query's own language. */
    private static String query(String text) {
        Set<String> words = new LinkedHashSet<>();
        Matcher matcher = WORD.matcher(text.substring(0, Math.min(text.length(), 400)));
        while (matcher.find() && words.size() < WORDS_MOST) {
            String word = matcher.group().toLowerCase(Locale.ROOT);
            words.add(word.substring(0, Math.min(word.length(), LETTERS_MOST)));
        }
        return words.isEmpty()
                ? ""
                : words.stream().map(word -> '"' + word + '"').collect(Collectors.joining(" ")) + " *";
    }

    /** Without the signs of Markdown and the addresses of links, whole or cut off by the excerpt's ends. */
    private static String plain(String marked) {
        String plain = LINK_BEGUN.matcher(marked).replaceFirst("…");
        plain = LINK.matcher(plain).replaceAll("$1");
        return SIGNS.matcher(plain).replaceAll(" ").strip().replaceAll("\\s+", " ");
    }

    private static List<Piece> pieces(String marked) {
        List<Piece> pieces = new ArrayList<>();
        boolean inside = false;
        for (String part : marked.split("[\u0001\u0002]", -1)) {
            if (!part.isEmpty()) {
                pieces.add(new Piece(part, inside));
            }
            inside = !inside;
        }
        return pieces;
    }
}
