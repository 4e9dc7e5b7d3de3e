package weekwright.files;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import weekwright.base.Problem;
import weekwright.files.csv.PlainFiles;
import weekwright.files.csv.ReadResult;

/** Reads and checks a project in plain files and writes nothing. */
public final class CheckFiles {
    /** As many faults, and as many remarks, are listed one by one. */
    public static final int MOST_LISTED = 200;

    private CheckFiles() {}

    /** @param today in the project's zone, for what looks ahead */
    public static ReadResult check(Path files, LocalDate today) {
        return PlainFiles.read(files, today);
    }

    /** One line for each problem, and after the first 200 how many more there are. */
    public static List<String> lines(List<Problem> problems) {
        List<String> lines = new ArrayList<>(
                problems.stream().limit(MOST_LISTED).map(Problem::text).toList());
        if (problems.size() > MOST_LISTED) {
            lines.add("and " + (problems.size() - MOST_LISTED) + " more");
        }
        return lines;
    }
}
