package weekwright.cli;

import java.io.PrintWriter;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;
import weekwright.base.Problem;
import weekwright.base.Rejected;
import weekwright.db.FolderRefused;
import weekwright.db.StoreTrouble;

/** Reads the arguments, runs the command and says what went wrong in one sentence. */
public final class CommandLines {
    private static final int FAULT = 1;
    private static final int USAGE = 2;

    private CommandLines() {}

    /** The program as a whole. */
    @Command(
            name = "weekwright",
            header = "Links shop tasks, hours, materials and supporter income to a weekly publishing calendar.",
            synopsisSubcommandLabel = "COMMAND",
            footer = "%nweekwright COMMAND --help tells more of a command.",
            versionProvider = Version.class)
    static final class Weekwright implements Runnable {
        @CommandLine.Spec
        private CommandLine.Model.CommandSpec spec;

        @CommandLine.Option(
                names = {"-h", "--help"},
                usageHelp = true,
                description = "Show this help and stop.")
        private boolean help;

        @CommandLine.Option(
                names = {"-V", "--version"},
                versionHelp = true,
                description = "Show the version and stop.")
        private boolean version;

        @Override
        public void run() {
            throw new ParameterException(spec.commandLine(), "Name a command");
        }
    }

    /** The version of the jar; a build that is not packed has none. */
    static final class Version implements CommandLine.IVersionProvider {
        @Override
        public String[] getVersion() {
            String version = CommandLines.class.getPackage().getImplementationVersion();
            return new String[] {"weekwright " + (version == null ? "(not packed)" : version)};
        }
    }

    /**
     * Runs a command line.
     *
     * @return the exit status: 0, 1 for a fault in the data, 2 for wrong usage
     */
    public static int run(Terminal terminal, String... arguments) {
        CommandLine line = new CommandLine(new Weekwright());
        for (Object command : List.of(
                new ServeCommand(terminal),
                new CheckCommand(terminal),
                new ImportCommand(terminal),
                new ExportCommand(terminal),
                new PublishCommand(terminal),
                new BackupCommand(terminal),
                new RestoreCommand(terminal),
                new ForecastCommand(terminal),
                new WeekCommand(terminal),
                new ReplayCommand(terminal),
                new PassphraseCommand(terminal))) {
            line.addSubcommand(command);
        }
        line.setUsageHelpWidth(100);
        line.setOut(new PrintWriter(terminal.out(), true));
        line.setErr(new PrintWriter(terminal.err(), true));
        line.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
        line.setParameterExceptionHandler((trouble, given) -> {
            terminal.err().println(usage(trouble));
            return USAGE;
        });
        line.setExecutionExceptionHandler((trouble, command, result) -> failed(terminal, trouble));
        try {
            return line.execute(arguments);
        } finally {
            terminal.out().flush();
            terminal.err().flush();
        }
    }

    /** One sentence and where to read more. */
    private static String usage(ParameterException trouble) {
        String name = trouble.getCommandLine().getCommandSpec().qualifiedName();
        String sentence = sentence(trouble, name);
        return sentence + (sentence.endsWith("?") ? "" : ".") + " See: " + name + " --help";
    }

    private static String sentence(ParameterException trouble, String name) {
        if (trouble instanceof UnmatchedArgumentException unmatched) {
            String given = unmatched.getUnmatched().get(0);
            boolean option = given.startsWith("-");
            List<String> near = unmatched.getSuggestions();
            return name + " does not know " + (option ? "the option " : "") + given
                    + (near.isEmpty() || !option ? "" : "; did you mean " + near.get(0) + "?");
        }
        if (trouble instanceof MissingParameterException missing) {
            return name + " needs "
                    + missing.getMissing().stream()
                            .map(CommandLine.Model.ArgSpec::paramLabel)
                            .collect(Collectors.joining(" and "));
        }
        if (trouble.getArgSpec() instanceof CommandLine.Model.OptionSpec option && trouble.getValue() != null) {
            String what = option.type() == LocalDate.class
                    ? "is not a date; write it like 2026-11-25"
                    : "is not a whole number";
            return option.longestName() + " \"" + trouble.getValue() + "\" " + what;
        }
        return trouble.getMessage();
    }

    private static int failed(Terminal terminal, Exception trouble) {
        if (trouble instanceof Failure failure) {
            terminal.err().println(failure.getMessage());
            return failure.status();
        }
        if (trouble instanceof Rejected rejected) {
            rejected.problems().stream().map(Problem::text).forEach(terminal.err()::println);
            return FAULT;
        }
        if (trouble instanceof FolderRefused || trouble instanceof StoreTrouble) {
            terminal.err().println(trouble.getMessage());
            return FAULT;
        }
        terminal.err().println("This is a fault of the program, not of the project: " + trouble);
        trouble.printStackTrace(terminal.err());
        return FAULT;
    }
}
