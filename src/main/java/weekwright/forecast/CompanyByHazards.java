package weekwright.forecast;

import java.util.List;
import java.util.Set;
import weekwright.build.Task;

/** The company that a task has where none is written (rule 125). */
final class CompanyByHazards {
    /** Another person stays beside: molten metal, felling, lifting, jacking, tanks and pits, hot work, heights, water, chainsaw. */
    private static final Set<String> BESIDE =
            Set.of("melt", "fell", "lift", "jack", "space", "hot", "height", "water", "saw");

    private CompanyByHazards() {}

    /** Beside for the dangerous ones, within call for all other hazards, alone without any. */
    static Task.Company of(List<String> hazards) {
        if (hazards.isEmpty()) {
            return Task.Company.ALONE;
        }
        return hazards.stream().anyMatch(BESIDE::contains) ? Task.Company.BY : Task.Company.CALL;
    }
}
