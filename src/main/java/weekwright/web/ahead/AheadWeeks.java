package weekwright.web.ahead;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import weekwright.forecast.Forecast;
import weekwright.render.Form;
import weekwright.render.Formats;
import weekwright.render.chart.AheadPane;
import weekwright.render.chart.AheadPicture;
import weekwright.web.kit.FormReader;
import weekwright.web.kit.Request;

/** Which weeks of the picture are asked for in the address: {@code from} a day, so many {@code weeks}, {@code then} beside now. */
final class AheadWeeks {
    private static final int MOST_BACK = 520;
    private static final int MOST_AHEAD = 260;

    /**
     * The weeks that are drawn, and the ways to others.
     *
     * @param from their first day
     * @param weeks how many the wide drawing has
     * @param spans what can be chosen
     * @param ways to earlier, later, fewer and more weeks
     * @param compared the day whose landings stand beside those of now; empty where none do
     * @param compare the way to see them or to see them no more; its link is empty where nothing was said before
     * @param remark what in the address was not understood; empty where all was
     */
    public record Ways(
            LocalDate from,
            String weeks,
            List<Form.Choice> spans,
            List<Way> ways,
            String compared,
            Way compare,
            String remark) {}

    /** @param key the key of the keyboard that goes it, empty for none */
    public record Way(String label, String link, String key) {}

    private final LocalDate today;
    private final Optional<LocalDate> first;
    private final int weeks;
    private final boolean then;
    private final String remark;

    private AheadWeeks(LocalDate today, Optional<LocalDate> first, int weeks, boolean then, String remark) {
        this.today = today;
        this.first = first;
        this.weeks = weeks;
        this.then = then;
        this.remark = remark;
    }

    static AheadWeeks of(Request request) {
        FormReader asked = request.asked();
        LocalDate today = request.today();
        Optional<LocalDate> from = asked.read("from", LocalDate.class);
        Optional<Integer> weeks = asked.read("weeks", Integer.class);
        String remark = asked.problems().hasFaults()
                        || weeks.filter(n -> !AheadPane.SPANS.contains(n)).isPresent()
                ? "The address asks for weeks that cannot be drawn: these are the usual ones."
                : "";
        LocalDate monday = AheadPane.monday(today);
        return new AheadWeeks(
                today,
                remark.isEmpty()
                        ? from.map(AheadPane::monday)
                                .map(day -> later(day, monday.minusWeeks(MOST_BACK)))
                                .map(day -> earlier(day, monday.plusWeeks(MOST_AHEAD)))
                        : Optional.empty(),
                remark.isEmpty() ? weeks.orElse(AheadPane.USUAL) : AheadPane.USUAL,
                asked.text("then").equals("1"),
                remark);
    }

    private static LocalDate later(LocalDate a, LocalDate b) {
        return a.isAfter(b) ? a : b;
    }

    private static LocalDate earlier(LocalDate a, LocalDate b) {
        return a.isBefore(b) ? a : b;
    }

    /** The same for the picture, with what was said before where that is asked for. */
    AheadPane pane(AheadFacts facts, Optional<Forecast> earlier) {
        List<Optional<AheadPicture.Range>> before = !then
                ? List.of()
                : facts.stages().stream()
                        .map(stage -> earlier.flatMap(
                                        one -> one.stage(stage.id().value()))
                                .map(Forecast.Stage::landing)
                                .filter(Forecast.Days::some)
                                .map(days -> new AheadPicture.Range(days.p10(), days.p50(), days.p90())))
                        .toList();
        return new AheadPane(first, weeks, before, List.of(), List.of(), List.of());
    }

    Ways ways(Formats formats, Optional<LocalDate> said) {
        AheadPane pane = new AheadPane(first, weeks, List.of(), List.of(), List.of(), List.of());
        LocalDate from = pane.from(today);
        int at = AheadPane.SPANS.indexOf(weeks);
        List<Way> ways = new ArrayList<>();
        ways.add(new Way("Earlier", link(from.minusWeeks(weeks / 2), weeks, then), "ArrowLeft"));
        ways.add(new Way("Later", link(from.plusWeeks(weeks / 2), weeks, then), "ArrowRight"));
        if (at > 0) {
            ways.add(new Way("Fewer weeks", link(from, AheadPane.SPANS.get(at - 1), then), "+"));
        }
        if (at + 1 < AheadPane.SPANS.size()) {
            ways.add(new Way("More weeks", link(from, AheadPane.SPANS.get(at + 1), then), "-"));
        }
        if (pane.chosen()) {
            ways.add(new Way("Around today", then ? "/ahead?then=1" : "/ahead", "0"));
        }
        return new Ways(
                from,
                String.valueOf(weeks),
                AheadPane.SPANS.stream()
                        .map(n -> new Form.Choice(String.valueOf(n), Formats.count(n, "week")))
                        .toList(),
                ways,
                then ? said.map(formats::dateLong).orElse("") : "",
                said.map(day -> then
                                ? new Way("Without what was said on " + formats.dateLong(day), here(false), "")
                                : new Way("With what was said on " + formats.dateLong(day), here(true), ""))
                        .orElse(new Way("", "", "")),
                remark);
    }

    private String here(boolean with) {
        return first.isEmpty() && weeks == AheadPane.USUAL
                ? with ? "/ahead?then=1" : "/ahead"
                : link(
                        new AheadPane(first, weeks, List.of(), List.of(), List.of(), List.of()).from(today),
                        weeks,
                        with);
    }

    private static String link(LocalDate from, int weeks, boolean with) {
        return "/ahead?from=" + from + "&weeks=" + weeks + (with ? "&then=1" : "");
    }
}
