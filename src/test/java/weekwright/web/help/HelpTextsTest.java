package weekwright.web.help;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import weekwright.account.PassphraseRules;
import weekwright.account.Session;
import weekwright.base.Dimensions;
import weekwright.base.Hours;
import weekwright.base.Money;
import weekwright.base.Quantity;
import weekwright.base.Reading;
import weekwright.base.Shape;
import weekwright.build.HazardCodes;
import weekwright.build.Task;
import weekwright.engine.simulate.Charge;
import weekwright.engine.simulate.PiecesLog;
import weekwright.engine.simulate.ThreePoint;
import weekwright.funds.Material;
import weekwright.funds.MaterialStore;
import weekwright.funds.StageCosts;
import weekwright.render.Chances;
import weekwright.render.Formats;
import weekwright.render.Templates;
import weekwright.testkit.ServerFixture;

/** The figures of the help are those that the program computes. */
class HelpTextsTest {
    private static String text(String name) {
        return Templates.packed().text("help/texts/" + name + ".md").orElseThrow();
    }

    /** {@code 2:42 h}, as the sheets have it. */
    private static String hours(double hours) {
        return Formats.hoursShort(Math.round(hours * 60)).replace(Formats.NBSP, " ");
    }

    /** {@code €2,587.20}. */
    private static String euro(long minor) {
        return String.format(Locale.ROOT, "\u20ac%,d.%02d", minor / 100, minor % 100);
    }

    @Test
    void ahead_says_mean_and_deviation_of_three_points_and_the_words_of_chances() {
        assertThat(text("ahead"))
                .contains("Its mean is " + hours(ThreePoint.mean(20, 30, 50)) + ",")
                .contains("its usual distance from that is " + (int) ThreePoint.deviation(20, 50) + " h");
        for (int percent : new int[] {90, 80, 50}) {
            assertThat(text("ahead"))
                    .contains("| " + percent + " % | " + Chances.words(percent / 100.0) + " | "
                            + Chances.safety(percent / 100.0) + " |");
        }
        assertThat(text("ahead"))
                .contains("| 97 % and more | " + Chances.words(.97) + " | " + Chances.safety(.97) + " |");
    }

    @Test
    void week_says_which_dangers_ask_for_another_person_beside() {
        List<String> beside = List.of("melt", "fell", "hot", "lift", "height", "space", "water", "saw", "jack");
        assertThat(HazardCodes.all().stream().filter(code -> HazardCodes.company(List.of(code)) == Task.Company.BY))
                .containsExactlyInAnyOrderElementsOf(beside);
        assertThat(text("week"))
                .contains(
                        "| molten metal, tree felling, hot work, lifting, height, confined space, over water, chainsaw,"
                                + " jacking | another person beside |");
        assertThat(HazardCodes.company(List.of("dust"))).isEqualTo(Task.Company.CALL);
        assertThat(HazardCodes.company(List.of())).isEqualTo(Task.Company.ALONE);
    }

    @Test
    void log_says_how_hours_may_be_typed() throws Exception {
        for (String typed : List.of("3.5", "3,5", "3:30", "3\u00bd")) {
            assertThat(text("log")).contains("| " + typed + " |");
            assertThat(Hours.parse(typed, Reading.form(2)).minutes()).as(typed).isEqualTo(210);
        }
    }

    @Test
    void build_says_how_pieces_get_quicker_and_what_is_left() {
        assertThat(text("build"))
                .contains("the second takes " + hours(3 * PiecesLog.unitSum(2, 2, 90)))
                .contains("the fourth " + hours(3 * PiecesLog.unitSum(4, 4, 90)))
                .contains("the eighth " + hours(3 * PiecesLog.unitSum(8, 8, 90)))
                .contains("about " + Math.round(3 * PiecesLog.unitSum(1, 36, 90)) + " hours, not " + 3 * 36);
        assertThat(PiecesLog.ENOUGH_TO_FIT).isEqualTo(3);
    }

