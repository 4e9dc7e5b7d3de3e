package weekwright;

import java.time.Clock;
import weekwright.cli.CommandLines;
import weekwright.cli.Terminal;

/** The program's entry: hands the command line over and ends with its exit status. */
public final class Main {
    private Main() {}

    public static void main(String[] arguments) {
        // pictures are drawn without a screen, whatever the environment names as one
        System.setProperty("java.awt.headless", "true");
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
