package weekwright.sample;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What really happened at the invented mill, in the order in which the crew would rather do it: each task with the hours
 * it took in the end (or the days a wait took), who worked on it and from which day. Written by hand; {@link Diary} lays
 * it out over the calendar.
 *
 * @param task the task's id in tasks.csv
 * @param minutes hands' minutes so far, or for a wait its days times 1440
 * @param people ids of those who may work on it
 * @param together true where all of {@code people} work at once
 * @param from the first day on which it is touched
 * @param share how much of a pieces task these hours made; 1 = all of it, under 1 = still under way
 */
record Worked(String task, int minutes, List<String> people, boolean together, LocalDate from, double share) {

    private static final String JOBS = """
            pit.1    |  30   | ilse tomas | 2025-12-15
            roof.1   |  31   | ilse+tomas | 2025-12-18
            pit.2    |  46   | ilse+tomas | 2026-01-05
            shaft.1  |  22   | ilse+tomas | 2026-01-20
            saw.2    |  17   | ilse+tomas | 2026-02-03
            shaft.2  |  17   | ilse+tomas | 2026-02-10
            wheel.1  |  50   | ilse+tomas | 2026-02-24
            saw.1    |  40   | ilse       | 2026-01-07
            shaft.3  |  33   | ilse       | 2026-02-16
            sluice.1 |  15   | wren ilse  | 2026-03-07
            sluice.2 |    74 | wren       | 2026-03-14
            pit.3    | 140   | ilse wren tomas | 2026-01-12
            gear.2   |  11   | tomas      | 2026-02-16
            shaft.4  | 132 d | -          | 2026-03-01
            gear.3   | 251 d | -          | 2026-03-01
            pit.4    |  70   | ilse       | 2026-02-23
            pit.5    |  58   | ilse       | 2026-03-09
            pit.6    |  44   | ilse wren  | 2026-03-16
            saw.4    |  22   | ilse tomas | 2026-03-23
            saw.5    |   7 d | -          | 2026-04-01
            pit.7    |  58   | ilse       | 2026-04-07
            pit.8    |  24 d | -          | 2026-04-07
            pit.15   |  38   | ilse       | 2026-04-20
            pit.16   |  21   | ilse tomas | 2026-05-22
            shaft.8  |  30   | ilse tomas | 2026-04-27
            shaft.9  |  46 d | -          | 2026-05-26
            sluice.3 |    84 | wren       | 2026-05-30 | 0.66
            pit.9    | 112   | ilse       | 2026-05-08
            pit.10   |  15 d | -          | 2026-05-08
            pit.12   |  62   | ilse       | 2026-05-20
            pit.11   | 98   | ilse       | 2026-06-15
            pit.13   |  58   | ilse tomas | 2026-07-13
            hurst.1  |    22 | ilse       | 2026-06-01
            saw.6    |    19 | ilse tomas | 2026-06-01 | 0.7
            shaft.10 |  11   | ilse       | 2026-08-03
            pit.14   |  13 d | -          | 2026-07-15
            shaft.11 |  51 d | -          | 2026-08-11
            pit.17   |  14   | ilse+tomas | 2026-09-14
            shaft.5  |  56   | ilse       | 2026-08-10
            wheel.2  |    36 | tomas      | 2026-06-29
            shaft.6  |    44 | ilse       | 2026-09-14
            shaft.7  |    82 | ilse       | 2026-09-21
            shaft.12 |    62 | ilse       | 2026-10-05
            shaft.13 |    33 | ilse       | 2026-11-14 | 0.85
            shaft.14 |   7.5 | ilse       | 2026-11-13 | 0.34
            roof.2   |    18 | tomas      | 2026-07-20
            stones.1 |    18 | tomas ilse | 2026-10-19
            sluice.5 |    50 | ilse       | 2026-09-28
            sluice.6 |    24 | ilse       | 2026-11-09 | 0.8
            wheel.11 |  11.5 | tomas      | 2026-08-24 | 0.67
            wheel.10 |    15 | tomas      | 2026-11-02 | 0.34
            stones.2 |    22 | ilse wren  | 2026-11-04 | 0.2
            gear.4   |  10.5 | tomas      | 2026-09-14 | 0.67
            """;

    /** Every job, the most wanted first. */
    static List<Worked> all() {
        List<Worked> jobs = new ArrayList<>();
        for (String line : JOBS.split("\n")) {
            String[] parts = Arrays.stream(line.split("\\|")).map(String::strip).toArray(String[]::new);
            boolean days = parts[1].endsWith("d");
            double amount = Double.parseDouble(parts[1].replace("d", "").strip());
            boolean together = parts[2].contains("+");
            jobs.add(new Worked(
                    parts[0],
                    (int) Math.round(amount * (days ? 1440 : 60)),
                    days ? List.of() : List.of(parts[2].split("[+ ]")),
                    together,
                    LocalDate.parse(parts[3]),
                    parts.length > 4 ? Double.parseDouble(parts[4]) : 1));
        }
        return jobs;
    }
}
