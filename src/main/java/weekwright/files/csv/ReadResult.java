package weekwright.files.csv;

import java.util.List;
import java.util.Optional;
import weekwright.base.Problem;

/**
 * What reading a folder of plain files gave.
 *
 * @param problems every fault and remark, file by file in the order of their lines
 * @param data the project, or empty where there is any fault
 */
public record ReadResult(List<Problem> problems, Optional<ProjectData> data) {
    public ReadResult {
        problems = List.copyOf(problems);
    }

    public List<Problem> faults() {
        return problems.stream().filter(Problem::isFault).toList();
    }

    public List<Problem> remarks() {
        return problems.stream().filter(problem -> !problem.isFault()).toList();
    }
}
