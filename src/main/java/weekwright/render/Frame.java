package weekwright.render;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What every sheet shows around its page: the head, the foot and the keys of its forms. Templates read it as
 * {@code frame}.
 *
 * @param project the project's name, as the head shows it
 * @param currency ISO 4217 code, for the money filters
 * @param today the project's day, for the date filters (weekday within ten days, year when not this year)
 * @param group the page group, in lower case, which the nav marks: ahead, week, log, build, episodes, funds, notes,
 *     crew, account, site
 * @param access who reads: crew, helper, supporter or public; only the first two are shown the nav
 * @param person the name of who reads, where known
 * @param whose the project's random name and the person's id, so that a device tells what was typed where and by whom; empty
 *     before a stranger
 * @param version the project's version the page was made from
 * @param theme day, night, or empty to follow the device
 * @param csrf the token that every posted form carries
 * @param answerKey a new key for this page's forms; a repeated post with the same key gives the first answer
 * @param flash one line about what was just done
 * @param sampleNotice one line on every page of the sample, such as the day its clock stands on
 * @param help which page of the help belongs to this sheet; empty before strangers
 * @param provenance the cells of the title block: when the forecast ran, from how many futures, with which seed
 * @param root what stands before {@code css/} and {@code static/} in addresses: {@code /} on the server, {@code ""} or
 *     {@code ../} in exported pages
 */
public record Frame(
        String project,
        String currency,
        LocalDate today,
        String group,
        String access,
        Optional<String> person,
        String whose,
        long version,
        String theme,
        String csrf,
        String answerKey,
        Optional<Flash> flash,
        Optional<String> sampleNotice,
        Optional<Help> help,
        List<Cell> provenance,
        String root) {

    public Frame {
        provenance = List.copyOf(provenance);
    }

    /** The project's day as forms carry it: {@code 2026-11-25}. */
    public String day() {
        return today.toString();
    }

    /** Whether the nav of the crew is shown. */
    public boolean crew() {
        return access.equals("crew") || access.equals("helper");
    }

    /**
     * A cell of the title block: a label in small letters over its text.
     *
     * @param link where the text leads; empty for nowhere
     */
    public record Cell(String label, String text, String link) {
        public Cell(String label, String text) {
            this(label, text, "");
        }
    }

    /**
     * Where a sheet is explained.
     *
     * @param of as it stands in the address: {@code week}
     * @param title as links say it: {@code Week}
     */
    public record Help(String of, String title) {}

    /** One line about what was just done, and how to take it back where that is possible. */
    public record Flash(String text, Optional<Undo> undo) {
        public static Flash of(String text) {
            return new Flash(text, Optional.empty());
        }
    }

    /**
     * A button that takes the last act back.
     *
     * @param action the address it posts to
     * @param label the button's words: {@code Put it back}
     * @param fields hidden fields besides the keys, such as {@code do=restore}
     */
    public record Undo(String action, String label, Map<String, String> fields) {
        public Undo {
            fields = new TreeMap<>(fields);
        }
    }
}
