package weekwright.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import weekwright.forecast.ForecastJson;
import weekwright.forecast.ForecastRun;

/** {@code forecast}: looks ahead from a day, as text or as JSON. */
@Command(
        name = "forecast",
        description = {
            "Says when each stage is done and what holds it, which slots can be filled, what has to be ordered by when, and"
                    + " how long the money lasts.",
            "",
            "The same project, day, seed and number of trials give the same answer, whatever the machine."
        })
final class ForecastCommand implements Callable<Integer> {
    private static final int MOST_TRIALS = 1_000_000;
    private static final int MOST_THREADS = 256;

    private final Terminal terminal;

    @Mixin
    private HelpOption help;

    @Parameters(paramLabel = "FOLDER-or-FILES", description = "A project's folder, or a folder of plain files.")
    private Path place;

    @Option(names = "--today", paramLabel = "DATE", description = "The day to look ahead from, such as 2026-11-25.")
    private LocalDate today;

    @Option(
            names = "--trials",
            paramLabel = "N",
            defaultValue = "10000",
            description = "How many futures to draw (${DEFAULT-VALUE}).")
    private int trials;

    @Option(
            names = "--seed",
            paramLabel = "N",
            defaultValue = "1",
            description = "Which luck to draw (${DEFAULT-VALUE}).")
    private long seed;

    @Option(names = "--threads", paramLabel = "N", description = "Processors to use; all, if not given.")
    private Integer threads;

    @Option(names = "--json", description = "Write JSON.")
    private boolean json;

    ForecastCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws Exception {
        Numbers.within("--trials", trials, 1, MOST_TRIALS);
        int processors = threads == null ? terminal.threads() : threads;
        Numbers.within("--threads", processors, 1, MOST_THREADS);
        try (ProjectSource project = ProjectSource.open(place, terminal.clock(), today);
                ProgressLine progress = new ProgressLine(terminal, "futures", trials)) {
            LocalDate day = project.day(today);
            ForecastRun.Made made = ForecastRun.run(project.basis(day), trials, seed, processors, progress);
            progress.stop();
            if (json) {
                project.remarks().forEach(remark -> terminal.err().println(remark.text()));
                terminal.out().println(new ForecastJson(made.basis().moneyDigits()).lines(made.forecast()));
            } else {
                terminal.out().print(new ForecastText(made, project.remarks()).text());
            }
        }
        return 0;
    }
}
