package weekwright.build;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import weekwright.base.Id;
import weekwright.base.Problem;
import weekwright.base.Problems;
import weekwright.base.Refused;
import weekwright.base.Words;

/**
 * How many of which equipment a task holds: the words {@code trestle:2 hoist} of its column.
 *
 * @param counts at least 1 each, in the order written
 */
public record EquipmentNeeds(Map<Id, Integer> counts) {
    private static final Pattern WORD = Pattern.compile("([^:]+)(?::([0-9]{1,4}))?");

    public EquipmentNeeds {
        counts = Collections.unmodifiableMap(new LinkedHashMap<>(counts));
    }

    /** What is needed as far as it can be read; each word that cannot adds a fault. */
    public static EquipmentNeeds read(Words words, Problems problems) {
        Map<Id, Integer> counts = new LinkedHashMap<>();
        for (String word : words.list()) {
            Matcher parts = WORD.matcher(word);
            int count = parts.matches() && parts.group(2) != null ? Integer.parseInt(parts.group(2)) : 1;
            if (!parts.matches() || count == 0) {
                problems.fault("equipment", word, "is not equipment with a count", "write such as trestle:2");
                continue;
            }
            try {
                if (counts.put(Id.parse(parts.group(1)), count) != null) {
                    problems.fault("equipment", parts.group(1), "is named twice", "write it once with its count");
                }
            } catch (Refused refused) {
                problems.add(Problem.fault("equipment", word, refused));
            }
        }
        return new EquipmentNeeds(counts);
    }

    /** What a task of the store needs; its words were checked when it was saved. */
    public static EquipmentNeeds of(Task task) {
        return read(task.equipment(), new Problems());
    }

    /** The hazards of a task and of the equipment that it needs (rule 119). */
    public static Set<String> hazards(Task task, Map<Id, Equipment> equipment) {
        Set<String> hazards = new LinkedHashSet<>(task.hazards().list());
        for (Id id : of(task).counts().keySet()) {
            Equipment one = equipment.get(id);
            if (one != null) {
                hazards.addAll(one.hazards().list());
            }
        }
        return hazards;
    }
}
