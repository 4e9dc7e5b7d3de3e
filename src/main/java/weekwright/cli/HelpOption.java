package weekwright.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** The one option that every command has. */
@Command
final class HelpOption {
    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Show this help and stop.")
    private boolean help;
}
