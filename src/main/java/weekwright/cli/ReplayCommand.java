package weekwright.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import weekwright.forecast.ForecastJson;
import weekwright.forecast.Replay;
import weekwright.forecast.TrackRecord;
import weekwright.render.Formats;
import weekwright.web.parts.RecordWords;

/** {@code replay}: every past Friday's forecast against what happened. */
@Command(
        name = "replay",
        description = {
            "Makes the forecast of every past Friday from what was known on it, and says how its ranges held: how"
                    + " many, how far off in days, and against three rivals (the plan as one date, the pace of the last"
                    + " eight weeks carried on, likely hours over stated hours)."
        })
final class ReplayCommand implements Callable<Integer> {
    private final Terminal terminal;

    @Mixin
    private HelpOption help;

    @Parameters(paramLabel = "FOLDER-or-FILES", description = "A project's folder, or a folder of plain files.")
    private Path place;

    @Option(names = "--today", paramLabel = "DATE", description = "The day up to which things have happened.")
    private LocalDate today;

    @Option(names = "--json", description = "Write JSON.")
    private boolean json;

    ReplayCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Integer call() throws Exception {
        try (ProjectSource project = ProjectSource.open(place, terminal.clock(), today)) {
            Replay.Asked asked = project.replay(project.day(today));
            try (ProgressLine progress =
                    new ProgressLine(terminal, "Fridays", asked.fridays().size())) {
                TrackRecord record = Replay.run(asked, terminal.threads(), progress);
                progress.stop();
                terminal.out().print(json ? new ForecastJson(0).lines(record.told()) + "\n" : text(record));
            }
        }
        return 0;
    }

    private static String text(TrackRecord record) {
        Sheet sheet = new Sheet();
        sheet.head("Track record");
        sheet.line(RecordWords.basis(record));
        sheet.line(RecordWords.verdict(record));
        if (!record.decided().isEmpty()) {
            sheet.under(RecordWords.sides(record));
            sheet.under(RecordWords.tolerance(record));
        }
        if (!record.all().isEmpty()) {
            TrackRecord.Losses crps = record.crps();
            TrackRecord.Losses pinball = record.pinball();
            sheet.head(RecordWords.OFF);
            sheet.line(loss(RecordWords.OURS, crps.model(), pinball.model()));
            sheet.line(loss(RecordWords.PLAN, crps.plan(), pinball.plan()));
            sheet.line(loss(RecordWords.PACE, crps.velocity(), pinball.velocity()));
            sheet.line(loss(RecordWords.LIKELY, crps.likely(), pinball.likely()));
            sheet.line("From " + Formats.counted(record.fridays().size(), "Friday", "Fridays")
                    + "; what is still open counts with what is known of it today.");
        }
        return sheet.text();
    }

    private static String loss(String name, double crps, double pinball) {
        return name + ": ranked score " + RecordWords.days(crps) + ", pinball loss " + RecordWords.days(pinball) + ".";
    }
}
