package weekwright.render.chart;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import weekwright.render.Formats;
import weekwright.render.chart.AheadPicture.Balance;
import weekwright.render.chart.AheadPicture.Cash;
import weekwright.render.chart.AheadPicture.Fan;
import weekwright.render.chart.AheadPicture.Model;
import weekwright.render.chart.AheadPicture.Notch;
import weekwright.render.chart.AheadPicture.Pointers;
import weekwright.render.chart.AheadPicture.Purchase;
import weekwright.render.chart.AheadPicture.Range;
import weekwright.render.chart.AheadPicture.Safety;
import weekwright.render.chart.AheadPicture.Slot;
import weekwright.render.chart.AheadPicture.Stage;
import weekwright.render.chart.AheadPicture.Thread;

/** Invented figures of a mill on 25 November 2026, a Wednesday; episodes go out on Fridays. */
final class MillYear {
    static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    static final Formats FORMATS = new Formats("EUR", TODAY);

    private MillYear() {}

    static LocalDate day(String iso) {
        return LocalDate.parse(iso);
    }

    static Stage begun(String name, String began, String p10, String p50, String p90, Notch... notches) {
        return new Stage(
                name,
                "",
                Optional.of(day(began)),
                Optional.empty(),
                Optional.of(Range.of(day(p10), day(p50), day(p90))),
                Optional.empty(),
                List.of(notches));
    }

    static Stage toCome(String name, Range start, Range landing, Notch... notches) {
        return new Stage(
                name,
                "",
                Optional.empty(),
                Optional.of(start),
                Optional.of(landing),
                Optional.empty(),
                List.of(notches));
    }

    static Range range(String p10, String p50, String p90) {
        return Range.of(day(p10), day(p50), day(p90));
    }

    static List<Stage> stages() {
        Range shaft = range("2026-12-03", "2026-12-09", "2026-12-19");
        Range wheel = range("2027-02-11", "2027-03-02", "2027-03-30");
        return List.of(
                new Stage(
                        "Wheel pit masonry",
                        "",
                        Optional.of(day("2026-02-02")),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(day("2026-08-21")),
                        List.of()),
                begun(
                        "Wheel shaft",
                        "2026-09-14",
                        "2026-12-03",
                        "2026-12-09",
                        "2026-12-19",
                        new Notch("mortises", day("2026-11-28")),
                        new Notch("hoops on", day("2026-12-04"))),
                toCome(
                        "Waterwheel",
                        shaft,
                        wheel,
                        new Notch("rims cut", day("2027-01-20")),
                        new Notch("arms in", day("2027-02-09"))),
                toCome("Hurst frame", wheel, range("2027-04-06", "2027-05-03", "2027-06-14")),
                begun("Sluice and leat", "2026-06-06", "2027-04-03", "2027-05-08", "2027-06-30"),
                new Stage(
                        "Gearing",
                        "",
                        Optional.empty(),
                        Optional.of(new Range(Optional.of(day("2027-06-01")), Optional.empty(), Optional.empty())),
                        Optional.of(new Range(Optional.empty(), Optional.empty(), Optional.empty())),
                        Optional.empty(),
                        List.of()));
    }

    static List<Slot> slots() {
        Safety[] safety = {
            Safety.OUT,
            Safety.OUT,
            Safety.OUT,
            Safety.OUT,
            Safety.SAFE,
            Safety.SAFE,
            Safety.CLOSE,
            Safety.AT_RISK,
            Safety.BANK,
            Safety.OPEN
        };
        List<Slot> slots = new ArrayList<>();
        for (int i = 0; i < 24; i++) {
            Safety one = i < safety.length ? safety[i] : Safety.OPEN;
            slots.add(new Slot(
                    day("2026-10-30").plusWeeks(i),
                    one == Safety.OPEN ? "" : String.valueOf(43 + i),
                    one == Safety.OPEN ? "" : "Episode " + (43 + i),
                    one,
                    one == Safety.OPEN ? 0 : one == Safety.CLOSE ? .25 : .75));
        }
        return slots;
    }

    static Cash cash() {
        List<Fan> fan = new ArrayList<>();
        for (int week = 0; week <= 24; week++) {
            double even = 774_000 + week * 14_500;
            double spread = Math.sqrt(week) * 16_000;
            fan.add(new Fan(
                    TODAY.plusWeeks(week),
                    even - 1.3 * spread,
                    even - .7 * spread,
                    even,
                    even + .7 * spread,
                    even + 1.3 * spread));
        }
        return new Cash(
                774_000,
                300_000,
                List.of(new Balance(day("2026-10-26"), 700_000), new Balance(day("2026-11-07"), 884_000)),
                fan,
                List.of(
                        new Purchase("Oak for the rims", day("2026-12-04"), 518_000, 25_000),
                        new Purchase("Gudgeons", day("2027-01-25"), 164_000, 0),
                        new Purchase("Hurst timber", day("2027-03-12"), 390_000, 180_000)));
    }

    static Model model(List<Stage> stages) {
        return new Model(
                TODAY,
                DayOfWeek.FRIDAY,
                stages,
                slots(),
                Stream.of(
                                Thread.ofWork(1, day("2026-11-28"), day("2026-12-04"), Safety.SAFE),
                                Thread.ofPurchase(0, day("2026-12-18"), Safety.AT_RISK))
                        .filter(thread -> thread.stage().orElse(-1) < stages.size())
                        .toList(),
                Optional.of(day("2026-12-18")),
                4,
                cash(),
                new Pointers(
                        OptionalInt.of(1), Optional.of(day("2026-11-27")), true, OptionalInt.of(0), OptionalInt.of(0)));
    }

    /** Three years of it: a stage, an episode with its thread and half a purchase for each week or so, and money drawn week by week. */
    static Model threeYears() {
        List<Stage> stages = new ArrayList<>();
        List<Slot> slots = new ArrayList<>();
        List<Thread> threads = new ArrayList<>();
        List<Fan> fan = new ArrayList<>();
        List<Purchase> purchases = new ArrayList<>();
        for (int week = 0; week < 156; week++) {
            LocalDate at = TODAY.plusWeeks(week);
            if (week % 5 == 0) {
                stages.add(toCome(
                        "Floor and walls, part " + (week / 5 + 1),
                        Range.of(at, at.plusDays(9), at.plusDays(30)),
                        Range.of(at.plusDays(35), at.plusDays(44), at.plusDays(65)),
                        new Notch("posts", at.plusDays(14)),
                        new Notch("boards on", at.plusDays(25))));
            }
            Safety safety = Safety.values()[week % Safety.values().length];
            slots.add(new Slot(at.plusDays(2), String.valueOf(46 + week), "Boards, week " + (week + 1), safety, .5));
            threads.add(Thread.ofWork(week / 5, at.minusDays(6), at.plusDays(2), safety));
            fan.add(new Fan(at, 300_000, 500_000, 700_000, 900_000, 1_200_000 + week));
            if (week % 2 == 0) {
                purchases.add(new Purchase("Oak boards for bay " + (week + 1), at, 54_000, week % 3 * 10_000));
            }
        }
        return new Model(
                TODAY,
                DayOfWeek.FRIDAY,
                stages,
                slots,
                threads,
                Optional.of(TODAY.plusWeeks(30)),
                4,
                new Cash(774_000, 300_000, List.of(new Balance(day("2026-10-26"), 700_000)), fan, purchases),
                Pointers.NONE);
    }

    static Model model() {
        return model(stages());
    }
}
