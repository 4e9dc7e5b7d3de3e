package weekwright.web.episodes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import weekwright.build.Settings;
import weekwright.db.Read;
import weekwright.episodes.SlotCalendar;
import weekwright.forecast.Forecast;
import weekwright.forecast.SlotFutures;
import weekwright.forecast.SlotOutlook;
import weekwright.funds.PledgeLevel;
import weekwright.funds.PledgeLevelStore;
import weekwright.render.Chances;
import weekwright.render.Formats;
import weekwright.web.kit.Request;
import weekwright.web.parts.Outlook;

/**
 * What could be done about a slot, with what each costs, in words.
 *
 * @param now as planned
 * @param until the day by which the money is told
 * @param sentence to supporters, to be copied
 * @param pledges what an empty slot costs by the settings
 */
record SlotTrouble(Row now, List<Row> rows, String until, String sentence, String pledges, String drawn) {
    /** Pledges of a missed slot, and what those who leave for it would have paid: seen after ten weeks. */
    private static final int MONEY_WEEKS = 10;

    /**
     * A remedy.
     *
     * @param kind as the button posts it; empty for the plan as it stands
     * @param what as the button posts it
     * @param empty the chance that nothing comes out on the slot
     * @param twelve how many of the next twelve slots stay empty
     * @param money against the plan as it stands
     */
    record Row(String kind, String what, String title, String cost, String empty, String twelve, String money) {}

    static SlotTrouble of(
            Request request, SlotFutures futures, LocalDate slot, Optional<Forecast> forecast, Formats formats) {
        LocalDate until = slot.plusWeeks(MONEY_WEEKS);
        List<SlotRemedies.Remedy> remedies = request.read(read -> SlotRemedies.of(read, slot, forecast, formats));
        SlotFutures.Compared compared = futures.compare(
                request.db(),
                request.today(),
                Outlook.shown(request),
                read -> remedies.stream().map(SlotRemedies.Remedy::plan).toList());
        SlotOutlook now = compared.now();
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < remedies.size(); i++) {
            SlotRemedies.Remedy remedy = remedies.get(i);
            SlotOutlook then = compared.then().get(i);
            rows.add(new Row(
                    remedy.kind().name().toLowerCase(Locale.ROOT),
                    remedy.what(),
                    remedy.title(),
                    remedy.cost(),
                    remedy.kind() == SlotRemedies.Kind.SAY
                            ? "no slot any more"
                            : then.empty(slot).map(Chances::words).orElse("not known"),
                    SlotChanges.mean(then.emptyOf12()),
                    money(now.cashBy(until), then.cashBy(until), formats)));
        }
        Row plan = new Row(
                "",
                "",
                "As planned",
                "",
                now.empty(slot).map(Chances::words).orElse("not known"),
                SlotChanges.mean(now.emptyOf12()),
                "");
        return new SlotTrouble(
                plan,
                rows,
                formats.dateLong(until),
                request.read(read -> sentence(read, slot, formats)),
                request.read(read -> pledges(read, request.settings(), formats)),
                "From " + Formats.grouped(compared.futures())
                        + " futures, each drawn once as planned and once for each remedy, with the same luck.");
    }

    private static String money(Optional<Long> now, Optional<Long> then, Formats formats) {
        if (now.isEmpty() || then.isEmpty()) {
            return "too far to say";
        }
        long more = then.get() - now.get();
        String amount = formats.moneyForecast(Math.abs(more));
        return amount.equals(formats.moneyForecast(0)) ? "no difference" : amount + (more > 0 ? " more" : " less");
    }

    /** One plain sentence, and when the next film comes. */
    private static String sentence(Read read, LocalDate slot, Formats formats) {
        String next = SlotCalendar.of(read, slot.plusDays(1), slot.plusYears(1)).stream()
                .filter(one -> one.skipped().isEmpty())
                .findFirst()
                .map(one -> " The next one comes on " + SlotDays.day(one.day(), formats) + ".")
                .orElse("");
        return ("There is no new film on " + SlotDays.day(slot, formats)
                        + ": the work needs a little longer than we thought, and we would rather show it to you finished."
                        + next + " Thank you for staying with us.")
                .replace(Formats.NBSP, " ");
    }

    private static String pledges(Read read, Settings settings, Formats formats) {
        boolean charged = PledgeLevelStore.TABLE.values(read).stream()
                .anyMatch(level -> level.charged() == PledgeLevel.Charged.EPISODE);
        double factor = settings.emptyLeaving().doubleValue();
        String leaving = factor == 1
                ? "An empty slot is taken to make nobody leave; that is a setting, for nobody has figures for you."
                : "An empty slot is taken to multiply that month’s leaving by "
                        + settings.emptyLeaving().text() + ", as set.";
        return (charged
                        ? "Pledges charged by the episode are not charged for an empty slot. "
                        : "No pledge is charged by the episode. ")
                + leaving;
    }
}
