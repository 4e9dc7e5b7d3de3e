package weekwright.forecast;

import java.util.Map;

/**
 * What people call the things of a forecast, by id, as it stood when the forecast's facts were read.
 *
 * @param materials the item
 * @param shots what is to be seen
 */
public record Names(
        String project,
        Map<String, String> stages,
        Map<String, String> tasks,
        Map<String, String> crew,
        Map<String, String> equipment,
        Map<String, String> materials,
        Map<String, String> episodes,
        Map<String, String> shots) {
    public Names {
        stages = Map.copyOf(stages);
        tasks = Map.copyOf(tasks);
        crew = Map.copyOf(crew);
        equipment = Map.copyOf(equipment);
        materials = Map.copyOf(materials);
        episodes = Map.copyOf(episodes);
        shots = Map.copyOf(shots);
    }

    /** The title of a task, or its id if it has none. */
    public String task(String id) {
        return tasks.getOrDefault(id, id);
    }

    /** The name of a stage, or its id if it has none. */
    public String stage(String id) {
        return stages.getOrDefault(id, id);
    }

    /** The name of a person, or the id if there is none. */
    public String person(String id) {
        return crew.getOrDefault(id, id);
    }

    /** The item of a material line, or its id if it has none. */
    public String material(String id) {
        return materials.getOrDefault(id, id);
    }

    /** The name of equipment, or its id if it has none. */
    public String equipment(String id) {
        return equipment.getOrDefault(id, id);
    }

    /** The title of an episode, or its id if it has none. */
    public String episode(String id) {
        return episodes.getOrDefault(id, id);
    }

    /** What a shot is to show, or its id if nothing is said. */
    public String shot(String id) {
        return shots.getOrDefault(id, id);
    }
}
