package weekwright;

import java.time.Clock;
import weekwright.cli.CommandLines;
import weekwright.cli.Terminal;

/** The program's entry: hands the command line over and ends with its exit status. */
public final class Main {
    private Main() {}

    public static void main(String[] arguments) {
        Terminal terminal = new Terminal(
                System.out,
                System.err,
                System.console() != null,
                Clock.systemDefaultZone(),
                Runtime.getRuntime().availableProcessors(),
                new Typing(System.console()));
        System.exit(CommandLines.run(terminal, arguments));
    }
}
