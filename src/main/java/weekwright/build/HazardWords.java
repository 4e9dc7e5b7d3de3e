package weekwright.build;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * Hazards that words of a title propose (rule 119); somebody confirms them once. The words are common practice of the
 * trades, without a source. Whole words alone count: a felloe is no felling.
 */
public final class HazardWords {
    private static final Map<Pattern, String> WORDS = new LinkedHashMap<>();

    static {
        String[][] all = {
            {"pour(s|ed|ing)?", "melt"},
            {"forg(e|es|ed|ing)", "hot"},
            {"weld(s|ed|ing)?", "hot"},
            {"fell(s|ed|ing)?", "fell"},
            {"lift(s|ed|ing)?", "lift"},
            {"jack(s|ed|ing)?", "jack"},
            {"chainsaw(s|ed|ing)?", "saw"},
            {"steam(s|ed|ing)?", "steam"},
            {"epoxy", "epoxy"},
            {"scaffold(s|ed|ing)?", "height"},
        };
        for (String[] one : all) {
            WORDS.put(
                    Pattern.compile("\\b" + one[0] + "\\b", Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CHARACTER_CLASS),
                    one[1]);
        }
    }

    private HazardWords() {}

    /** The codes that a title proposes, each once. */
    public static List<String> of(String title) {
        List<String> codes = new ArrayList<>();
        WORDS.forEach((word, code) -> {
            if (!codes.contains(code) && word.matcher(title).find()) {
                codes.add(code);
            }
        });
        return codes;
    }
}
