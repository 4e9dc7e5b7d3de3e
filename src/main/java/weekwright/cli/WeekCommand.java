package weekwright.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import weekwright.forecast.Basis;
import weekwright.forecast.Forecast;
import weekwright.forecast.ForecastJson;
import weekwright.forecast.ForecastRun;
import weekwright.forecast.Forecasts;
import weekwright.forecast.WeekPlan;

/** {@code week}: the week's sheet, as text or as JSON. */
@Command(
        name = "week",
        description =
                "Writes the sheet of the week: who does what on which day, what to film, what is dangerous about it, what"
                        + " arrives, what has to be ordered. Lines that the crew wrote stand as written; the others are"
                        + " proposals.")
final class WeekCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private HelpOption help;

    @Parameters(paramLabel = "FOLDER-or-FILES", description = "A project's folder, or a folder of plain files.")
    private Path place;

    @Option(names = "--today", paramLabel = "DATE", description = "A day of the week, from which on work is proposed.")
    private LocalDate today;

    @Option(names = "--json", description = "Write JSON.")
    private boolean json;

    WeekCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws Exception {
        try (ProjectSource project = ProjectSource.open(place, terminal.clock(), today);
                ProgressLine progress = new ProgressLine(terminal, "futures", Forecasts.FIRST_LOOK)) {
            Basis basis = project.basis(project.day(today));
            ForecastRun.Planned planned = new ForecastRun.Planned(basis, Forecasts.SEED);
            Forecast forecast = planned.run(Forecasts.FIRST_LOOK, terminal.threads(), progress)
                    .forecast();
            progress.stop();
            WeekPlan week = project.week(basis, planned, forecast);
            if (json) {
                terminal.out().println(new ForecastJson(basis.moneyDigits()).lines(week));
            } else {
                terminal.out().print(new WeekText(week, basis, project.remarks()).text());
            }
        }
        return 0;
    }
}