    @Test
    void materials_say_what_a_line_costs() throws Exception {
        Shape<Material> shape = MaterialStore.TABLE.shape();
        Money cost;
        try (ServerFixture server = ServerFixture.small()) {
            Material line = server.db().read(MaterialStore.TABLE::values).get(0);
            line = shape.with(line, "quantity", Optional.of(new Quantity(new BigDecimal("2.4"))));
            line = shape.with(line, "waste", Optional.of(new Quantity(BigDecimal.TEN)));
            cost = StageCosts.worth(line, Optional.of(new Quantity(new BigDecimal("980"))), 2);
        }
        long deposit = Math.round(cost.minor() * .3);
        assertThat(text("materials"))
                .contains("= " + euro(cost.minor()) + ".")
                .contains(euro(deposit) + " goes out with the order and " + euro(cost.minor() - deposit));
        Dimensions beam = Dimensions.parse("8 in \u00d7 10 in \u00d7 6 ft", Reading.form(2));
        assertThat(beam.make("bf").amount().text()).isEqualTo("40");
        assertThat(text("materials")).contains("is 40 board feet");
    }

    @Test
    void episodes_say_what_is_close_and_what_the_bank_holds() {
        assertThat(Chances.safety(.86)).isEqualTo("close");
        assertThat(text("episodes"))
                .contains("In 86 of 100 futures it is: *close*.")
                .contains("60 % of it is filmed, and an episode tells 20 % of it: " + 30 * (60 - 20) / 100 + " minutes")
                .contains("With 40 minutes in all and episodes of 16, the bank fills "
                        + List.of("no slot", "one slot", "two slots").get(40 / 16) + ".");
    }

    @Test
    void supporters_funds_and_books_say_what_of_a_pledge_arrives() {
        long paid = Charge.of(900, 8, 20, 2).net(100);
        assertThat(text("supporters"))
                .contains("= " + euro(Charge.of(900, 8, 20, 0).net(1)))
                .contains("| paid out | " + euro(paid) + " |");
        long free = 518_000 - 300_000;
        assertThat(text("funds"))
                .contains("two pay-outs of " + euro(paid))
                .contains(euro(free + 2 * paid) + " stands above the reserve")
                .contains("would find " + euro(free + paid));
        assertThat(free + paid).isGreaterThan(258_720);
        assertThat(text("books"))
                .contains("the books say " + euro(518_000 + paid - 24_000))
                .contains(euro(518_000 + paid - 24_000 - 570_000) + " is missing")
                .contains(euro(Math.round(paid * .03)) + " of that pay-out");
    }

    @Test
    void purchases_say_by_when_an_order_goes_out() {
        DateTimeFormatter day = DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);
        LocalDate begun = LocalDate.of(2027, 3, 20);
        assertThat(text("purchases"))
                .contains("begun on " + day.format(begun)
                        + ". The oak takes 42 days, and you want it 14 days before it is")
                .contains("goes out on " + day.format(begun.minusDays(42 + 14)) + " at the latest");
    }

    @Test
    void settings_and_crew_say_what_days_and_hands_come_to() {
        assertThat(text("settings"))
                .contains("With 0.45 in January, of its 31 days some " + Math.round(.45 * 31) + " are lost")
                .contains("With an editing window of 5 days editing begins on "
                        + DayOfWeek.FRIDAY.minus(5).getDisplayName(TextStyle.FULL, Locale.ENGLISH)
                        + " for a film of Friday");
        assertThat(text("crew")).contains("counts as " + 8 * 6 * 3 / 4 + " hours in the mean");
    }

    @Test
    void a_new_project_says_what_hours_become() {
        double work = (40 + 60) * 1.15 * 1.15;
        double week = 50 * .8;
        assertThat(text("start"))
                .contains("the 100 hours are some " + Math.round(work) + ", the 50 hours a week are " + Math.round(week)
                        + ", and the stage lands in the "
                        + List.of("first", "second", "third", "fourth").get((int) (work / week)) + " week");
    }

    @Test
    void the_log_in_says_its_days_and_the_length_of_a_passphrase() {
        assertThat(PassphraseRules.LEAST).isEqualTo(15);
        assertThat(text("account"))
                .contains("Fifteen characters at least")
                .contains("after " + Session.IDLE.toDays() + " days without use, and after " + Session.WHOLE.toDays());
    }
}
