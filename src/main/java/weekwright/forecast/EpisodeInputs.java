package weekwright.forecast;

import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import weekwright.build.HoursEntry;
import weekwright.build.Settings;
import weekwright.engine.Inputs;
import weekwright.episodes.Episode;

/** Episodes and the publishing settings as the engine takes them. Pure. */
final class EpisodeInputs {
    private final Facts facts;
    private final EditHours editing;
    private final Map<String, Integer> edited = new HashMap<>();
    private final Map<String, List<Inputs.Tell>> tells = new HashMap<>();

    EpisodeInputs(Facts facts) {
        this.facts = facts;
        editing = new EditHours(facts);
        for (HoursEntry entry : facts.hours()) {
            if (entry.episode().isPresent() && facts.known(entry.date()) && entry.asOrDefault() == HoursEntry.As.EDIT) {
                edited.merge(
                        facts.id("episode", entry.episode()),
                        entry.hours().minutes() * entry.peopleOrDefault(),
                        Integer::sum);
            }
        }
        Set<String> dropped = new HashSet<>();
        facts.tasks().stream()
                .filter(task -> task.dropped().filter(facts::known).isPresent())
                .forEach(task -> dropped.add(task.id().value()));
        facts.tells().forEach(row -> {
            String task = facts.id("task", row.task());
            if (!dropped.contains(task)) {
                tells.computeIfAbsent(facts.id("episode", row.episode()), id -> new ArrayList<>())
                        .add(new Inputs.Tell(task, Facts.number(row.share(), 1)));
            }
        });
    }

    List<Inputs.Episode> episodes() {
        return facts.episodes().stream().map(this::episode).toList();
    }

    /** Published implies cut implies footage complete (rule 67). */
    private Inputs.Episode episode(Episode row) {
        String id = row.id().value();
        int published = facts.fact(row.published());
        int cut = first(facts.fact(row.cut()), published);
        int footage = first(facts.fact(row.footageComplete()), cut);
        return new Inputs.Episode(
                id,
                Inputs.EpisodeKind.valueOf(row.kindOrDefault().name()),
                row.kindOrDefault() == Episode.Kind.STANDBY ? Inputs.NONE : Facts.day(row.slot()),
                editing.of(row),
                facts.id("crew", row.editor()),
                edited.getOrDefault(id, 0),
                footage,
                cut,
                published,
                tells.getOrDefault(id, List.of()));
    }

    private static int first(int written, int implied) {
        return written == Inputs.NONE ? implied : written;
    }

    Inputs.Publishing publishing() {
        Settings settings = facts.settings();
        return new Inputs.Publishing(
                settings.weekday().getValue(),
                Facts.day(settings.firstSlot()),
                settings.everyWeeks(),
                settings.targetMinutes().doubleValue(),
                settings.earlyDays(),
                settings.editWindowDays(),
                editing.standard(),
                settings.publishing().chargesAMonth().orElse(Inputs.NO_LIMIT),
                settings.emptyLeaving().doubleValue(),
                Stream.of(settings.skip()).flatMap(List::stream).map(Facts::day).toList(),
                editDays(settings),
                settings.bankFloor().doubleValue(),
                0);
    }

    /** Empty where every day is one. */
    private static List<Integer> editDays(Settings settings) {
        List<Integer> days = settings.editDays().stream()
                .map(DayOfWeek::getValue)
                .sorted()
                .distinct()
                .toList();
        return days.size() == 7 ? List.of() : days;
    }
}
