package weekwright.build;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import weekwright.base.Nearest;
import weekwright.base.Problems;
import weekwright.base.Words;

/**
 * The codes of hazards that tasks, equipment and people's exceptions may name, and the company that each asks for by
 * default: another person beside for the worst, another person at work that day for the others, nobody without any
 * (rules 119 and 125). Local codes and qualified people come first.
 */
public final class HazardCodes {
    private static final Map<String, String> TITLES = new LinkedHashMap<>();
    private static final Set<String> BESIDE =
            Set.of("melt", "fell", "lift", "jack", "space", "hot", "height", "water", "saw");

    static {
        String[][] all = {
            {"melt", "Molten metal"},
            {"lead", "Lead"},
            {"fell", "Tree felling"},
            {"stump", "Digging and stumps"},
            {"saw", "Chainsaw"},
            {"belt", "Old belt-driven machines"},
            {"woodm", "Saws, planers, spindle cutters"},
            {"steam", "Steam bending"},
            {"dust", "Hardwood dust"},
            {"epoxy", "Epoxy and hardeners"},
            {"solv", "Solvents and oily rags"},
            {"height", "Work at height"},
            {"lift", "Lifting and rigging"},
            {"jack", "Jacking and cribbing"},
            {"hand", "Carrying by hand"},
            {"space", "Confined space"},
            {"hot", "Hot work"},
            {"gas", "Gas cylinders and torches"},
            {"elec", "Electricity"},
            {"noise", "Noise and vibration"},
            {"lime", "Lime, cement, silica"},
            {"water", "Work over water"},
            {"weath", "Heat, cold, lightning"},
            {"line", "Camera in the line of fire"},
            {"dist", "Filming distracts"},
            {"drone", "Drones"},
            {"cable", "Cables and lights"},
            {"batt", "Batteries"},
            {"lone", "Working alone"},
            {"visit", "Visitors in the shop"},
            {"fatig", "Tiredness"},
        };
        for (String[] one : all) {
            TITLES.put(one[0], one[1]);
        }
    }

    private HazardCodes() {}

    /** All codes, in the order in which they are offered. */
    public static List<String> all() {
        return List.copyOf(TITLES.keySet());
    }

    public static boolean isKnown(String code) {
        return TITLES.containsKey(code);
    }

    /** What a code stands for in words. */
    public static Optional<String> title(String code) {
        return Optional.ofNullable(TITLES.get(code));
    }

    /** What codes stand for, as they stand within a sentence: {@code hot work}, {@code lifting and rigging}. */
    public static List<String> said(Collection<String> codes) {
        return codes.stream()
                .map(code -> title(code).orElse(code).toLowerCase(Locale.ROOT))
                .toList();
    }

    /** Adds a fault for each code that is not known, with the nearest ones. */
    public static void check(String column, Words codes, Problems problems) {
        for (String code : codes.list()) {
            check(column, code, problems);
        }
    }

    /** Adds a fault if the code is not known, with the nearest ones. */
    public static void check(String column, String code, Problems problems) {
        if (!isKnown(code)) {
            problems.fault(
                    column,
                    code,
                    "is not a known hazard",
                    Nearest.remedy(code, TITLES.keySet(), "write one of " + String.join(", ", TITLES.keySet())));
        }
    }

    /** The company that these hazards ask for together. */
    public static Task.Company company(Collection<String> hazards) {
        if (hazards.isEmpty()) {
            return Task.Company.ALONE;
        }
        return hazards.stream().anyMatch(BESIDE::contains) ? Task.Company.BY : Task.Company.CALL;
    }

    /** Whether a person is kept off work with these hazards; a helper without any named is kept off all of them. */
    public static boolean keptOff(CrewMember person, Collection<String> hazards) {
        if (person.notFor().isEmpty()) {
            return person.accessOrDefault() == CrewMember.Access.HELPER && !hazards.isEmpty();
        }
        return hazards.stream().anyMatch(person.notFor()::has);
    }
}
