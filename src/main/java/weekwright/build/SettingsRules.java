package weekwright.build;

import static weekwright.base.RowRules.needed;
import static weekwright.base.RowRules.rising;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import weekwright.base.Codec;
import weekwright.base.Hours;
import weekwright.base.Money;
import weekwright.base.Nearest;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Reading;
import weekwright.base.Refused;
import weekwright.base.RowRules;

/** What must hold within the settings of a project; each part can be checked alone, as a form sends it. */
public final class SettingsRules {
    private static final Pattern OFFSET = Pattern.compile("(UTC|GMT|UT)?[+-][0-9:]+|Z");
    private static final LocalDate EARLIEST = LocalDate.of(1900, 1, 1);
    private static final LocalDate LATEST = LocalDate.of(2199, 12, 31);
    private static final List<String> WEEKDAYS = Arrays.stream(DayOfWeek.values())
            .map(day -> day.name().toLowerCase(Locale.ROOT))
            .toList();

    private SettingsRules() {}

    public static void check(Settings settings, Problems problems) {
        check(settings.project(), problems);
        check(settings.publishing(), problems);
        dates(settings.publishing(), settings.project(), problems);
        check(settings.weather(), problems);
        check(settings.money(), problems);
    }

    public static void check(Project project, Problems problems) {
        needed("name", project.name(), "write what is being built", problems);
        currency(project.currency(), problems);
        zone(project.zone(), problems);
        if (project.started().isBefore(EARLIEST) || project.started().isAfter(LATEST)) {
            problems.fault(
                    "started", project.started().toString(), "is no likely start", "write a day from 1900 to 2199");
        } else {
            DateRules.check(SettingsStore.PROJECT.shape(), project, project.started(), problems);
        }
    }

    /** That the first slot lies in the time of the project. */
    static void dates(Publishing publishing, Project project, Problems problems) {
        DateRules.check(SettingsStore.PUBLISHING.shape(), publishing, project.started(), problems);
    }

    private static void currency(String code, Problems problems) {
        try {
            if (code.isBlank()) {
                throw new Refused("is missing", "write its three letters, such as EUR");
            }
            Money.digits(code);
        } catch (Refused refused) {
            problems.add(Problem.fault("currency", code, refused));
        }
    }

    private static void zone(String zone, Problems problems) {
        if (OFFSET.matcher(zone).matches()) {
            problems.fault(
                    "zone", zone, "is an offset, which has no summer time", "write a place such as Europe/Berlin");
            return;
        }
        try {
            if (!zone.isBlank() && (zone.contains("/") || zone.equals("UTC"))) {
                ZoneId.of(zone);
                return;
            }
        } catch (DateTimeException e) {
            // told below, with the nearest names
        }
        List<String> places = ZoneId.getAvailableZoneIds().stream()
                .filter(id -> id.contains("/") && !id.startsWith("Etc/") && !id.startsWith("SystemV/"))
                .sorted()
                .toList();
        problems.fault(
                "zone",
                zone,
                zone.isBlank() ? "is missing" : "is not a known zone",
                Nearest.remedy(zone, places, "write a place such as Europe/Berlin"));
    }

    public static void check(Publishing publishing, Problems problems) {
        if (!publishing.weekday().isEmpty()) {
            weekday("weekday", publishing.weekday(), problems);
        }
        publishing.editDays().list().forEach(day -> weekday("edit_days", day, problems));
        for (String date : publishing.skip().list()) {
            try {
                Codec.of(LocalDate.class).parse(date, Reading.file(0));
            } catch (Refused refused) {
                problems.add(Problem.fault("skip", date, refused));
            }
        }
        if (publishing.editLow().isPresent()
                || publishing.editLikely().isPresent()
                || publishing.editHigh().isPresent()) {
            rising(
                    "edit_",
                    publishing.editLow(),
                    publishing.editLikely().or(() -> Optional.of(new Hours(24 * 60))),
                    publishing.editHigh(),
                    problems);
        }
        RowRules.oneDecimal("target_minutes", publishing.targetMinutes(), problems);
    }

    private static void weekday(String column, String word, Problems problems) {
        if (!WEEKDAYS.contains(word.toLowerCase(Locale.ROOT))) {
            List<String> begun = WEEKDAYS.stream()
                    .filter(day -> day.startsWith(word.toLowerCase(Locale.ROOT)) && !word.isBlank())
                    .toList();
            problems.fault(
                    column,
                    word,
                    "is not a day of the week",
                    begun.size() == 1
                            ? "write " + begun.get(0)
                            : Nearest.remedy(word, WEEKDAYS, "write one of " + String.join(", ", WEEKDAYS)));
        }
    }

    public static void check(BuildLog log, Problems problems) {
        if (!log.address().isEmpty() && !log.address().matches("https?://[^\\s\"<>\\\\?#]+")) {
            problems.fault(
                    "address",
                    log.address(),
                    "is not the address of a site",
                    "write it whole, such as https://mill.example/log/, or leave it empty");
        }
    }

    public static void check(Weather weather, Problems problems) {
        List<String> shares = weather.lost().list();
        if (!shares.isEmpty() && shares.size() != 12) {
            problems.fault(
                    "lost", String.valueOf(shares.size()), "numbers stand there", "write 12 shares, January first");
            return;
        }
        for (String share : shares) {
            boolean number = share.matches("[0-9]{1,3}(\\.[0-9]{1,6})?");
            if (!number || new BigDecimal(share).compareTo(BigDecimal.ONE) > 0) {
                problems.fault("lost", share, "is not a share", "write numbers from 0 to 1");
            }
        }
    }

    public static void check(MoneySettings money, Problems problems) {
        RowRules.percent("put_by_percent", money.putByPercent(), problems);
    }
}
